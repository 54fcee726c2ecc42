package hearthcloth.cloth.face;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Jts;
import hearthcloth.cloth.Made;
import hearthcloth.cloth.Notation;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

/** What the two faces show, against the values of docs/sources.md#colour-line: w + 2f, w, w − 2f; JTS measures. */
class ShownTest {

    private static final Making MAKING = Made.felledExampleMaking();

    @Test
    void a_bar_shows_52_40_or_28_mm_on_the_fell_face_by_how_many_neighbours_it_wraps() {
        assertThat(middleWidth("(patch1 \"a\" 40 x 90 same <| patch2 \"b\" 40 x 90 same)", "|>", Face.BACK))
                .isEqualTo(52);
        assertThat(middleWidth("(patch1 \"a\" 40 x 90 same <| patch2 \"b\" 40 x 90 same)", "<|", Face.BACK))
                .isEqualTo(40);
        assertThat(middleWidth("(patch1 \"a\" 40 x 90 same |> patch2 \"b\" 40 x 90 same)", "<|", Face.BACK))
                .isEqualTo(28);
    }

    @Test
    void a_bar_shows_its_own_width_on_the_face_without_fells() {
        for (String left : List.of("<|", "|>")) {
            for (String right : List.of("<|", "|>")) {
                String pair = "(patch1 \"a\" 40 x 90 same " + left + " patch2 \"b\" 40 x 90 same)";
                assertThat(middleWidth(pair, right, Face.FRONT)).isEqualTo(40);
            }
        }
    }

    /** Hearth c − 2f, inner bars w, last bars w + f. */
    @Test
    void on_the_fell_face_of_a_log_cabin_the_hearth_loses_and_the_last_bars_gain() {
        Layout layout = new Layout(Size.square(Length.mm(100)), Layout.courses(Order.ROUND, 2, List.of(Length.mm(40))));
        Cloth cloth = Made.cloth(layout, MAKING);
        Shown back = Shown.of(cloth, Face.BACK);

        assertThat(visible(back, "hearth").getEnvelopeInternal().getWidth()).isEqualTo(88);
        assertThat(visible(back, "hearth").getEnvelopeInternal().getHeight()).isEqualTo(88);
        assertThat(visible(back, "1A").getEnvelopeInternal().getWidth()).isEqualTo(40);
        assertThat(visible(back, "2D").getEnvelopeInternal().getHeight()).isEqualTo(46);
        assertThat(visible(Shown.of(cloth, Face.FRONT), "hearth").getArea()).isEqualTo(100 * 100);
    }

    @Test
    void the_back_is_the_mirror_image_of_the_front() {
        Cloth cloth = new Cloth(Notation.parse("(patch1 \"a\" 30 x 90 right <| patch2 \"b\" 50 x 90 same)"), MAKING);
        Shown back = Shown.of(cloth, Face.BACK);

        assertThat(back.fields().get(0).patch().place().id()).isEqualTo("patch2");
        assertThat(back.fields().get(0).at().x()).isEqualTo(Length.ZERO);
        assertThat(back.fields().get(1).patch().showing()).isEqualTo(Showing.WRONG);
    }

    /** Interlocked folds move the colour by f/2 each way, and each fold is stitched (docs/sources.md#colour-line). */
    @Test
    void a_lapped_seam_moves_the_colour_by_half_a_lap_on_each_face_and_is_stitched_along_both_folds() {
        SeamKind lapped = new SeamKind("lapped", SeamKind.Build.LAPPED, Length.mm(12), Length.mm(12), Length.mm(12));
        Cloth cloth = new Cloth(
                Notation.parse("(patch1 \"a\" 40 x 90 same |> patch2 \"b\" 40 x 90 same)"), MAKING.withSeam(lapped));

        assertThat(visible(Shown.of(cloth, Face.BACK), "patch1").getArea()).isEqualTo(46 * 90);
        assertThat(visible(Shown.of(cloth, Face.FRONT), "patch1").getArea()).isEqualTo(34 * 90);
        assertThat(Shown.of(cloth, Face.FRONT).rows())
                .filteredOn(row -> row.kind() != Shown.Row.Kind.HEM)
                .extracting(row -> row.at().x())
                .containsExactly(Length.mm(34), Length.mm(46));
    }

    @Test
    void the_flap_of_a_french_seam_hides_a_strip_of_the_half_it_is_pressed_over() {
        SeamKind french = new SeamKind("french", SeamKind.Build.FRENCH, Length.mm(15), Length.mm(15), Length.mm(9));
        Cloth cloth = new Cloth(
                Notation.parse("(patch1 \"a\" 40 x 90 same |> patch2 \"b\" 40 x 90 same)"), MAKING.withSeam(french));

        assertThat(visible(Shown.of(cloth, Face.BACK), "patch2").getArea()).isEqualTo(31 * 90);
        assertThat(visible(Shown.of(cloth, Face.FRONT), "patch2").getArea()).isEqualTo(40 * 90);
    }

    /** Width in mm of patch2 in the middle of three. */
    private static double middleWidth(String pair, String sign, Face face) {
        String all = "(" + pair + " " + sign + " patch3 \"c\" 40 x 90 same)";
        Cloth cloth = new Cloth(Notation.parse(all), MAKING);
        return visible(Shown.of(cloth, face), "patch2").getEnvelopeInternal().getWidth();
    }

    private static Geometry visible(Shown shown, String id) {
        return Jts.visible(shown, id);
    }
}
