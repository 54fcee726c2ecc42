package hearthcloth.plan.propose;

import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.colour.ColourFigures;
import hearthcloth.plan.colour.ColourGoal;
import hearthcloth.plan.colour.ScatteredBars;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.Fitting;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.parameter.ProposalParameters;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The same layout again with a hearth that is seen: the bars that touch it only of fabrics it stands out from. What is
 * found beside the first is compared with it like any other; it may cost a cut or a join, and then says so.
 */
final class HearthSeen {

    /** Less than this is amiss in colours that lie well, in millimetres of edge. */
    static final double LITTLE = ProposalParameters.standard().hearth().little();

    private final Supply supply;
    private final List<Fabric> named;
    private final ColourGoal goal;
    private final long steps;
    private final long seed;

    HearthSeen(Supply supply, List<Fabric> named, ColourGoal goal, long steps, long seed) {
        this.goal = goal.with(Contrast.READS);
        this.supply = supply;
        this.named = named;
        this.steps = steps;
        this.seed = seed;
    }

    /** Ways with a hearth that stands out; none where it does already or no fabric allows it. */
    List<DraftTrial> of(DraftTrial trial, Budget budget) {
        List<DraftTrial> found = new ArrayList<>();
        if (TrialColours.figures(trial).hearth().standsOut() > 0.999) {
            return scattered(trial, budget);
        }
        for (Fabric hearth : hearths(trial)) {
            if (!budget.spent() && !isFound(found, trial)) {
                add(trial, hearth, budget, found);
            }
        }
        return found;
    }

    /** Whether one of them costs hardly more than the trial itself, so that it can come first in its place. */
    private static boolean isFound(List<DraftTrial> found, DraftTrial trial) {
        return found.stream()
                .anyMatch(one -> one.figures().joins() <= trial.figures().joins()
                        && one.figures().cuts() <= TrialColours.mostCuts(trial)
                        && TrialColours.figures(one).hearth().standsOut() > 0.999);
    }

    /** Those a piece of which is large enough and that stand out from some other fabric. */
    private List<Fabric> hearths(DraftTrial trial) {
        List<Fabric> able = named.isEmpty() ? supply.fabrics() : named.subList(0, 1);
        return able.stream()
                .filter(hearth ->
                        supply.holds(hearth, trial.draft().shape().layout().hearth()))
                .filter(hearth -> !seen(hearth).isEmpty())
                .limit(ProposalParameters.standard().hearth().tried())
                .toList();
    }

    /** The fabrics that a hearth stands out from. */
    private List<Fabric> seen(Fabric hearth) {
        return (named.isEmpty() ? supply.fabrics() : named)
                .stream()
                        .filter(fabric -> ColourFigures.standsOut(hearth, fabric))
                        .toList();
    }

    /** The same layout and hearth with a fabric chosen for each bar before it is cut; none where little is amiss. */
    private List<DraftTrial> scattered(DraftTrial trial, Budget budget) {
        if (TrialColours.figures(trial).amissMm() < LITTLE
                || trial.draft().scheme().kind().isOfAreas()) {
            return List.of();
        }
        String hearth = TrialColours.hearth(trial);
        List<Fabric> able = named.isEmpty() ? supply.fabrics() : named;
        List<Fabric> own =
                able.stream().filter(fabric -> fabric.name().equals(hearth)).toList();
        List<Fabric> rest =
                able.stream().filter(fabric -> !fabric.name().equals(hearth)).toList();
        Design was = trial.draft().design();
        List<List<Fabric>> bars = Collections.nCopies(was.layout().slots().size(), rest);
        if (rest.isEmpty() || own.isEmpty()) {
            return List.of();
        }
        return ScatteredBars.of(with(was, new Scheme(Scheme.Kind.ALL, own, bars)), supply, rest, goal)
                .flatMap(scheme -> found(trial, scheme, budget))
                .stream()
                .toList();
    }

    private static Design with(Design was, Scheme scheme) {
        return new Design(was.order(), was.layout(), scheme, was.making(), was.rules());
    }

    private Optional<DraftTrial> found(DraftTrial trial, Scheme scheme, Budget budget) {
        Draft draft = new Draft(trial.draft().shape(), with(trial.draft().design(), scheme));
        return Fitting.fit(draft, supply, steps, seed, budget)
                .map(DraftTrial::recut)
                .map(one -> TrialColours.exchanged(one, seed, goal));
    }

    private void add(DraftTrial trial, Fabric hearth, Budget budget, List<DraftTrial> found) {
        List<Fabric> able = named.isEmpty() ? supply.fabrics() : named;
        List<Fabric> rest =
                able.stream().filter(fabric -> !fabric.equals(hearth)).toList();
        List<Fabric> seen = seen(hearth);
        Design was = trial.draft().design();
        Set<Side> touched = EnumSet.noneOf(Side.class);
        List<List<Fabric>> bars = new ArrayList<>();
        for (Layout.Slot slot : was.layout().slots()) {
            bars.add(touched.add(slot.place().side()) ? seen : rest);
        }
        Scheme scheme = new Scheme(Scheme.Kind.ALL, List.of(hearth), bars);
        found(trial, scheme, budget).ifPresent(one -> {
            found.add(one);
            if (one.figures().joins() <= trial.figures().joins()) {
                found.addAll(scattered(one, budget));
            }
        });
    }
}
