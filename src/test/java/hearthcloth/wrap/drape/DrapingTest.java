package hearthcloth.wrap.drape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.ConvexPolygon;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;

/** Holds the draping of cloth to shapes that are known from outside: geometry, and the bending of fabrics as measured. */
class DrapingTest {

    private static final Stuff COTTON = new Stuff(140, 1e-5, 60, 0.115, 0.12);

    /** Holds some points where they lie. */
    private record Held(IntPredicate held) implements Handling {

        @Override
        public double busy() {
            return 0;
        }

        @Override
        public int phase(double time) {
            return 0;
        }

        @Override
        public void loosen(double time, Sheet sheet) {}

        @Override
        public void hold(double time, Sheet sheet) {
            for (int k = 0; k < sheet.points(); k++) {
                sheet.ease[k] = held.test(k) ? 0 : 1;
            }
        }

        @Override
        public void pull(double time, Sheet sheet, int point, double[] pull) {}
    }

    private static Sheet flat(ConvexPolygon cloth, int fine, Stuff stuff, double height) {
        Grid grid = Grid.of(cloth, fine, 1, Creases.NONE);
        Sheet sheet = new Sheet(grid, stuff.thickness() * grid.gap);
        for (int k = 0; k < grid.points(); k++) {
            sheet.x[3 * k] = grid.u[k];
            sheet.x[3 * k + 1] = grid.v[k];
            sheet.x[3 * k + 2] = height;
        }
        return sheet;
    }

    private static void rest(Draping draping, double seconds) {
        while (draping.time() < seconds) {
            draping.step(draping.time() > seconds / 2 ? 20 : 6);
        }
        draping.relax();
    }

    private static double area(Sheet sheet) {
        double twice = 0;
        int[] t = sheet.grid.triangles;
        for (int i = 0; i < t.length; i += 3) {
            double[] u = way(sheet, t[i], t[i + 1]);
            double[] v = way(sheet, t[i], t[i + 2]);
            double x = u[1] * v[2] - u[2] * v[1];
            double y = u[2] * v[0] - u[0] * v[2];
            double z = u[0] * v[1] - u[1] * v[0];
            twice += Math.sqrt(x * x + y * y + z * z);
        }
        return twice / 2;
    }

    private static double[] way(Sheet sheet, int a, int b) {
        double[] way = new double[3];
        for (int i = 0; i < 3; i++) {
            way[i] = sheet.x[3 * b + i] - sheet.x[3 * a + i];
        }
        return way;
    }

    @Test
    void a_square_folded_in_halves_keeps_its_area_and_covers_half_of_it() {
        // pressed, so that the fold does not spring open
        Stuff pressed = new Stuff(140, 1e-9, 60, 0.115, 0.12);
        Sheet sheet = flat(ConvexPolygon.rectangle(-100, -100, 100, 100), 21, pressed, -pressed.off() * 10);
        for (int k = 0; k < sheet.points(); k++) {
            if (sheet.grid.u[k] > 1) {
                sheet.x[3 * k] = -sheet.grid.u[k];
                sheet.x[3 * k + 2] += 3 * COTTON.thickness() * sheet.grid.gap;
            }
        }
        Draping draping = new Draping(sheet, new Held(k -> sheet.grid.u[k] < -5), Solid.NOTHING, pressed);
        rest(draping, 1.2);
        assertThat(area(sheet)).isCloseTo(200 * 200, within(0.005 * 200 * 200));
        double right = 0;
        double wide = 0;
        for (int k = 0; k < sheet.points(); k++) {
            right = Math.max(right, sheet.x[3 * k]);
            wide = Math.max(wide, Math.abs(sheet.x[3 * k + 1]));
        }
        // the hem comes back to the hem but for what the round of the fold takes, less than a gap of the grid
        assertThat(sheet.x[3 * (10 * 21 + 20)]).isCloseTo(-100, within(10.0));
        assertThat(right).isBetween(0.0, 10.0);
        assertThat(2 * wide).isCloseTo(200, within(0.005 * 200));
    }

    @Test
    void a_strip_over_a_cylinder_hangs_down_by_what_half_its_round_leaves() {
        double radius = 60;
        double length = 400;
        double axis = 300;
        Sheet sheet = flat(ConvexPolygon.rectangle(-15, -200, 15, 200), 41, COTTON, axis + radius + 1.5);
        Draping draping = new Draping(sheet, new Held(k -> false), new Solid.Bar(radius, axis), COTTON);
        rest(draping, 1.5);
        double round = radius + COTTON.off() * sheet.grid.gap;
        double hem = axis - (length - Math.PI * round) / 2;
        for (int k = 0; k < sheet.grid.columns; k++) {
            assertThat(sheet.x[3 * k + 2]).isCloseTo(hem, within(0.005 * length));
            assertThat(sheet.x[3 * (sheet.points() - 1 - k) + 2]).isCloseTo(hem, within(0.005 * length));
        }
        assertThat(area(sheet)).isCloseTo(30 * length, within(0.005 * 30 * length));
    }

    /**
     * A horizontal strip that overhangs by twice its bending length, the cube root of rigidity over weight, droops so
     * that the line to its tip falls by 41.5° (Peirce 1930, the cantilever test of ASTM D1388;
     * docs/sources.md#drape).
     */
    @Test
    void a_strip_that_overhangs_by_twice_its_bending_length_droops_by_forty_one_and_a_half_degrees() {
        double bending = 8000;
        // rows along diagonals end a point before the strip's sides, which takes this share of the rigidity
        int wide = 9;
        double share = (2.0 / 3 * wide + 1.0 / 3 * (wide - 2)) / wide;
        Stuff stuff = new Stuff(140, 0.14 * 9.81 * Math.pow(bending / 1000, 3) / share, 60, 0.115, 0.12);
        // a row of points stands for half a gap to either side, so the strip is clamped half a gap before the last held
        // row
        double gap = 2 * bending / 13;
        Sheet sheet = flat(ConvexPolygon.rectangle(0, 0, (wide - 1) * gap, 14 * gap), 15, stuff, 100 * gap);
        Draping draping = new Draping(sheet, new Held(k -> sheet.grid.v[k] < 2.5 * gap), Solid.NOTHING, stuff);
        while (draping.time() < 14) {
            draping.step(2);
        }
        int tip = 3 * (sheet.points() - 1 - sheet.grid.columns / 2);
        int before = tip - 3 * sheet.grid.columns;
        double out = 1.5 * sheet.x[tip + 1] - 0.5 * sheet.x[before + 1] - 1.5 * gap;
        double down = 100 * gap - 1.5 * sheet.x[tip + 2] + 0.5 * sheet.x[before + 2];
        assertThat(Math.toDegrees(Math.atan2(down, out))).isCloseTo(41.5, within(0.03 * 41.5));
    }
}
