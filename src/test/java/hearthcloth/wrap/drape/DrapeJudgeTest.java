package hearthcloth.wrap.drape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** {@link DrapeJudge} on cloths whose stretch, depth and piercing are known. */
class DrapeJudgeTest {

    private static final Solid BOX = new Solid.Block(30, 30, 40);

    @Test
    void a_cloth_that_lies_flat_beside_its_gift_has_no_fault() {
        Sheet sheet = Sheets.flat(9, 1, 0);
        Drape.Acceptance acceptance = new DrapeJudge(sheet, new Solid.Block(10, 10, 4), 1).of(List.of());
        assertThat(acceptance.stretch()).isCloseTo(0, within(1e-12));
        assertThat(acceptance.piercing()).isZero();
        assertThat(acceptance.depthMm())
                .as("the foot, where nothing is seen, is left out")
                .isZero();
        assertThat(acceptance.holds()).isTrue();
    }

    @Test
    void a_thread_that_is_a_tenth_too_long_is_told_unless_a_knot_holds_both_its_ends() {
        Sheet sheet = Sheets.flat(9, 1, 0);
        sheet.x[0] -= 1;
        DrapeJudge judge = new DrapeJudge(sheet, Solid.NOTHING, 1);
        assertThat(judge.of(List.of()).stretch()).isCloseTo(0.1, within(1e-9));
        assertThat(judge.of(List.of()).holds()).isFalse();
        sheet.knotted[0] = true;
        assertThat(judge.of(List.of()).stretch()).isCloseTo(0.1, within(1e-9));
        sheet.knotted[1] = true;
        sheet.knotted[sheet.grid.columns] = true;
        assertThat(judge.of(List.of()).stretch()).isCloseTo(0, within(1e-12));
    }

    /** At 25 mm in a box of 40 the top is the nearest way out in the middle, 15 mm; in the drape's world half as large. */
    @Test
    void depth_is_told_in_millimetres_of_the_gift_and_not_of_the_drapes_world() {
        Sheet sheet = Sheets.flat(9, 1, 25);
        assertThat(new DrapeJudge(sheet, BOX, 1).of(List.of()).depthMm()).isCloseTo(15, within(1e-9));
        assertThat(new DrapeJudge(sheet, BOX, 0.5).of(List.of()).depthMm()).isCloseTo(30, within(1e-9));
    }

    /** A corner is put through the middle of the cloth: its two sides pass through, of 208 in all. */
    @Test
    void sides_that_pass_through_cloth_are_counted() {
        Sheet sheet = Sheets.flat(9, 1, 0);
        for (int k : new int[] {0, 1, 9}) {
            Sheets.put(sheet, k, 2 + k / 9.0, 3 + k / 8.0, k == 0 ? -30 : 30);
        }
        double sides = sheet.grid.sides.length / 2.0;
        assertThat(sides).isEqualTo(2 * 9 * 8 + 64);
        double share = new DrapeJudge(sheet, Solid.NOTHING, 1).of(List.of()).piercing();
        boolean[] pierced = new Piercing(sheet.grid, sheet.x, sheet.knotted).sides();
        int count = 0;
        for (boolean one : pierced) {
            count += one ? 1 : 0;
        }
        assertThat(count).isGreaterThanOrEqualTo(2);
        assertThat(share).isCloseTo(count / sides, within(1e-12));
    }
}
