package hearthcloth.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Colour;
import hearthcloth.colour.Figure;
import hearthcloth.colour.Lab;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.IntBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@link FabricFigure}: mean, spread and repeat of made pictures of 96 places a side, which show 96 mm of cloth. */
class FabricFigureTest {

    private static Optional<Figure> figure(IntBinaryOperator rgb) {
        List<Colour> places = new ArrayList<>();
        for (int y = 0; y < 96; y++) {
            for (int x = 0; x < 96; x++) {
                places.add(Colour.of(rgb.applyAsInt(x, y)));
            }
        }
        return FabricFigure.of(places, 96);
    }

    /**
     * Black and white in equal parts: a mean of L* 50, 50 from either. CIEDE2000 between L* 0 and 50 is 50 over
     * 1 + 0.015 · 625/√645, as between 50 and 100 (CIE 142-2001).
     */
    @ParameterizedTest
    @ValueSource(ints = {4, 6, 12})
    void stripes_of_two_colours_have_half_their_difference_as_spread_and_repeat_as_they_were_drawn(int broad) {
        for (boolean isUpright : new boolean[] {true, false}) {
            Figure figure = figure((x, y) -> (isUpright ? x : y) / broad % 2 == 0 ? 0 : 0xffffff)
                    .orElseThrow();
            assertThat(figure.mean().lightness()).isCloseTo(50, within(0.01));
            assertThat(figure.lightness()).isCloseTo(50, within(0.01));
            assertThat(figure.spread()).isCloseTo(50 / (1 + 0.015 * 625 / Math.sqrt(645)), within(0.01));
            // 96 over 2 · broad repeats have one crossing fewer than there are stripes
            assertThat(figure.repeatMm()).isCloseTo(2 * 96.0 / (96.0 / broad - 1), within(1e-9));
            assertThat(figure.repeatMm()).isBetween(2.0 * broad, 2.4 * broad);
        }
    }

    /** Red and green of one lightness: what differs most is a*, and lightness hardly spreads. */
    @Test
    void figures_of_one_lightness_are_told_by_their_hue() {
        int red = new Lab(55, 40, 20).toColour().rgb();
        int green = new Lab(55, -40, 20).toColour().rgb();
        Figure figure = figure((x, y) -> x / 8 % 2 == 0 ? red : green).orElseThrow();
        assertThat(figure.lightness()).isLessThan(1);
        assertThat(figure.spread()).isGreaterThan(15);
        assertThat(figure.repeatMm()).isBetween(16.0, 18.0);
    }

    @Test
    void plain_cloth_its_threads_and_uneven_light_are_no_figures() {
        assertThat(figure((x, y) -> 0x336699)).isEmpty();
        SplittableRandom chance = new SplittableRandom(7);
        assertThat(figure((x, y) -> 0x010101 * (0x80 + chance.nextInt(-9, 10)))).isEmpty();
        assertThat(figure((x, y) -> 0x010101 * (60 + x + y / 2))).isEmpty();
    }

    @Test
    void what_is_no_picture_has_no_figure() {
        assertThat(FabricFigure.of(new byte[] {1, 2, 3}, 100)).isEmpty();
        assertThat(FabricFigure.of(List.of(Colour.of(0), Colour.of(0xffffff)), 100))
                .isEmpty();
    }
}
