package hearthcloth.draw.fabric;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Sketch;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** {@link Motif}: what a fabric's name says is printed on it. */
class MotifTest {

    private static final Motif.Inks INKS =
            new Motif.Inks(Colour.of(0x101010), Colour.of(0x808080), Colour.of(0xf0f0f0));

    private static List<Mark> drawn(Motif motif, double side, long seed) {
        Sketch sketch = new Sketch();
        motif.draw(sketch, side, INKS, new SplittableRandom(seed));
        return sketch.marks();
    }

    @ParameterizedTest
    @CsvSource({
        "Madder check 2, CHECK",
        "ochre LANTERN print, LANTERNS",
        "print of birds, BIRDS",
        "Patterned cotton, PRINT",
        "willow leaves with dots, LEAVES",
        "ticking, STRIPE",
        "rose-dot, DOT",
    })
    void the_first_motif_that_is_named_counts_and_print_only_where_no_other_is(String name, Motif motif) {
        assertThat(Motif.named(name)).contains(motif);
    }

    @Test
    void a_word_that_only_begins_like_a_motif_names_none() {
        for (String name : List.of("", "oat linen", "dotty's own", "checker", "stark", "leaflet", "birdseye")) {
            assertThat(Motif.named(name)).as(name).isEmpty();
        }
    }

    /** Of every motif: the ground covers the whole repeat, something is drawn on it in another colour, and nothing far outside. */
    @ParameterizedTest
    @EnumSource(Motif.class)
    void a_repeat_is_covered_and_figured_and_the_same_each_time(Motif motif) {
        double side = motif.repeatInches() * 25.4;
        assertThat(side).isBetween(12.0, 80.0);
        List<Mark> marks = drawn(motif, side, 3);
        assertThat(marks).isEqualTo(drawn(motif, side, 3));
        Bounds whole = new Bounds(0, 0, side, side);
        assertThat(marks.get(0).bounds()).isEqualTo(whole);
        assertThat(marks.size()).isGreaterThan(2);
        Bounds near = whole.grown(side * 0.25);
        assertThat(marks).allMatch(mark -> near.contains(mark.bounds()));
    }

    /** Seeds 1 to 10: twice as large is the same drawing twice as large. */
    @ParameterizedTest
    @EnumSource(Motif.class)
    void a_motif_is_drawn_to_scale(Motif motif) {
        for (long seed = 1; seed <= 10; seed++) {
            List<Mark> small = drawn(motif, 10, seed);
            List<Mark> large = drawn(motif, 20, seed);
            assertThat(large).hasSameSizeAs(small);
            for (int i = 0; i < small.size(); i++) {
                Bounds one = small.get(i).bounds();
                Bounds two = large.get(i).bounds();
                assertThat(Math.abs(two.x() - 2 * one.x())).isLessThan(1e-9);
                assertThat(Math.abs(two.width() - 2 * one.width())).isLessThan(1e-9);
            }
        }
    }
}
