package hearthcloth.cloth.face;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Made;
import hearthcloth.cloth.Notation;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Plies against docs/sources.md#plies: 4, 10, 16, 12, 9; French 5, lapped 3. */
class LayersTest {

    private static final Making MAKING = Made.felledExampleMaking();

    @Test
    void a_plain_felled_seam_has_four_layers_a_french_one_five_a_lapped_one_three() {
        assertThat(plainBand("felled")).isEqualTo(4);
        assertThat(plainBand("french")).isEqualTo(5);
        assertThat(plainBand("lapped")).isEqualTo(3);
        assertThat(plainBand("gamchimjil")).isEqualTo(2);
    }

    @Test
    void a_bar_across_the_end_of_a_seam_meets_ten_layers() {
        Cloth cloth = cloth("((patch1 \"a\" 80 x 80 same <| patch2 \"a\" 80 x 80 same) </ patch3 \"a\" 160 x 40 same)");

        assertThat(crossings(cloth)).containsExactly(10);
        // Patch 2 wraps, so the band lies on patch 1, 6 mm wide up to the joining line at 80.
        assertThat(Layers.spots(cloth).get(0).at())
                .isEqualTo(Rect.at(Length.mm(74), Length.mm(80), new Size(Length.mm(6), Length.ZERO)));
    }

    @Test
    void two_seams_that_meet_end_to_end_make_a_crossing_of_sixteen() {
        Cloth cloth = cloth("((patch1 \"a\" 80 x 80 same <| patch2 \"a\" 80 x 80 same) </"
                + " (patch3 \"a\" 80 x 40 same <| patch4 \"a\" 80 x 40 same))");

        assertThat(crossings(cloth)).containsExactly(16);
    }

    @Test
    void two_seams_that_wrap_away_from_each_other_do_not_lie_on_each_other() {
        Cloth cloth = cloth("((patch1 \"a\" 80 x 80 same <| patch2 \"a\" 80 x 80 same) </"
                + " (patch3 \"a\" 80 x 40 same |> patch4 \"a\" 80 x 40 same))");

        assertThat(crossings(cloth)).containsExactly(10, 10);
    }

    @Test
    void a_seam_run_into_the_hem_makes_twelve_and_each_square_corner_nine() {
        Cloth cloth = cloth("(patch1 \"a\" 80 x 80 same <| patch2 \"a\" 80 x 80 same)");
        List<Layers.Spot> spots = Layers.spots(cloth);

        assertThat(plies(spots, Layers.Kind.HEM)).containsExactly(12, 12);
        assertThat(plies(spots, Layers.Kind.CORNER)).containsExactly(9, 9, 9, 9);
        assertThat(Layers.most(cloth)).isEqualTo(12);
    }

    @Test
    void a_mitred_corner_is_no_thick_place() {
        Hem mitred = new Hem(Length.mm(10), Length.mm(10), Hem.Corner.MITRED);
        Cloth cloth = new Cloth(Made.felledExample().work(), MAKING.withHem(mitred));

        assertThat(plies(Layers.spots(cloth), Layers.Kind.CORNER)).isEmpty();
    }

    /** Round the square, n rounds: bar k ≥ 2 of a cloth lies across the ends of the seams that end on its side. */
    @Test
    void a_log_cabin_of_one_round_has_a_crossing_at_each_bar_but_the_first() {
        Layout layout = new Layout(Size.square(Length.mm(100)), Layout.courses(Order.ROUND, 1, List.of(Length.mm(40))));
        Cloth cloth = Made.cloth(layout, MAKING);
        var bySteps = Layers.spots(cloth).stream()
                .filter(spot -> spot.kind() == Layers.Kind.CROSSING)
                .collect(Collectors.groupingBy(Layers.Spot::step, Collectors.counting()));

        // B crosses the seam of A; C crosses that of B; D crosses those of A and C.
        assertThat(bySteps).isEqualTo(java.util.Map.of(2, 1L, 3, 1L, 4, 2L));
    }

    @Test
    void folds_of_a_whipped_seam_are_felt_on_both_sides_of_its_line() {
        SeamKind whipped = SeamKind.named("gamchimjil").orElseThrow();
        Cloth cloth = new Cloth(
                cloth("((patch1 \"a\" 80 x 80 same <| patch2 \"a\" 80 x 80 same) </ patch3 \"a\" 160 x 40 same)")
                        .work(),
                MAKING.withSeam(whipped));

        assertThat(Layers.spots(cloth))
                .filteredOn(spot -> spot.kind() == Layers.Kind.CROSSING)
                .allSatisfy(spot -> assertThat(spot.plies()).isEqualTo(4))
                .extracting(spot -> spot.at().width())
                .containsExactly(Length.mm(7), Length.mm(7));
    }

    private static int plainBand(String seam) {
        Making making = MAKING.withSeam(SeamKind.named(seam).orElseThrow());
        return Layers.band(new Cloth(Made.felledExample().work(), making));
    }

    private static List<Integer> crossings(Cloth cloth) {
        return plies(Layers.spots(cloth), Layers.Kind.CROSSING);
    }

    private static List<Integer> plies(List<Layers.Spot> spots, Layers.Kind kind) {
        return spots.stream()
                .filter(spot -> spot.kind() == kind)
                .map(Layers.Spot::plies)
                .toList();
    }

    private static Cloth cloth(String notation) {
        return new Cloth(Notation.parse(notation), MAKING);
    }
}
