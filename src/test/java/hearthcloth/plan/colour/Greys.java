package hearthcloth.plan.colour;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Five greys, a red, and small cloths of them. */
public final class Greys {

    /** L* 100, 85, 50, 42, 25 and 0. */
    public static final Fabric WHITE = fabric("White", 0xffffff);

    public static final Fabric PALE = fabric("Pale", 0xd4d4d4);
    public static final Fabric GREY = fabric("Grey", 0x777777);
    public static final Fabric NEAR = fabric("Near", 0x636363);
    public static final Fabric DARK = fabric("Dark", 0x3b3b3b);
    public static final Fabric BLACK = fabric("Black", 0x000000);
    public static final Fabric RED = fabric("Red", 0xcc2222);

    public static final List<Fabric> ALL = List.of(WHITE, PALE, GREY, NEAR, DARK, BLACK, RED);

    private Greys() {}

    public static Fabric fabric(String name, int rgb) {
        return new Fabric(name, Colour.of(rgb), Fabric.Faces.SAME, Fabric.Nap.ANY);
    }

    /** A square hearth with rounds of bars of one width, each bar in one piece. */
    public static Cloth cloth(
            long hearthMm, long barMm, int rounds, Fabric hearth, Function<Layout.Slot, Fabric> bars) {
        Layout layout = new Layout(
                Size.square(Length.mm(hearthMm)), Layout.courses(Order.ROUND, rounds, List.of(Length.mm(barMm))));
        List<List<Layout.Part>> parts = new ArrayList<>();
        for (Layout.Slot slot : layout.slots()) {
            parts.add(List.of(new Layout.Part(bars.apply(slot).name(), Showing.SAME, slot.length())));
        }
        return new Cloth(layout.sewn(hearth.name(), Showing.SAME, parts), Making.metric());
    }
}
