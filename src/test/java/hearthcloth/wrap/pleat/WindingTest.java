package hearthcloth.wrap.pleat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A gathered end wound round a prism of radius 40 mm, rising at 20°, begun 55 mm from the cloth's middle. */
class WindingTest {

    private static final double RADIUS = 40;
    private static final double START = 55;
    private static final double ANGLE = Math.toRadians(20);
    private static final double LENGTH = 150;

    private static ConvexPolygon region(int sense) {
        return sense > 0
                ? ConvexPolygon.rectangle(START + 20, -30, START + LENGTH - 20, 30)
                : ConvexPolygon.rectangle(-START - LENGTH + 20, -30, -START - 20, 30);
    }

    private static Winding winding(int sense) {
        return new Winding(new Point(sense, 0), START, RADIUS, new Winding.Line(ANGLE, LENGTH), 8);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, -1})
    void all_of_it_lies_on_the_sides_of_the_prism_and_nothing_below_the_table(int sense) {
        List<Facet> facets = winding(sense).lay(region(sense));

        new LaidCloth(facets).isAllOf(region(sense)).isNeverStretched();
        for (Facet facet : facets) {
            for (Vector corner : facet.corners()) {
                assertThat(facet.plane().out().dot(corner)).isCloseTo(RADIUS, within(1e-9));
                assertThat(facet.plane().out().z()).isZero();
                assertThat(Math.abs(Vector.UP.cross(facet.plane().out()).dot(corner)))
                        .isLessThan(RADIUS * Math.tan(Math.PI / Band.SIDES) + 1e-9);
                assertThat(corner.z()).isGreaterThan(-1e-9);
            }
        }
    }

    /**
     * On the unrolled sides the middle line is straight: after t mm it is t cos 20° round the prism and t sin 20° up. It
     * begins in the middle of the side that faces its corner; the right corner goes anticlockwise, the left clockwise.
     */
    @ParameterizedTest
    @ValueSource(ints = {1, -1})
    void the_middle_line_is_straight_on_the_unrolled_sides(int sense) {
        LaidCloth laid = new LaidCloth(winding(sense).lay(region(sense)));
        double side = 2 * RADIUS * Math.tan(Math.PI / Band.SIDES);
        for (double t = 25; t < LENGTH - 25; t += 7.3) {
            double round = t * Math.cos(ANGLE);
            long j = Math.round(round / side);
            double turn = 2 * Math.PI * j / Band.SIDES;
            double beside = round - j * side;
            // on side j of a prism that is turned so that its side 0 faces to the right
            double x = RADIUS * Math.cos(turn) - beside * Math.sin(turn);
            double y = RADIUS * Math.sin(turn) + beside * Math.cos(turn);
            laid.hasAt(new Point(sense * (START + t), 0), new Vector(sense * x, y, t * Math.sin(ANGLE)));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, -1})
    void only_the_middle_pleat_shows_and_it_is_one_band(int sense) {
        List<Facet> facets = winding(sense).lay(region(sense));
        List<Facet> shown =
                facets.stream().filter(facet -> facet.part() == Facet.Part.CORD).toList();

        assertThat(shown)
                .isNotEmpty()
                .allMatch(facet -> Math.abs(facet.cloth().middle().y()) < 8);
        new LaidCloth(shown).isOneSheet(7);
        assertThat(facets).extracting(Facet::part).containsOnly(Facet.Part.CORD, Facet.Part.TUCK);
        assertThat(facets.indexOf(shown.get(0))).isGreaterThan(0);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, -1})
    void the_motion_of_a_side_is_how_the_middle_pleat_lies_there(int sense) {
        Winding winding = winding(sense);
        double side = 2 * RADIUS * Math.tan(Math.PI / Band.SIDES);
        Vector start = winding.motion(0).at(new Point(sense * START, 0));
        assertThat(start.minus(new Vector(sense * RADIUS, 0, 0)).length()).isLessThan(1e-9);
        // on the line's own length to the middle of side 5
        double t = 5 * side / Math.cos(ANGLE);
        double turn = 2 * Math.PI * 5 / Band.SIDES;
        Vector there = winding.motion(5).at(new Point(sense * (START + t), 0));
        assertThat(there.minus(new Vector(
                                sense * RADIUS * Math.cos(turn), RADIUS * Math.sin(turn), t * Math.sin(ANGLE)))
                        .length())
                .isLessThan(1e-9);
    }
}
