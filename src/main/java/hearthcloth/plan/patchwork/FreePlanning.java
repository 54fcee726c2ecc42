package hearthcloth.plan.patchwork;

import hearthcloth.cutstock.piecing.MoreFabric;
import hearthcloth.cutstock.piecing.PiecingBounds;
import hearthcloth.cutstock.piecing.PiecingJob;
import hearthcloth.cutstock.piecing.compose.Composed;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Patchwork.Direction;
import hearthcloth.plan.model.Patchwork.ScrapWishes;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.parameter.PatchworkParameters;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Plans cloths of scraps: several arrangements of the wished size, or of the largest that the heap makes. */
final class FreePlanning {

    private static final PatchworkParameters.Free FREE =
            PatchworkParameters.standard().free();

    private final MarkedHeap heap;
    private final Patchwork patchwork;
    private final PatchworkEffort work;
    private final Ruler ruler;

    FreePlanning(MarkedHeap heap, Patchwork patchwork, PatchworkEffort work) {
        this.heap = heap.asked(patchwork.wishes());
        this.patchwork = patchwork;
        this.work = work;
        this.ruler = heap.wish().preferences().ruler();
    }

    PlanOutcome outcome() {
        List<Sentence> missing = missing();
        if (!missing.isEmpty()) {
            return new PlanOutcome.CannotMake(true, missing, List.of());
        }
        Optional<Size> wished = heap.wish().target().size();
        Optional<Size> size = wished.or(this::largest);
        if (size.isEmpty()) {
            return new PlanOutcome.CannotMake(false, List.of(PlanningSentences.scrapsNone()), List.of());
        }
        List<Plan> plans = arrangements(size.get(), wished.isEmpty());
        return plans.isEmpty() ? lacking(size.get()) : new PlanOutcome.Proposals(plans);
    }

    /** What is asked for and is not among the pieces a patch can be cut from. */
    private List<Sentence> missing() {
        return Stream.concat(patchwork.wishes().with().stream(), patchwork.wishes().middle().stream())
                .filter(piece -> heap.indexOf(piece) < 0)
                .map(piece -> PlanningSentences.scrapsNoPiece(new Argument.Text(piece)))
                .toList();
    }

    /** The largest square that was found. */
    private Optional<Size> largest() {
        Length step = ruler.isMetric() ? Length.cm(1) : Length.inches(1, 2);
        Length side = heap.finished((long) Math.sqrt((double) heap.netArea()));
        FreeCloths cloths = new FreeCloths(heap, seed());
        long high = side.nm() / step.nm();
        long low = 0;
        long next = (long) (high * Math.sqrt(FREE.likely()));
        while (low < high && next > 0) {
            if (makes(cloths, Size.square(step.times(next)), low > 0)) {
                low = next;
            } else {
                high = next - 1;
            }
            next = (low + high + 1) / 2;
        }
        return low == 0 ? Optional.empty() : Optional.of(Size.square(step.times(low)));
    }

    private boolean makes(FreeCloths cloths, Size size, boolean found) {
        return isAnyWay()
                ? cloths.makes(size, offcuts(), work.quick(found))
                : kept(heap, size, offcuts(), 0, () -> work.quick(found)).isPresent();
    }

    /** Whether neither bands nor a piece in the middle are wished. */
    private boolean isAnyWay() {
        return patchwork.wishes().direction() == Direction.ANY
                && patchwork.wishes().middle().isEmpty();
    }

    private boolean offcuts() {
        return patchwork.cutting() != Patchwork.ScrapRule.AS_THEY_ARE;
    }

    private long seed() {
        return heap.wish().preferences().seed();
    }

    private List<Plan> arrangements(Size size, boolean largest) {
        List<Plan> plans = new ArrayList<>();
        List<ScrapChoice> choices = choices();
        int most = heap.wish().preferences().proposals();
        double net = (double) heap.netMarks(size.width()) * heap.netMarks(size.height());
        for (int i = 0; i < choices.size() && plans.size() < most && net <= heap.netArea(); i++) {
            if (!plans.isEmpty() && work.budget().spent()) {
                break;
            }
            ScrapChoice choice = choices.get(i);
            MarkedHeap from = choice.heap(heap, net);
            MarkedHeap some = from.only(choice.of(from, net));
            Optional<Plan> plan = arrangement(some, size, choice, i, largest)
                    .filter(one -> choice != ScrapChoice.WHOLE || isWhole(one))
                    .filter(one -> plans.stream().allMatch(other -> differ(one, other)));
            plan.ifPresent(plans::add);
            work.tell(i + 1, choices.size(), plans.size(), plan.filter(one -> plans.size() == 1));
            if (i == 0 && plan.isEmpty() && !choice.leavesOut()) {
                choices.removeIf(other -> other != ScrapChoice.EVEN && other != choice);
            }
        }
        return plans;
    }

    private List<ScrapChoice> choices() {
        List<ScrapChoice> choices = new ArrayList<>(List.of(ScrapChoice.values()));
        switch (patchwork.wishes().sizes()) {
            case ANY -> choices.remove(ScrapChoice.ALIKE);
            case MIXED -> choices.removeAll(List.of(ScrapChoice.ALIKE, ScrapChoice.EVEN));
            case EVEN -> choices.retainAll(List.of(ScrapChoice.ALIKE, ScrapChoice.EVEN));
        }
        if (patchwork.cutting() == Patchwork.ScrapRule.CUT) {
            choices.remove(ScrapChoice.WHOLE);
        }
        if (patchwork.cutting() == Patchwork.ScrapRule.AS_THEY_ARE) {
            choices.removeAll(List.of(ScrapChoice.ANY, ScrapChoice.EVEN));
        }
        return choices;
    }

    private Optional<Plan> arrangement(MarkedHeap some, Size size, ScrapChoice choice, int number, boolean largest) {
        boolean offcuts = choice.offcuts() && offcuts();
        return kept(some, size, offcuts, number, () -> work.share(number > 0))
                .or(() -> number == 0 ? kept(some, size, offcuts, number, work::patient) : Optional.empty())
                .map(composed -> plan(some, size, composed, told(choice, largest ? size : null)));
    }

    /** A cloth of the whole size that keeps what is wished, arranged. */
    private Optional<Composed> kept(MarkedHeap some, Size size, boolean offcuts, int number, Supplier<Budget> budget) {
        FreeCloths cloths = new FreeCloths(some, seed() + number);
        ScrapWishes wishes = patchwork.wishes();
        if (wishes.middle().isPresent()) {
            return ScrapBorder.around(
                            some, some.indexOf(wishes.middle().get()), size, offcuts, budget.get(), seed() + number)
                    .map(bordered -> cloths.judged(bordered.tree()));
        }
        if (wishes.direction() != Direction.ANY) {
            return new BandedCloths(some, wishes.direction(), seed() + number)
                    .search(size, offcuts, budget)
                    .map(cloths::arranged);
        }
        return cloths.search(size, offcuts, budget.get())
                .filter(FreeCloths.Found::full)
                .map(found -> cloths.arranged(found.tree()));
    }

    private Plan.Story told(ScrapChoice choice, @org.jspecify.annotations.Nullable Size largest) {
        List<Sentence> chosen = new ArrayList<>();
        if (largest != null) {
            Length limit = heap.finished((long) Math.ceil(Math.sqrt((double) heap.netArea())));
            chosen.add(PlanningSentences.chosenSizeScraps(
                    Argument.of(limit, Rounding.UP), Argument.of(largest.width(), Rounding.NEAREST)));
        }
        ScrapWishes wishes = patchwork.wishes();
        if (!wishes.with().isEmpty()) {
            chosen.add(PlanningSentences.chosenWith(Argument.names(Argument.Joined.AND, wishes.with())));
        }
        wishes.middle().ifPresent(piece -> chosen.add(PlanningSentences.chosenMiddle(new Argument.Text(piece))));
        if (wishes.direction() != Direction.ANY) {
            chosen.add(PlanningSentences.chosenBands(wishes.direction().name()));
        }
        return new Plan.Story(choice.title(), Sentence.none(), chosen, List.of());
    }

    private Plan plan(MarkedHeap some, Size size, Composed composed, Plan.Story story) {
        Plan.Story told = story.chosenLast(Meetings.sentence(composed, some));
        return PatchworkPlans.of(composed.tree(), size, some, List.of(), told);
    }

    /** Whether no scrap leaves an offcut that could be used again; where the maker asks for that alone, it is only told. */
    private boolean isWhole(Plan plan) {
        return patchwork.cutting() == Patchwork.ScrapRule.AS_THEY_ARE
                || plan.figures().areas().offcuts() == 0;
    }

    /** Whether two arrangements use different scraps, or many more of them. */
    private static boolean differ(Plan one, Plan other) {
        int fewer =
                Math.min(one.cloth().patches().size(), other.cloth().patches().size());
        int more =
                Math.max(one.cloth().patches().size(), other.cloth().patches().size());
        if (fewer < FREE.manyMore() * more) {
            return true;
        }
        Set<String> first = used(one);
        Set<String> second = used(other);
        Set<String> both = new LinkedHashSet<>(first);
        both.retainAll(second);
        return both.size() <= FREE.alike() * Math.max(first.size(), second.size());
    }

    private static Set<String> used(Plan plan) {
        Set<String> used = new LinkedHashSet<>();
        plan.cuts().forEach(cut -> used.add(cut.piece().id()));
        return used;
    }

    /** What is short, the nearest cloth, and how much more fabric makes the wished one. */
    private PlanOutcome lacking(Size size) {
        FreeCloths cloths = new FreeCloths(heap, seed());
        PiecingJob job = cloths.job(size, offcuts());
        PiecingBounds bounds = PiecingBounds.of(job);
        List<Sentence> why = new ArrayList<>();
        if (bounds.missing() > 0) {
            why.add(PlanningSentences.scrapsShort(Argument.area(bounds.missing() * mm2(), Rounding.DOWN)));
        }
        Optional<Plan> nearest = nearest(cloths, size);
        work.tell(1, 2, 0, nearest);
        if (isAnyWay()) {
            MoreFabric.enough(job, 0, work.fabric()::spent, seed())
                    .ifPresent(more -> why.add(PlanningSentences.scrapsMore(
                            Argument.of(size(more.piece().width(), more.piece().height()), Rounding.UP))));
        }
        return new PlanOutcome.CannotMake(
                bounds.missing() > 0, why, nearest.stream().toList());
    }

    /** The least smaller cloth that is found: first a few per cent smaller, then as it comes. */
    private Optional<Plan> nearest(FreeCloths cloths, Size size) {
        for (double share : FREE.smaller()) {
            Size smaller = new Size(onMark(size.width(), share), onMark(size.height(), share));
            if (cloths.mayMake(smaller)) {
                Optional<Composed> found = kept(heap, smaller, offcuts(), 0, () -> work.quick(false));
                if (found.isPresent()) {
                    return found.map(composed -> smaller(size, smaller, composed));
                }
            }
        }
        return isAnyWay()
                ? cloths.search(size, offcuts(), work.share(false))
                        .map(found -> smaller(size, found.made(), cloths.arranged(found.tree())))
                : Optional.empty();
    }

    /** A cloth smaller than wished, which it says. */
    private Plan smaller(Size wished, Size made, Composed composed) {
        double area = made.areaMm2() / wished.areaMm2();
        Plan.Story story = told(ScrapChoice.ANY, null);
        return plan(
                heap,
                made,
                composed,
                area >= 1
                        ? story
                        : story.chosenLast(PlanningSentences.chosenSmaller(
                                new Argument.Percent(String.format(Locale.ROOT, "%.1f", 100 * (1 - area))))));
    }

    private Length onMark(Length length, double share) {
        return new Length((long) (length.nm() * share)).roundedTo(heap.mark(), Rounding.DOWN);
    }

    private Size size(long width, long height) {
        return new Size(heap.mark().times(width), heap.mark().times(height));
    }

    /** One square mark. */
    private double mm2() {
        double mark = heap.mark().in(hearthcloth.measure.Unit.MILLIMETRE);
        return mark * mark;
    }
}
