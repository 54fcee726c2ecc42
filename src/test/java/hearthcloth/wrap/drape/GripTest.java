package hearthcloth.wrap.drape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A {@link Grip} on the right of a cloth of 400 mm under a box whose foot is 50 mm away and 40 mm high. */
class GripTest {

    private static final double BUNCH = 12;

    /** Straight over the box, 20 mm above it, 80 mm long. */
    private static final List<Vector> STRAND = List.of(new Vector(50, 0, 60), new Vector(-30, 0, 60));

    private final Sheet sheet = Sheets.flat(41, 1, 0);
    private final Grip grip = new Grip(sheet, new Point(1, 0), 50, 40, STRAND, BUNCH);

    /** Under the box 50, up its side 40, on to the strand 20, and 6 in a hundred of these 110 as slack. */
    @Test
    void what_lies_beyond_is_counted_along_foot_side_and_way_to_the_knot() {
        assertThat(grip.taken()).isEqualTo(80);
        for (int i = 0; i < 41; i++) {
            int k = 20 * 41 + i;
            double beyond = -200 + 10 * i - (50 + 40 + 20 + 6.6);
            assertThat(grip.beyond(k)).isCloseTo(beyond, within(1e-9));
            assertThat(grip.isKnotted(k)).isEqualTo(beyond > 0 && beyond <= 80);
            assertThat(grip.isTail(k)).isEqualTo(beyond > 80);
        }
    }

    /** A hand that has not lifted yet holds its end flat on the table, every thread as long as it is. */
    @Test
    void at_first_the_end_lies_flat() {
        grip.hold(0, 0);
        assertThat(grip.held()).isNotEmpty();
        for (int k : grip.held()) {
            assertThat(sheet.ease[k]).isZero();
            assertThat(sheet.p[3 * k + 2]).isCloseTo(0, within(1e-9));
            assertThat(sheet.p[3 * k + 1]).isCloseTo(sheet.grid.v[k], within(1e-9));
            assertThat(sheet.p[3 * k] - sheet.grid.u[k])
                    .as("all moved alike")
                    .isCloseTo(sheet.p[3 * grip.held()[0]] - sheet.grid.u[grip.held()[0]], within(1e-9));
        }
    }

    /** In the knot every held point is as far along its strand as it should be, but for half a bunch and its pleats. */
    @Test
    void at_last_the_end_lies_along_its_strand_gathered_to_a_bunch() {
        grip.hold(1, 1);
        for (int k : grip.held()) {
            Vector place = new Vector(sheet.p[3 * k], sheet.p[3 * k + 1], sheet.p[3 * k + 2]);
            Vector on = new Vector(50 - grip.beyond(k), 0, 60);
            assertThat(place.minus(on).length()).isLessThanOrEqualTo(Math.hypot(0.5, 0.45) * BUNCH + 1e-9);
            assertThat(Math.abs(place.y())).isLessThanOrEqualTo(BUNCH / 2 + 1e-9);
        }
    }

    /** While it is tied the free end is held too; once it is tied it hangs as it will. */
    @Test
    void the_free_end_is_let_go_when_the_knot_is_tied() {
        int corner = 20 * 41 + 40;
        assertThat(grip.isTail(corner)).isTrue();
        grip.hold(1, 0.5);
        assertThat(sheet.ease[corner]).isZero();
        grip.hold(1, 1);
        assertThat(sheet.ease[corner]).isEqualTo(1);
    }

    @Test
    void hands_start_and_stop_gently() {
        assertThat(Grip.smooth(-1)).isZero();
        assertThat(Grip.smooth(0)).isZero();
        assertThat(Grip.smooth(0.5)).isEqualTo(0.5);
        assertThat(Grip.smooth(1)).isEqualTo(1);
        assertThat(Grip.smooth(2)).isEqualTo(1);
        assertThat(Grip.smooth(0.01)).isLessThan(0.001);
        assertThat(Grip.smooth(0.99)).isGreaterThan(0.999);
    }
}
