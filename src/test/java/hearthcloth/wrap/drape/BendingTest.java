package hearthcloth.wrap.drape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Laws of {@link Bending}: what is straight stays, nothing gains momentum, and a crumpled cloth comes out flat. */
class BendingTest {

    private static Sheet crumpled(long seed) {
        Sheet sheet = Sheets.flat(5, 1, 0);
        Random chance = new Random(seed);
        for (int i = 0; i < sheet.p.length; i++) {
            sheet.p[i] += 4 * (chance.nextDouble() - 0.5);
        }
        return sheet;
    }

    /** The largest of p − 2q + r over all three points in a row. */
    private static double bend(Sheet sheet) {
        int[] bends = sheet.grid.bends;
        double most = 0;
        for (int q = 0; q < bends.length; q += 3) {
            for (int i = 0; i < 3; i++) {
                double d =
                        sheet.p[3 * bends[q] + i] - 2 * sheet.p[3 * bends[q + 1] + i] + sheet.p[3 * bends[q + 2] + i];
                most = Math.max(most, Math.abs(d));
            }
        }
        return most;
    }

    @Test
    void a_cloth_that_is_stretched_sheared_and_turned_evenly_is_straight_and_stays() {
        Sheet sheet = Sheets.flat(5, 1, 0);
        for (int k = 0; k < sheet.points(); k++) {
            sheet.p[3 * k] = 1.1 * sheet.grid.u[k] + 0.3 * sheet.grid.v[k];
            sheet.p[3 * k + 2] = 0.5 * sheet.grid.u[k] - 0.2 * sheet.grid.v[k] + 7;
        }
        double[] before = sheet.p.clone();
        new Bending(sheet.grid, 0).straighten(sheet);
        assertThat(sheet.p).containsExactly(before, within(1e-9));
    }

    /** Seeds 1 to 10. */
    @Test
    void nothing_gains_momentum() {
        for (int seed = 1; seed <= 10; seed++) {
            Sheet sheet = crumpled(seed);
            double[] before = Sheets.sum(sheet);
            new Bending(sheet.grid, 0.5).straighten(sheet);
            assertThat(Sheets.sum(sheet)).containsExactly(before, within(1e-9));
        }
    }

    /** Seeds 1 to 5. A rigid cloth is flat in the end, a soft one hardly moves in one step. */
    @Test
    void the_stiffer_the_cloth_the_straighter_it_comes_out() {
        for (int seed = 1; seed <= 5; seed++) {
            Sheet rigid = crumpled(seed);
            double was = bend(rigid);
            for (int turn = 0; turn < 3000; turn++) {
                new Bending(rigid.grid, 0).straighten(rigid);
            }
            assertThat(bend(rigid)).isLessThan(1e-4 * was);
            Sheet soft = crumpled(seed);
            new Bending(soft.grid, 1e6).straighten(soft);
            assertThat(bend(soft)).isCloseTo(was, within(1e-3 * was));
        }
    }

    /** One point alone is free, its middle row's neighbour ten millimetres too high: it comes to the line between. */
    @Test
    void a_point_between_held_ones_comes_to_the_line_between_them() {
        Sheet sheet = Sheets.flat(3, 1, 0);
        java.util.Arrays.fill(sheet.ease, 0);
        sheet.ease[4] = 1;
        sheet.p[3 * 4 + 2] = 10;
        double[] before = sheet.p.clone();
        new Bending(sheet.grid, 0).straighten(sheet);
        for (int i = 0; i < before.length; i++) {
            assertThat(sheet.p[i]).isCloseTo(i == 14 ? 0 : before[i], within(1e-9));
        }
    }
}
