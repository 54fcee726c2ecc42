package hearthcloth.wrap.drape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** {@link Piercing} against a look at every side and every triangle, reckoned by the signs of volumes. */
class PiercingTest {

    private static double volume(double[] x, int a, int b, int c, int d) {
        double[][] w = new double[3][3];
        int[] of = {b, c, d};
        for (int r = 0; r < 3; r++) {
            for (int i = 0; i < 3; i++) {
                w[r][i] = x[3 * of[r] + i] - x[3 * a + i];
            }
        }
        return w[0][0] * (w[1][1] * w[2][2] - w[1][2] * w[2][1])
                - w[0][1] * (w[1][0] * w[2][2] - w[1][2] * w[2][0])
                + w[0][2] * (w[1][0] * w[2][1] - w[1][1] * w[2][0]);
    }

    /** p and q lie on different sides of the triangle, and their line goes round its three sides the same way. */
    private static boolean crosses(double[] x, int p, int q, int a, int b, int c) {
        if (volume(x, p, a, b, c) * volume(x, q, a, b, c) >= 0) {
            return false;
        }
        double ab = volume(x, p, q, a, b);
        double bc = volume(x, p, q, b, c);
        double ca = volume(x, p, q, c, a);
        return (ab > 0 && bc > 0 && ca > 0) || (ab < 0 && bc < 0 && ca < 0);
    }

    private static boolean[] everyPair(Grid grid, double[] x, boolean[] left) {
        boolean[] pierced = new boolean[grid.sides.length / 2];
        for (int e = 0; e < pierced.length; e++) {
            int p = grid.sides[2 * e];
            int q = grid.sides[2 * e + 1];
            for (int t = 0; t < grid.triangles.length; t += 3) {
                int a = grid.triangles[t];
                int b = grid.triangles[t + 1];
                int c = grid.triangles[t + 2];
                boolean apart = p != a && p != b && p != c && q != a && q != b && q != c;
                boolean counts = !left[a] && !left[b] && !left[c] && !left[p] && !left[q];
                pierced[e] |= apart && counts && crosses(x, p, q, a, b, c);
            }
        }
        return pierced;
    }

    /** Seeds 1 to 12; every fourth point is left out in every other one. */
    @Test
    void a_crumpled_cloth_is_pierced_where_every_pair_says_so() {
        int all = 0;
        for (int seed = 1; seed <= 12; seed++) {
            Sheet sheet = Sheets.flat(7, 1, 0);
            Random chance = new Random(seed);
            boolean[] left = new boolean[sheet.points()];
            for (int k = 0; k < sheet.points(); k++) {
                Sheets.put(sheet, k, 40 * chance.nextDouble(), 40 * chance.nextDouble(), 40 * chance.nextDouble());
                left[k] = seed % 2 == 0 && k % 4 == 0;
            }
            boolean[] expected = everyPair(sheet.grid, sheet.x, left);
            assertThat(new Piercing(sheet.grid, sheet.x, left).sides())
                    .as("seed " + seed)
                    .containsExactly(expected);
            for (boolean one : expected) {
                all += one ? 1 : 0;
            }
        }
        assertThat(all).isGreaterThan(100);
    }

    @Test
    void a_flat_cloth_is_not_pierced() {
        Sheet sheet = Sheets.flat(9, 1, 4);
        assertThat(new Piercing(sheet.grid, sheet.x, new boolean[sheet.points()]).sides())
                .containsOnly(false);
    }
}
