package hearthcloth.cloth.layout;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Edges;
import hearthcloth.cloth.Half;
import hearthcloth.cloth.Join;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Seam;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A hearth and the bars laid round it, before fabrics are chosen: finished sizes only. Immutable.
 *
 * @param hearth finished
 * @param courses one for each bar, in sewing order, widths finished
 */
public record Layout(Size hearth, List<Course> courses) {

    /** A bar in the plan: the side of the work it goes to, and its width. */
    public record Course(Side side, Length width) {}

    /**
     * A bar with everything that follows from the bars before it.
     *
     * @param place its name, part 0
     * @param size finished, lying as it does in the cloth
     */
    public record Slot(Place.Bar place, Size size) {

        /** The finished extent along the seam that sews it on. */
        public Length length() {
            return place.side().isUpright() ? size.height() : size.width();
        }

        public Length width() {
            return place.side().isUpright() ? size.width() : size.height();
        }
    }

    /**
     * One part of a bar, from its left or top end.
     *
     * @param length finished; the lengths of a bar's parts add up to the bar's
     */
    public record Part(String fabric, Showing showing, Length length) {}

    public Layout {
        courses = List.copyOf(courses);
        if (!hearth.width().isPositive() || !hearth.height().isPositive()) {
            throw new IllegalArgumentException("nothing would be left of the hearth: it would finish at " + hearth);
        }
        for (Course course : courses) {
            if (!course.width().isPositive()) {
                throw new IllegalArgumentException(
                        "nothing would be left of a bar: it would finish at " + course.width());
            }
        }
    }

    /**
     * The bars of {@code rounds} rounds in an order; those of round r are as wide as {@code widths} says (the last
     * width repeats).
     */
    public static List<Course> courses(Order order, int rounds, List<Length> widths) {
        List<Course> courses = new ArrayList<>();
        for (int round = 0; round < rounds; round++) {
            Length width = widths.get(Math.min(round, widths.size() - 1));
            for (Side side : order.sides()) {
                courses.add(new Course(side, width));
            }
        }
        return List.copyOf(courses);
    }

    /**
     * The finished widths of bars cut as {@code cut}: each finishes at its cut width less what its two long edges lose, so that
     * of strips cut alike the outer round shows less because of the hem. A width may come out at zero or less, which no layout
     * accepts.
     */
    public static List<Course> finishedOfCut(List<Course> cut, Making making) {
        List<Course> finished = new ArrayList<>();
        for (int i = 0; i < cut.size(); i++) {
            Length lost = making.seam().wide().plus(outer(cut, i, making)).plus(making.trim());
            finished.add(new Course(cut.get(i).side(), cut.get(i).width().minus(lost)));
        }
        return List.copyOf(finished);
    }

    /** The finished hearth that a hearth cut to {@code cut} leaves within {@code courses}. */
    public static Size hearthOfCut(Size cut, List<Course> courses, Making making) {
        Edges edges = hearthEdges(courses, making);
        return new Size(
                cut.width().minus(edges.left()).minus(edges.right()),
                cut.height().minus(edges.top()).minus(edges.bottom()));
    }

    /** The allowances of the hearth on each side: the narrow one under a bar, the hem's where no bar comes. */
    public static Edges hearthEdges(List<Course> courses, Making making) {
        Edges edges = Edges.all(making.hem().allowance());
        for (Course course : courses) {
            edges = edges.with(course.side(), making.seam().narrow());
        }
        return edges;
    }

    /** The outer allowance of bar {@code i}: the narrow one under the next bar on that side, otherwise the hem's. */
    private static Length outer(List<Course> courses, int i, Making making) {
        Side side = courses.get(i).side();
        boolean covered = courses.stream().skip(i + 1L).anyMatch(later -> later.side() == side);
        return covered ? making.seam().narrow() : making.hem().allowance();
    }

    /** The bars with their names and finished sizes. A round ends when a side comes again. */
    public List<Slot> slots() {
        List<Slot> slots = new ArrayList<>();
        Set<Side> seen = EnumSet.noneOf(Side.class);
        int round = 1;
        Size work = hearth;
        for (Course course : courses) {
            if (!seen.add(course.side())) {
                round++;
                seen.clear();
                seen.add(course.side());
            }
            Join join = join(course.side());
            Size bar = join.size(course.width(), join.edge(work));
            slots.add(new Slot(new Place.Bar(round, seen.size() - 1, course.side(), 0), bar));
            work = join.joined(work, bar);
        }
        return List.copyOf(slots);
    }

    /** The finished size of the whole. */
    public Size finished() {
        Size work = hearth;
        for (Course course : courses) {
            Join join = join(course.side());
            work = join.joined(work, join.size(course.width(), join.edge(work)));
        }
        return work;
    }

    /**
     * The tree: each bar wraps the work it is sewn to; within a bar each part wraps the next.
     *
     * @param bars for each course the parts of its bar, from its left or top end
     * @throws IllegalArgumentException when the parts of a bar do not add up to its length
     */
    public Assembly sewn(String hearthFabric, Showing showing, List<List<Part>> bars) {
        Assembly work = new Patch(new Place.Hearth(), hearthFabric, hearth, showing);
        List<Slot> slots = slots();
        for (int i = 0; i < slots.size(); i++) {
            Assembly bar = bar(slots.get(i), bars.get(i));
            Side side = slots.get(i).place().side();
            work = side == Side.RIGHT || side == Side.BOTTOM
                    ? Seam.of(join(side), Half.SECOND, work, bar)
                    : Seam.of(join(side), Half.FIRST, /* first= */ bar, /* second= */ work);
        }
        return work;
    }

    private static Assembly bar(Slot slot, List<Part> parts) {
        Length total = parts.stream().map(Part::length).reduce(Length.ZERO, Length::plus);
        if (!total.equals(slot.length())) {
            throw new IllegalArgumentException(
                    slot.place().label() + " is " + slot.length() + " long, its parts " + total);
        }
        Join along = slot.place().side().isUpright() ? Join.BELOW : Join.BESIDE;
        List<Assembly> patches = new ArrayList<>();
        for (Part part : parts) {
            Place.Bar place = parts.size() == 1 ? slot.place() : slot.place().part(patches.size() + 1);
            patches.add(new Patch(place, part.fabric(), along.size(part.length(), slot.width()), part.showing()));
        }
        return patches.stream()
                .reduce((first, second) -> Seam.of(along, Half.FIRST, first, second))
                .orElseThrow(() -> new IllegalArgumentException(slot.place().label() + " has no parts"));
    }

    private static Join join(Side side) {
        return side.isUpright() ? Join.BESIDE : Join.BELOW;
    }
}
