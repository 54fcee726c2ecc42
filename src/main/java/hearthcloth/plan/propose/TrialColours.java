package hearthcloth.plan.propose;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.colour.ColourExchange;
import hearthcloth.plan.colour.ColourFigures;
import hearthcloth.plan.colour.LeastAmiss;
import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Planning;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Colour among what was found: exchanged at no loss, named only by what is true, and the one to take first. */
final class TrialColours {

    /** Exchanges looked at for each cloth: some milliseconds. */
    private static final int LOOKS = 1500;

    /** The share of cuts that the first may have more than the fewest, if its hearth then stands out. */
    private static final double MORE_CUTS = 0.1;

    /** The least share of its edge at which a hearth is seen (ours: docs/sources.md#colour-figures). */
    private static final double SEEN = 0.8;

    private TrialColours() {}

    /** The same cuts and joins with the colours where they lie best, under a name that is then true. */
    static DraftTrial exchanged(DraftTrial trial, long seed, Contrast wanted) {
        DraftTrial better = trial.answered(ColourExchange.of(trial.answer(), LOOKS, seed, wanted));
        Scheme scheme = better.draft().scheme();
        return isTrue(better) ? better : renamed(better, new Scheme(Scheme.Kind.FALLS, scheme.hearth(), scheme.bars()));
    }

    /** Whether the name of its plan of colour is true. */
    static boolean isTrue(DraftTrial trial) {
        return SchemeRule.holds(trial.draft().scheme().kind(), trial.cloth(), fabrics(trial));
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
    static List<DraftTrial> bestFirst(List<DraftTrial> sorted, Contrast wanted) {
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
                .min(Comparator.comparingDouble(trial -> figures(trial).amissMm(wanted)))
                .orElse(best);
        List<DraftTrial> all = new ArrayList<>(sorted);
        all.remove(first);
        all.add(0, first);
        return all;
    }

    /**
     * The same trials by joins and by what is amiss in their colours, a metre of edge like a join; a fabric that meets
     * itself is not amiss where the plan of colour means it to, but half so in one whole field, which shows least of
     * what the heap has. The weights are ours.
     */
    static List<DraftTrial> byEye(List<DraftTrial> trials, Contrast wanted) {
        return trials.stream()
                .sorted(Comparator.comparingDouble(trial -> trial.figures().joins() + unwantedMm(trial, wanted) / 1000))
                .toList();
    }

    /** Whether most of the hearth's edge stands out. */
    static boolean isSeen(DraftTrial trial) {
        return figures(trial).hearth().standsOut() >= SEEN;
    }

    private static double unwantedMm(DraftTrial trial, Contrast wanted) {
        ColourFigures figures = figures(trial);
        Scheme.Kind kind = trial.draft().scheme().kind();
        double plain = kind == Scheme.Kind.FIELD ? figures.neighbours().sameMm() / 2 : 0;
        return kind.isOfAreas() ? figures.hearthAmissMm(wanted) + plain : figures.amissMm(wanted);
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
            Sentence colours = ColourFigures.of(plan.cloth(), plan.fabrics()).sentence();
            int more = plan.figures().cuts() - fewest;
            Sentence price = told.isEmpty() && more > 0 ? Planning.colourPrice(more) : Sentence.none();
            told.add(plan.told(plan.story().alsoGoodAt(colours).alsoGoodAt(price)));
        }
        return told;
    }

    /** The plan with how sure it is that its colours lie best, where each bar is of one fabric and none beside itself. */
    static Plan proven(Plan plan, Supply supply, Contrast wanted) {
        if (!SchemeRule.holds(Scheme.Kind.SCATTERED, plan.cloth(), plan.fabrics())) {
            return plan;
        }
        LeastAmiss least = LeastAmiss.of(plan.cloth(), supply, wanted);
        Length better = new Length(Math.round((least.amissMm() - least.boundMm()) * 1e6));
        return plan.told(plan.story()
                .alsoGoodAt(
                        least.isProven()
                                ? Planning.colourProven()
                                : Planning.colourCouldLie(Argument.of(better, Rounding.UP))));
    }

    static ColourFigures figures(DraftTrial trial) {
        return ColourFigures.of(trial.cloth(), fabrics(trial));
    }

    /** The fabric its hearth is of. */
    static String hearth(DraftTrial trial) {
        return trial.cloth().patches().stream()
                .filter(patch -> patch.place() instanceof Place.Hearth)
                .map(Patch::fabric)
                .findFirst()
                .orElseThrow();
    }

    private static List<Fabric> fabrics(DraftTrial trial) {
        return trial.answer().used().stream().map(Piece::fabric).distinct().toList();
    }
}
