package hearthcloth.wrap.drape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Laws of {@link Support}: cloth is never left in the gift or under the table, and what is free of both stays. */
class SupportTest {

    private static final Solid BOX = new Solid.Block(40, 25, 30);

    /** Seeds 1 to 20: a cloth scattered over the table and thrown through box and table. */
    @Test
    void nothing_stays_in_the_box_or_under_the_table() {
        for (int seed = 1; seed <= 20; seed++) {
            Sheet sheet = Sheets.flat(7, 1, 0);
            Random chance = new Random(seed);
            for (int k = 0; k < sheet.points(); k++) {
                Sheets.put(
                        sheet,
                        k,
                        120 * (chance.nextDouble() - 0.5),
                        120 * (chance.nextDouble() - 0.5),
                        60 * chance.nextDouble() - 1);
            }
            sheet.begin();
            for (int i = 0; i < sheet.p.length; i++) {
                sheet.p[i] += 30 * (chance.nextDouble() - 0.5);
            }
            new Support(BOX, -1, 1.5, 0.06).carry(sheet);
            double[] out = new double[3];
            for (int k = 0; k < sheet.points(); k++) {
                assertThat(sheet.p[3 * k + 2]).isGreaterThanOrEqualTo(-1);
                assertThat(BOX.outside(sheet.p[3 * k], sheet.p[3 * k + 1], sheet.p[3 * k + 2], out))
                        .isGreaterThanOrEqualTo(1.5 - 1e-9);
            }
        }
    }

    @Test
    void what_lies_free_stays_where_it_is() {
        Sheet sheet = Sheets.flat(5, 1, 200);
        double[] before = sheet.p.clone();
        new Support(BOX, 0, 1, 0.06).carry(sheet);
        assertThat(sheet.p).containsExactly(before);
    }

    /** It slid ten millimetres and sank two: it is raised, and loses six in a hundred of the way it slid. */
    @Test
    void the_table_rubs() {
        Sheet sheet = Sheets.flat(3, 1, 0);
        for (int k = 0; k < sheet.points(); k++) {
            sheet.p[3 * k] += 10;
            sheet.p[3 * k + 2] -= 2;
        }
        new Support(Solid.NOTHING, 0, 1, 0.06).carry(sheet);
        for (int k = 0; k < sheet.points(); k++) {
            assertThat(sheet.p[3 * k]).isCloseTo(sheet.x[3 * k] + 9.4, within(1e-9));
            assertThat(sheet.p[3 * k + 2]).isZero();
        }
    }

    /** Both ends lie outside the box, a millimetre off, the middle of the line across the edge two millimetres inside. */
    @Test
    void a_line_across_an_edge_is_carried_over_it() {
        Sheet sheet = Sheets.flat(3, 1, 500);
        int a = 0;
        int b = 1;
        Sheets.put(sheet, a, 36, 0, 31);
        Sheets.put(sheet, b, 41, 0, 26);
        sheet.begin();
        double[] out = new double[3];
        double before = BOX.outside(38.5, 0, 28.5, out);
        assertThat(before).isNegative();
        Support support = new Support(BOX, 0, 0.5, 0);
        for (int turn = 0; turn < 20; turn++) {
            support.carry(sheet);
        }
        double x = (sheet.p[0] + sheet.p[3]) / 2;
        double z = (sheet.p[2] + sheet.p[5]) / 2;
        assertThat(BOX.outside(x, 0, z, out)).isGreaterThan(0.4);
    }
}
