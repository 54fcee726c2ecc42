package hearthcloth.plan.propose;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.Idea;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.PlanProgress;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.palette.SuitedSchemes;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;

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

    private final Wish wish;
    private final Stash stash;
    private final List<Fabric> named;
    private final SearchWork work;
    private final Idea idea;
    private final TrialSearch search;

    private Planner(Stash stash, Wish wish, List<Fabric> named, SearchWork work, Idea idea) {
        this.wish = wish;
        this.stash = named.isEmpty()
                ? stash
                : stash.only(named.stream().map(Fabric::name).toList());
        this.named = named;
        this.work = work;
        this.idea = idea;
        this.search = new TrialSearch(this.stash, wish, named, work, idea);
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
                return new PlanOutcome.CannotMake(true, List.of(Shortfall.noFabric(name, stash)), List.of());
            }
            named.add(fabric.get());
        }
        Optional<String> outside = wish.preferences().outside().map(Wish.Outside::fabric);
        Optional<Fabric> shown = outside.flatMap(stash::fabric);
        if (outside.isPresent() && shown.isEmpty()) {
            return new PlanOutcome.CannotMake(true, List.of(Shortfall.noFabric(outside.get(), stash)), List.of());
        }
        shown.filter(fabric -> !named.isEmpty() && !named.contains(fabric)).ifPresent(named::add);
        if (stash.pieces().isEmpty()) {
            return new PlanOutcome.CannotMake(true, List.of(PlanningSentences.stashEmpty()), List.of());
        }
        return new Planner(stash, wish, List.copyOf(named), new SearchWork(effort, budget, seen), idea(wish)).outcome();
    }

    /** What a wished plan of colour holds the search to. */
    private static Idea idea(Wish wish) {
        return new Idea(
                layout -> true,
                List.of(),
                wish.preferences().looks().scheme().map(Set::of).orElse(Set.of()),
                Optional.empty());
    }

    /**
     * Plans cloths of this wish that keep to an idea; none where none was found. Nothing nearest is looked for.
     *
     * @throws IllegalArgumentException where the wish names a fabric that the stash has not
     */
    public static List<Plan> plans(
            Stash stash, Wish wish, Idea idea, int effort, Budget budget, Consumer<PlanProgress> seen) {
        return held(stash, wish, idea, new SearchWork(effort, budget, seen)).found();
    }

    /** One cloth of this wish that keeps to an idea, the first that a short search finds; it is quick to say no. */
    public static Optional<Plan> first(Stash stash, Wish wish, Idea idea) {
        return held(stash, wish, idea, new SearchWork(1, Budget.steps(0), seen -> {}))
                .quick()
                .map(ProposalSelection::plan);
    }

    /** What is short for this wish, or for the smallest cloth its idea allows, in sentences; may be empty. */
    public static List<Sentence> shortfall(Stash stash, Wish wish, Idea idea) {
        Planner planner = held(stash, wish, idea, new SearchWork(1, Budget.steps(0), seen -> {}));
        Optional<Size> size = wish.target().size().or(() -> idea.sides().map(sides -> Size.square(sides.least())));
        List<Sentence> why = planner.reasons(size).why();
        return why.isEmpty() && !planner.isOfAnySize() ? planner.closest(size) : why;
    }

    private static Planner held(Stash stash, Wish wish, Idea idea, SearchWork work) {
        List<Fabric> named = wish.preferences().fabrics().stream()
                .map(name -> stash.fabric(name)
                        .orElseThrow(() -> new IllegalArgumentException(
                                Shortfall.noFabric(name, stash).english())))
                .toList();
        return new Planner(stash, wish, named, work, idea);
    }

    private PlanOutcome outcome() {
        List<Plan> plans = found();
        if (!plans.isEmpty()) {
            return new PlanOutcome.Proposals(plans);
        }
        Wish.Looks looks = wish.preferences().looks();
        if (looks.scheme().isPresent()) {
            Wish open = wish.coloured(Optional.empty(), looks.contrast());
            return new Planner(stash, open, named, work, Idea.none())
                    .unlike(looks.scheme().get());
        }
        Optional<Size> size = wish.target().size();
        Shortfall.Reasons reasons = reasons(size);
        if (isOfAnySize()) {
            return new PlanOutcome.CannotMake(reasons.proven(), reasons.why(), nearest(size));
        }
        List<Sentence> why = reasons.why().isEmpty() ? closest(size) : reasons.why();
        return new PlanOutcome.CannotMake(reasons.proven(), why, nearest(size));
    }

    /** The same wish in other colours, where no cloth in those that were wished was found. */
    private PlanOutcome unlike(Scheme.Kind wished) {
        PlanOutcome other = outcome();
        return other instanceof PlanOutcome.Proposals found
                ? new PlanOutcome.CannotMake(
                        false,
                        List.of(PlanningSentences.schemeUntrue(
                                PlanningSentences.schemeNeeds(wished.name()), PlanningSentences.scheme(wished.name()))),
                        found.plans())
                : other;
    }

    private Shortfall.Reasons reasons(Optional<Size> size) {
        return new Shortfall(wish, stash).reasons(size, search.shapes().forSize(size));
    }

    private boolean isOfAnySize() {
        return wish.target().size().isEmpty() && !wish.isSizedByShape();
    }

    /** The proposals; none where none was found. */
    private List<Plan> found() {
        if (isOfAnySize()) {
            return anySize();
        }
        List<DraftTrial> trials =
                search.tryAt(wish.target().size(), work.parameters().tries());
        return trials.isEmpty() ? List.of() : proposals(trials);
    }

    /** A cloth that shows that there is one. */
    private Optional<DraftTrial> quick() {
        return isOfAnySize()
                ? largest(Size.square(step(wish.preferences().ruler())))
                : search.made(wish.target().size(), false);
    }

    /**
     * The proposals. Where a fabric is wished to the outside, the one that shows most of it comes first, and each says
     * how much it shows.
     */
    private List<Plan> proposals(List<DraftTrial> trials) {
        if (search.outwards().isEmpty()) {
            ToDoubleFunction<Scheme.Kind> worth =
                    SuitedSchemes.worth(stash, search.goal().contrast());
            int fewest = search.fewestJoins(trials, wish.target().size());
            List<Plan> chosen = ProposalSelection.byEye(trials, wish, search.goal(), worth, fewest);
            return TrialColours.told(chosen, trials, search.goal()).stream()
                    .map(plan -> TrialColours.proven(plan, search.supply(), search.goal()))
                    .toList();
        }
        VisibleFabricSchemes seen = search.outwards().get();
        return ProposalSelection.of(trials.subList(0, 1), trials, wish, search.order()).stream()
                .map(plan -> plan.told(plan.story().alsoGoodAt(seen.sentence(plan.cloth()))))
                .toList();
    }

    /**
     * Proposals where no size was wished: as large as the stash allows, and one of three quarters of that, which needs
     * fewer joins.
     */
    private List<Plan> anySize() {
        Length step = step(wish.preferences().ruler());
        Optional<DraftTrial> made = largest(Size.square(step));
        if (made.isEmpty()) {
            return List.of();
        }
        Size largest = made.get().draft().shape().finished();
        Length smaller = step.times(largest.width().nm() * 3 / 4 / step.nm());
        List<DraftTrial> trials = new ArrayList<>(atLargest(made.get()));
        List<DraftTrial> largestFirst = trials.subList(0, 1);
        List<DraftTrial> both = new ArrayList<>();
        if (idea.sides().isEmpty() || !smaller.isLessThan(idea.sides().get().least())) {
            both.addAll(search.tryAt(
                    Optional.of(Size.square(smaller)), work.parameters().tries() / 2));
        }
        both.addAll(trials);
        both.sort(search.order());
        List<Plan> plans = new ArrayList<>(ProposalSelection.of(largestFirst, both, wish, search.order()));
        plans.replaceAll(plan -> plan.cloth().finished().equals(largest)
                ? plan.told(plan.story().chosenFirst(LargestCloth.howSure(stash, wish, largest.width())))
                : plan);
        return plans;
    }

    /** The largest cloth in the proportions of {@code shape}, as it was first made. */
    private Optional<DraftTrial> largest(Size shape) {
        List<DraftTrial> made = new ArrayList<>();
        double most =
                idea.sides().map(sides -> Size.square(sides.most()).areaMm2()).orElse(Double.MAX_VALUE);
        LargestCloth.of(shape, step(wish.preferences().ruler()), Math.min(most, stash.areaMm2()), size -> {
            boolean small = idea.sides()
                    .filter(sides -> size.width().isLessThan(sides.least()))
                    .isPresent();
            Optional<DraftTrial> trial = small ? Optional.empty() : search.made(Optional.of(size), !made.isEmpty());
            trial.ifPresent(made::add);
            return small || trial.isPresent();
        });
        return made.isEmpty() ? Optional.empty() : Optional.of(made.get(made.size() - 1));
    }

    /** What else can be made as large as {@code made}, which is at least that one, best first. */
    private List<DraftTrial> atLargest(DraftTrial made) {
        List<DraftTrial> trials = search.tryAt(
                Optional.of(made.draft().shape().finished()), work.parameters().tries() / 2);
        return trials.isEmpty() ? search.improved(List.of(made)) : trials;
    }

    /**
     * The nearest cloths that the stash makes: the same wish smaller, or else with hearth, bars and rounds left open, or else of
     * any fabrics.
     */
    private List<Plan> nearest(Optional<Size> size) {
        Size shape = size.orElse(Size.square(step(wish.preferences().ruler())));
        for (Wish asked : relaxed()) {
            List<Fabric> of = asked.preferences().fabrics().isEmpty() ? List.of() : named;
            Planner smaller = new Planner(stash, asked, of, work.withoutPlans(), Idea.none());
            Optional<DraftTrial> largest = smaller.largest(shape);
            if (largest.isPresent()) {
                return ProposalSelection.of(smaller.atLargest(largest.get()), asked)
                        .subList(0, 1);
            }
        }
        return List.of();
    }

    /** The wish with ever more of it left open. */
    private List<Wish> relaxed() {
        List<Wish> asked = new ArrayList<>(List.of(wish.withRoundsOpen(), wish.withShapeOpen()));
        if (!named.isEmpty()) {
            asked.add(wish.withShapeOpen().withFabricsOpen());
        }
        // Of no size of its own, the wish itself was tried at every size already.
        asked.removeIf(one -> isOfAnySize() && one.equals(wish));
        return asked.stream().distinct().toList();
    }

    /** What the most promising draft still lacks. */
    private List<Sentence> closest(Optional<Size> size) {
        return search.drafts().of(size, 1).stream()
                .findFirst()
                .map(draft -> Remedy.of(draft, search.supply(), work.laterSteps(), work.once(false)))
                .orElseGet(() -> List.of(search.drafts().thrift(size)));
    }

    /** The step in which nearest cloths are searched for: half a round. */
    static Length step(Ruler ruler) {
        return ruler.isMetric() ? Length.cm(2) : Length.inches(1);
    }
}
