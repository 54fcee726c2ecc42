package hearthcloth.wrap.drape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Laws of {@link Strain}: threads do not stretch, nothing gains momentum, and what is pushed gives way. */
class StrainTest {

    private static double longest(Sheet sheet, int from, int to) {
        Grid grid = sheet.grid;
        double most = 0;
        for (int e = from; e < to; e++) {
            double square = 0;
            for (int i = 0; i < 3; i++) {
                double d = sheet.p[3 * grid.lines[2 * e] + i] - sheet.p[3 * grid.lines[2 * e + 1] + i];
                square += d * d;
            }
            most = Math.max(most, Math.sqrt(square) / grid.rest[e] - 1);
        }
        return most;
    }

    @Test
    void a_cloth_at_rest_stays_wherever_it_lies() {
        Sheet sheet = Sheets.flat(5, 1, 0);
        for (int k = 0; k < sheet.points(); k++) {
            // turned upright about the near hem, which keeps every length
            sheet.p[3 * k + 2] = sheet.grid.v[k];
            sheet.p[3 * k + 1] = 3;
        }
        double[] before = sheet.p.clone();
        new Strain(sheet.grid, 300, 1).pull(sheet, true);
        assertThat(sheet.p).containsExactly(before, within(1e-9));
    }

    /** Seeds 1 to 5: every place moved by up to a fifth of a gap each way. */
    @Test
    void pulled_to_and_fro_threads_come_back_to_their_length_and_nothing_gains_momentum() {
        for (int seed = 1; seed <= 5; seed++) {
            Sheet sheet = Sheets.flat(6, 1, 0);
            Random chance = new Random(seed);
            for (int i = 0; i < sheet.p.length; i++) {
                sheet.p[i] += 4 * (chance.nextDouble() - 0.5);
            }
            double[] before = Sheets.sum(sheet);
            assertThat(longest(sheet, 0, sheet.grid.threads)).isGreaterThan(0.1);
            Strain strain = new Strain(sheet.grid, 300, 5);
            for (int turn = 0; turn < 400; turn++) {
                strain.pull(sheet, turn % 2 == 0);
            }
            assertThat(longest(sheet, 0, sheet.grid.threads)).isLessThan(1e-3);
            // the bias locks at three in a hundred
            assertThat(longest(sheet, sheet.grid.threads, sheet.grid.rest.length))
                    .isLessThan(0.035);
            assertThat(Sheets.sum(sheet)).containsExactly(before, within(1e-6));
        }
    }

    /** A corner five millimetres too far from its neighbour comes back; five too near it is hardly pushed. */
    @Test
    void a_stretched_thread_pulls_and_a_slack_one_hardly_pushes() {
        Sheet far = corner(-5);
        new Strain(far.grid, 300, 5).pull(far, true);
        assertThat(far.p[0]).isCloseTo(far.grid.u[0], within(1e-9));
        Sheet near = corner(0.1);
        double was = near.p[0];
        new Strain(near.grid, 300, 1e9).pull(near, true);
        // a 301st part of the 0.1 mm that its thread lacks, and of the 0.0705 mm that its diagonal lacks, which lies at
        // 45°
        assertThat(near.p[0]).isCloseTo(was - (0.1 + 0.0705 * 0.704) / 301, within(1e-5));
    }

    @Test
    void what_is_held_does_not_move() {
        Sheet sheet = Sheets.flat(3, 1, 0);
        Arrays.fill(sheet.ease, 0);
        sheet.p[0] -= 30;
        double[] before = sheet.p.clone();
        new Strain(sheet.grid, 300, 5).pull(sheet, false);
        assertThat(sheet.p).containsExactly(before);
    }

    /** All but the first corner is held, and that moved along its thread. */
    private static Sheet corner(double by) {
        Sheet sheet = Sheets.flat(3, 1, 0);
        Arrays.fill(sheet.ease, 0);
        sheet.ease[0] = 1;
        sheet.p[0] += by;
        return sheet;
    }
}
