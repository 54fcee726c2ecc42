package hearthcloth.plan.propose;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Size;
import hearthcloth.plan.colour.ColourGoal;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.Fitting;
import hearthcloth.plan.fit.Idea;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.parameter.ProposalParameters;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One cloth of a wished size from some pieces, searched briefly; for those who plan many cloths from one heap and ask again
 * and again. The same pieces, wish and depth give the same cloth.
 */
public final class ShortSearch {

    /** Steps of the search for each draft, as {@link Planner} first takes. */
    private final long steps = ProposalParameters.Effort.standard().firstSteps();

    private final Wish wish;
    private final Supply supply;
    private final List<Fabric> named;
    private final Drafts drafts;
    private final Comparator<DraftTrial> order;
    private final ColourGoal goal;
    private final boolean outwards;

    /** How far to look. */
    public enum Depth {
        /** The first cloth that is found with its hearth in the middle, fabrics anywhere. */
        PLAIN(12),
        /** The best of some. */
        SHORT(16),
        /** The best of as many as the planner tries at first. */
        LONG(96);

        private final int drafts;

        Depth(int drafts) {
            this.drafts = drafts;
        }
    }

    private ShortSearch(Stash stash, Wish wish, List<Fabric> named) {
        this.wish = wish;
        this.named = named;
        this.goal = ColourGoal.of(wish.preferences().looks());
        Stash chosen = named.isEmpty()
                ? stash
                : stash.only(named.stream().map(Fabric::name).toList());
        this.supply = new Supply(chosen);
        Optional<VisibleFabricSchemes> seen = wish.preferences()
                .outside()
                .flatMap(wished ->
                        chosen.fabric(wished.fabric()).map(fabric -> new VisibleFabricSchemes(goal, fabric, supply)));
        this.outwards = seen.isPresent();
        this.order = seen.map(VisibleFabricSchemes::order).orElse(DraftTrial.BEST);
        this.drafts = new Drafts(wish, supply, new LayoutCandidates(wish, chosen, Idea.none()), named, goal, seen);
    }

    /**
     * The best cloth found; empty where none is.
     *
     * @param wish with a size, or with hearth, bars and rounds that decide it
     * @param budget ends the search once a first cloth is found
     */
    public static Optional<Plan> of(Stash stash, Wish wish, Depth depth, Budget budget) {
        List<Fabric> named = new ArrayList<>();
        for (String name : wish.preferences().fabrics()) {
            stash.fabric(name).ifPresent(named::add);
        }
        boolean lacks = named.isEmpty() && !wish.preferences().fabrics().isEmpty();
        Optional<Fabric> shown = wish.preferences().outside().flatMap(seen -> stash.fabric(seen.fabric()));
        if (lacks || stash.pieces().isEmpty() || (wish.preferences().outside().isPresent() && shown.isEmpty())) {
            return Optional.empty();
        }
        shown.filter(fabric -> !named.isEmpty() && !named.contains(fabric)).ifPresent(named::add);
        ShortSearch search = new ShortSearch(stash, wish, List.copyOf(named));
        return search.best(depth, budget).map(search::told);
    }

    private Optional<DraftTrial> best(Depth depth, Budget budget) {
        List<DraftTrial> found = new ArrayList<>();
        List<Draft> promising = promising(depth);
        for (Draft draft : promising) {
            if (!found.isEmpty() && (depth == Depth.PLAIN ? isCentred(found) : budget.spent())) {
                break;
            }
            Fitting.fit(draft, supply, steps, wish.preferences().seed(), Budget.steps(steps))
                    .ifPresent(found::add);
        }
        found.sort(order);
        if (depth == Depth.PLAIN) {
            return found.stream()
                    .findFirst()
                    .map(trial -> TrialColours.exchanged(
                            trial.recut(), wish.preferences().seed(), goal));
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(finished(found));
    }

    /** Whether the last one found has its hearth in the middle, or where it was wished. */
    private boolean isCentred(List<DraftTrial> found) {
        return wish.shape().order().isPresent() || !found.get(found.size() - 1).isOffCentre();
    }

    private List<Draft> promising(Depth depth) {
        Optional<Size> size = wish.target().size();
        List<Draft> free =
                depth == Depth.PLAIN ? drafts.of(size, kind -> kind == Scheme.Kind.ALL, depth.drafts) : List.of();
        return free.isEmpty() ? drafts.of(size, depth.drafts) : free;
    }

    /** The first few, cut again, with their colours where they lie best, and of these the one most makers would take. */
    private DraftTrial finished(List<DraftTrial> found) {
        long seed = wish.preferences().seed();
        List<DraftTrial> few = new ArrayList<>();
        for (DraftTrial trial : found.subList(0, Math.min(3, found.size()))) {
            few.add(TrialColours.exchanged(trial.recut(), seed, goal));
        }
        if (outwards) {
            return few.stream().min(order).orElseThrow();
        }
        if (contrast().isSeen()) {
            few.addAll(new HearthSeen(supply, named, goal, steps, seed).of(few.get(0), Budget.steps(4 * steps)));
        }
        few.sort(order);
        return TrialColours.bestFirst(few, goal).get(0);
    }

    private Contrast contrast() {
        return goal.contrast();
    }

    private Plan told(DraftTrial trial) {
        return TrialColours.told(List.of(ProposalSelection.plan(trial)), List.of(trial), goal)
                .get(0);
    }
}
