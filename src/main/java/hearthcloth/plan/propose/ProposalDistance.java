package hearthcloth.plan.propose;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.parameter.ProposalParameters;
import hearthcloth.stash.Piece;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** Counts the ways in which two cloths differ to the eye, so that proposals are not variations of one cloth. */
final class ProposalDistance {

    /** The ways in which cloths differ. */
    enum Way {
        SIZE,
        COLOURS,
        ORDER,
        ROUNDS,
        WIDTHS,
        FABRICS
    }

    private static final ProposalParameters.Unlike UNLIKE =
            ProposalParameters.standard().gallery().unlike();

    private ProposalDistance() {}

    /** The number of differences, with another plan of colour counted twice, since it is noticed first. */
    static int difference(DraftTrial one, DraftTrial other) {
        Set<Way> ways = unlike(one, other);
        return ways.size() + (ways.contains(Way.COLOURS) ? 1 : 0);
    }

    /** The ways in which one cloth differs from the other; symmetric, and empty for a cloth and itself. */
    static Set<Way> unlike(DraftTrial one, DraftTrial other) {
        Set<Way> ways = EnumSet.noneOf(Way.class);
        LayoutCandidate first = one.draft().shape();
        LayoutCandidate second = other.draft().shape();
        note(ways, Way.SIZE, !first.finished().equals(second.finished()));
        note(
                ways,
                Way.COLOURS,
                one.draft().scheme().kind() != other.draft().scheme().kind());
        note(ways, Way.ORDER, first.order() != second.order());
        note(ways, Way.ROUNDS, first.rounds() != second.rounds());
        note(ways, Way.WIDTHS, widthsDiffer(first.layout(), second.layout()));
        note(ways, Way.FABRICS, otherFabric(shares(one), shares(other)) > UNLIKE.fabrics());
        return ways;
    }

    private static void note(Set<Way> ways, Way way, boolean holds) {
        if (holds) {
            ways.add(way);
        }
    }

    /** Whether bars or hearths differ in width, compared from the rim inwards as far as both cloths go. */
    private static boolean widthsDiffer(Layout one, Layout other) {
        Size first = one.hearth();
        Size second = other.hearth();
        boolean differ = differ(first.width(), second.width()) || differ(first.height(), second.height());
        int bars = Math.min(one.courses().size(), other.courses().size());
        for (int i = 1; i <= bars; i++) {
            differ |= differ(
                    one.courses().get(one.courses().size() - i).width(),
                    other.courses().get(other.courses().size() - i).width());
        }
        return differ;
    }

    private static boolean differ(Length one, Length other) {
        return Math.abs(one.nm() - other.nm()) > UNLIKE.bars() * one.max(other).nm();
    }

    /** The share of each fabric in all that is cut into. */
    private static Map<String, Double> shares(DraftTrial trial) {
        Map<String, Double> shares = new LinkedHashMap<>();
        double all = trial.answer().used().stream().mapToDouble(Piece::areaMm2).reduce(0, Double::sum);
        trial.answer().used().forEach(piece -> shares.merge(piece.fabric().name(), piece.areaMm2() / all, Double::sum));
        return shares;
    }

    private static double otherFabric(Map<String, Double> one, Map<String, Double> other) {
        double common = 0;
        for (Map.Entry<String, Double> share : one.entrySet()) {
            common += Math.min(share.getValue(), other.getOrDefault(share.getKey(), 0.0));
        }
        return 1 - common;
    }
}
