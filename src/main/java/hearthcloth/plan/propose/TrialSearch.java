package hearthcloth.plan.propose;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Size;
import hearthcloth.plan.colour.ColourGoal;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.Fitting;
import hearthcloth.plan.fit.Idea;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.PlanProgress;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Searches the drafts of one wish: one quickly, or all that promise anything, and the best of them longer. */
final class TrialSearch {

    private final Wish wish;
    private final Supply supply;
    private final LayoutCandidates shapes;
    private final Drafts drafts;
    private final List<Fabric> named;
    private final SearchWork work;
    private final Optional<VisibleFabricSchemes> outwards;
    private final Comparator<DraftTrial> order;
    private final Idea idea;
    private final ColourGoal goal;

    TrialSearch(Stash stash, Wish wish, List<Fabric> named, SearchWork work, Idea idea) {
        this.idea = idea;
        this.goal = ColourGoal.of(wish.preferences().looks());
        this.wish = wish;
        this.named = named;
        this.supply = new Supply(stash);
        this.shapes = new LayoutCandidates(wish, stash, idea);
        this.outwards = wish.preferences()
                .outside()
                .flatMap(wished ->
                        stash.fabric(wished.fabric()).map(seen -> new VisibleFabricSchemes(goal, seen, supply)));
        this.order = outwards.map(VisibleFabricSchemes::order).orElse(DraftTrial.BEST);
        this.drafts = new Drafts(wish, supply, shapes, named, goal, outwards);
        this.work = work;
    }

    Supply supply() {
        return supply;
    }

    LayoutCandidates shapes() {
        return shapes;
    }

    Drafts drafts() {
        return drafts;
    }

    Optional<VisibleFabricSchemes> outwards() {
        return outwards;
    }

    /** The order of goods for this wish. */
    Comparator<DraftTrial> order() {
        return order;
    }

    /**
     * A cloth of this size, tried with the freest plan of colour, which includes all others; what is made is handed out
     * at once.
     *
     * @param found whether some cloth was found before, so that the budget counts
     */
    Optional<DraftTrial> made(Optional<Size> size, boolean found) {
        List<Draft> free = drafts.of(
                size,
                kind -> kind == Scheme.Kind.ALL && idea.allows(kind),
                work.parameters().quickTries());
        List<Draft> promising =
                free.isEmpty() ? drafts.of(size, idea::allows, work.parameters().quickTries()) : free;
        for (int i = 0; i < promising.size() && !work.isOver(found); i++) {
            Optional<DraftTrial> trial = Fitting.fit(
                    promising.get(i),
                    supply,
                    work.parameters().firstSteps(),
                    wish.preferences().seed(),
                    work.once(found));
            if (trial.isPresent()) {
                work.seen().accept(new PlanProgress(i + 1, promising.size(), 1, trial.map(ProposalSelection::plan)));
                return trial;
            }
        }
        return Optional.empty();
    }

    /**
     * The fewest joins that were found at this size; where certain colours are wished, those of a few drafts in any colours count
     * too, so that what the wished ones cost can be said.
     */
    int fewestJoins(List<DraftTrial> trials, Optional<Size> size) {
        List<Draft> free = idea.colours().isEmpty()
                ? List.of()
                : drafts.of(
                        size, kind -> kind == Scheme.Kind.ALL, work.parameters().quickTries());
        Stream<DraftTrial> others = free.stream()
                .takeWhile(draft -> !work.budget().spent())
                .flatMap(
                        draft -> Fitting.fit(
                                draft,
                                supply,
                                work.parameters().firstSteps(),
                                wish.preferences().seed(),
                                work.budget())
                                .stream());
        return Stream.concat(trials.stream(), others)
                .mapToInt(trial -> trial.figures().joins())
                .min()
                .orElse(0);
    }

    /** Everything the stash makes at this size, best first. */
    List<DraftTrial> tryAt(Optional<Size> size, int most) {
        List<Draft> promising = drafts.of(size, idea::allows, most);
        List<DraftTrial> found = new ArrayList<>();
        Optional<DraftTrial> best = Optional.empty();
        int tried = 0;
        for (Draft draft : promising) {
            // with a wished fabric the first drafts ask more of the stash than the plain one that follows them
            if (tried > (outwards.isPresent() ? 2 : 0) && work.isOver(!found.isEmpty())) {
                break;
            }
            tried++;
            Optional<DraftTrial> trial = Fitting.fit(
                    draft,
                    supply,
                    work.parameters().firstSteps(),
                    wish.preferences().seed(),
                    work.once(!found.isEmpty()));
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

    /** Of those with the fewest joins, the best of each order: among them is the one that comes first. */
    private static List<DraftTrial> ofFewestJoins(List<DraftTrial> sorted) {
        Map<Order, DraftTrial> best = new EnumMap<>(Order.class);
        sorted.stream()
                .filter(trial ->
                        trial.figures().joins() == sorted.get(0).figures().joins())
                .forEach(trial -> best.putIfAbsent(trial.draft().shape().order(), trial));
        return List.copyOf(best.values());
    }

    /** The best few of each kind, searched longer and their pieces cut again so that fewer leftovers remain. */
    List<DraftTrial> improved(List<DraftTrial> trials) {
        List<DraftTrial> better = new ArrayList<>();
        int most = 3 * wish.preferences().proposals();
        List<DraftTrial> first =
                outwards.isEmpty() ? ofFewestJoins(trials) : trials.subList(0, Math.min(1, trials.size()));
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
        better.replaceAll(this::exchanged);
        if (!idea.colours().isEmpty()) {
            better.removeIf(trial -> !TrialColours.isTrue(trial)
                    || !TrialColours.isAlso(trial, wish.preferences().looks().with()));
        }
        better.sort(order);
        if (outwards.isEmpty() && idea.colours().isEmpty() && goal.contrast().isSeen() && !better.isEmpty()) {
            better.addAll(seen(better));
            better.sort(order);
        }
        return outwards.isEmpty() ? TrialColours.bestFirst(better, goal) : better;
    }

    /**
     * Ways with a hearth that stands out, from the best layout of as few joins as any that has one. A few counted steps
     * are taken even where the time is up: the first cloth's hearth is what she sees first.
     */
    private List<DraftTrial> seen(List<DraftTrial> sorted) {
        boolean late = work.budget().spent();
        Budget share = late
                ? Budget.steps(
                        4L * work.parameters().hearths() * work.parameters().firstSteps())
                : work.budget();
        HearthSeen hearths = new HearthSeen(
                supply,
                named,
                goal,
                late ? work.parameters().firstSteps() : work.laterSteps(),
                wish.preferences().seed());
        int joins = sorted.get(0).figures().joins();
        List<DraftTrial> found = new ArrayList<>();
        sorted.stream()
                .filter(trial -> trial.figures().joins() == joins
                        && trial.isOffCentre() == sorted.get(0).isOffCentre())
                .limit(work.parameters().hearths())
                .takeWhile(trial -> !lieWell(found, joins))
                .forEach(trial -> found.addAll(hearths.of(trial, share)));
        return found;
    }

    private static boolean lieWell(List<DraftTrial> found, int joins) {
        return found.stream()
                .anyMatch(trial -> trial.figures().joins() <= joins
                        && TrialColours.figures(trial).amissMm() < HearthSeen.LITTLE);
    }

    /** What the colours are to do. */
    ColourGoal goal() {
        return goal;
    }

    /** With its colours where they lie best; as it is where that would be another plan of colour than the idea's. */
    private DraftTrial exchanged(DraftTrial trial) {
        DraftTrial better = TrialColours.exchanged(trial, wish.preferences().seed(), goal);
        return idea.allows(better.draft().scheme().kind()) ? better : trial;
    }
}
