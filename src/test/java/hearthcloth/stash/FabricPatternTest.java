package hearthcloth.stash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Colour;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@link FabricPattern}: what a name tells of a fabric's figures, in her language too. */
class FabricPatternTest {

    private static Fabric grey(String name) {
        return new Fabric(name, Colour.of(0x777777), Fabric.Faces.SAME, Fabric.Nap.ANY);
    }

    @ParameterizedTest
    @CsvSource({
        "large birds, 1.8",
        "big check, 1.8",
        "tiny dots, 0.6",
        "small floral, 0.6",
        "birds, 1",
        "largely grey, 1"
    })
    void a_size_is_read_as_a_word_by_itself(String name, double size) {
        assertThat(FabricPattern.size(name)).isEqualTo(size);
    }

    /** A check has half its cloth 14 points of L* off; it repeats every 0.9 in, a large one every 41.148 mm. */
    @Test
    void only_figures_that_are_called_large_are_taken_as_seen_with_the_spread_they_are_drawn_with() {
        assertThat(FabricPattern.said(grey("check"))).isEmpty();
        assertThat(FabricPattern.said(grey("small check"))).isEmpty();
        assertThat(FabricPattern.said(grey("large grey linen"))).isEmpty();
        var figure = FabricPattern.said(grey("Large check")).orElseThrow();
        assertThat(figure.spread()).isCloseTo(7, within(1e-12));
        assertThat(figure.lightness()).isEqualTo(figure.spread());
        assertThat(figure.repeatMm()).isCloseTo(41.148, within(1e-9));
        assertThat(figure.mean()).isEqualTo(grey("x").colour().lab());
        assertThat(figure.seen(colour -> Colour.of(0)).mean().lightness()).isZero();
    }
}
