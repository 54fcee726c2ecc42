package hearthcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Sizes that makers quote to one another. Common practice, no source: docs/sources.md#maker-sizes. Strips are all cut alike. */
class TradeFactsTest {

    private static final Hem HEM = Hem.square(Length.inches(1, 4), Length.inches(1, 4));
    private static final List<Order> ALL_ROUND = List.of(Order.ROUND, Order.PAIRS);

    @ParameterizedTest
    @EnumSource(names = {"ROUND", "PAIRS"})
    void a_hearth_cut_18_in_with_two_rounds_cut_6_in_is_39_in_before_and_38_in_after_the_hem(Order order) {
        assertThat(cut("18", order, 2, "6", Made.unhemmed()).finished()).isEqualTo(square("39"));
        assertThat(cut("18", order, 2, "6", Made.unhemmed().withHem(HEM)).finished())
                .isEqualTo(square("38"));
    }

    /** Makers say about 41; the arithmetic says 42½, and 41¾ where ⅛ in of every bar's width is trimmed away. */
    @ParameterizedTest
    @CsvSource({"0, 42.5", "0.125, 41.75", "0.25, 41"})
    void a_hearth_cut_12_in_with_three_rounds_cut_6_in_shrinks_by_what_is_trimmed_of_each_bar(
            String trim, String side) {
        Making making = Made.unhemmed().withHem(HEM).withTrim(inches(trim));

        assertThat(cut("12", Order.ROUND, 3, "6", making).finished()).isEqualTo(square(side));
    }

    /**
     * "The longest strip is about 42 in": the finished 41 in and a hem's ½ in at both ends are 42, the usual width of
     * quilting cotton (docs/sources.md#cotton-width), where ⅛ in comes off both long edges of every bar. Untrimmed it is 43½, and would need a join.
     */
    @Test
    void the_longest_strip_of_a_cloth_of_41_in_is_the_width_of_the_fabric() {
        Making making = Made.unhemmed().withHem(HEM);

        assertThat(longest(cut("12", Order.ROUND, 3, "6", making.withTrim(inches("0.25")))))
                .isEqualTo(inches("42"));
        assertThat(longest(cut("12", Order.ROUND, 3, "6", making.withTrim(inches("0.125")))))
                .isEqualTo(inches("42.75"));
        assertThat(longest(cut("12", Order.ROUND, 3, "6", making))).isEqualTo(inches("43.5"));
    }

    /** Pieces about 4 × 8 in round a 4 in hearth: 25 in square, so the seam is part of the answer. */
    @Test
    void three_rounds_of_4_in_round_a_4_in_hearth_are_25_in_or_23_and_a_half_by_the_seam() {
        SeamKind halfInch =
                new SeamKind("plain", SeamKind.Build.FELLED, Length.inches(1, 4), Length.inches(1, 4), Length.ZERO);
        for (Order order : ALL_ROUND) {
            assertThat(cut("4", order, 3, "4", Made.unhemmed().withSeam(halfInch))
                            .finished())
                    .isEqualTo(square("25"));
            assertThat(cut("4", order, 3, "4", Made.unhemmed()).finished()).isEqualTo(square("23.5"));
        }
    }

    /** A bar is cut a little long and trimmed after sewing. */
    @Test
    void leeway_lengthens_every_bar_and_changes_nothing_finished() {
        Making making = Made.unhemmed().withHem(HEM);
        Cloth exact = cut("18", Order.PAIRS, 2, "6", making);
        Cloth eased = cut("18", Order.PAIRS, 2, "6", making.withLeeway(inches("0.5")));

        assertThat(eased.finished()).isEqualTo(exact.finished());
        assertThat(eased.steps().stream().map(Step::running).toList())
                .isEqualTo(exact.steps().stream().map(Step::running).toList());
        assertThat(longest(eased)).isEqualTo(longest(exact).plus(inches("0.5")));
    }

    private static Cloth cut(String hearth, Order order, int rounds, String bar, Making making) {
        List<Layout.Course> cut = Layout.courses(order, rounds, List.of(inches(bar)));
        Size finished = Layout.hearthOfCut(square(hearth), cut, making);
        Cloth cloth = Made.cloth(new Layout(finished, Layout.finishedOfCut(cut, making)), making);
        assertThat(cloth.laid())
                .allSatisfy(laid -> assertThat(shorter(laid))
                        .isEqualTo(laid.patch().place() instanceof Place.Hearth ? inches(hearth) : inches(bar)));
        return cloth;
    }

    /** What was cut comes back as it was given: the hearth's side, or the bar's width. */
    private static Length shorter(Laid laid) {
        return laid.patch().place() instanceof Place.Bar bar && !bar.side().isUpright()
                ? laid.cut().height()
                : laid.cut().width();
    }

    private static Length longest(Cloth cloth) {
        return cloth.laid().stream()
                .map(laid -> laid.cut().width().max(laid.cut().height()))
                .reduce(Length.ZERO, Length::max);
    }

    private static Size square(String side) {
        return Size.square(inches(side));
    }

    private static Length inches(String text) {
        return Length.parse(text + " in");
    }
}
