package hearthcloth.web.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Making;
import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.web.kit.Swatches;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A cloth of a fabric with two colours on the screen: each part in the colour that it shows, also in five greys. */
class TwoFacesDrawnTest {

    private static final int RUST = 0xa6502f;
    private static final int INK = 0x1f2430;

    private static Cloth cloth(Showing showing) {
        Layout layout =
                new Layout(Size.square(Length.mm(400)), Layout.courses(Order.ROUND, 1, List.of(Length.mm(100))));
        List<List<Layout.Part>> bars = layout.slots().stream()
                .map(slot -> List.of(new Layout.Part("Double", showing, slot.length())))
                .toList();
        return new Cloth(layout.sewn("Double", showing, bars), Making.metric());
    }

    private static Swatches swatches(int one, int other, Fabric.Faces faces) {
        return new Swatches(
                List.of(new Fabric("Double", Colour.of(one), faces, Fabric.Nap.ANY, Optional.of(Colour.of(other)))),
                Map.of());
    }

    @Test
    void in_greys_a_turned_patch_is_as_dark_as_the_face_that_it_shows() {
        String turned = ClothDrawing.values(cloth(Showing.WRONG), swatches(RUST, INK, Fabric.Faces.SAME), "x");
        assertThat(turned)
                .isEqualTo(ClothDrawing.values(cloth(Showing.RIGHT), swatches(INK, RUST, Fabric.Faces.SAME), "x"))
                .isNotEqualTo(ClothDrawing.values(cloth(Showing.RIGHT), swatches(RUST, INK, Fabric.Faces.SAME), "x"));
    }

    @Test
    void only_the_wrong_side_of_a_fabric_that_has_a_right_one_is_hatched() {
        for (Face face : Face.values()) {
            Showing showing = face == Face.FRONT ? Showing.WRONG : Showing.RIGHT;
            assertThat(ClothDrawing.still(cloth(showing), face, swatches(RUST, INK, Fabric.Faces.SAME), "x"))
                    .contains(Colour.of(INK).hex())
                    .doesNotContain("class=\"hatch\"");
            assertThat(ClothDrawing.still(cloth(showing), face, swatches(RUST, INK, Fabric.Faces.RIGHT), "x"))
                    .contains(Colour.of(INK).hex())
                    .contains("class=\"hatch\"");
        }
    }
}
