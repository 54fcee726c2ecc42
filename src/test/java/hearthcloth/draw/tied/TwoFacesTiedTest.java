package hearthcloth.draw.tied;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.colour.Colour;
import hearthcloth.draw.fabric.FabricLook;
import hearthcloth.draw.fabric.Weave;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.tie.TiedFold;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A tied gift of a fabric with two colours: each part is seen in the colour of the side that it shows. */
class TwoFacesTiedTest {

    private static final Colour RUST = Colour.of(0xa6502f);
    private static final Colour INK = Colour.of(0x1f2430);

    private static Cloth cloth(Showing showing) {
        Layout layout =
                new Layout(Size.square(Length.mm(400)), Layout.courses(Order.ROUND, 2, List.of(Length.mm(100))));
        List<List<Layout.Part>> bars = layout.slots().stream()
                .map(slot -> List.of(new Layout.Part("Double", showing, slot.length())))
                .toList();
        return new Cloth(layout.sewn("Double", showing, bars), Making.metric());
    }

    private static String tied(Showing showing, Colour right, Colour wrong) {
        Cloth cloth = cloth(showing);
        Fold fold = TiedFold.of(
                Tie.FOUR_CORNER.fit(Gift.parse("box 25 x 20 x 8 cm", null), cloth.finished(), Pictured.TAIL));
        TiedLook look = new TiedLook(
                Map.of("Double", new FabricLook(right, wrong, Optional.empty(), Weave.PLAIN)), Colour.WHITE);
        return Thumbnail.of(TiedGift.of(cloth, fold, look));
    }

    @Test
    void turned_over_it_looks_like_a_fabric_whose_colours_are_exchanged() {
        assertThat(tied(Showing.WRONG, RUST, INK)).isEqualTo(tied(Showing.RIGHT, INK, RUST));
        assertThat(tied(Showing.WRONG, RUST, INK)).isNotEqualTo(tied(Showing.RIGHT, RUST, INK));
    }

    @Test
    void alike_from_both_sides_it_looks_the_same_turned_over() {
        assertThat(tied(Showing.WRONG, RUST, RUST)).isEqualTo(tied(Showing.RIGHT, RUST, RUST));
    }
}
