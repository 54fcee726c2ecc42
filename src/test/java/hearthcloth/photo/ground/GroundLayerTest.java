package hearthcloth.photo.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Colour;
import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.photo.Painted;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LabTiles;
import hearthcloth.photo.parameter.GroundParameters;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * A {@link GroundLayer} and a {@link SecondGround} beside it, what is not seen of them by {@link GroundInpainting}, the
 * picture under even light by {@link IlluminationCorrection}, and its colours in a {@link ColourHistogram}.
 */
class GroundLayerTest {

    private static final int WIDTH = 320;
    private static final int HEIGHT = 240;
    private static final int ACROSS = WIDTH / 8;
    private static final int GREY = 0x787878;
    private static final int GREEN = 0x208a40;
    private static final int RED = 0x9a3030;

    private static Lab lab(int rgb) {
        return Colour.of(rgb).lab();
    }

    private static GroundLayer grown(LabTiles tiles, int seed) {
        GroundLayer layer = new GroundLayer(tiles, new boolean[tiles.spread.length], GroundParameters.standard());
        layer.grow(seed);
        return layer;
    }

    @Test
    void a_layer_spreads_over_its_colour_round_a_piece_and_is_filled_in_under_it() {
        LabTiles tiles = new LabTiles(
                new Painted(WIDTH, HEIGHT, GREY, 2).box(80, 64, 96, 80, RED).coarse());
        GroundLayer layer = grown(tiles, 0);

        for (int t = 0; t < tiles.spread.length; t++) {
            int x = t % ACROSS;
            int y = Math.floorDiv(t, ACROSS);
            boolean piece = x >= 10 && x < 22 && y >= 8 && y < 18;
            assertThat(layer.known()[t]).as("tile %s, %s", x, y).isEqualTo(!piece);
            assertThat(layer.isOpen(t)).isEqualTo(piece);
        }
        assertThat(layer.share()).isCloseTo(1 - 120.0 / (40 * 30), within(1e-9));
        assertThat(layer.reach()).isBetween(5.0, 11.0);
        layer.complete();
        float[] under = new float[3];
        layer.at(128, 100, under);
        assertThat(new Lab(under[0], under[1], under[2]).apart(lab(GREY))).isLessThan(1);
        assertThat(layer.isFoundAt(128, 100)).isFalse();
        assertThat(layer.isFoundAt(20, 20)).isTrue();
        assertThat(layer.isFoundAt(WIDTH - 1, HEIGHT - 1)).isTrue();
    }

    @Test
    void a_layer_follows_light_that_falls_off() {
        Painted lit = new Painted(WIDTH, HEIGHT, 0xc8c8c8, 2).lit((x, y) -> 1 - 0.6 * x / WIDTH);
        LabTiles tiles = new LabTiles(lit.coarse());
        GroundLayer layer = grown(tiles, 0);

        assertThat(layer.share()).isGreaterThan(0.99);
        layer.complete();
        float[] at = new float[3];
        for (int x = 20; x < WIDTH - 20; x += 40) {
            layer.at(x, 100, at);
            int value = (int) (0xc8 * (1 - 0.6 * x / WIDTH));
            assertThat(at[0])
                    .isCloseTo((float) Colour.of(value, value, value).lab().lightness(), within(1.5f));
        }
    }

    @Test
    void a_layer_goes_on_beyond_a_joint_but_not_into_closed_tiles() {
        // dark bars two tiles wide, from rim to rim
        Painted boards = new Painted(WIDTH, HEIGHT, GREY, 2).box(0, 96, WIDTH, 16, 0x202020);
        LabTiles tiles = new LabTiles(boards.coarse());
        boolean[] closed = new boolean[tiles.spread.length];
        Arrays.fill(closed, 25 * ACROSS, closed.length, true);
        GroundLayer layer = new GroundLayer(tiles, closed, GroundParameters.standard());
        layer.grow(2 * ACROSS + 2);

        assertThat(layer.known()[18 * ACROSS + 20]).isTrue();
        assertThat(layer.known()[13 * ACROSS + 20]).isFalse();
        assertThat(layer.known()[26 * ACROSS + 20]).isFalse();
        assertThat(layer.isOpen(26 * ACROSS + 20)).isFalse();
        boolean[] marked = new boolean[closed.length];
        layer.addTo(marked);
        assertThat(marked).isEqualTo(layer.known());
    }

    private static final Painted TWO = new Painted(WIDTH, HEIGHT, GREY, 2).box(200, 0, WIDTH - 200, HEIGHT, GREEN);

    @Test
    void another_ground_along_the_rim_is_found_and_where_which_lies() {
        LabTiles tiles = new LabTiles(TWO.coarse());
        GroundLayer first = grown(tiles, 15 * ACROSS + 3);
        GroundLayer second =
                SecondGround.beside(first, tiles, GroundParameters.standard()).orElseThrow();

        byte[] which = SecondGround.which(first, second, tiles, 1);
        for (int t = 0; t < which.length; t++) {
            int x = t % ACROSS;
            // the edge lies between tiles 24 and 25; a tile beside it may be either
            assertThat(which[t]).as("tile %s", x).isEqualTo((byte) (x < 24 ? 1 : x > 25 ? 2 : 3));
        }
        assertThat(SecondGround.isShade(
                        first, second, which, GroundParameters.standard().second()))
                .isFalse();
        GroundLayer both = first.and(second);
        assertThat(both.share()).isCloseTo(1, within(0.01));
        assertThat(both.colour(1, 15 * ACROSS + 30))
                .isCloseTo((float) lab(GREEN).a(), within(1f));
        assertThat(both.colour(1, 15 * ACROSS + 3)).isCloseTo(0f, within(1f));
        assertThat(both.reach()).isEqualTo(Math.max(first.reach(), second.reach()));
    }

    @Test
    void the_same_ground_in_a_hard_shadow_is_shade_and_one_much_darker_is_not() {
        for (double left : new double[] {0.6, 0.35}) {
            Painted shadow = new Painted(WIDTH, HEIGHT, 0xb0a890, 2).lit((x, y) -> x < 200 ? 1 : left);
            LabTiles tiles = new LabTiles(shadow.coarse());
            GroundLayer first = grown(tiles, 15 * ACROSS + 3);
            GroundLayer second = SecondGround.beside(first, tiles, GroundParameters.standard())
                    .orElseThrow();

            // values to the power of 2.2: 0.6 leaves a third of the light, 0.35 a tenth
            assertThat(SecondGround.isShade(
                            first,
                            second,
                            SecondGround.which(first, second, tiles, 1),
                            GroundParameters.standard().second()))
                    .isEqualTo(left == 0.6);
        }
    }

    @Test
    void a_piece_that_runs_off_the_picture_is_no_second_ground() {
        LabTiles tiles = new LabTiles(
                new Painted(WIDTH, HEIGHT, GREY, 2).box(240, 80, 80, 60, RED).coarse());

        assertThat(SecondGround.beside(grown(tiles, 0), tiles, GroundParameters.standard()))
                .isEmpty();
    }

    @Test
    void a_mat_within_the_picture_is_found_by_its_size() {
        LabTiles large = new LabTiles(
                new Painted(WIDTH, HEIGHT, GREY, 2).box(64, 48, 192, 144, GREEN).coarse());
        Optional<GroundLayer> mat = SecondGround.within(grown(large, 0), large, GroundParameters.standard());

        assertThat(mat.orElseThrow().share()).isCloseTo(24.0 * 18 / (40 * 30), within(0.01));
        LabTiles small = new LabTiles(
                new Painted(WIDTH, HEIGHT, GREY, 2).box(64, 48, 120, 80, GREEN).coarse());
        assertThat(SecondGround.within(grown(small, 0), small, GroundParameters.standard()))
                .isEmpty();
    }

    private static float[][] planes(int across, int down, DoubleBinaryOperator value) {
        float[][] out = new float[3][across * down];
        for (int t = 0; t < across * down; t++) {
            for (int c = 0; c < 3; c++) {
                out[c][t] = (float) ((c + 1) * value.applyAsDouble(t % across, Math.floorDiv(t, across)));
            }
        }
        return out;
    }

    @Test
    void unknown_tiles_are_filled_from_around_as_light_goes_on() {
        float[][] colour = planes(20, 16, (x, y) -> 30 + x + 0.5 * y);
        boolean[] found = new boolean[20 * 16];
        for (int t = 0; t < found.length; t++) {
            int x = t % 20;
            int y = Math.floorDiv(t, 20);
            found[t] = x < 6 || x > 12 || y < 5 || y > 10;
            if (!found[t]) {
                colour[0][t] = 999;
                colour[2][t] = -7;
            }
        }

        new GroundInpainting(colour, found, 20, 16).complete();

        for (int y = 3; y < 13; y++) {
            for (int x = 3; x < 17; x++) {
                float truth = (float) (30 + x + 0.5 * y);
                assertThat(colour[0][y * 20 + x]).as("%s, %s", x, y).isCloseTo(truth, within(0.6f));
                assertThat(colour[2][y * 20 + x]).isCloseTo(3 * truth, within(1.8f));
            }
        }
    }

    @Test
    void one_known_tile_fills_all_and_none_fills_nothing() {
        float[][] one = planes(9, 7, (x, y) -> x == 4 && y == 3 ? 42 : 0);
        boolean[] found = new boolean[63];
        found[3 * 9 + 4] = true;
        new GroundInpainting(one, found, 9, 7).complete();
        assertThat(IntStream.range(0, 63).mapToDouble(t -> one[0][t]).toArray())
                .containsOnly(new double[] {42}, within(0.01));
    }

    @Test
    void under_even_light_the_same_cloth_has_one_colour() {
        Painted lit = new Painted(WIDTH, HEIGHT, 0xb0b0b0, 0)
                .box(40, 60, 60, 60, 0x8a5a30)
                .box(220, 60, 60, 60, 0x8a5a30)
                .lit((x, y) -> 1 - 0.5 * x / WIDTH);
        LabThumbnail coarse = lit.coarse();
        IlluminationCorrection even =
                new IlluminationCorrection(lit.picture(), coarse, GroundModel.of(coarse, GroundParameters.standard()));
        double[] left = new double[3];
        double[] right = new double[3];

        even.at(70, 90, left);
        even.at(250, 90, right);

        for (int c = 0; c < 3; c++) {
            assertThat(left[c]).isCloseTo(right[c], within(0.04 * left[c]));
        }
        assertThat(left[0] / left[2]).isCloseTo(0x8a / (double) 0x30, within(0.15));
        // on the whole as bright as the picture is
        double[] ground = new double[3];
        even.at(160, 200, ground);
        assertThat(ground[0]).isCloseTo(0xb0 * 0.75, within(4.0));
        assertThat(even.holds(new Point(2, 2))).isTrue();
        assertThat(even.holds(new Point(1.5, 100))).isFalse();
        assertThat(even.holds(new Point(100, HEIGHT - 1))).isFalse();
    }

    private static int bin(int l, int a, int b) {
        return (l * 40 + a) * 40 + b;
    }

    @Test
    void colours_are_counted_by_their_difference_from_the_ground() {
        LabThumbnail coarse =
                new Painted(WIDTH, HEIGHT, GREY, 0).box(80, 64, 96, 80, RED).coarse();
        ColourHistogram histogram = new ColourHistogram(coarse, GroundModel.of(coarse, GroundParameters.standard()));
        Lab off = lab(RED);

        assertThat(histogram.bin(0))
                .isIn(
                        bin(20, 20, 20),
                        bin(19, 20, 20),
                        bin(20, 19, 20),
                        bin(20, 20, 19),
                        bin(19, 19, 19),
                        bin(19, 19, 20),
                        bin(19, 20, 19),
                        bin(20, 19, 19));
        int red = histogram.bin(100 * WIDTH + 120);
        assertThat(red / 1600)
                .isEqualTo((int) (20 + (off.lightness() - lab(GREY).lightness()) / 5));
        assertThat(red / 40 % 40).isEqualTo((int) (20 + off.a() / 5));
        assertThat(red % 40).isEqualTo((int) (20 + off.b() / 5));
    }

    @Test
    void the_same_cloth_in_less_light_is_in_the_same_bin_or_one_that_touches_it() {
        LabThumbnail coarse = new Painted(WIDTH, HEIGHT, 0xb0b0b0, 0)
                .box(80, 20, 60, 60, RED)
                .box(80, 160, 60, 60, RED)
                .lit((x, y) -> 1 - 0.6 * y / HEIGHT)
                .coarse();
        ColourHistogram histogram = new ColourHistogram(coarse, GroundModel.of(coarse, GroundParameters.standard()));
        int light = 50 * WIDTH + 110;
        int shade = 190 * WIDTH + 110;

        assertThat(coarse.lab[0].data[light] - coarse.lab[0].data[shade]).isGreaterThan(10);
        assertThat(ColourHistogram.around(histogram.bin(light))).contains(histogram.bin(shade));
    }

    @Test
    void bins_with_their_share_of_some_pixels_and_those_that_touch_them_are_told() {
        LabThumbnail coarse =
                new Painted(WIDTH, HEIGHT, GREY, 0).box(80, 64, 96, 80, RED).coarse();
        ColourHistogram histogram = new ColourHistogram(coarse, GroundModel.of(coarse, GroundParameters.standard()));
        int ground = 0;
        int red = 100 * WIDTH + 120;
        int[] pixels = new int[10];
        Arrays.fill(pixels, ground);
        pixels[3] = red;

        boolean[] some = histogram.among(pixels, 0.05);
        boolean[] most = histogram.among(pixels, 0.2);

        assertThat(some[histogram.bin(red)] && some[histogram.bin(ground)]).isTrue();
        assertThat(most[histogram.bin(red)]).isFalse();
        assertThat(IntStream.range(0, ColourHistogram.BINS).filter(i -> most[i]).count())
                .isEqualTo(27);
        assertThat(IntStream.of(ColourHistogram.around(bin(5, 6, 7))).boxed())
                .hasSize(27)
                .doesNotHaveDuplicates()
                .contains(bin(4, 5, 6), bin(6, 7, 8), bin(5, 6, 7), bin(4, 7, 7))
                .doesNotContain(bin(5, 6, 9), bin(3, 6, 7));
    }
}
