package hearthcloth.wrap.pleat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Cloth folded to and fro under a middle pleat, side by side and as a fan. */
class PleatingTest {

    private static final FacetPlane LEVEL = new FacetPlane("level", Vector.UP);
    private static final Point AXIS = new Point(0.6, 0.8);
    private static final Vector ALONG = new Vector(0, 1, 0);
    private static final Vector SIDE = new Vector(-1, 0, 0);
    private static final Vector AT = new Vector(5, 6, 7);

    private static final Pleating SIDE_BY_SIDE = new Pleating.Parallel(new Point(3, 2), AXIS, AT, ALONG, SIDE, 4);
    private static final Pleating FAN = new Pleating.Fan(new Point(3, 2), AXIS, AT, ALONG, SIDE, Math.toRadians(12));

    private static final ConvexPolygon REGION = ConvexPolygon.rectangle(4, 4, 40, 35);

    /** To and fro between −half and half, 0 at 0. */
    private static double wave(double x, double half) {
        long fold = Math.round(x / (2 * half));
        double rest = x - 2 * half * fold;
        return fold % 2 == 0 ? rest : -rest;
    }

    @Test
    void side_by_side_the_way_across_goes_to_and_fro_and_the_way_along_stays() {
        LaidCloth laid = new LaidCloth(SIDE_BY_SIDE.lay(REGION, Facet.Part.WALL, LEVEL))
                .isAllOf(REGION)
                .isNeverStretched()
                .isOneSheet(1);
        Random random = new Random(2);
        for (int i = 0; i < 200; i++) {
            Point point = LaidCloth.some(REGION, random);
            double x = point.x() - 3;
            double y = point.y() - 2;
            double along = 0.6 * x + 0.8 * y;
            double across = wave(-0.8 * x + 0.6 * y, 4);
            laid.hasAt(point, AT.plus(ALONG.times(along)).plus(SIDE.times(across)));
        }
    }

    @Test
    void as_a_fan_the_distance_from_the_tip_stays_and_the_angle_goes_to_and_fro() {
        LaidCloth laid = new LaidCloth(FAN.lay(REGION, Facet.Part.TOP, LEVEL))
                .isAllOf(REGION)
                .isNeverStretched()
                .isOneSheet(3);
        Random random = new Random(4);
        for (int i = 0; i < 200; i++) {
            Point point = LaidCloth.some(REGION, random);
            double far = Math.hypot(point.x() - 3, point.y() - 2);
            double angle = Math.atan2(point.y() - 2, point.x() - 3) - Math.atan2(0.8, 0.6);
            double folded = wave(angle, Math.toRadians(12));
            laid.hasAt(point, AT.plus(ALONG.times(far * Math.cos(folded))).plus(SIDE.times(far * Math.sin(folded))));
        }
    }

    @Test
    void the_outermost_pleats_come_first_and_only_the_middle_shows() {
        for (Pleating pleating : List.of(SIDE_BY_SIDE, FAN)) {
            List<Facet> facets = pleating.lay(REGION, Facet.Part.TOP, LEVEL);
            List<Integer> order = facets.stream()
                    .map(facet -> Math.abs(pleating.pleat(facet.cloth().middle())))
                    .toList();

            assertThat(order).isSortedAccordingTo((one, other) -> other - one);
            assertThat(order.get(0)).isPositive();
            assertThat(facets.stream().filter(facet -> facet.part() == Facet.Part.TOP))
                    .containsExactly(facets.get(facets.size() - 1));
            assertThat(facets.subList(0, facets.size() - 1))
                    .extracting(Facet::part)
                    .containsOnly(Facet.Part.TUCK);
        }
    }

    @Test
    void a_point_belongs_to_the_pleat_that_holds_it_counted_to_the_left() {
        Random random = new Random(5);
        for (Pleating pleating : List.of(SIDE_BY_SIDE, FAN)) {
            for (int i = 0; i < 100; i++) {
                Point point = LaidCloth.some(REGION, random);
                ConvexPolygon spot =
                        ConvexPolygon.rectangle(point.x() - 1e-3, point.y() - 1e-3, point.x() + 1e-3, point.y() + 1e-3);
                ConvexPolygon within = pleating.within(spot, pleating.pleat(point));
                assertThat(within.area()).isGreaterThan(0.2 * spot.area());
            }
        }
        // 9 mm to the left of the middle line, which is the second pleat of 8 mm; 9 to the right
        assertThat(SIDE_BY_SIDE.pleat(new Point(3 - 7.2, 2 + 5.4))).isEqualTo(1);
        assertThat(SIDE_BY_SIDE.pleat(new Point(3 + 7.2, 2 - 5.4))).isEqualTo(-1);
        assertThat(SIDE_BY_SIDE.most(ConvexPolygon.rectangle(3, 2, 3.1, 2.1))).isZero();
    }

    /** A corner folded away inside: 30 × 20 cm of base, 8 cm high, the cloth 25 cm beyond both edges. */
    @Test
    void the_ear_of_a_box_is_one_sheet_of_all_the_spare_cloth_inside_the_box() {
        Point a = new Point(1, 0);
        Point b = new Point(0, 1);
        ConvexPolygon spare = ConvexPolygon.rectangle(150, 100, 400, 350);
        Ear ear = new Ear(a, b, 150, 100, 80, 200, spare, 1e6, 1e6, Panels.Sides.BOX);
        List<Facet> walls = new ArrayList<>(ear.wallB());
        walls.addAll(ear.wallA());
        List<Facet> top = new ArrayList<>(ear.topB());
        top.addAll(ear.topA());
        top.addAll(ear.topC());
        List<Facet> all = new ArrayList<>(walls);
        all.addAll(top);

        new LaidCloth(all)
                .isAllOf(spare)
                .isNeverStretched()
                .isOneSheet(6)
                // the base's corner stays; along either edge the spare cloth goes up the upright edge
                .hasAt(new Point(150, 100), new Vector(150, 100, 0))
                .hasAt(new Point(150, 180), new Vector(150, 100, 80))
                .hasAt(new Point(230, 100), new Vector(150, 100, 80));
        assertThat(all).extracting(Facet::part).containsOnly(Facet.Part.TUCK);
        assertThat(walls)
                .allSatisfy(facet -> assertThat(facet.corners()).allSatisfy(corner -> {
                    assertThat(corner.x()).isCloseTo(150, within(1e-6));
                    assertThat(corner.y()).isBetween(-100.000001, 100.000001);
                    assertThat(corner.z()).isBetween(-0.000001, 80.000001);
                }));
        assertThat(top)
                .allSatisfy(facet -> assertThat(facet.corners()).allSatisfy(corner -> {
                    assertThat(corner.z()).isCloseTo(80, within(1e-6));
                    assertThat(corner.x()).isBetween(-150.000001, 150.000001);
                    assertThat(corner.y()).isBetween(-100.000001, 100.000001);
                }));
    }

    @Test
    void what_goes_with_a_flap_to_its_knot_is_no_part_of_the_ear() {
        Point a = new Point(1, 0);
        Point b = new Point(0, 1);
        ConvexPolygon spare = ConvexPolygon.rectangle(150, 100, 400, 350);
        Ear ear = new Ear(a, b, 150, 100, 80, 200, spare, 180, 140, Panels.Sides.BOX);
        double area = Stream.of(ear.wallA(), ear.wallB(), ear.topA(), ear.topB(), ear.topC())
                .flatMap(List::stream)
                .mapToDouble(facet -> facet.cloth().area())
                .sum();

        // q ≤ p up to p = 180: half of 180²; p ≤ q up to q = 140: half of 140²
        assertThat(area).isCloseTo(180 * 180 / 2.0 + 140 * 140 / 2.0, within(1e-6));
    }
}
