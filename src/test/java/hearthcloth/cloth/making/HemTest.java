package hearthcloth.cloth.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Showing;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.SourceTable;
import org.junit.jupiter.api.Test;

/** Hem and mitre numbers against hem_mitre.csv (derived by hand) and three worked examples: docs/sources.md#hem-fold, #mitre. */
class HemTest {

    @Test
    void a_mitre_of_an_even_hem_lies_where_the_table_says() {
        for (SourceTable.Row row : SourceTable.rows("hem_mitre.csv")) {
            Length fold = Length.mm((long) row.number("finished_hem_mm"));
            Hem hem = new Hem(fold, fold, Hem.Corner.MITRED);

            assertThat(mm(hem.allowance())).isEqualTo(row.number("allowance_per_edge_2h"));
            assertThat(mm(hem.mitreIntercept())).isEqualTo(row.number("mitre_line_intercept_on_raw_edge_4h"));
            assertThat(mm(hem.mitreIntercept().minus(hem.first())))
                    .isEqualTo(row.number("mitre_meets_pressed_fold_at_3h_from_raw_edge"));
            assertThat(hem.mitreStitchMm()).isCloseTo(row.number("stitched_mitre_length_sqrt2_h"), within(0.0006));
            assertThat(hem.mitreTrimMm(Length.mm(6)))
                    .isCloseTo(row.number("trim_intercept_for_6mm_allowance"), within(0.0006));
            assertThat(mm(hem.mitreIntercept()) / Math.sqrt(2))
                    .isCloseTo(row.number("distance_of_mitre_line_from_raw_corner_2sqrt2_h"), within(0.0006));
        }
    }

    /** Threads, 9 November 2018: 11 in cut, ¼ + ¾ in, is 9 in; a tutorial, 2008: 11 in, ¼ + ¼ in, is 10 in. */
    @Test
    void a_single_patch_is_cut_larger_by_both_folds_on_every_edge() {
        assertThat(cut("9 in", Hem.square(Length.inches(1, 4), Length.inches(3, 4))))
                .isEqualTo(Size.parse("11 in"));
        assertThat(cut("10 in", Hem.square(Length.inches(1, 4), Length.inches(1, 4))))
                .isEqualTo(Size.parse("11 in"));
        assertThat(cut("340 mm", Hem.square(Length.mm(10), Length.mm(10)))).isEqualTo(Size.parse("380 mm"));
        assertThat(cut("40 cm", Hem.square(Length.mm(5), Length.mm(20)))).isEqualTo(Size.parse("45 cm"));
    }

    /** x + y = 2(u + h) through the finished corner; from there to the first fold is √2·h, also where u and h differ. */
    @Test
    void a_mitre_of_an_uneven_hem_runs_from_the_finished_corner_to_the_first_fold() {
        Hem hem = new Hem(Length.mm(7), Length.mm(18), Hem.Corner.MITRED);
        double corner = mm(hem.allowance());
        double fold = mm(hem.first());
        double along = mm(hem.mitreIntercept()) - fold;

        assertThat(2 * corner).isEqualTo(mm(hem.mitreIntercept()));
        assertThat(Math.hypot(corner - fold, along - corner)).isCloseTo(hem.mitreStitchMm(), within(1e-9));
    }

    private static Size cut(String finished, Hem hem) {
        Patch patch = new Patch(new Place.Free(1), "oat", Size.parse(finished), Showing.SAME);
        Making making = new Making(SeamKind.felledInches(), hem, Length.ZERO, Length.ZERO, Face.BACK);
        return new Cloth(patch, making).laid().get(0).cut();
    }

    private static double mm(Length length) {
        return length.in(Unit.MILLIMETRE);
    }
}
