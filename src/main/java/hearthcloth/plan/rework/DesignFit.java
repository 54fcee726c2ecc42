package hearthcloth.plan.rework;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.colour.ColourGoal;
import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.colour.TurnedPatches;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.Fitting;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.propose.ChosenBars;
import hearthcloth.plan.propose.DraftScore;
import hearthcloth.plan.propose.Remedy;
import hearthcloth.plan.propose.Schemes;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Fits a design decided by hand to a stash: which piece gives what, or what is short. The same call gives the same
 * answer.
 */
public final class DesignFit {

    /** Steps of the search. */
    private static final long STEPS = 240;
    /** Plans of colour tried for another one. */
    private static final int TRIES = 16;

    private final Supply supply;

    public DesignFit(Stash stash) {
        this.supply = new Supply(stash);
    }

    /** The result of fitting. */
    public sealed interface Answer {

        /** The design can be cut. */
        record Made(Plan plan) implements Answer {}

        /** The sentences say what is short; {@code proven} where no plan can do it. */
        record Lacking(List<Sentence> why, boolean proven) implements Answer {
            public Lacking {
                why = List.copyOf(why);
            }
        }
    }

    /**
     * What is left as it is.
     *
     * @param bars by number in sewing order
     */
    public record Stays(Set<Integer> bars, boolean hearth) {}

    /** How the colours are to lie. */
    public record Wished(Optional<Scheme.Kind> scheme, Contrast contrast) {

        boolean isTrue(Cloth cloth, List<Fabric> fabrics) {
            return scheme.isEmpty() || SchemeRule.holds(scheme.get(), cloth, fabrics);
        }
    }

    /** The cloth with every bar in one piece, to be shown before it can be cut. */
    public static Cloth unfitted(Design design) {
        return design.whole();
    }

    /**
     * Fits a design.
     *
     * @param title the title of the plan
     * @param budget ends the search early
     */
    public Answer fit(Design design, Sentence title, Budget budget) {
        Optional<DraftTrial> trial = Fitting.fit(draft(design), supply, STEPS, 1, budget);
        if (trial.isEmpty()) {
            return new Answer.Lacking(Remedy.of(draft(design), supply, STEPS, budget), false);
        }
        return new Answer.Made(plan(trial.get(), title));
    }

    /** The plan for a design, where the search finds one; without asking what would help where it does not. */
    public Optional<Plan> find(Design design, Sentence title, Budget budget) {
        return Fitting.fit(draft(design), supply, STEPS, 1, budget).map(trial -> plan(trial, title));
    }

    /**
     * Plans the colours again and leaves the given bars as they are: the best of the plans of colour that look
     * different from now. With the next {@code turn}, the next best.
     *
     * @param stays what is left as it is
     * @param wished the plan of colour; empty where any may be
     */
    public Optional<Design> again(Design design, Stays stays, Wished wished, int turn, Budget budget) {
        DraftScore judgement = new DraftScore(supply, design.making());
        Map<Design, Double> costs = new LinkedHashMap<>();
        for (Scheme scheme : schemes(design, wished)) {
            Design other = overlaid(design, scheme, stays);
            if (!other.scheme().equals(design.scheme())) {
                judgement
                        .judged(draft(other))
                        .ifPresent(judged -> costs.put(other, judged.joins() + judged.tightness()));
            }
        }
        List<Design> promising = costs.entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .limit(TRIES)
                .toList();
        List<DraftTrial> trials = new ArrayList<>();
        for (Design other : promising) {
            Fitting.fit(draft(other), supply, STEPS, 1, budget)
                    .filter(trial -> wished.isTrue(trial.cloth(), supply.fabrics()))
                    .ifPresent(trials::add);
        }
        trials.sort(DraftTrial.BEST);
        return trials.isEmpty()
                ? Optional.empty()
                : Optional.of(chosen(design, wished, trials.get(Math.floorMod(turn, trials.size()))));
    }

    /** The plans of colour to try: those that divide the fabrics, and those that choose one for each bar. */
    private List<Scheme> schemes(Design design, Wished wished) {
        List<Scheme> all = new Schemes(supply, List.of(), wished.contrast).forLayout(design.layout());
        ChosenBars chosen = new ChosenBars(supply, ColourGoal.flat(wished.contrast));
        List<Scheme> found = new ArrayList<>();
        for (Scheme scheme : all) {
            if (wished.scheme.isEmpty() || wished.scheme.get() == scheme.kind()) {
                found.add(scheme);
            }
            if (scheme.kind() == Scheme.Kind.ALL && scheme.hearth().size() == 1) {
                Design free = new Design(design.order(), design.layout(), scheme, design.making(), design.rules());
                chosen.of(free, kind -> wished.scheme.isEmpty() || wished.scheme.get() == kind)
                        .forEach(one -> found.add(one.scheme()));
            }
        }
        return found;
    }

    /** The design tried; where a plan of colour is wished, each bar of the fabric it was found to be true with. */
    private Design chosen(Design design, Wished wished, DraftTrial trial) {
        if (wished.scheme.isEmpty()) {
            return trial.draft().design();
        }
        Scheme found = DesignEdits.settled(plan(trial, Sentence.none()), design.order())
                .scheme();
        return new Design(design.order(), design.layout(), found, design.making(), design.rules());
    }

    private static Design overlaid(Design design, Scheme scheme, Stays stays) {
        List<List<Fabric>> bars = new ArrayList<>();
        for (int i = 0; i < scheme.bars().size(); i++) {
            bars.add((stays.bars.contains(i) ? design.scheme() : scheme).bars().get(i));
        }
        List<Fabric> hearth = (stays.hearth ? design.scheme() : scheme).hearth();
        return new Design(
                design.order(),
                design.layout(),
                new Scheme(Scheme.Kind.OWN, hearth, bars),
                design.making(),
                design.rules());
    }

    private static Draft draft(Design design) {
        int rounds = design.layout().slots().stream()
                .map(Layout.Slot::place)
                .map(place -> place.round())
                .max(Comparator.naturalOrder())
                .orElse(0);
        return new Draft(new LayoutCandidate(design.order(), rounds, design.layout(), List.of()), design);
    }

    private static Plan plan(DraftTrial trial, Sentence title) {
        Plan.Story story = new Plan.Story(
                title,
                PlanningSentences.chosenByHand(),
                List.of(),
                new Stash(trial.answer().used()).washingCaution().stream().toList());
        return TurnedPatches.of(trial.answer(), ColourGoal.flat(Contrast.READS)).plan(story, trial.bound());
    }
}
