package hearthcloth.plan.propose;

import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.Idea;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.parameter.ProposalParameters;
import hearthcloth.plan.ready.ReadyLayouts;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Every layout worth trying for a wish. What the wish gives is kept; what it leaves open is taken from the stash
 * (widths that scraps already have come first) and from what fits the size.
 */
final class LayoutCandidates {

    /** More bars than anybody sews round one hearth; it stops a slip of the unit. */
    static final int MOST_BARS = 120;

    private static final ProposalParameters.Layouts LAYOUTS =
            ProposalParameters.standard().drafting().layouts();

    private final Wish wish;
    private final Making making;
    private final Ruler ruler;
    private final ReadyLayouts ready;
    private final Idea idea;

    /** The layouts for a wish that is held to an idea as well. */
    LayoutCandidates(Wish wish, Stash stash, Idea idea) {
        this.idea = idea;
        this.wish = wish;
        this.making = wish.making();
        this.ruler = wish.preferences().ruler();
        this.ready = new ReadyLayouts(wish, stash.pieces(), leastBar());
    }

    /**
     * The layouts for this size, or for none where the hearth and the rounds decide: well-proportioned ones if there
     * are any, otherwise everything that fits together. Deterministic.
     */
    List<LayoutCandidate> forSize(Optional<Size> size) {
        List<LayoutCandidate> well = all(size, true);
        return well.isEmpty() ? all(size, false) : well;
    }

    private List<LayoutCandidate> all(Optional<Size> size, boolean well) {
        Set<LayoutCandidate> shapes = new LinkedHashSet<>();
        for (Order order : orders()) {
            if (well
                    && size.isPresent()
                    && wish.shape().hearth().isEmpty()
                    && wish.shape().bars().isEmpty()) {
                ready.of(size.get(), order, rounds(true)).stream()
                        .filter(shape -> isWell(shape) && idea.layouts().test(shape))
                        .forEach(shapes::add);
            }
            for (List<Wish.Cut<Length>> bars : widths()) {
                for (int rounds : rounds(well)) {
                    for (LayoutCandidate shape : shaped(order, bars, rounds, size)) {
                        if ((!well || isWell(shape)) && idea.layouts().test(shape)) {
                            shapes.add(shape);
                        }
                    }
                }
            }
        }
        return List.copyOf(shapes);
    }

    private boolean isWell(LayoutCandidate shape) {
        return wish.shape().hearth().isPresent()
                || (LayoutCandidate.isWell(shape.layout().hearth(), shape.finished())
                        && (shape.order() != Order.TWO_SIDES
                                || wish.shape().order().isPresent()
                                || shape.rounds() > 2));
    }

    private List<Order> orders() {
        return wish.shape().order().map(List::of).orElse(List.of(Order.values()));
    }

    private List<Integer> rounds(boolean well) {
        if (wish.shape().rounds().isPresent()) {
            return List.of(wish.shape().rounds().get());
        }
        List<Integer> rounds = new ArrayList<>();
        int least = Math.max(well ? 2 : 1, wish.shape().bars().size());
        int most = wish.shape().bars().isEmpty() ? LAYOUTS.mostRounds() : MOST_BARS / 4;
        for (int i = least; i <= Math.max(least, most); i++) {
            rounds.add(i);
        }
        return rounds;
    }

    /**
     * One list of cut widths for each candidate: as wished, or those of which the stash has most, then whole steps of
     * the ruler.
     */
    private List<List<Wish.Cut<Length>>> widths() {
        if (!wish.shape().bars().isEmpty()) {
            return List.of(wish.shape().bars());
        }
        Set<Length> widths = new LinkedHashSet<>(idea.widths());
        widths.addAll(ready.widths());
        Length step = ruler.isMetric() ? Length.cm(1) : Length.inches(1, 2);
        ProposalParameters.Steps steps = ruler.isMetric() ? LAYOUTS.centimetres() : LAYOUTS.halfInches();
        for (int i = steps.first(); i <= steps.last(); i++) {
            widths.add(step.times(i));
        }
        return widths.stream()
                .map(width -> List.of(new Wish.Cut<>(width, false)))
                .toList();
    }

    /** The narrowest bar we propose, finished: 1 in or 2.5 cm (ours). */
    private Length leastBar() {
        return ruler.isMetric() ? Length.mm(25) : Length.inches(1);
    }

    private List<LayoutCandidate> shaped(Order order, List<Wish.Cut<Length>> bars, int rounds, Optional<Size> size) {
        List<Layout.Course> courses = finished(order, bars, rounds);
        if (courses.size() > MOST_BARS
                || courses.stream()
                        .anyMatch(course -> course.width().isLessThan(leastBar().min(narrowest(bars))))) {
            return List.of();
        }
        List<Sentence> chosen = new ArrayList<>();
        if (wish.shape().order().isEmpty()) {
            chosen.add(PlanningSentences.chosenOrder(PlanningSentences.order(order.name())));
        }
        if (wish.shape().bars().isEmpty()) {
            chosen.add(PlanningSentences.chosenBars(Argument.of(bars.get(0).measure(), Rounding.NEAREST)));
        }
        if (wish.shape().rounds().isEmpty()) {
            chosen.add(PlanningSentences.chosenRounds(rounds));
        }
        return hearths(courses, size).stream()
                .flatMap(hearth -> fitted(hearth, courses, size, rounds, chosen).stream()
                        .map(fit -> new LayoutCandidate(order, rounds, fit.layout(), fit.chosen())))
                .toList();
    }

    /**
     * The narrowest bar allowed. A wished width may finish narrower than we would propose, and is not refused for that.
     */
    private Length narrowest(List<Wish.Cut<Length>> bars) {
        return wish.shape().bars().isEmpty() ? leastBar() : new Length(Math.min(1, bars.size()));
    }

    private List<Layout.Course> finished(Order order, List<Wish.Cut<Length>> bars, int rounds) {
        List<Layout.Course> cut = Layout.courses(
                order, rounds, bars.stream().map(Wish.Cut::measure).toList());
        if (bars.get(0).finished()) {
            return cut;
        }
        return Layout.finishedOfCut(cut, making);
    }

    private record Fit(Layout layout, List<Sentence> chosen) {}

    /** Finished hearths to try: as wished, what the size leaves, or what single pieces hold. */
    private List<Size> hearths(List<Layout.Course> courses, Optional<Size> size) {
        if (wish.shape().hearth().isPresent()) {
            Wish.Cut<Size> hearth = wish.shape().hearth().get();
            return List.of(
                    hearth.finished() ? hearth.measure() : Layout.hearthOfCut(hearth.measure(), courses, making));
        }
        if (size.isPresent()) {
            return List.of(new Size(
                    size.get().width().minus(across(courses, true)),
                    size.get().height().minus(across(courses, false))));
        }
        List<Size> sizes = new ArrayList<>();
        Length step = ruler.isMetric() ? Length.cm(4) : Length.inches(2);
        for (int i = LAYOUTS.hearths().first(); i <= LAYOUTS.hearths().last(); i++) {
            sizes.add(Layout.hearthOfCut(Size.square(step.times(i)), courses, making));
        }
        return sizes;
    }

    /** The layout fitted to the size: the outer round is cut wider or narrower where hearth and bars are both given. */
    private Optional<Fit> fitted(
            Size hearth, List<Layout.Course> courses, Optional<Size> size, int rounds, List<Sentence> chosen) {
        if (!isHearth(hearth)) {
            return Optional.empty();
        }
        List<Sentence> words = new ArrayList<>(chosen);
        List<Layout.Course> fitted = courses;
        if (size.isPresent() && wish.shape().hearth().isPresent()) {
            Size natural = new Layout(hearth, courses).finished();
            if (wish.target().atLeast()) {
                return reaches(hearth, courses, size.get(), rounds)
                        ? Optional.of(new Fit(new Layout(hearth, courses), words))
                        : Optional.empty();
            }
            if (!natural.equals(size.get())) {
                Optional<List<Layout.Course>> outer = outerFitted(courses, natural, size.get());
                if (outer.isEmpty()) {
                    return Optional.empty();
                }
                fitted = outer.get();
                words.add(PlanningSentences.chosenOuter(Argument.of(size.get(), Rounding.DOWN)));
            }
        }
        if (wish.shape().hearth().isEmpty()) {
            Size cut = Layout.hearthEdges(fitted, making).around(hearth);
            words.add(PlanningSentences.chosenHearth(Argument.of(cut, Rounding.UP)));
        }
        return Optional.of(new Fit(new Layout(hearth, fitted), words));
    }

    /** Whether the bars reach the size, and would not with a round less unless the rounds are wished. */
    private boolean reaches(Size hearth, List<Layout.Course> courses, Size size, int rounds) {
        boolean enough = new Layout(hearth, courses).finished().holds(size);
        if (!enough || wish.shape().rounds().isPresent() || rounds == 1) {
            return enough;
        }
        int fewer = courses.size() * (rounds - 1) / rounds;
        return !new Layout(hearth, courses.subList(0, fewer)).finished().holds(size);
    }

    private Optional<List<Layout.Course>> outerFitted(List<Layout.Course> courses, Size natural, Size wanted) {
        Length wide = wanted.width().minus(natural.width());
        Length high = wanted.height().minus(natural.height());
        List<Layout.Course> fitted = new ArrayList<>(courses);
        for (boolean upright : new boolean[] {true, false}) {
            Length missing = upright ? wide : high;
            List<Integer> last = outermost(courses, upright);
            Length each = missing.dividedBy(last.size(), Rounding.UP).roundedTo(ruler.step(), Rounding.UP);
            for (int i = 0; i < last.size(); i++) {
                Length more = i + 1 < last.size() ? each : missing.minus(each.times(last.size() - 1L));
                Layout.Course was = fitted.get(last.get(i));
                Length width = was.width().plus(more);
                Length limit = was.width().times(2);
                if (width.isLessThan(leastBar()) || width.isMoreThan(limit)) {
                    return Optional.empty();
                }
                fitted.set(last.get(i), new Layout.Course(was.side(), width));
            }
        }
        return Optional.of(List.copyOf(fitted));
    }

    /** The last bar on each of the two sides of an axis. */
    private static List<Integer> outermost(List<Layout.Course> courses, boolean upright) {
        List<Integer> last = new ArrayList<>();
        for (Side side : Side.values()) {
            for (int i = courses.size() - 1; side.isUpright() == upright && i >= 0; i--) {
                if (courses.get(i).side() == side) {
                    last.add(i);
                    break;
                }
            }
        }
        return last;
    }

    /** Whether a hearth is large enough to be seen: at least two least bars wide, unless it is wished. */
    private boolean isHearth(Size hearth) {
        Length least =
                wish.shape().hearth().isPresent() ? new Length(1) : leastBar().times(2);
        return !hearth.width().isLessThan(least) && !hearth.height().isLessThan(least);
    }

    private static Length across(List<Layout.Course> courses, boolean upright) {
        Length total = Length.ZERO;
        for (Layout.Course course : courses) {
            if (course.side().isUpright() == upright) {
                total = total.plus(course.width());
            }
        }
        return total;
    }
}
