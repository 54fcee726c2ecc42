package hearthcloth.photo.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Colour;
import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.photo.Painted;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Light and colour of pixels by {@link LabTables} and {@link SrgbLinear}, of tiles by {@link LabTiles}, of a room by {@link WhiteBalance}. */
class LabTilesTest {

    /** Published values, docs/sources.md#lab; the tables' white differs from them in its fifth figure. */
    @ParameterizedTest
    @CsvFileSource(resources = "/sources/srgb_lab.csv", useHeadersInDisplayName = true)
    void tables_agree_with_published_values(String hex, int r, int g, int b, double y, double l, double a, double b65) {
        double[] out = new double[3];

        LabTables.lab(LabTables.light(r), LabTables.light(g), LabTables.light(b), out);

        assertThat(out[0]).as(hex).isCloseTo(l, within(0.02));
        assertThat(out[1]).as(hex).isCloseTo(a, within(0.05));
        assertThat(out[2]).as(hex).isCloseTo(b65, within(0.05));
        double luminance =
                0.2126729 * LabTables.light(r) + 0.7151522 * LabTables.light(g) + 0.0721750 * LabTables.light(b);
        assertThat(luminance).as(hex).isCloseTo(y, within(1e-4));
    }

    @Test
    void tables_agree_with_the_exact_conversion_for_every_grey() {
        double[] out = new double[3];
        for (int v = 0; v < 256; v++) {
            LabTables.lab(LabTables.light(v), LabTables.light(v), LabTables.light(v), out);

            assertThat(out[0]).isCloseTo(Colour.of(v, v, v).lab().lightness(), within(0.01));
            assertThat(Math.hypot(out[1], out[2])).isLessThan(0.05);
        }
    }

    /** IEC 61966-2-1: below 0.04045 a line, above it a power; the figures by hand. */
    @ParameterizedTest
    @CsvSource({"0, 0", "10, 0.00303527", "127.5, 0.21404114", "128, 0.21586050", "200, 0.57758044", "255, 1"})
    void light_grows_with_values_as_the_standard_says(double steps, double light) {
        assertThat(SrgbLinear.ofSteps(steps)).isCloseTo(light, within(1e-6));
    }

    @Test
    void between_two_values_light_lies_between_and_is_nearly_exact() {
        for (double steps = 0.01; steps < 255; steps += 0.37) {
            double v = steps / 255;
            double exact = v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
            assertThat(SrgbLinear.ofSteps(steps)).isCloseTo(exact, within(3e-4));
        }
        for (int v = 0; v < 256; v++) {
            assertThat(SrgbLinear.ofSteps(v)).isCloseTo(LabTables.light(v), within(1e-12));
        }
    }

    private static LabTiles tiles(Painted painted) {
        return new LabTiles(painted.coarse());
    }

    @Test
    void a_tile_tells_its_mean_and_how_much_it_varies() {
        // 9 x 5 tiles; the second is half black, half white: L* is 0 or 100, so the mean 50 and the deviation 50
        LabTiles tiles = tiles(new Painted(75, 41, 0xffffff, 0).box(8, 0, 4, 8, 0x000000));

        assertThat(tiles.across).isEqualTo(9);
        assertThat(tiles.down).isEqualTo(5);
        assertThat(tiles.mean[0][0]).isCloseTo(100f, within(0.01f));
        assertThat(tiles.spread[0]).isLessThan(0.1f);
        assertThat(tiles.mean[0][1]).isCloseTo(50f, within(0.01f));
        assertThat(tiles.spread[1]).isCloseTo(50f, within(0.05f));
        assertThat(tiles.apart(0, 1)).isCloseTo(50, within(0.05));
        assertThat(tiles.apart(1, new float[] {50, 3, 4})).isCloseTo(5, within(0.05));
        assertThat(tiles.apart(1, new float[][] {{0, 50}, {0, 5}, {0, 12}}, 1)).isCloseTo(13, within(0.05));
        // the tenth pixel of the first tile of the second row: row 8 + 1, column 1
        assertThat(tiles.pixel(9, 9)).isEqualTo(9 * 75 + 1);
        assertThat(tiles.pixel(10, 0)).isEqualTo(8 * 75 + 8);
    }

    @Test
    void the_rim_is_two_tiles_deep() {
        LabTiles tiles = tiles(new Painted(80, 56, 0xffffff, 0));
        int inside = 0;
        for (int t = 0; t < tiles.across * tiles.down; t++) {
            inside += tiles.isAtRim(t) ? 0 : 1;
        }

        assertThat(inside).isEqualTo((10 - 4) * (7 - 4));
        assertThat(tiles.isAtRim(2 * 10 + 2)).isFalse();
        assertThat(tiles.isAtRim(10 + 2)).isTrue();
        assertThat(tiles.isAtRim(2 * 10 + 8)).isTrue();
        assertThat(tiles.isAtRim(5 * 10 + 5)).isTrue();
    }

    @Test
    void the_commonest_colour_is_that_of_the_rim_though_something_larger_lies_within() {
        // 20 x 20 tiles: the middle 13 x 13 are red, the rim is grey
        LabTiles tiles = tiles(new Painted(160, 160, 0x808080, 0).box(32, 32, 104, 104, 0xc02020));
        boolean[] none = new boolean[400];

        assertThat(tiles.mean[1][tiles.commonest(none)]).isCloseTo(0f, within(0.5f));
        boolean[] grey = new boolean[400];
        for (int t = 0; t < 400; t++) {
            grey[t] = tiles.mean[1][t] < 10;
        }
        assertThat(tiles.mean[1][tiles.commonestAnywhere(grey)]).isGreaterThan(10f);
        assertThat(LabTiles.share(grey)).isCloseTo((400 - 169) / 400.0, within(1e-9));
    }

    @Test
    void a_tile_touches_a_shape_that_reaches_into_it() {
        LabTiles tiles = tiles(new Painted(80, 80, 0x808080, 0));
        List<Point> shape = List.of(new Point(17, 17), new Point(39, 17), new Point(39, 31), new Point(17, 31));

        boolean[] touching = tiles.touching(List.of(shape));

        // x from 17 to 39 reaches tiles 2, 3 and 4, y from 17 to 31 tiles 2 and 3
        for (int t = 0; t < 100; t++) {
            int x = t % 10;
            int y = Math.floorDiv(t, 10);
            assertThat(touching[t]).as("tile %s, %s", x, y).isEqualTo(x >= 2 && x <= 4 && y >= 2 && y <= 3);
        }
    }

    /** X, Y and Z of a colour over those of white, by CIE 15. */
    private static double[] light(Lab lab) {
        double fy = (lab.lightness() + 16) / 116;
        double[] f = {fy + lab.a() / 500, fy, fy - lab.b() / 200};
        double[] out = new double[3];
        for (int c = 0; c < 3; c++) {
            out[c] = f[c] > 6.0 / 29 ? Math.pow(f[c], 3) : 108.0 / 841 * (f[c] - 4.0 / 29);
        }
        return out;
    }

    private static Lab lab(double[] light) {
        double[] f = new double[3];
        for (int c = 0; c < 3; c++) {
            f[c] = light[c] > 216.0 / 24389 ? Math.cbrt(light[c]) : 841.0 / 108 * light[c] + 4.0 / 29;
        }
        return new Lab(116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2]));
    }

    private static Lab under(Lab colour, double... room) {
        double[] light = light(colour);
        return lab(new double[] {light[0] * room[0], light[1] * room[1], light[2] * room[2]});
    }

    @Test
    void a_colour_under_a_lamp_comes_out_as_in_daylight() {
        Lab ground = new Lab(60, 5, 20);
        double[] lamp = {0.75, 0.7, 0.4};
        WhiteBalance balance = new WhiteBalance(under(WhiteBalance.PAPER, lamp), under(ground, lamp));
        for (Lab colour : List.of(
                new Lab(50, 40, 30),
                new Lab(20, -10, -25),
                new Lab(80, 0, 60),
                new Lab(5, 1, -2),
                WhiteBalance.PAPER)) {
            Lab seen = under(colour, lamp);

            assertThat(seen.apart(colour)).isGreaterThan(3);
            assertThat(balance.of(seen, under(ground, lamp)).apart(colour)).isLessThan(1e-6);
        }
    }

    @Test
    void where_the_ground_is_darker_less_light_falls() {
        Lab ground = new Lab(60, 5, 20);
        WhiteBalance balance = new WhiteBalance(WhiteBalance.PAPER, ground);
        Lab colour = new Lab(50, 40, 30);

        assertThat(balance.of(under(colour, 0.5, 0.5, 0.5), under(ground, 0.5, 0.5, 0.5))
                        .apart(colour))
                .isLessThan(1e-6);
        // no more than four times as much light is assumed
        Lab dark = under(colour, 0.1, 0.1, 0.1);
        assertThat(balance.of(dark, under(ground, 0.1, 0.1, 0.1)).apart(under(colour, 0.4, 0.4, 0.4)))
                .isLessThan(1e-6);
        assertThat(balance.of(WhiteBalance.PAPER, under(ground, 0.5, 0.5, 0.5)).lightness())
                .isEqualTo(100);
    }
}
