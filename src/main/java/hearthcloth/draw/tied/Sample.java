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
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.tie.TiedFold;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A plain cloth to show a tie on before she has one of her own: a hearth and two rounds, undyed, a little larger than
 * needed.
 */
public final class Sample {

    private static final TiedLook LOOK = new TiedLook(
            Map.of(
                    "hearth", FabricLook.plain(Colour.of(0xb5533c)),
                    "inner", FabricLook.plain(Colour.of(0xd8cfb8)),
                    "outer", FabricLook.plain(Colour.of(0xa9b3a0))),
            Colour.of(0x5b616b));

    /** The cloth is one part in this many larger than the tie needs, which leaves room to work (ours). */
    private static final long PARTS = 20;

    private Sample() {}

    /** Such a cloth tied round a gift. */
    public static TiedGift of(Tie tie, Gift gift, Length tail) {
        Length least = tie.smallestSquare(gift, tail);
        Length side = least.plus(least.dividedBy(PARTS, Rounding.UP));
        Cloth cloth = cloth(side);
        return TiedGift.of(cloth, TiedFold.of(tie.fit(gift, cloth.finished(), tail)), LOOK);
    }

    /** A cloth with bars of a seventh of the side; the hearth takes the rest. */
    private static Cloth cloth(Length side) {
        Length bar = side.dividedBy(7, Rounding.DOWN);
        Layout layout = new Layout(Size.square(side.minus(bar.times(4))), Layout.courses(Order.ROUND, 2, List.of(bar)));
        List<List<Layout.Part>> bars = new ArrayList<>();
        for (Layout.Slot slot : layout.slots()) {
            String fabric = slot.place().round() == 1 ? "inner" : "outer";
            bars.add(List.of(new Layout.Part(fabric, Showing.SAME, slot.length())));
        }
        return new Cloth(layout.sewn("hearth", Showing.SAME, bars), Making.metric());
    }
}
