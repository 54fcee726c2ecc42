package hearthcloth.plan.propose;

import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.colour.ColourFigures;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.Fitting;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The same layout again with a hearth that is seen: the bars that touch it only of fabrics it stands out from. What is
 * found beside the first is compared with it like any other; it may cost a cut or a join, and then says so.
 */
final class HearthSeen {

    /** Fabrics tried for the hearth. */
    private static final int MOST_HEARTHS = 4;

    private final Supply supply;
    private final List<Fabric> named;
    private final long steps;
    private final long seed;

    HearthSeen(Supply supply, List<Fabric> named, long steps, long seed) {
        this.supply = supply;
        this.named = named;
        this.steps = steps;
        this.seed = seed;
    }

    /** Ways with a hearth that stands out; none where it does already or no fabric allows it. */
    List<DraftTrial> of(DraftTrial trial, Budget budget) {
        List<DraftTrial> found = new ArrayList<>();
        if (TrialColours.figures(trial).hearth().standsOut() > 0.999) {
            return found;
        }
        List<Fabric> hearths = named.isEmpty() ? supply.fabrics() : named.subList(0, 1);
        int tried = 0;
        for (Fabric hearth : hearths) {
            boolean holds = supply.holds(hearth, trial.draft().shape().layout().hearth());
            if (holds && tried < MOST_HEARTHS && !budget.spent()) {
                tried += added(trial, hearth, budget, found) ? 1 : 0;
            }
        }
        return found;
    }

    private boolean added(DraftTrial trial, Fabric hearth, Budget budget, List<DraftTrial> found) {
        List<Fabric> able = named.isEmpty() ? supply.fabrics() : named;
        List<Fabric> rest =
                able.stream().filter(fabric -> !fabric.equals(hearth)).toList();
        List<Fabric> seen = rest.stream()
                .filter(fabric -> ColourFigures.standsOut(hearth.colour(), fabric.colour()))
                .toList();
        if (seen.isEmpty()) {
            return false;
        }
        Design was = trial.draft().design();
        Set<Side> touched = EnumSet.noneOf(Side.class);
        List<List<Fabric>> bars = new ArrayList<>();
        for (Layout.Slot slot : was.layout().slots()) {
            bars.add(touched.add(slot.place().side()) ? seen : rest);
        }
        Scheme scheme = new Scheme(Scheme.Kind.ALL, List.of(hearth), bars);
        Draft draft = new Draft(
                trial.draft().shape(), new Design(was.order(), was.layout(), scheme, was.making(), was.rules()));
        Fitting.fit(draft, supply, steps, seed, budget)
                .map(DraftTrial::recut)
                .map(one -> TrialColours.exchanged(one, seed))
                .ifPresent(found::add);
        return true;
    }
}
