package hearthcloth.plan.palette;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.palette.SuitedSchemes.Suited;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a heap is good for, by the gaps, steps and shares that colour.md names. */
class SuitedSchemesTest {

    private static final int[] GREYS = {0x111111, 0x3b3b3b, 0x6a6a6a, 0x9b9b9b, 0xcfcfcf, 0xfafafa};

    /** A piece of each, as many square decimetres as are said. */
    private static Stash heap(int[] colours, int... areas) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < colours.length; i++) {
            Fabric fabric = new Fabric("F" + i, Colour.of(colours[i]), Fabric.Faces.SAME, Fabric.Nap.ANY);
            Size size = new Size(Length.cm(10), Length.cm(10L * areas[i % areas.length]));
            pieces.add(new Piece(String.valueOf(i + 2), fabric, size, Piece.Washed.UNKNOWN, i + 2));
        }
        return new Stash(pieces);
    }

    private static List<Scheme.Kind> kinds(Stash heap, Contrast wanted) {
        return SuitedSchemes.of(heap, wanted).stream().map(Suited::kind).toList();
    }

    @Test
    void a_wide_gap_between_lights_and_darks_makes_halves_first() {
        Stash heap = heap(new int[] {0x222222, 0x333333, 0xdddddd, 0xeeeeee}, 10);
        assertThat(kinds(heap, Contrast.READS)).startsWith(Scheme.Kind.HALVES).doesNotContain(Scheme.Kind.GRADED);
    }

    @Test
    void lights_of_less_than_a_fifth_of_the_heap_make_no_half() {
        Stash heap = heap(new int[] {0x222222, 0x333333, 0x444444, 0xeeeeee}, 10, 10, 10, 7);
        assertThat(kinds(heap, Contrast.READS)).doesNotContain(Scheme.Kind.HALVES);
        Stash more = heap(new int[] {0x222222, 0x333333, 0x444444, 0xeeeeee}, 10, 10, 10, 8);
        assertThat(kinds(more, Contrast.READS)).contains(Scheme.Kind.HALVES);
    }

    @Test
    void even_steps_from_light_to_dark_make_a_graded_cloth_first() {
        assertThat(kinds(heap(GREYS, 10), Contrast.READS)).startsWith(Scheme.Kind.GRADED);
    }

    @Test
    void one_bright_scrap_is_an_accent_and_the_fabric_is_named() {
        Stash heap = heap(new int[] {0x8a8a8a, 0x9a9a9a, 0xc4262e}, 10, 10, 4);
        Suited first = SuitedSchemes.of(heap, Contrast.READS).get(0);
        assertThat(first.kind()).isEqualTo(Scheme.Kind.ACCENT);
        assertThat(first.fabric().map(Fabric::name)).contains("F2");
        Stash much = heap(new int[] {0x8a8a8a, 0x9a9a9a, 0xc4262e}, 10, 10, 20);
        assertThat(kinds(much, Contrast.READS)).doesNotContain(Scheme.Kind.ACCENT);
    }

    /** Ten prints of one lightness and of nearly one brightness. */
    @Test
    void many_small_prints_are_scattered_first() {
        int[] prints = {
            0xa86a6a, 0x8f7a4a, 0x6f8450, 0x4f8a6f, 0x508796, 0x6c7fae, 0x8f74a8, 0xa66b8c, 0x9a7258, 0x7d805a
        };
        assertThat(kinds(heap(prints, 10), Contrast.READS)).startsWith(Scheme.Kind.SCATTERED);
    }

    @Test
    void much_of_one_fabric_is_a_field_and_the_fabric_is_named() {
        Stash heap = heap(new int[] {0x222222, 0xeeeeee}, 40, 10);
        Suited field = SuitedSchemes.of(heap, Contrast.READS).stream()
                .filter(one -> one.kind() == Scheme.Kind.FIELD)
                .findFirst()
                .orElseThrow();
        assertThat(field.fabric().map(Fabric::name)).contains("F0");
        assertThat(field.worth()).isBetween(0.79, 0.81);
    }

    @Test
    void where_it_is_to_melt_light_is_not_set_against_dark() {
        Stash heap = heap(new int[] {0x222222, 0x333333, 0xdddddd, 0xeeeeee}, 10);
        assertThat(kinds(heap, Contrast.MELTS))
                .doesNotContain(Scheme.Kind.HALVES, Scheme.Kind.SPIRAL, Scheme.Kind.TURNS, Scheme.Kind.FRAMES);
    }

    @Test
    void one_fabric_is_good_for_nothing_and_of_any_heap_the_best_comes_first() {
        assertThat(SuitedSchemes.of(heap(new int[] {0x222222}, 10), Contrast.READS))
                .isEmpty();
        assertThat(SuitedSchemes.of(new Stash(List.of()), Contrast.READS)).isEmpty();
        Random random = new Random(21);
        for (int i = 0; i < 200; i++) {
            int[] colours = random.ints(1 + random.nextInt(12), 0, 0x1000000).toArray();
            int[] areas = random.ints(colours.length, 1, 40).toArray();
            for (Contrast wanted : Contrast.values()) {
                List<Suited> all = SuitedSchemes.of(heap(colours, areas), wanted);
                assertThat(all)
                        .isSortedAccordingTo(
                                Comparator.comparingDouble(Suited::worth).reversed());
                assertThat(all)
                        .allMatch(one -> one.worth() > 0 && one.worth() <= 1 && Scheme.WISHED.contains(one.kind()));
                assertThat(all).extracting(Suited::kind).doesNotHaveDuplicates();
            }
        }
    }
}
