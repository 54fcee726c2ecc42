package hearthcloth.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Half;
import hearthcloth.cloth.Join;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Seam;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Making;
import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.web.drawn.ClothDrawing;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A drawn cloth shows her own picture of a fabric where the pictured side lies, to scale, and nowhere else. */
class SwatchesTest {

    private static final Fabric FERN =
            new Fabric("fern <\"weave\">", Colour.of(0x3f8f4f), Fabric.Faces.RIGHT, Fabric.Nap.ANY);
    private static final Fabric OAT = new Fabric("oat", Colour.of(0xd8c49a), Fabric.Faces.SAME, Fabric.Nap.ANY);
    private static final Cloth CLOTH = new Cloth(
            Seam.of(
                    Join.BESIDE,
                    Half.SECOND,
                    new Patch(new Place.Hearth(), FERN.name(), Size.square(Length.inches(8)), Showing.RIGHT),
                    new Patch(
                            new Place.Bar(1, 0, Side.RIGHT, 0),
                            OAT.name(),
                            new Size(Length.inches(3), Length.inches(8)),
                            Showing.SAME)),
            Making.inches());

    private static String drawn(Face face, Map<String, Length> across) {
        return ClothDrawing.still(CLOTH, face, new Swatches(List.of(FERN, OAT), across), "a cloth");
    }

    private static int count(String what, String text) {
        return text.split(java.util.regex.Pattern.quote(what), -1).length - 1;
    }

    @Test
    void without_a_picture_the_colour_is_drawn() {
        assertThat(drawn(Face.FRONT, Map.of()))
                .doesNotContain("<pattern", "url(")
                .contains("fill=\"#3f8f4f\"");
    }

    @Test
    void the_tile_is_as_large_as_the_cloth_it_shows_and_its_name_is_harmless() {
        String svg = drawn(Face.FRONT, Map.of(FERN.name(), Length.cm(10)));
        assertThat(svg)
                .contains("width=\"100.00\" height=\"100.00\">", "/stash/swatch?fabric=fern+%3C%22weave%22%3E")
                .doesNotContain("<\"weave");
        assertThat(count("fill=\"url(#" + Swatches.id(FERN.name()) + ")\"", svg))
                .isEqualTo(1);
        assertThat(svg).doesNotContain("fill=\"#3f8f4f\"").contains("fill=\"#d8c49a\"");
    }

    @Test
    void the_wrong_side_is_not_what_was_pictured() {
        String back = drawn(Face.BACK, Map.of(FERN.name(), Length.cm(10)));
        assertThat(count("fill=\"url(#", back)).isZero();
        assertThat(back).contains("fill=\"#3f8f4f\"", "class=\"hatch\"");
    }

    @Test
    void a_fell_is_a_shade_off_the_picture() {
        String back = drawn(Face.BACK, Map.of(OAT.name(), Length.cm(5)));
        assertThat(count("fill=\"url(#" + Swatches.id(OAT.name()) + ")\"", back))
                .isEqualTo(2);
        assertThat(count("fill=\"" + OAT.colour().shade().hex() + "\" fill-opacity", back))
                .isEqualTo(1);
    }

    @Test
    void a_fabric_without_a_picture_is_drawn_from_its_words_to_scale() {
        Fabric check = new Fabric("madder check", Colour.of(0xa4493d), Fabric.Faces.SAME, Fabric.Nap.ANY);
        Fabric fern = new Fabric(FERN.name(), FERN.colour(), Fabric.Faces.SAME, Fabric.Nap.ANY);
        Cloth cloth = new Cloth(
                Seam.of(
                        Join.BESIDE,
                        Half.SECOND,
                        new Patch(new Place.Hearth(), fern.name(), Size.square(Length.inches(8)), Showing.SAME),
                        new Patch(
                                new Place.Bar(1, 0, Side.RIGHT, 0),
                                check.name(),
                                new Size(Length.inches(3), Length.inches(8)),
                                Showing.SAME)),
                Making.inches());
        String svg = ClothDrawing.still(cloth, Face.FRONT, new Swatches(List.of(fern, check), Map.of()), "a cloth");
        // a check repeats every 0.9 in, which is 22.86 mm
        assertThat(svg).contains("id=\"" + Swatches.id("madder check") + "\"", "width=\"22.86\" height=\"22.86\"");
        assertThat(count("fill=\"url(#" + Swatches.id("madder check") + ")\"", svg))
                .isPositive();
        assertThat(count("<pattern", svg)).isEqualTo(1);
    }
}
