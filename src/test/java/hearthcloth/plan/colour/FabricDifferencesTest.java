package hearthcloth.plan.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Colour;
import hearthcloth.colour.Figure;
import hearthcloth.colour.Lab;
import hearthcloth.plan.model.Contrast;
import hearthcloth.stash.Fabric;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * {@link FabricDifferences}: a figured fabric is told from its neighbours less surely. Greys at L* 60 and 40 are CIEDE2000 20 apart,
 * since the weight of lightness is 1 where the mean of both is 50 (CIE 142-2001).
 */
class FabricDifferencesTest {

    private static final EdgeBill.Weight FLAT = new EdgeBill.Weight(1, 0);

    private static Fabric grey(String name, double lightness, double spread, double repeatMm) {
        return Greys.fabric(name, 0x808080).pictured(new Figure(new Lab(lightness, 0, 0), spread, spread, repeatMm));
    }

    /** Figures count not at all at a repeat of 4 mm, wholly from 40 mm on, and half of the way between by half. */
    @ParameterizedTest
    @CsvSource({"0, 100, 20", "6, 3, 20", "6, 4, 20", "6, 22, 17", "6, 40, 14", "6, 90, 14", "30, 90, 0"})
    void a_figured_fabric_comes_nearer_by_its_spread_as_far_as_its_figures_are_seen(
            double spread, double repeatMm, double apart) {
        FabricDifferences both =
                new FabricDifferences(List.of(grey("Print", 60, spread, repeatMm), grey("Plain", 40, 0, 100)));
        assertThat(both.between(0, 1)).isCloseTo(apart, within(1e-9));
        assertThat(both.between(1, 0)).isEqualTo(both.between(0, 1));
        assertThat(both.gap(0, 1)).isCloseTo(apart, within(1e-9));
        assertThat(both.gap(1, 0)).isEqualTo(both.gap(0, 1));
        assertThat(both.lightness(0)).isEqualTo(60);
    }

    @Test
    void two_figured_fabrics_come_nearer_by_both_their_spreads() {
        FabricDifferences both = new FabricDifferences(List.of(grey("One", 60, 6, 40), grey("Other", 40, 4, 22)));
        assertThat(both.between(0, 1)).isCloseTo(20 - 6 - 2, within(1e-9));
    }

    /** A plain hearth at L* 60 stands out from 40; of a print with a spread of 6 the nearer ink is 14 away. */
    @Test
    void a_hearth_stands_out_from_a_plain_fabric_and_not_from_a_large_figured_one_of_the_same_mean() {
        Fabric hearth = grey("Hearth", 60, 0, 100);
        Fabric plain = grey("Plain", 40, 0, 100);
        Fabric large = grey("Large print", 40, 6, 40);
        Fabric tiny = grey("Tiny print", 40, 6, 4);
        assertThat(ColourFigures.standsOut(hearth, plain)).isTrue();
        assertThat(ColourFigures.standsOut(hearth, large)).isFalse();
        assertThat(ColourFigures.standsOut(hearth, tiny)).isTrue();

        EdgeBill bill = new EdgeBill(
                new FabricDifferences(List.of(hearth, plain, large, tiny)), Contrast.READS, Optional.empty());
        assertThat(bill.ofHearth(0, 1, FLAT)).isZero();
        assertThat(bill.ofHearth(0, 2, FLAT)).isEqualTo(2);
        assertThat(bill.ofHearth(0, 3, FLAT)).isZero();
        // neighbours are alike below 15: 14 leaves a fifteenth, which counts half
        assertThat(bill.ofBars(0, 2, FLAT)).isCloseTo(0.5 / 15, within(1e-9));
        assertThat(bill.ofBars(0, 1, FLAT)).isZero();
    }

    /** 200 mm round a hearth of 200 mm are 800 mm of edge, all of it in sight of the plain one and none of the print. */
    @Test
    void what_is_said_of_a_cloth_counts_the_spread_too() {
        Fabric hearth = grey("Hearth", 60, 0, 100);
        for (double spread : new double[] {0, 6}) {
            Fabric bars = grey("Bars", 40, spread, 40);
            var cloth = Greys.cloth(200, 50, 1, hearth, slot -> bars);
            var figures = ColourFigures.of(cloth, List.of(hearth, bars)).hearth();
            assertThat(figures.edgeMm()).isCloseTo(800, within(1e-6));
            assertThat(figures.standsOutMm()).isCloseTo(spread == 0 ? 800 : 0, within(1e-6));
        }
    }

    @Test
    void the_back_of_a_print_whose_wrong_side_has_a_colour_is_plain() {
        Fabric printed = new Fabric(
                        "Print",
                        Colour.of(0x808080),
                        Fabric.Faces.RIGHT,
                        Fabric.Nap.ANY,
                        Optional.of(Colour.of(0xffffff)))
                .pictured(new Figure(new Lab(60, 0, 0), 6, 6, 40));
        Fabric plain = grey("Plain", 40, 0, 100);
        FabricDifferences front = new FabricDifferences(List.of(printed, plain));
        assertThat(front.gap(0, 1)).isCloseTo(14, within(1e-9));
        assertThat(front.back().gap(0, 1)).isCloseTo(60, within(1e-6));
        // with its wrong side on the front it has a number of its own
        assertThat(front.gap(2, 1)).isCloseTo(60, within(1e-6));
    }

    /** By words: 17 hundredths of a large floral lie 32 points of L* off its ground, and it repeats every 110 mm. */
    @Test
    void without_a_picture_words_that_call_the_figures_large_count_and_others_do_not() {
        Fabric pale = Greys.fabric("Pale", 0xffffff);
        double spread = 32 * Math.sqrt(0.17 * 0.83);
        for (String name : List.of("grey floral", "small grey floral", "large grey linen", "grey linen")) {
            assertThat(new FabricDifferences(List.of(Greys.fabric(name, 0x777777), pale)).gap(0, 1))
                    .isEqualTo(new FabricDifferences(List.of(Greys.GREY, pale)).gap(0, 1));
        }
        double plain = new FabricDifferences(List.of(Greys.GREY, pale)).gap(0, 1);
        assertThat(new FabricDifferences(List.of(Greys.fabric("large grey floral", 0x777777), pale)).gap(0, 1))
                .isCloseTo(plain - spread, within(1e-9));
    }
}
