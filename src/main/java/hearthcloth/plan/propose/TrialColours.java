package hearthcloth.plan.propose;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.colour.ColourExchange;
import hearthcloth.plan.colour.ColourFigures;
import hearthcloth.plan.colour.ColourGoal;
import hearthcloth.plan.colour.ColourWords;
import hearthcloth.plan.colour.LeastAmiss;
import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.colour.TurnedPatches;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.parameter.ProposalParameters;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Colour among what was found: exchanged at no loss, named only by what is true, and the one to take first. */
final class TrialColours {

    private static final ProposalParameters.Hearth HEARTH =
            ProposalParameters.standard().hearth();

    private static final ProposalParameters.Gallery GALLERY =
            ProposalParameters.standard().gallery();

    private TrialColours() {}

    /** The same cuts and joins with the colours where they lie best, under a name that is then true. */
    static DraftTrial exchanged(DraftTrial trial, long seed, ColourGoal goal) {
        int looks = goal.parameters().search().exchanged();
        DraftTrial better =
                trial.answered(TurnedPatches.of(ColourExchange.of(trial.answer(), looks, seed, goal), goal));
        Scheme scheme = better.draft().scheme();
        return isTrue(better) ? better : renamed(better, new Scheme(Scheme.Kind.FALLS, scheme.hearth(), scheme.bars()));
    }

    /** Whether the name of its plan of colour is true. */
    static boolean isTrue(DraftTrial trial) {
        return SchemeRule.holds(trial.draft().scheme().kind(), trial.cloth(), fabrics(trial));
    }

    /** Whether the name of the plan of colour that is mixed in is true too. */
    static boolean isAlso(DraftTrial trial, Optional<Scheme.Kind> with) {
        return with.isEmpty() || SchemeRule.holds(with.get(), trial.cloth(), fabrics(trial));
    }

    private static DraftTrial renamed(DraftTrial trial, Scheme scheme) {
        Design was = trial.draft().design();
        Design design = new Design(was.order(), was.layout(), scheme, was.making(), was.rules());
        return new DraftTrial(new Draft(trial.draft().shape(), design), trial.answer(), trial.bound());
    }

    /**
     * The same trials with the one first that most makers would take: of those with as few joins as the best, the
     * hearth as much in the middle and hardly more cuts, the one whose hearth stands out most and whose colours have
     * least amiss. Where none of these has a hearth that stands out all round, one that has may take more cuts.
     */
    static List<DraftTrial> bestFirst(List<DraftTrial> sorted, ColourGoal goal) {
        if (sorted.isEmpty()) {
            return sorted;
        }
        DraftTrial best = sorted.get(0);
        List<DraftTrial> able = sorted.stream()
                .filter(trial -> trial.figures().joins() == best.figures().joins()
                        && trial.isOffCentre() == best.isOffCentre()
                        && isAsLarge(trial, best))
                .toList();
        List<DraftTrial> quick = able.stream()
                .filter(trial -> trial.figures().cuts() <= mostCuts(best))
                .toList();
        List<DraftTrial> whole =
                able.stream().filter(TrialColours::isWhollySeen).toList();
        DraftTrial first = whole.isEmpty() || quick.stream().anyMatch(TrialColours::isWhollySeen)
                ? sorted(quick, trial -> amissMm(trial, goal)).get(0)
                : sorted(
                                whole,
                                trial -> amissMm(trial, goal)
                                        + trial.figures().cuts()
                                                * GALLERY.worth().mmOfCut())
                        .get(0);
        List<DraftTrial> all = new ArrayList<>(sorted);
        all.remove(first);
        all.add(0, first);
        return all;
    }

    /**
     * What a trial costs, in joins: a metre of edge that is amiss in its colours counts like one, so do twenty cuts or three bars of
     * chance mixtures; a fabric that meets itself is not amiss where the plan of colour means it to, but half so in one whole field, which shows least of
     * what the heap has; a plan of colour that the heap is good for makes up for a join. The weights are ours.
     *
     * @param worth how good the heap is for a plan of colour, from 0 to 1
     */
    static double byEye(DraftTrial trial, ColourGoal goal, ToDoubleFunction<Scheme.Kind> worth) {
        return trial.figures().joins()
                + trial.figures().cuts() / GALLERY.worth().cuts()
                + figures(trial).mixedBars() / GALLERY.worth().mixedBars()
                + unwantedMm(trial, goal) / GALLERY.worth().amissMm()
                - worth.applyAsDouble(trial.draft().scheme().kind());
    }

    /** Sorted by what is worked out once of each; equals stay as they were. */
    private static List<DraftTrial> sorted(List<DraftTrial> trials, ToDoubleFunction<DraftTrial> key) {
        record Keyed(DraftTrial trial, double key) {}
        return trials.stream()
                .map(trial -> new Keyed(trial, key.applyAsDouble(trial)))
                .sorted(Comparator.comparingDouble(Keyed::key))
                .map(Keyed::trial)
                .toList();
    }

    private static double amissMm(DraftTrial trial, ColourGoal goal) {
        return goal.amissMm(trial.cloth(), fabrics(trial));
    }

    /** Whether most of the hearth's edge stands out. */
    static boolean isSeen(DraftTrial trial) {
        return figures(trial).hearth().standsOut() >= HEARTH.seen();
    }

    private static boolean isWhollySeen(DraftTrial trial) {
        return figures(trial).hearth().standsOut() > 0.999;
    }

    private static double unwantedMm(DraftTrial trial, ColourGoal goal) {
        Scheme.Kind kind = trial.draft().scheme().kind();
        if (!kind.isOfAreas()) {
            return amissMm(trial, goal);
        }
        ColourFigures figures = figures(trial);
        double plain = kind == Scheme.Kind.FIELD ? figures.neighbours().sameMm() / 2 : 0;
        return figures.hearthAmissMm(goal.contrast()) + plain;
    }

    /** The most cuts the first may have where this has the fewest. */
    static double mostCuts(DraftTrial fewest) {
        return fewest.figures().cuts()
                + Math.max(
                        HEARTH.fewMore(), HEARTH.moreCuts() * fewest.figures().cuts());
    }

    private static boolean isAsLarge(DraftTrial trial, DraftTrial best) {
        double one = trial.draft().shape().finished().areaMm2();
        return one >= GALLERY.asLarge() * best.draft().shape().finished().areaMm2();
    }

    /** The plans, each saying what its colours do; the first also what it costs to put it first. */
    static List<Plan> told(List<Plan> plans, List<DraftTrial> trials, ColourGoal goal) {
        DraftTrial first = trials.get(0);
        int fewest = trials.stream()
                .filter(trial -> trial.figures().joins() == first.figures().joins()
                        && trial.isOffCentre() == first.isOffCentre())
                .mapToInt(trial -> trial.figures().cuts())
                .min()
                .orElse(0);
        List<Plan> told = new ArrayList<>();
        for (Plan plan : plans) {
            Sentence price = told.isEmpty() && first.figures().cuts() > fewest
                    ? PlanningSentences.colourPrice(first.figures().cuts() - fewest)
                    : Sentence.none();
            Plan.Story story = plan.story();
            for (Sentence colours : ColourWords.of(
                    plan.cloth(), plan.fabrics(), goal.tied(plan.cloth().finished()))) {
                story = story.alsoGoodAt(colours);
            }
            told.add(plan.told(story.alsoGoodAt(price)));
        }
        return told;
    }

    /** The plan with how sure it is that its colours lie best, where each bar is of one fabric and none beside itself. */
    static Plan proven(Plan plan, Supply supply, ColourGoal goal) {
        if (!SchemeRule.holds(Scheme.Kind.SCATTERED, plan.cloth(), plan.fabrics())) {
            return plan;
        }
        LeastAmiss least = LeastAmiss.of(plan.cloth(), supply, goal);
        Length better = new Length(Math.round((least.amissMm() - least.boundMm()) * 1e6));
        return plan.told(plan.story()
                .alsoGoodAt(
                        least.isProven()
                                ? PlanningSentences.colourProven()
                                : PlanningSentences.colourCouldLie(Argument.of(better, Rounding.UP))));
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
