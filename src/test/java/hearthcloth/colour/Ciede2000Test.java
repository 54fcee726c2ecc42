package hearthcloth.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Matrix.Row;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * {@link Ciede2000} by its published pairs, {@link CssNames} and {@link NbsNames} by their published lists, the
 * {@link Matrix} of three by three by its own laws, and how {@link FabricWords} joins the lists.
 */
class Ciede2000Test {

    /** The pairs of docs/sources.md#ciede2000; their figures have four decimals. */
    @ParameterizedTest
    @CsvFileSource(resources = "/sources/ciede2000.csv", useHeadersInDisplayName = true)
    void meets_every_published_pair(
            int pair, double l1, double a1, double b1, double l2, double a2, double b2, double difference) {
        assertThat(Ciede2000.between(new Lab(l1, a1, b1), new Lab(l2, a2, b2)))
                .as("pair %d", pair)
                .isCloseTo(difference, within(5e-5));
    }

    @Test
    void between_greys_only_lightness_counts_weighted_from_the_middle() {
        // S_L is one at a mean of 50; at a mean of 1 it is 1 + 0.015 x 2401 / sqrt(2421) = 1.732
        assertThat(Ciede2000.between(new Lab(49, 0, 0), new Lab(51, 0, 0))).isCloseTo(2, within(1e-9));
        assertThat(Ciede2000.between(new Lab(0, 0, 0), new Lab(0, 0, 0))).isZero();
        assertThat(Ciede2000.between(new Lab(100, 0, 0), new Lab(0, 0, 0))).isCloseTo(100, within(1e-9));
        assertThat(Ciede2000.between(new Lab(0, 0, 0), new Lab(2, 0, 0))).isCloseTo(2 / 1.732, within(1e-3));
    }

    /** The lines of a published list: a name and its colour. */
    private static Map<String, Colour> published(String resource) throws IOException {
        Map<String, Colour> colours = new LinkedHashMap<>();
        try (InputStream in = Objects.requireNonNull(Ciede2000Test.class.getResourceAsStream(resource))) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(one -> one.contains(",#"))
                    .toList()) {
                int comma = line.lastIndexOf(',');
                colours.put(line.substring(0, comma), Colour.parse(line.substring(comma + 1)));
            }
        }
        return colours;
    }

    @Test
    void every_name_of_css_is_known() throws IOException {
        Map<String, Colour> css = published("/colour/css_colours.csv");
        assertThat(css).hasSize(148);
        css.forEach((name, colour) -> assertThat(CssNames.find(name)).contains(colour));
    }

    /** Published in American spelling; here names are British and without spaces. */
    @Test
    void every_name_of_iscc_and_nbs_is_known() throws IOException {
        Map<String, Colour> nbs = published("/colour/iscc_nbs.csv");
        assertThat(nbs).hasSize(267);
        nbs.forEach((name, colour) -> assertThat(
                        NbsNames.find(name.replace("gray", "grey").replace(" ", "")))
                .as(name)
                .contains(colour));
    }

    @Test
    void other_names_are_not_known() {
        assertThat(CssNames.find("sage")).isEmpty();
        assertThat(CssNames.find("Red")).isEmpty();
        assertThat(NbsNames.find("vivid")).isEmpty();
        assertThat(NbsNames.find("plainblack")).isEmpty();
    }

    @Test
    void a_table_of_names_is_read_in_pairs_and_names_nothing_twice() {
        assertThat(CssNames.read(" a 000001\n  b 00ff00 "))
                .isEqualTo(Map.of("a", Colour.of(1), "b", Colour.of(0x00ff00)));
        assertThatThrownBy(() -> CssNames.read("a 000001 a 000002"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("a");
    }

    @Test
    void words_for_cloth_come_before_published_names_and_published_tones_before_shifts() {
        // PLAIN "red" is ours, "vivid red" is published, "peachpuff" is only of CSS
        assertThat(FabricWords.colours("red")).containsExactly(Colour.of(0xc4262e));
        assertThat(FabricWords.colours("vivid red"))
                .containsExactly(NbsNames.find("vividred").orElseThrow());
        assertThat(FabricWords.colours("peachpuff")).containsExactly(Colour.of(0xffdab9));
        assertThat(FabricWords.colours("sage green, navy")).containsExactly(Colour.of(0xa3b08e), Colour.of(0x1f2d50));
        assertThat(FabricWords.colours("no colour at all")).isEmpty();
    }

    @Test
    void a_shift_without_a_published_tone_changes_lightness_by_its_share() {
        double lightness = Colour.of(0x6d6b35).lab().lightness();

        // dark goes four tenths of the way to black, from a word that no list has dark
        assertThat(FabricWords.colours("dark olive").get(0).lab().lightness()).isLessThan(lightness);
        double moss = Colour.of(0x6b7a3e).lab().lightness();
        assertThat(FabricWords.colours("dark moss").get(0).lab().lightness()).isCloseTo(0.6 * moss, within(1.0));
        assertThat(FabricWords.colours("light moss").get(0).lab().lightness())
                .isCloseTo(moss + 0.3 * (100 - moss), within(1.0));
        Lab dusty = FabricWords.colours("dusty moss").get(0).lab();
        assertThat(dusty.chroma()).isCloseTo(0.6 * Colour.of(0x6b7a3e).lab().chroma(), within(1.0));
    }

    private static Row row(SplittableRandom chance) {
        return new Row(chance.nextDouble(-5, 5), chance.nextDouble(-5, 5), chance.nextDouble(-5, 5));
    }

    private static void close(Row one, Row other) {
        assertThat(one.x()).isCloseTo(other.x(), within(1e-9));
        assertThat(one.y()).isCloseTo(other.y(), within(1e-9));
        assertThat(one.z()).isCloseTo(other.z(), within(1e-9));
    }

    @Test
    void a_matrix_is_applied_row_by_row() {
        Matrix matrix = new Matrix(new Row(1, 2, 3), new Row(4, 5, 6), new Row(7, 8, 10));

        close(matrix.times(new Row(1, 10, 100)), new Row(321, 654, 1087));
    }

    @Test
    void a_matrix_inverted_undoes_it() {
        SplittableRandom chance = new SplittableRandom(31);
        for (int i = 0; i < 50; i++) {
            Matrix matrix = new Matrix(
                    row(chance).plus(9).times(1.5), row(chance), row(chance).over(-2));
            Row column = row(chance);

            Row there = matrix.times(column);

            assertThat(there).isNotEqualTo(column);
            close(scaled(matrix.inverted().times(there)), scaled(column));
        }
    }

    /** To six figures, since a matrix may be nearly singular. */
    private static Row scaled(Row row) {
        return new Row(
                Math.round(row.x() * 1e6) / 1e6, Math.round(row.y() * 1e6) / 1e6, Math.round(row.z() * 1e6) / 1e6);
    }

    @Test
    void a_cross_product_stands_on_both_rows() {
        Row one = new Row(1, 2, 3);
        Row other = new Row(-2, 1, 5);

        Row cross = one.cross(other);

        assertThat(cross.dot(one)).isZero();
        assertThat(cross.dot(other)).isZero();
        close(new Row(1, 0, 0).cross(new Row(0, 1, 0)), new Row(0, 0, 1));
        close(one.plus(2), new Row(3, 4, 5));
        close(one.times(3).over(3), one);
    }
}
