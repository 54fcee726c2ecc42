package hearthcloth.wrap.drape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Laws of {@link Contact}: two layers keep their distance, nothing gains momentum, and no layer passes the other. */
class ContactTest {

    /** The least height of a point of the upper layer over the triangle of the lower one that it lies above. */
    private static double least(Sheet sheet) {
        double least = Double.MAX_VALUE;
        int[] t = sheet.grid.triangles;
        for (int k = 0; k < sheet.points(); k++) {
            for (int i = 0; i < t.length && sheet.grid.u[k] > 15; i += 3) {
                boolean lower = sheet.grid.u[t[i]] < 1 && sheet.grid.u[t[i + 1]] < 1 && sheet.grid.u[t[i + 2]] < 1;
                double whole = area(sheet.p, t[i], t[i + 1], t[i + 2]);
                double onA = area(sheet.p, k, t[i + 1], t[i + 2]) / whole;
                double onB = area(sheet.p, t[i], k, t[i + 2]) / whole;
                double onC = 1 - onA - onB;
                if (lower && onA >= 0 && onB >= 0 && onC >= 0) {
                    double under = onA * sheet.p[3 * t[i] + 2]
                            + onB * sheet.p[3 * t[i + 1] + 2]
                            + onC * sheet.p[3 * t[i + 2] + 2];
                    least = Math.min(least, sheet.p[3 * k + 2] - under);
                }
            }
        }
        return least;
    }

    /** Twice the area of three points seen from above. */
    private static double area(double[] p, int a, int b, int c) {
        return (p[3 * b] - p[3 * a]) * (p[3 * c + 1] - p[3 * a + 1])
                - (p[3 * c] - p[3 * a]) * (p[3 * b + 1] - p[3 * a + 1]);
    }

    @Test
    void layers_nearer_than_the_cloth_is_thick_are_parted() {
        Sheet sheet = Sheets.folded(11, 1.2, 0.4);
        Neighbours near = new Neighbours(sheet.grid);
        near.find(sheet, 4);
        assertThat(near.count()).isPositive();
        double[] before = Sheets.sum(sheet);
        Contact contact = new Contact(near, 0.5);
        for (int turn = 0; turn < 60; turn++) {
            contact.part(sheet);
        }
        assertThat(least(sheet)).isBetween(0.95 * 1.2, 1.3 * 1.2);
        assertThat(Sheets.sum(sheet)).containsExactly(before, within(1e-9));
    }

    @Test
    void layers_that_lie_farther_apart_than_the_cloth_is_thick_stay() {
        Sheet sheet = Sheets.folded(11, 0.3, 0.4);
        Neighbours near = new Neighbours(sheet.grid);
        near.find(sheet, 4);
        double[] before = sheet.p.clone();
        Contact contact = new Contact(near, 0.5);
        contact.part(sheet);
        contact.keepApart(sheet);
        assertThat(sheet.p).containsExactly(before);
    }

    /** Seeds 1 to 8: the upper layer is thrown through the lower one, each point as deep as chance will have it. */
    @Test
    void no_layer_passes_through_the_other() {
        for (int seed = 1; seed <= 8; seed++) {
            Sheet sheet = Sheets.folded(11, 0.3, 1);
            Random chance = new Random(seed);
            Neighbours near = new Neighbours(sheet.grid);
            near.find(sheet, 6);
            for (int k = 0; k < sheet.points(); k++) {
                if (sheet.grid.u[k] > 1) {
                    sheet.p[3 * k + 2] -= 2.5 * chance.nextDouble();
                }
            }
            assertThat(pierced(sheet, sheet.p)).as("seed " + seed).isPositive();
            new Contact(near, 0.5).keepApart(sheet);
            assertThat(pierced(sheet, sheet.p)).as("seed " + seed).isZero();
        }
    }

    private static int pierced(Sheet sheet, double[] places) {
        int count = 0;
        for (boolean one : new Piercing(sheet.grid, places, new boolean[sheet.points()]).sides()) {
            count += one ? 1 : 0;
        }
        return count;
    }
}
