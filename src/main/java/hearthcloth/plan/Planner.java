package hearthcloth.plan;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.search.Budget;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * From a wish and a stash to proposals. Every layout and plan of colour worth trying is judged quickly, the promising
 * ones are put to the search, a little at first and the best of them longer, and what comes back is built as an ordinary
 * cloth and checked by its folds. The same stash, wish and step budget give the same proposals.
 */
public final class Planner {

    private static final int FIRST_TRIES = 96;
    private static final int QUICK_TRIES = 24;

    /** Where two sizes are tried, each gets half. */
    private static final int HALF_TRIES = FIRST_TRIES / 2;

    private static final long FIRST_STEPS = 60;
    private static final long LATER_STEPS = 150;

    private final Wish wish;
    private final Supply supply;
    private final Shapes shapes;
    private final Drafts drafts;
    private final Stash stash;
    private final List<Fabric> named;
    private final Work work;
    private final Optional<Outwards> outwards;
    private final Comparator<Trial> order;

    /** How hard to look, when to stop, whom to tell. */
    private record Work(int effort, Budget budget, Consumer<Progress> seen) {

        long laterSteps() {
            return LATER_STEPS * Math.max(1, effort);
        }

        /** The same, telling of no plan: what comes near a wish does not answer it. */
        Work withoutPlans() {
            return new Work(
                    effort,
                    budget,
                    told -> seen.accept(new Progress(told.tried(), told.of(), told.found(), Optional.empty())));
        }
    }

    private Planner(Stash stash, Wish wish, List<Fabric> named, Work work) {
        this.wish = wish;
        this.named = named;
        this.stash = named.isEmpty()
                ? stash
                : stash.only(named.stream().map(Fabric::name).toList());
        this.supply = new Supply(this.stash);
        this.shapes = new Shapes(wish, this.stash);
        this.outwards = wish.preferences()
                .outside()
                .flatMap(wished -> this.stash.fabric(wished.fabric()).map(seen -> new Outwards(wished, seen, supply)));
        this.order = outwards.map(Outwards::order).orElse(Trial.BEST);
        this.drafts = new Drafts(wish, supply, shapes, named, outwards);
        this.work = work;
    }

    /**
     * Plans cloths.
     *
     * @param effort how long the best drafts are searched, 1 and more; each unit is about half a second on an ordinary
     *     machine, but is counted in steps, so that the same effort gives the same proposals everywhere
     * @param budget ends the search early; the best so far is returned
     * @param seen told how far the search has come, on the calling thread
     */
    public static Outcome plan(Stash stash, Wish wish, int effort, Budget budget, Consumer<Progress> seen) {
        List<Fabric> named = new ArrayList<>();
        for (String name : wish.preferences().fabrics()) {
            Optional<Fabric> fabric = stash.fabric(name);
            if (fabric.isEmpty()) {
                return new Outcome.CannotMake(true, List.of(noFabric(name, stash)), List.of());
            }
            named.add(fabric.get());
        }
        Optional<String> outside = wish.preferences().outside().map(Wish.Outside::fabric);
        Optional<Fabric> shown = outside.flatMap(stash::fabric);
        if (outside.isPresent() && shown.isEmpty()) {
            return new Outcome.CannotMake(true, List.of(noFabric(outside.get(), stash)), List.of());
        }
        shown.filter(fabric -> !named.isEmpty() && !named.contains(fabric)).ifPresent(named::add);
        if (stash.pieces().isEmpty()) {
            return new Outcome.CannotMake(true, List.of("The stash is empty; add at least one piece."), List.of());
        }
        return new Planner(stash, wish, List.copyOf(named), new Work(effort, budget, seen)).outcome();
    }

    private static String noFabric(String name, Stash stash) {
        return "No fabric in the stash is called \"" + name + "\"; there are "
                + String.join(", ", stash.fabrics().stream().map(Fabric::name).toList()) + ".";
    }

    private Outcome outcome() {
        Optional<Size> size = wish.target().size();
        if (size.isEmpty() && !isSizedByShape()) {
            return anySize();
        }
        List<Trial> trials = tryAt(size, FIRST_TRIES);
        if (!trials.isEmpty()) {
            return new Outcome.Proposals(proposals(trials));
        }
        Shortfall.Reasons reasons = new Shortfall(wish, stash).reasons(size, shapes.forSize(size));
        List<String> why = reasons.why().isEmpty() ? closest(size) : reasons.why();
        return new Outcome.CannotMake(reasons.proven(), why, nearest(size));
    }

    /** With a fabric wished to the outside the one that shows most of it first, and told of each how much. */
    private List<Plan> proposals(List<Trial> trials) {
        if (outwards.isEmpty()) {
            return Selection.of(trials, wish);
        }
        Outwards seen = outwards.get();
        return Selection.of(trials.subList(0, 1), trials, wish, order).stream()
                .map(plan -> plan.told(plan.story().goodAt(plan.story().goodAt() + " " + seen.sentence(plan.cloth()))))
                .toList();
    }

    /** No size was wished: as large as the stash goes, and one three quarters of that, which needs fewer joins. */
    private Outcome anySize() {
        Length step = step(wish.preferences().ruler());
        Optional<Size> largest = largest(Size.square(step));
        if (largest.isEmpty()) {
            Shortfall.Reasons reasons =
                    new Shortfall(wish, stash).reasons(Optional.empty(), shapes.forSize(Optional.empty()));
            return new Outcome.CannotMake(reasons.proven(), reasons.why(), List.of());
        }
        Length smaller = step.times(largest.get().width().nm() * 3 / 4 / step.nm());
        List<Trial> trials = new ArrayList<>(tryAt(largest, HALF_TRIES));
        List<Trial> largestFirst = trials.subList(0, Math.min(1, trials.size()));
        List<Trial> both = new ArrayList<>(tryAt(Optional.of(Size.square(smaller)), HALF_TRIES));
        both.addAll(trials);
        both.sort(order);
        if (both.isEmpty()) {
            return new Outcome.CannotMake(false, closest(largest), List.of());
        }
        List<Plan> plans = new ArrayList<>(Selection.of(largestFirst, both, wish, order));
        plans.replaceAll(plan -> plan.cloth().finished().equals(largest.get())
                ? plan.told(plan.story().chosenFirst(howSure(largest.get().width())))
                : plan);
        return new Outcome.Proposals(plans);
    }

    /** Whether a larger square is ruled out; if not, from where on it is. */
    private String howSure(Length side) {
        Ruler ruler = wish.preferences().ruler();
        Length hem = wish.making().hem().allowance();
        Length least = hem.min(wish.making().seam().narrow()).times(2);
        Length limit = LargestCloth.limit(stash, hem, least);
        return side.plus(step(ruler)).isMoreThan(limit)
                ? "The size: in steps of " + ruler.write(step(ruler), Rounding.NEAREST)
                        + " no larger square is possible."
                : "The size: the largest square found; all the fabric together could not make one above "
                        + ruler.write(limit, Rounding.UP) + ".";
    }

    private Optional<Size> largest(Size shape) {
        return LargestCloth.of(
                shape, step(wish.preferences().ruler()), stash.areaMm2(), size -> isMade(Optional.of(size)));
    }

    /** The nearest cloths the stash makes: the same wish smaller, else with hearth, bars and rounds left open. */
    private List<Plan> nearest(Optional<Size> size) {
        Size shape = size.orElse(Size.square(step(wish.preferences().ruler())));
        for (Wish asked : List.of(wish.withRoundsOpen(), wish.withShapeOpen())) {
            Planner smaller = new Planner(stash, asked, named, work.withoutPlans());
            Optional<Size> largest = smaller.largest(shape);
            if (largest.isPresent()) {
                List<Trial> trials = smaller.tryAt(largest, HALF_TRIES);
                if (!trials.isEmpty()) {
                    return Selection.of(trials, asked).subList(0, 1);
                }
            }
        }
        return List.of();
    }

    /** Tried with the freest plan of colour, of which all others are narrower; what is made is told at once. */
    private boolean isMade(Optional<Size> size) {
        List<Draft> free = drafts.of(size, kind -> kind == Scheme.Kind.ALL, QUICK_TRIES);
        List<Draft> promising = free.isEmpty() ? drafts.of(size, QUICK_TRIES) : free;
        for (int i = 0; i < promising.size() && !work.budget().spent(); i++) {
            Optional<Trial> trial = Fitting.fit(
                    promising.get(i), supply, FIRST_STEPS, wish.preferences().seed(), work.budget());
            if (trial.isPresent()) {
                work.seen().accept(new Progress(i + 1, promising.size(), 1, trial.map(Selection::plan)));
                return true;
            }
        }
        return false;
    }

    /** What the most promising draft still lacks. */
    private List<String> closest(Optional<Size> size) {
        return drafts.of(size, 1).stream()
                .findFirst()
                .map(draft -> Remedy.of(
                        draft, supply, work.laterSteps(), wish.preferences().ruler(), work.budget()))
                .orElseGet(() -> List.of(drafts.thrift(size)));
    }

    /** A hearth, widths and rounds say how large the cloth comes out. */
    private boolean isSizedByShape() {
        return wish.shape().hearth().isPresent()
                && !wish.shape().bars().isEmpty()
                && wish.shape().rounds().isPresent();
    }

    /** Everything the stash makes at this size, best first. */
    private List<Trial> tryAt(Optional<Size> size, int most) {
        List<Draft> promising = drafts.of(size, most);
        List<Trial> found = new ArrayList<>();
        Optional<Trial> best = Optional.empty();
        int tried = 0;
        for (Draft draft : promising) {
            // with a wished fabric the first drafts ask more of the stash than the plain one that follows them
            if (tried > (outwards.isPresent() ? 2 : 0) && work.budget().spent()) {
                break;
            }
            tried++;
            Optional<Trial> trial =
                    Fitting.fit(draft, supply, FIRST_STEPS, wish.preferences().seed(), work.budget());
            trial.ifPresent(found::add);
            Optional<Trial> told = best;
            Optional<Trial> better = trial.filter(one -> told.isEmpty() || order.compare(one, told.get()) < 0);
            best = better.or(() -> told);
            work.seen().accept(new Progress(tried, promising.size(), found.size(), better.map(Selection::plan)));
        }
        found.sort(order);
        return improved(found);
    }

    /** The best few of each look are searched longer, and their pieces cut again with less left in bits. */
    private List<Trial> improved(List<Trial> trials) {
        List<Trial> better = new ArrayList<>();
        int most = 3 * wish.preferences().proposals();
        List<Trial> first = outwards.isEmpty() ? List.of() : trials.subList(0, Math.min(1, trials.size()));
        for (Trial trial : Selection.varied(first, trials, most, order)) {
            boolean done = trial.figures().joins() <= trial.bound().joins()
                    && trial.figures().sliverArea() == 0;
            if (done || work.budget().spent()) {
                better.add(trial);
                continue;
            }
            Optional<Trial> again = Fitting.fit(
                    trial.draft(), supply, work.laterSteps(), wish.preferences().seed() + 1, work.budget());
            better.add(
                    again.filter(other -> Trial.BEST.compare(other, trial) < 0).orElse(trial));
        }
        better.replaceAll(Trial::recut);
        better.sort(order);
        return better;
    }

    /** Half a round smaller: the step in which nearest cloths are looked for. */
    static Length step(Ruler ruler) {
        return ruler.isMetric() ? Length.cm(2) : Length.inches(1);
    }
}
