package hearthcloth.sew.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Made;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.SourceTable;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Thread against the textbook model's values and the worked 340 mm example (docs/sources.md#thread-model, #felled-example). */
class ThreadNeedTest {

    @Test
    void a_row_takes_what_the_rectangular_model_says() {
        for (SourceTable.Row row : SourceTable.rows("thread_301.csv")) {
            Stitch stitch = new Stitch(mm(row.number("stitch_length_mm")), mm(row.number("ply_thickness_mm")));
            assertThat(stitch.lockstitch((int) row.number("layers")))
                    .isCloseTo(row.number("thread_per_seam_length_ratio"), within(0.00005));
        }
    }

    /** The textbook's worked example, 0.01 in thick, 10 stitches an inch, 2.2 in of thread an inch: docs/sources.md#thread-model. */
    @Test
    void the_textbook_example_comes_out() {
        Stitch stitch = new Stitch(Length.inches(1, 10), Length.inches(1, 100));

        assertThat(stitch.lockstitch(1)).isCloseTo(2.2, within(1e-12));
    }

    /** 2 640 mm joined and felled, 1 360 mm of hem: 6 640 mm; at the trade's 2.5 that is 16.6 m, with 15 % 19.09 m. */
    @Test
    void the_felled_example_has_the_rows_worked_by_hand() {
        List<ThreadNeed.Row> rows = ThreadNeed.rows(Made.felledExample());
        Length all = rows.stream().map(ThreadNeed.Row::length).reduce(Length.ZERO, Length::plus);
        Length atTradeRatio = all.times(5).dividedBy(2, hearthcloth.measure.Rounding.UP);

        assertThat(rows)
                .containsExactly(
                        new ThreadNeed.Row(ThreadNeed.Kind.JOIN, 12, Length.mm(2_640), 2),
                        new ThreadNeed.Row(ThreadNeed.Kind.FELL, 12, Length.mm(2_640), 4),
                        new ThreadNeed.Row(ThreadNeed.Kind.HEM, 4, Length.mm(1_360), 3));
        assertThat(all).isEqualTo(Length.mm(6_640));
        assertThat(atTradeRatio).isEqualTo(Length.mm(16_600));
        assertThat(ThreadNeed.withMargin(atTradeRatio)).isEqualTo(Length.mm(19_090));
    }

    /** By the model: 2 640 × 2.4 + 2 640 × 2.8 + 1 360 × 2.6 = 17 264 mm; 28 rows with four tails of 10 cm: 11.2 m. */
    @Test
    void the_felled_example_takes_what_the_model_and_the_tails_come_to() {
        ThreadNeed need = ThreadNeed.of(Made.felledExample(), Stitch.USUAL);

        assertThat(need.stitched().in(Unit.MILLIMETRE)).isCloseTo(17_264, within(0.001));
        assertThat(need.tails()).isEqualTo(Length.mm(11_200));
        assertThat(need.total().in(Unit.MILLIMETRE)).isCloseTo((17_264 + 11_200) * 1.15, within(0.001));
        assertThat(need.each().times(2).nm() - need.total().nm()).isBetween(0L, 1L);
    }

    /** Four mitres of √2 · 10 mm. */
    @Test
    void mitred_corners_are_four_short_rows_and_the_hem_one_long_one() {
        Hem mitred = new Hem(Length.mm(10), Length.mm(10), Hem.Corner.MITRED);
        Cloth cloth = new Cloth(
                Made.felledExample().work(), Made.felledExampleMaking().withHem(mitred));
        List<ThreadNeed.Row> rows = ThreadNeed.rows(cloth);

        assertThat(rows.get(2)).isEqualTo(new ThreadNeed.Row(ThreadNeed.Kind.HEM, 1, Length.mm(1_360), 3));
        assertThat(rows.get(3).count()).isEqualTo(4);
        assertThat(rows.get(3).length().in(Unit.MILLIMETRE)).isCloseTo(56.569, within(0.001));
    }

    @Test
    void a_whipped_seam_has_one_row_by_hand_and_a_french_one_two_by_machine() {
        assertThat(kinds("gamchimjil")).containsExactly(ThreadNeed.Kind.JOIN, ThreadNeed.Kind.HEM);
        assertThat(kinds("french")).containsExactly(ThreadNeed.Kind.JOIN, ThreadNeed.Kind.FELL, ThreadNeed.Kind.HEM);
    }

    private static List<ThreadNeed.Kind> kinds(String seam) {
        Cloth cloth = new Cloth(
                Made.felledExample().work(),
                Made.felledExampleMaking().withSeam(SeamKind.named(seam).orElseThrow()));
        return ThreadNeed.rows(cloth).stream().map(ThreadNeed.Row::kind).toList();
    }

    private static Length mm(double mm) {
        return new Length(Math.round(mm * Unit.MILLIMETRE.nanometres()));
    }
}
