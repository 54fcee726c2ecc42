package hearthcloth.wrap.pleat;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Cloth folded to and fro in a plane and along a path, against the triangle wave written down anew. */
class FoldedSheetTest {

    private static final Point RIGHT = new Point(1, 0);
    private static final Point FAR = new Point(0, 1);
    private static final Vector EAST = new Vector(1, 0, 0);
    private static final Vector NORTH = new Vector(0, 1, 0);
    private static final FacetPlane LEVEL = new FacetPlane("level", Vector.UP);

    private static final ConvexPolygon REGION = new ConvexPolygon(
            List.of(new Point(2, 1), new Point(29, 3), new Point(33, 14), new Point(20, 18), new Point(3, 12)));

    /** Up from zero to the room and back, with x counted from zero. */
    private static double wave(double x, double room) {
        double within = x % (2 * room);
        return within <= room ? within : 2 * room - within;
    }

    private static FoldedSheet sheet(double roomAcross, double roomAlong) {
        return new FoldedSheet(
                new Vector(100, 200, 5),
                new FoldedSheet.Run(RIGHT, 2, EAST.times(-1), roomAcross),
                new FoldedSheet.Run(FAR, 1, NORTH, roomAlong),
                LEVEL);
    }

    @Test
    void every_place_lies_where_the_triangle_wave_puts_it() {
        for (List<Facet> facets :
                List.of(sheet(7, 5).inwards(REGION, Facet.Part.TOP), sheet(7, 5).outwards(REGION))) {
            LaidCloth laid =
                    new LaidCloth(facets).isAllOf(REGION).isNeverStretched().isOneSheet(3);
            Random random = new Random(4);
            for (int i = 0; i < 200; i++) {
                Point point = LaidCloth.some(REGION, random);
                laid.hasAt(point, new Vector(100 - wave(point.x() - 2, 7), 200 + wave(point.y() - 1, 5), 5));
            }
        }
    }

    @Test
    void without_an_end_to_its_room_it_lies_flat_in_one_piece() {
        double free = Double.POSITIVE_INFINITY;
        List<Facet> facets = sheet(free, free).inwards(REGION, Facet.Part.TOP);

        assertThat(facets).hasSize(1);
        new LaidCloth(facets).hasAt(new Point(29, 3), new Vector(73, 202, 5));
    }

    /** Four bands of 7 in 27 to 31 mm, three or four of 5. */
    @Test
    void folded_inwards_the_first_band_lies_outermost_and_alone_shows() {
        List<Facet> inwards = sheet(7, 5).inwards(REGION, Facet.Part.TOP);
        Facet last = inwards.get(inwards.size() - 1);
        assertThat(last.part()).isEqualTo(Facet.Part.TOP);
        assertThat(last.cloth().corners()).contains(new Point(2, 1));
        assertThat(inwards.subList(0, inwards.size() - 1))
                .extracting(Facet::part)
                .containsOnly(Facet.Part.TUCK);

        List<Facet> outwards = sheet(7, 5).outwards(REGION);
        assertThat(outwards.get(0).cloth().corners()).contains(new Point(2, 1));
        assertThat(outwards).extracting(Facet::part).containsOnly(Facet.Part.TUCK);
    }

    @Test
    void a_region_that_just_fills_its_room_is_not_folded() {
        ConvexPolygon exact = ConvexPolygon.rectangle(2, 1, 9, 6);
        assertThat(sheet(7, 5).inwards(exact, Facet.Part.TOP)).hasSize(1);
        ConvexPolygon more = ConvexPolygon.rectangle(2, 1, 9.001, 6.001);
        assertThat(sheet(7, 5).inwards(more, Facet.Part.TOP)).hasSize(4);
    }

    private static final FacetPlane WALL = new FacetPlane("wall", EAST.times(-1));

    private static FoldedStrip.Path path() {
        return new FoldedStrip.Path(new Vector(0, 0, 0), 0)
                .on(Vector.UP, 10, Facet.Part.WALL, WALL)
                .on(EAST, 20, Facet.Part.CORD, LEVEL);
    }

    /** Up 10 mm and then 20 mm to the right, 10 mm of the strip showing; the first and the last leg go on. */
    @Test
    void a_strip_follows_its_path_leg_by_leg_with_the_width_pleated_under() {
        FoldedStrip strip = new FoldedStrip(new Point(0, 0), RIGHT, NORTH, 5);
        ConvexPolygon region = ConvexPolygon.rectangle(-6, -12, 40, 12);

        LaidCloth laid = new LaidCloth(strip.lay(region, path().runs()))
                .isAllOf(region)
                .isNeverStretched()
                .isOneSheet(5);

        laid.hasAt(new Point(4, 3), new Vector(0, 3, 4));
        laid.hasAt(new Point(-6, 0), new Vector(0, 0, -6));
        laid.hasAt(new Point(15, -3), new Vector(5, -3, 10));
        laid.hasAt(new Point(40, 0), new Vector(30, 0, 10));
        // pleated to and fro at 5: 7 lies at 3, 12 at −2
        laid.hasAt(new Point(4, 7), new Vector(0, 3, 4));
        laid.hasAt(new Point(4, 12), new Vector(0, -2, 4));
        laid.hasAt(new Point(15, -7), new Vector(5, -3, 10));
    }

    @Test
    void loose_ends_stay_what_they_are_in_every_pleat_and_of_a_wall_only_the_middle_shows() {
        FoldedStrip strip = new FoldedStrip(new Point(0, 0), RIGHT, NORTH, 5);
        List<Facet> facets = strip.lay(ConvexPolygon.rectangle(0, -12, 30, 12), path().runs());

        assertThat(facets)
                .extracting(Facet::part)
                .containsExactly(
                        Facet.Part.TUCK,
                        Facet.Part.TUCK,
                        Facet.Part.WALL,
                        Facet.Part.CORD,
                        Facet.Part.CORD,
                        Facet.Part.CORD);
        assertThat(facets.get(2).cloth().middle().y()).isZero();
        assertThat(facets.get(5).cloth().middle().y()).isZero();
    }

    @Test
    void a_strip_may_begin_anywhere_on_the_cloth_and_turn_to_any_side() {
        FoldedStrip strip = new FoldedStrip(new Point(50, 30), FAR, EAST, 5);
        FoldedStrip.Path up = new FoldedStrip.Path(new Vector(1, 2, 3), 4).on(Vector.UP, 6, Facet.Part.WALL, WALL);
        ConvexPolygon region = ConvexPolygon.rectangle(47, 34, 53, 40);

        // 3 mm to the left of the axis, which is −x on the cloth, lie along the side
        new LaidCloth(strip.lay(region, up.runs()))
                .isAllOf(region)
                .hasAt(new Point(50, 34), new Vector(1, 2, 3))
                .hasAt(new Point(47, 40), new Vector(4, 2, 9));
    }

    @Test
    void a_path_knows_how_far_it_has_gone_and_makes_no_leg_of_nothing() {
        FoldedStrip.Path path = path();
        assertThat(path.gone()).isEqualTo(30);
        assertThat(path.at()).isEqualTo(new Vector(20, 0, 10));
        assertThat(path.on(EAST, 0, Facet.Part.CORD, LEVEL)
                        .on(EAST, -3, Facet.Part.CORD, LEVEL)
                        .to(path.at(), Facet.Part.CORD, LEVEL)
                        .runs())
                .hasSize(2);
        assertThat(path.runs().get(1).start()).isEqualTo(10);
        assertThat(path.runs().get(1).end()).isEqualTo(30);
    }
}
