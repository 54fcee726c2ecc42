package hearthcloth.guideline;

import hearthcloth.cloth.layout.Order;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.PiecingRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Takes a guideline from a finished cloth: for each choice its maker says whether it is the idea, or was only that day's. What
 * she says is a word ({@code kept}, {@code share}, {@code open}) or a rule of its own, as the guideline file has it.
 *
 * @param cloth what was made
 * @param told her words
 */
public record Taken(SentCloth cloth, Guideline.Told told) {

    /** As it was in this cloth. */
    public static final String KEPT = "kept";

    /** The share of the cloth's width that it was. */
    public static final String SHARE = "share";

    /** What she says of the size: kept, open, or a rule. */
    public SizeRule size(String said) {
        return is(said, KEPT) ? new SizeRule.Exactly(cloth.cloth().finished()) : SizeRule.parse(said, ruler().unit());
    }

    /** What she says of the hearth: kept, share, open, or a rule. */
    public HearthRule hearth(String said) {
        Size finished = facts().hearth().finished();
        if (is(said, KEPT)) {
            return new HearthRule.Exactly(finished, true);
        }
        return is(said, SHARE)
                ? new HearthRule.OfWidth(
                        Share.about(finished.width(), facts().finished().width()))
                : HearthRule.parse(said, ruler().unit());
    }

    /** What she says of the bars: kept, share, open, or a rule. */
    public BarsRule bars(String said) {
        if (is(said, KEPT)) {
            return new BarsRule.Widths(byRound(), false);
        }
        if (!is(said, SHARE)) {
            return BarsRule.parse(said, ruler().unit());
        }
        Length whole = facts().finished().width();
        List<Share> shares = facts().bars().stream()
                .map(bar -> Share.about(bar.width().finished(), whole))
                .toList();
        return new BarsRule.OfWidth(new Share(
                shares.stream().mapToInt(Share::least).min().orElse(1),
                shares.stream().mapToInt(Share::most).max().orElse(99)));
    }

    /** The cut width of the first bar of each round; fewer where the rest are as wide as the last. */
    private List<Length> byRound() {
        List<Length> widths = new ArrayList<>();
        for (ClothFacts.Bar bar : facts().bars()) {
            if (bar.round() > widths.size()) {
                widths.add(bar.width().cut());
            }
        }
        while (widths.size() > 1 && widths.get(widths.size() - 1).equals(widths.get(widths.size() - 2))) {
            widths.remove(widths.size() - 1);
        }
        return widths;
    }

    /** What she says of the rounds: kept, open, or a rule. */
    public RoundsRule rounds(String said) {
        int rounds = Math.max(1, facts().rounds());
        return is(said, KEPT) ? new RoundsRule(rounds, rounds) : RoundsRule.parse(said);
    }

    /** What she says of the order: kept or open. */
    public Optional<Order> order(String said) {
        return is(said, KEPT) ? facts().order() : Optional.empty();
    }

    /** What she says of the colours: kept (every way of colour that is true of this cloth), open, or ways. */
    public ColourRule colours(String said, String middle) {
        return new ColourRule(
                is(said, KEPT) ? ClothFacts.ways(cloth.cloth(), cloth.fabrics()) : ColourRule.parse(said),
                ColourRule.Middle.parse(middle));
    }

    /** Seam, hem and margins as in the cloth, with as many joins as it allowed or another number. */
    public Guideline.SewingRule sewing(Optional<Integer> mostJoins) {
        PiecingRules rules = cloth.rules();
        return new Guideline.SewingRule(
                cloth.cloth().making(),
                new PiecingRules(rules.leastPiece(), rules.clearance(), mostJoins.orElse(rules.mostJoins())));
    }

    private ClothFacts facts() {
        return ClothFacts.of(cloth.cloth());
    }

    private Ruler ruler() {
        return told.ruler();
    }

    private static boolean is(String said, String word) {
        return said.strip().toLowerCase(Locale.ROOT).equals(word);
    }
}
