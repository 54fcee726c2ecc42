package hearthcloth.draw.tied;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.colour.Colour;
import hearthcloth.draw.fabric.FabricLook;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.tie.TiedFold;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A gift of every tie in a cloth of a hearth and two rounds, a little larger than it must be. */
record Pictured(Tie tie, Gift gift, Cloth cloth, Fold fold) {

    static final Length TAIL = Length.cm(12);

    static final TiedLook LOOK = new TiedLook(
            Map.of(
                    "Hearth",
                    FabricLook.plain(Colour.of(0xb5533c)),
                    "Kelp",
                    FabricLook.plain(Colour.of(0x3f5d52)),
                    "Rust",
                    FabricLook.plain(Colour.of(0xc98a4b)),
                    "Oat",
                    FabricLook.plain(Colour.of(0xd9c7a0)),
                    "Slate",
                    FabricLook.plain(Colour.of(0x5f6f86))),
            Colour.WHITE);

    static Stream<Pictured> all() {
        return Stream.of(
                of(Tie.FOUR_CORNER, "box 30 x 20 x 8 cm"),
                of(Tie.ERRAND, "box 25 x 25 x 8 cm"),
                of(Tie.FLAT, "box 30 x 20 x 3 cm"),
                of(Tie.TWO_KNOT, "box 60 x 12 x 12 cm"),
                of(Tie.EDGE_ALONG_EDGE, "box 20 x 14 x 10 cm"),
                of(Tie.ONE_BOTTLE, "bottle 8 x 30 cm"),
                of(Tie.TWO_BOTTLES, "two bottles 8 x 30 cm"),
                of(Tie.ROUND, "ball 22 cm"),
                of(Tie.BOOKS, "books 21 x 15 x 2 cm"),
                of(Tie.ROLL, "roll 6 x 38 cm"),
                of(Tie.TWO_KNOT, "roll 12 x 61 cm"));
    }

    static Pictured of(Tie tie, String written) {
        Gift gift = Gift.parse(written, null);
        double least = tie.smallestSquare(gift, TAIL).in(Unit.MILLIMETRE);
        Cloth cloth = cloth(Length.mm(Rounding.UP.whole(least * 1.05)));
        return new Pictured(tie, gift, cloth, TiedFold.of(tie.fit(gift, cloth.finished(), TAIL)));
    }

    /** A hearth three sevenths of the side, two rounds of equal bars. */
    static Cloth cloth(Length side) {
        Length bar = side.dividedBy(7, Rounding.DOWN);
        Size hearth = Size.square(side.minus(bar.times(4)));
        Layout layout = new Layout(hearth, Layout.courses(Order.ROUND, 2, List.of(bar)));
        List<String> fabrics = List.of("Kelp", "Rust", "Oat", "Slate");
        List<List<Layout.Part>> bars = new ArrayList<>();
        for (Layout.Slot slot : layout.slots()) {
            bars.add(List.of(new Layout.Part(fabrics.get(bars.size() % 4), Showing.SAME, slot.length())));
        }
        return new Cloth(layout.sewn("Hearth", Showing.SAME, bars), Making.metric());
    }

    @Override
    public String toString() {
        return tie + " " + gift;
    }
}
