package hearthcloth.plan;

import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.search.Budget;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    private final Stash stash;
    private final List<Fabric> named;
    private final Work work;

    /** How hard to look, when to stop, whom to tell. */
    private record Work(int effort, Budget budget, Consumer<Progress> seen) {

        long laterSteps() {
            return LATER_STEPS * Math.max(1, effort);
        }
    }

    private Planner(Stash stash, Wish wish, List<Fabric> named, Work work) {
        this.wish = wish;
        this.named = named;
        this.stash = named.isEmpty()
                ? stash
                : stash.only(named.stream().map(Fabric::name).toList());
        this.supply = new Supply(this.stash);
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
            return new Outcome.Proposals(Selection.of(trials, wish));
        }
        Shortfall.Reasons reasons = new Shortfall(wish, stash).reasons(size, new Shapes(wish, stash).forSize(size));
        List<String> why = reasons.why().isEmpty() ? closest(size) : reasons.why();
        return new Outcome.CannotMake(reasons.proven(), why, nearest(size));
    }

    /** No size was wished: as large as the stash goes, and one three quarters of that, which needs fewer joins. */
    private Outcome anySize() {
        Length step = step(wish.preferences().ruler());
        Optional<Size> largest = largest(Size.square(step), wish);
        if (largest.isEmpty()) {
            Shortfall.Reasons reasons = new Shortfall(wish, stash)
                    .reasons(Optional.empty(), new Shapes(wish, stash).forSize(Optional.empty()));
            return new Outcome.CannotMake(reasons.proven(), reasons.why(), List.of());
        }
        List<Plan> plans = new ArrayList<>(Selection.of(tryAt(largest, HALF_TRIES), wish));
        Length smaller = step.times(largest.get().width().nm() * 3 / 4 / step.nm());
        plans.addAll(
                Math.min(1, plans.size()), Selection.of(tryAt(Optional.of(Size.square(smaller)), HALF_TRIES), wish));
        return new Outcome.Proposals(
                plans.subList(0, Math.min(plans.size(), wish.preferences().proposals())));
    }

    private Optional<Size> largest(Size shape, Wish asked) {
        return LargestCloth.of(
                shape, step(asked.preferences().ruler()), stash.areaMm2(), size -> isMade(asked, Optional.of(size)));
    }

    /** The nearest cloths the stash makes: the same wish smaller, else with hearth, bars and rounds left open. */
    private List<Plan> nearest(Optional<Size> size) {
        Size shape = size.orElse(Size.square(step(wish.preferences().ruler())));
        for (Wish asked : List.of(wish.withRoundsOpen(), wish.withShapeOpen())) {
            Optional<Size> largest = largest(shape, asked);
            if (largest.isPresent()) {
                Planner smaller = new Planner(stash, asked, named, work);
                List<Trial> trials = smaller.tryAt(largest, HALF_TRIES);
                if (!trials.isEmpty()) {
                    return Selection.of(trials, asked).subList(0, 1);
                }
            }
        }
        return List.of();
    }

    private boolean isMade(Wish asked, Optional<Size> size) {
        Planner planner = new Planner(stash, asked, named, work);
        return planner.drafts(size, QUICK_TRIES).stream()
                .anyMatch(draft -> !work.budget().spent()
                        && Fitting.fit(
                                        draft,
                                        supply,
                                        FIRST_STEPS,
                                        asked.preferences().seed(),
                                        work.budget())
                                .isPresent());
    }

    /** What the most promising draft still lacks. */
    private List<String> closest(Optional<Size> size) {
        return drafts(size, 1).stream()
                .findFirst()
                .map(draft -> Fitting.lacking(draft, supply, work.laterSteps(), wish, work.budget()))
                .orElse(List.of("The fabrics do not go far enough in any plan of colour that was tried."));
    }

    /** A hearth, widths and rounds say how large the cloth comes out. */
    private boolean isSizedByShape() {
        return wish.shape().hearth().isPresent()
                && !wish.shape().bars().isEmpty()
                && wish.shape().rounds().isPresent();
    }

    /** Everything the stash makes at this size, best first. */
    private List<Trial> tryAt(Optional<Size> size, int most) {
        List<Draft> drafts = drafts(size, most);
        Map<Draft, Trial> found = new LinkedHashMap<>();
        int tried = 0;
        for (Draft draft : drafts) {
            if (tried > 0 && work.budget().spent()) {
                break;
            }
            tried++;
            Fitting.fit(draft, supply, FIRST_STEPS, wish.preferences().seed(), work.budget())
                    .ifPresent(trial -> found.put(draft, trial));
            work.seen().accept(new Progress(tried, drafts.size(), found.size()));
        }
        List<Trial> trials = new ArrayList<>(found.values());
        trials.sort(Trial.BEST);
        return improved(trials);
    }

    /** The best few of each look are searched longer, and their pieces cut again with less left in bits. */
    private List<Trial> improved(List<Trial> trials) {
        List<Trial> better = new ArrayList<>();
        int most = 3 * wish.preferences().proposals();
        for (Trial trial : Selection.varied(trials, most)) {
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
        better.sort(Trial.BEST);
        return better;
    }

    /** The drafts to try, the promising ones first, every look among them early. */
    private List<Draft> drafts(Optional<Size> size, int most) {
        Schemes schemes = new Schemes(supply, named);
        Judgement judgement = new Judgement(supply, wish.making());
        Map<Draft, Double> costs = new LinkedHashMap<>();
        for (Shape shape : new Shapes(wish, stash).forSize(size)) {
            for (Scheme scheme : schemes.forLayout(shape.layout())) {
                Draft draft = new Draft(
                        shape, new Design(shape.order(), shape.layout(), scheme, wish.making(), wish.rules()));
                double cost = judgement.cost(draft);
                if (cost < Double.POSITIVE_INFINITY) {
                    costs.put(draft, cost + shape.layout().courses().size() / 20.0 + unlikeness(shape));
                }
            }
        }
        List<Draft> sorted = costs.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.naturalOrder()))
                .map(Map.Entry::getKey)
                .toList();
        return taken(sorted, most);
    }

    /** How far the hearth is from a good third of the cloth; a taste, weighed like a join or two. */
    private static double unlikeness(Shape shape) {
        Size hearth = shape.layout().hearth();
        double share = (double) hearth.width().nm() / shape.finished().width().nm();
        return 6 * Math.abs(share - 0.36);
    }

    /** Turn by turn from each look, so that no single one uses up all tries. */
    private static List<Draft> taken(List<Draft> sorted, int most) {
        Map<List<Object>, List<Draft>> looks = new LinkedHashMap<>();
        for (Draft draft : sorted) {
            List<Object> look = List.of(draft.scheme().kind(), draft.shape().order());
            looks.computeIfAbsent(look, key -> new ArrayList<>()).add(draft);
        }
        List<Draft> taken = new ArrayList<>();
        for (int turn = 0; taken.size() < Math.min(most, sorted.size()); turn++) {
            for (List<Draft> look : looks.values()) {
                if (turn < look.size() && taken.size() < most) {
                    taken.add(look.get(turn));
                }
            }
        }
        return taken;
    }

    /** Half a round smaller: the step in which nearest cloths are looked for. */
    static Length step(Ruler ruler) {
        return ruler.isMetric() ? Length.cm(2) : Length.inches(1);
    }
}
