package hearthcloth.plan.propose;

import hearthcloth.plan.colour.ColourExchange;
import hearthcloth.plan.colour.ColourFigures;
import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Colour among what was found: exchanged at no loss, named only by what is true, and the one to take first. */
final class TrialColours {

    /** Exchanges looked at for each cloth: some milliseconds. */
    private static final int LOOKS = 1500;

    /** The share of cuts that the first may have more than the fewest, if its hearth then stands out. */
    private static final double MORE_CUTS = 0.1;

    private TrialColours() {}

    /** The same cuts and joins with the colours where they lie best, under a name that is then true. */
    static DraftTrial exchanged(DraftTrial trial, long seed) {
        DraftTrial better = trial.answered(ColourExchange.of(trial.answer(), LOOKS, seed));
        Scheme scheme = better.draft().scheme();
        boolean isTrue = SchemeRule.holds(scheme.kind(), better.cloth(), fabrics(better));
        return isTrue ? better : renamed(better, new Scheme(Scheme.Kind.FALLS, scheme.hearth(), scheme.bars()));
    }

    private static DraftTrial renamed(DraftTrial trial, Scheme scheme) {
        Design was = trial.draft().design();
        Design design = new Design(was.order(), was.layout(), scheme, was.making(), was.rules());
        return new DraftTrial(new Draft(trial.draft().shape(), design), trial.answer(), trial.bound());
    }

    /**
     * The same trials with the one first that most makers would take: of those with as few joins as the best, the
     * hearth as much in the middle and hardly more cuts, the one whose hearth stands out most and whose colours have
     * least amiss.
     */
    static List<DraftTrial> bestFirst(List<DraftTrial> sorted) {
        if (sorted.isEmpty()) {
            return sorted;
        }
        DraftTrial best = sorted.get(0);
        double most =
                best.figures().cuts() + Math.max(2, MORE_CUTS * best.figures().cuts());
        DraftTrial first = sorted.stream()
                .filter(trial -> trial.figures().joins() == best.figures().joins()
                        && trial.isOffCentre() == best.isOffCentre()
                        && isAsLarge(trial, best)
                        && trial.figures().cuts() <= most)
                .min(Comparator.comparingDouble(trial -> figures(trial).amissMm()))
                .orElse(best);
        List<DraftTrial> all = new ArrayList<>(sorted);
        all.remove(first);
        all.add(0, first);
        return all;
    }

    private static boolean isAsLarge(DraftTrial trial, DraftTrial best) {
        double one = trial.draft().shape().finished().areaMm2();
        return one >= 0.98 * best.draft().shape().finished().areaMm2();
    }

    /** The plans, each saying what its colours do; the first also what it costs to put it first. */
    static List<Plan> told(List<Plan> plans, List<DraftTrial> trials) {
        DraftTrial first = trials.get(0);
        int fewest = trials.stream()
                .filter(trial -> trial.figures().joins() == first.figures().joins()
                        && trial.isOffCentre() == first.isOffCentre())
                .mapToInt(trial -> trial.figures().cuts())
                .min()
                .orElse(0);
        List<Plan> told = new ArrayList<>();
        for (Plan plan : plans) {
            String colours = ColourFigures.of(plan.cloth(), plan.fabrics()).sentence();
            int more = plan.figures().cuts() - fewest;
            String price = told.isEmpty() && more > 0
                    ? " " + (more == 1 ? "One cut" : more + " cuts")
                            + " more than the least that was found, for its colours."
                    : "";
            told.add(plan.told(plan.story().goodAt(plan.story().goodAt() + " " + colours + price)));
        }
        return told;
    }

    static ColourFigures figures(DraftTrial trial) {
        return ColourFigures.of(trial.cloth(), fabrics(trial));
    }

    private static List<Fabric> fabrics(DraftTrial trial) {
        return trial.answer().used().stream().map(Piece::fabric).distinct().toList();
    }
}
