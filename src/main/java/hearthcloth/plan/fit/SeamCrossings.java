package hearthcloth.plan.fit;

import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.measure.Length;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where joins would meet other seams: for each bar of a layout the places along it where a seam of the work ends under
 * it, and the bar it lies against, whose own joins it must avoid as well.
 *
 * @param crossed for each bar, finished distances from its left or top end
 * @param touches pairs of bars that lie long edge to long edge
 */
record SeamCrossings(List<List<Length>> crossed, List<Touch> touches) {

    /**
     * Bar {@code outer} is sewn along bar {@code inner}; the place p on the inner one is p + shift on the outer one.
     */
    record Touch(int inner, int outer, Length shift) {}

    static SeamCrossings of(Layout layout) {
        Map<Side, Edge> edges = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            edges.put(side, new Edge(List.of(), Optional.empty(), Length.ZERO));
        }
        List<List<Length>> crossed = new ArrayList<>();
        List<Touch> touches = new ArrayList<>();
        List<Layout.Slot> slots = layout.slots();
        for (int i = 0; i < slots.size(); i++) {
            Layout.Slot slot = slots.get(i);
            Side side = slot.place().side();
            Edge under = edge(edges, side);
            int bar = i;
            crossed.add(under.runOuts());
            under.bar().ifPresent(inner -> touches.add(new Touch(inner, bar, under.start())));
            edges.put(side, new Edge(List.of(), Optional.of(i), Length.ZERO));
            lengthen(edges, slot, layout, i);
        }
        return new SeamCrossings(List.copyOf(crossed), List.copyOf(touches));
    }

    /** Lengthens the two edges that meet the new bar's ends by its width, with the seam as a new seam end. */
    private static void lengthen(Map<Side, Edge> edges, Layout.Slot slot, Layout layout, int i) {
        Side side = slot.place().side();
        boolean before = side == Side.LEFT || side == Side.TOP;
        Length was = acrossBefore(layout, i, side);
        for (Side other : Side.values()) {
            if (other.isUpright() != side.isUpright()) {
                Edge edge = edge(edges, other);
                edges.put(other, before ? edge.shifted(slot.width()) : edge.with(was));
            }
        }
    }

    /** The extent of the work across the new seam, before bar {@code i} is sewn on. */
    private static Length acrossBefore(Layout layout, int i, Side side) {
        Length total =
                side.isUpright() ? layout.hearth().width() : layout.hearth().height();
        for (Layout.Course course : layout.courses().subList(0, i)) {
            if (course.side().isUpright() == side.isUpright()) {
                total = total.plus(course.width());
            }
        }
        return total;
    }

    private static Edge edge(Map<Side, Edge> edges, Side side) {
        return java.util.Objects.requireNonNull(edges.get(side));
    }

    /** One outer edge of the work: where seams end on it, and the bar whose long edge lies there. */
    private record Edge(List<Length> runOuts, Optional<Integer> bar, Length start) {

        Edge with(Length runOut) {
            List<Length> more = new ArrayList<>(runOuts);
            more.add(runOut);
            return new Edge(List.copyOf(more), bar, start);
        }

        /** The edge with all places moved by {@code width}, and the new seam ending where the old edge began. */
        Edge shifted(Length width) {
            List<Length> moved = new ArrayList<>();
            moved.add(width);
            runOuts.forEach(runOut -> moved.add(runOut.plus(width)));
            return new Edge(List.copyOf(moved), bar, start.plus(width));
        }
    }
}
