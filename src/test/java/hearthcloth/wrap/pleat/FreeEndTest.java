package hearthcloth.wrap.pleat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.ReefKnot;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** What comes out of a knot: an end that keeps its length and width, and two ends tied to a handle. */
class FreeEndTest {

    private static final Point RIGHT = new Point(1, 0);
    private static final Vector EAST = new Vector(1, 0, 0);
    private static final Vector NORTH = new Vector(0, 1, 0);
    private static final Vector AT = new Vector(7, 0, 90);

    /** A cloth's corner, 100 mm of it beyond u = 200. */
    private static final ConvexPolygon END =
            new ConvexPolygon(List.of(new Point(300, 0), new Point(200, 100), new Point(200, -100)));

    private static final FreeEnd FREE = new FreeEnd(new Point(200, 0), RIGHT, AT, EAST, NORTH, Vector.UP);

    /** The place in space of the middle line after so many millimetres. */
    private static Function<Double, Vector> middle(List<Facet> facets) {
        LaidCloth laid = new LaidCloth(facets);
        return far -> laid.at(new Point(200 + far, 0)).get(0);
    }

    private static void isAllOfOneEnd(List<Facet> facets) {
        new LaidCloth(facets).isAllOf(END).isNeverStretched();
        assertThat(facets).extracting(Facet::part).containsOnly(Facet.Part.TAIL);
        Vector before = AT;
        for (double far = 1; far < 100; far++) {
            Vector now = middle(facets).apply(far);
            assertThat(now.minus(before).length()).as("step to %s", far).isBetween(0.5, 1 + 1e-6);
            assertThat(now.y()).isCloseTo(0, within(1e-9));
            before = now;
        }
    }

    @Test
    void an_end_with_room_rises_then_droops_and_keeps_its_whole_cloth() {
        List<Facet> facets = FREE.lay(END, 100, Double.POSITIVE_INFINITY);

        isAllOfOneEnd(facets);
        Function<Double, Vector> middle = middle(facets);
        assertThat(middle.apply(19.0).z()).isGreaterThan(AT.z() + 5);
        double top = middle.apply(59.0).z();
        assertThat(top).isGreaterThan(middle.apply(39.0).z());
        assertThat(middle.apply(79.0).z()).isLessThan(top);
        assertThat(middle.apply(99.0).z()).isLessThan(middle.apply(79.0).z());
        // the slopes at both ends, 28° up and 24° down, read off the line
        Vector first = middle.apply(10.0).minus(middle.apply(5.0));
        assertThat(Math.toDegrees(Math.atan2(first.z(), first.x()))).isCloseTo(28, within(1e-6));
        Vector last = middle.apply(98.0).minus(middle.apply(90.0));
        assertThat(Math.toDegrees(Math.atan2(last.z(), last.x()))).isCloseTo(-24, within(1e-6));
    }

    @Test
    void where_the_gift_ends_under_it_an_end_hangs_down_there() {
        for (double room : new double[] {-10, 0, 2, 15, 30, 60, 85}) {
            List<Facet> facets = FREE.lay(END, 100, room);
            isAllOfOneEnd(facets);
            Vector last = middle(facets).apply(99.0).minus(middle(facets).apply(95.0));
            assertThat(Math.toDegrees(Math.atan2(last.z(), last.x())))
                    .as("room %s", room)
                    .isCloseTo(-74, within(1e-6));
            // nothing stands out beyond the room but by the slope of what hangs
            double most = Math.max(0, room) + (100 - Math.max(0, room)) * Math.cos(Math.toRadians(74));
            assertThat(middle(facets).apply(99.9).x() - AT.x())
                    .as("room %s", room)
                    .isLessThan(most + 1e-6);
        }
    }

    @Test
    void held_by_a_hand_it_is_straight() {
        List<Facet> facets = FREE.held(END, 60);

        isAllOfOneEnd(facets);
        Vector tip = AT.plus(EAST.times(50)).plus(Vector.UP.times(100 * Math.sqrt(3) / 2));
        new LaidCloth(facets)
                .hasAt(
                        new Point(300 - 1e-3, 0),
                        tip.minus(EAST.times(0.0005)).minus(Vector.UP.times(0.001 * Math.sqrt(3) / 2)));
    }

    /** Up 10 mm at 55°, across 8 level, down 15 at 42°, level as far as the gift goes, and then down. */
    @Test
    void laid_over_something_it_goes_up_across_down_and_on() {
        List<Facet> facets = FREE.over(END, new double[] {10, 8, 15}, 40);

        isAllOfOneEnd(facets);
        double up = 10 * Math.sin(Math.toRadians(55));
        double out = 10 * Math.cos(Math.toRadians(55));
        double down = 15 * Math.sin(Math.toRadians(42));
        LaidCloth laid = new LaidCloth(facets);
        laid.hasAt(new Point(214, 0), AT.plus(EAST.times(out + 4)).plus(Vector.UP.times(up)));
        laid.hasAt(
                new Point(234, 0),
                AT.plus(EAST.times(out + 8 + 15 * Math.cos(Math.toRadians(42)) + 1))
                        .plus(Vector.UP.times(up - down)));
        Vector last = middle(facets).apply(99.0).minus(middle(facets).apply(95.0));
        assertThat(Math.toDegrees(Math.atan2(last.z(), last.x()))).isCloseTo(-74, within(1e-6));
    }

    /** The pleats end under a kite of 22½° to either side; turned back about the knot nothing is farther away. */
    @Test
    void only_a_kite_about_the_middle_is_wide() {
        for (Facet facet : FREE.held(END, 0)) {
            for (Vector corner : facet.corners()) {
                Vector from = corner.minus(AT);
                assertThat(Math.abs(from.y())).isLessThan(from.x() * Math.tan(Math.PI / 8) + 1e-6);
            }
        }
    }

    private static HandleLoop.End end(int sense, double length) {
        Point axis = new Point(0, sense);
        Point from = axis.times(400);
        ConvexPolygon cloth = new ConvexPolygon(List.of(
                axis.times(400 + length),
                from.plus(axis.left().times(length / 2)),
                from.minus(axis.left().times(length / 2))));
        return new HandleLoop.End(List.of(cloth), from, axis, sense);
    }

    /**
     * Ends of 300 mm, 10 mm thick, that cross: 2 · 10 mm to the crossing, 30 stay free, a thin tip of 0.25 mm cloth takes
     * 49 · 16 · 0.25/π = 62.389 for its knot (docs/sources.md#bunch, #knot-take-up), and the handle has 187.611.
     */
    @Test
    void a_handle_has_what_crossing_knot_and_free_tips_leave() {
        List<Facet> facets = new ArrayList<>();
        HandleLoop.End ahead = end(1, 300);
        HandleLoop.End behind = end(-1, 320);
        ReefKnot knot = new HandleLoop(new Vector(3, 4, 200), NORTH, 10, true).lay(ahead, behind, facets);

        assertThat(knot.taken()).isCloseTo(62.389, within(1e-3));
        assertThat(knot.bunch()).isCloseTo(62.389 / 7, within(1e-3));
        assertThat(knot.leads()).extracting(lead -> lead.axis().y()).containsExactly(-1.0, 1.0);
        assertThat(knot.leads().get(1).from().y()).isCloseTo(400 + 207.611, within(1e-3));
        assertThat(knot.at().x()).isCloseTo(3, within(1e-9));
        assertThat(knot.at().y()).isCloseTo(4, within(1e-9));
        assertThat(knot.at().z()).isBetween(200 + 100.0, 200 + 20 + 187.611 + 8.913);
        double area = facets.stream().mapToDouble(facet -> facet.cloth().area()).sum();
        assertThat(area).isCloseTo(300 * 150 + 320 * 160, within(1e-3));
        new LaidCloth(facets).isNeverStretched();
    }

    /** Ends of 90 mm: 15 to the crossing, 9 free, and the handle still has its third, 30; the knot takes the 36 left. */
    @Test
    void a_handle_of_short_ends_is_still_a_third_of_them() {
        List<Facet> facets = new ArrayList<>();
        ReefKnot knot = new HandleLoop(new Vector(0, 0, 0), NORTH, 10, true).lay(end(-1, 90), end(1, 90), facets);
        assertThat(knot.taken()).isCloseTo(36, within(1e-9));
        assertThat(knot.leads().get(0).from().y()).isCloseTo(-445, within(1e-9));

        ReefKnot straight =
                new HandleLoop(new Vector(0, 0, 0), NORTH, 10, false).lay(end(-1, 90), end(1, 90), new ArrayList<>());
        // without a crossing a fifth of the bunch, 2 mm, is gone before the handle
        assertThat(straight.leads().get(0).from().y()).isCloseTo(-432, within(1e-9));
    }
}
