package hearthcloth.plan.propose;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.Fitting;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.PlanProgress;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * From a wish and a stash to proposals. Every layout and plan of colour worth trying is estimated quickly; the
 * promising ones are searched, all of them briefly and the best of them longer; and what is found is built as an
 * ordinary cloth and checked by its folds. The same stash, wish and step budget give the same proposals.
 *
 * <p>Want of time alone is never an answer. Until a first cloth is found, work is counted in drafts and steps and the
 * budget is not asked; from then on the budget decides how long it is improved. So a spent budget gives a plain cloth,
 * and "no way was found" means the same on a busy machine as on an idle one.
 */
public final class Planner {

    /** Drafts that are searched for a wished size. */
    private static final int FIRST_TRIES = 96;
    /** Drafts that are searched to learn whether a size can be made at all. */
    private static final int QUICK_TRIES = 24;

    /** Drafts for each of two sizes. */
    private static final int HALF_TRIES = FIRST_TRIES / 2;

    /** Steps of the search for each draft. */
    private static final long FIRST_STEPS = 60;

    private final Wish wish;
    private final Supply supply;
    private final LayoutCandidates shapes;
    private final Drafts drafts;
    private final Stash stash;
    private final List<Fabric> named;
    private final SearchWork work;
    private final Optional<VisibleFabricSchemes> outwards;
    private final Comparator<DraftTrial> order;

    private Planner(Stash stash, Wish wish, List<Fabric> named, SearchWork work) {
        this.wish = wish;
        this.named = named;
        this.stash = named.isEmpty()
                ? stash
                : stash.only(named.stream().map(Fabric::name).toList());
        this.supply = new Supply(this.stash);
        this.shapes = new LayoutCandidates(wish, this.stash);
        this.outwards = wish.preferences()
                .outside()
                .flatMap(wished ->
                        this.stash.fabric(wished.fabric()).map(seen -> new VisibleFabricSchemes(wished, seen, supply)));
        this.order = outwards.map(VisibleFabricSchemes::order).orElse(DraftTrial.BEST);
        this.drafts = new Drafts(wish, supply, shapes, named, outwards);
        this.work = work;
    }

    /**
     * Plans cloths.
     *
     * @param effort how long the best drafts are searched, 1 and more; each unit is about half a second on an ordinary
     *     machine, but it is counted in steps, so that the same effort gives the same proposals everywhere
     * @param budget ends the search early, but not before a first cloth is found or every draft was tried; the best so
     *     far is returned
     * @param seen receives how far the search has come, on the calling thread
     */
    public static PlanOutcome plan(Stash stash, Wish wish, int effort, Budget budget, Consumer<PlanProgress> seen) {
        List<Fabric> named = new ArrayList<>();
        for (String name : wish.preferences().fabrics()) {
            Optional<Fabric> fabric = stash.fabric(name);
            if (fabric.isEmpty()) {
                return new PlanOutcome.CannotMake(true, List.of(noFabric(name, stash)), List.of());
            }
            named.add(fabric.get());
        }
        Optional<String> outside = wish.preferences().outside().map(Wish.Outside::fabric);
        Optional<Fabric> shown = outside.flatMap(stash::fabric);
        if (outside.isPresent() && shown.isEmpty()) {
            return new PlanOutcome.CannotMake(true, List.of(noFabric(outside.get(), stash)), List.of());
        }
        shown.filter(fabric -> !named.isEmpty() && !named.contains(fabric)).ifPresent(named::add);
        if (stash.pieces().isEmpty()) {
            return new PlanOutcome.CannotMake(true, List.of("The stash is empty; add at least one piece."), List.of());
        }
        return new Planner(stash, wish, List.copyOf(named), new SearchWork(effort, budget, seen)).outcome();
    }

    private static String noFabric(String name, Stash stash) {
        return "No fabric in the stash is called \"" + name + "\"; there are "
                + String.join(", ", stash.fabrics().stream().map(Fabric::name).toList()) + ".";
    }

    private PlanOutcome outcome() {
        Optional<Size> size = wish.target().size();
        if (size.isEmpty() && !isSizedByShape()) {
            return anySize();
        }
        List<DraftTrial> trials = tryAt(size, FIRST_TRIES);
        if (!trials.isEmpty()) {
            return new PlanOutcome.Proposals(proposals(trials));
        }
        Shortfall.Reasons reasons = new Shortfall(wish, stash).reasons(size, shapes.forSize(size));
        List<String> why = reasons.why().isEmpty() ? closest(size) : reasons.why();
        return new PlanOutcome.CannotMake(reasons.proven(), why, nearest(size));
    }

    /**
     * The proposals. Where a fabric is wished to the outside, the one that shows most of it comes first, and each says
     * how much it shows.
     */
    private List<Plan> proposals(List<DraftTrial> trials) {
        if (outwards.isEmpty()) {
            return TrialColours.told(ProposalSelection.of(trials.subList(0, 1), trials, wish, order), trials);
        }
        VisibleFabricSchemes seen = outwards.get();
        return ProposalSelection.of(trials.subList(0, 1), trials, wish, order).stream()
                .map(plan -> plan.told(plan.story().goodAt(plan.story().goodAt() + " " + seen.sentence(plan.cloth()))))
                .toList();
    }

    /**
     * Proposals where no size was wished: as large as the stash allows, and one of three quarters of that, which needs
     * fewer joins.
     */
    private PlanOutcome anySize() {
        Length step = step(wish.preferences().ruler());
        Optional<DraftTrial> made = largest(Size.square(step));
        if (made.isEmpty()) {
            Shortfall.Reasons reasons =
                    new Shortfall(wish, stash).reasons(Optional.empty(), shapes.forSize(Optional.empty()));
            return new PlanOutcome.CannotMake(reasons.proven(), reasons.why(), List.of());
        }
        Size largest = made.get().draft().shape().finished();
        Length smaller = step.times(largest.width().nm() * 3 / 4 / step.nm());
        List<DraftTrial> trials = new ArrayList<>(atLargest(made.get()));
        List<DraftTrial> largestFirst = trials.subList(0, 1);
        List<DraftTrial> both = new ArrayList<>(tryAt(Optional.of(Size.square(smaller)), HALF_TRIES));
        both.addAll(trials);
        both.sort(order);
        List<Plan> plans = new ArrayList<>(ProposalSelection.of(largestFirst, both, wish, order));
        plans.replaceAll(plan -> plan.cloth().finished().equals(largest)
                ? plan.told(plan.story().chosenFirst(LargestCloth.howSure(stash, wish, largest.width())))
                : plan);
        return new PlanOutcome.Proposals(plans);
    }

    /** The largest cloth in the proportions of {@code shape}, as it was first made. */
    private Optional<DraftTrial> largest(Size shape) {
        List<DraftTrial> made = new ArrayList<>();
        LargestCloth.of(shape, step(wish.preferences().ruler()), stash.areaMm2(), size -> {
            Optional<DraftTrial> trial = made(Optional.of(size), !made.isEmpty());
            trial.ifPresent(made::add);
            return trial.isPresent();
        });
        return made.isEmpty() ? Optional.empty() : Optional.of(made.get(made.size() - 1));
    }

    /** What else can be made as large as {@code made}, which is at least that one, best first. */
    private List<DraftTrial> atLargest(DraftTrial made) {
        List<DraftTrial> trials = tryAt(Optional.of(made.draft().shape().finished()), HALF_TRIES);
        return trials.isEmpty() ? improved(List.of(made)) : trials;
    }

    /**
     * The nearest cloths that the stash makes: the same wish smaller, or else with hearth, bars and rounds left open.
     */
    private List<Plan> nearest(Optional<Size> size) {
        Size shape = size.orElse(Size.square(step(wish.preferences().ruler())));
        for (Wish asked : List.of(wish.withRoundsOpen(), wish.withShapeOpen())) {
            Planner smaller = new Planner(stash, asked, named, work.withoutPlans());
            Optional<DraftTrial> largest = smaller.largest(shape);
            if (largest.isPresent()) {
                return ProposalSelection.of(smaller.atLargest(largest.get()), asked)
                        .subList(0, 1);
            }
        }
        return List.of();
    }

    /**
     * A cloth of this size, tried with the freest plan of colour, which includes all others; what is made is handed out
     * at once.
     *
     * @param found whether some cloth was found before, so that the budget counts
     */
    private Optional<DraftTrial> made(Optional<Size> size, boolean found) {
        List<Draft> free = drafts.of(size, kind -> kind == Scheme.Kind.ALL, QUICK_TRIES);
        List<Draft> promising = free.isEmpty() ? drafts.of(size, QUICK_TRIES) : free;
        for (int i = 0; i < promising.size() && !work.isOver(found); i++) {
            Optional<DraftTrial> trial = Fitting.fit(
                    promising.get(i), supply, FIRST_STEPS, wish.preferences().seed(), work.once(found));
            if (trial.isPresent()) {
                work.seen().accept(new PlanProgress(i + 1, promising.size(), 1, trial.map(ProposalSelection::plan)));
                return trial;
            }
        }
        return Optional.empty();
    }

    /** What the most promising draft still lacks. */
    private List<String> closest(Optional<Size> size) {
        return drafts.of(size, 1).stream()
                .findFirst()
                .map(draft -> Remedy.of(
                        draft, supply, work.laterSteps(), wish.preferences().ruler(), work.once(false)))
                .orElseGet(() -> List.of(drafts.thrift(size)));
    }

    /** Whether hearth, widths and rounds are all wished, so that they decide how large the cloth is. */
    private boolean isSizedByShape() {
        return wish.shape().hearth().isPresent()
                && !wish.shape().bars().isEmpty()
                && wish.shape().rounds().isPresent();
    }

    /** Everything the stash makes at this size, best first. */
    private List<DraftTrial> tryAt(Optional<Size> size, int most) {
        List<Draft> promising = drafts.of(size, most);
        List<DraftTrial> found = new ArrayList<>();
        Optional<DraftTrial> best = Optional.empty();
        int tried = 0;
        for (Draft draft : promising) {
            // with a wished fabric the first drafts ask more of the stash than the plain one that follows them
            if (tried > (outwards.isPresent() ? 2 : 0) && work.isOver(!found.isEmpty())) {
                break;
            }
            tried++;
            Optional<DraftTrial> trial =
                    Fitting.fit(draft, supply, FIRST_STEPS, wish.preferences().seed(), work.once(!found.isEmpty()));
            trial.ifPresent(found::add);
            Optional<DraftTrial> told = best;
            Optional<DraftTrial> better = trial.filter(one -> told.isEmpty() || order.compare(one, told.get()) < 0);
            best = better.or(() -> told);
            work.seen()
                    .accept(new PlanProgress(
                            tried, promising.size(), found.size(), better.map(ProposalSelection::plan)));
        }
        found.sort(order);
        return improved(found);
    }

    /** The best few of each kind, searched longer and their pieces cut again so that fewer leftovers remain. */
    private List<DraftTrial> improved(List<DraftTrial> trials) {
        List<DraftTrial> better = new ArrayList<>();
        int most = 3 * wish.preferences().proposals();
        List<DraftTrial> first = outwards.isEmpty() ? List.of() : trials.subList(0, Math.min(1, trials.size()));
        for (DraftTrial trial : ProposalSelection.varied(first, trials, most, order)) {
            boolean done = trial.figures().joins() <= trial.bound().joins()
                    && trial.figures().sliverArea() == 0;
            if (done || work.budget().spent()) {
                better.add(trial);
                continue;
            }
            Optional<DraftTrial> again = Fitting.fit(
                    trial.draft(), supply, work.laterSteps(), wish.preferences().seed() + 1, work.budget());
            better.add(again.filter(other -> DraftTrial.BEST.compare(other, trial) < 0)
                    .orElse(trial));
        }
        better.replaceAll(DraftTrial::recut);
        better.replaceAll(
                trial -> TrialColours.exchanged(trial, wish.preferences().seed()));
        better.sort(order);
        if (outwards.isEmpty() && !better.isEmpty()) {
            // a few counted steps are taken even where the time is up: the first cloth's hearth is what she sees first
            boolean late = work.budget().spent();
            Budget share = late ? Budget.steps(4 * FIRST_STEPS) : work.budget();
            better.addAll(new HearthSeen(
                            supply,
                            named,
                            late ? FIRST_STEPS : work.laterSteps(),
                            wish.preferences().seed())
                    .of(better.get(0), share));
            better.sort(order);
        }
        return outwards.isEmpty() ? TrialColours.bestFirst(better) : better;
    }

    /** The step in which nearest cloths are searched for: half a round. */
    static Length step(Ruler ruler) {
        return ruler.isMetric() ? Length.cm(2) : Length.inches(1);
    }
}
