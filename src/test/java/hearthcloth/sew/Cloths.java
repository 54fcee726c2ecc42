package hearthcloth.sew;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.List;

/** Two small cloths whose guides are read through by eye. */
final class Cloths {

    static final Fabric OAT = new Fabric("Oat", Colour.of(0xd9c7a0), Fabric.Faces.SAME, Fabric.Nap.ANY);
    static final Fabric KELP = new Fabric("Kelp", Colour.of(0x1f3d32), Fabric.Faces.RIGHT, Fabric.Nap.ANY);

    private Cloths() {}

    /** Hearth cut 8 in, one round cut 4 in, round the square, the last bar joined from two parts, square hem. */
    static Plan inches() {
        Making making = Making.inches();
        Layout layout = layout(making, Length.inches(8), Length.inches(4), Order.ROUND);
        List<List<Layout.Part>> bars = kelp(layout);
        Length rest = layout.slots().get(3).length().minus(Length.inches(5));
        bars.set(
                3,
                List.of(
                        new Layout.Part("Kelp", Showing.RIGHT, Length.inches(5)),
                        new Layout.Part("Oat", Showing.SAME, rest)));
        Cloth cloth = new Cloth(layout.sewn("Oat", Showing.SAME, bars), making);
        return HandPlans.of(cloth, PiecingRules.inches(), List.of(OAT, KELP), Piece.Washed.NO);
    }

    /** Hearth cut 16 cm, one round cut 8 cm in opposite pairs, fells on the front, mitred hem of 1 + 1 cm. */
    static Plan metric() {
        Making making = Making.metric()
                .withHem(new Hem(Length.cm(1), Length.cm(1), Hem.Corner.MITRED))
                .felledOn(Face.FRONT);
        Layout layout = layout(making, Length.cm(16), Length.cm(8), Order.PAIRS);
        Cloth cloth = new Cloth(layout.sewn("Kelp", Showing.RIGHT, kelp(layout)), making);
        return HandPlans.of(cloth, PiecingRules.metric(), List.of(KELP), Piece.Washed.YES);
    }

    private static Layout layout(Making making, Length hearth, Length bar, Order order) {
        List<Layout.Course> cut = Layout.courses(order, 1, List.of(bar));
        return new Layout(Layout.hearthOfCut(Size.square(hearth), cut, making), Layout.finishedOfCut(cut, making));
    }

    private static List<List<Layout.Part>> kelp(Layout layout) {
        List<List<Layout.Part>> bars = new ArrayList<>();
        for (Layout.Slot slot : layout.slots()) {
            bars.add(List.of(new Layout.Part("Kelp", Showing.RIGHT, slot.length())));
        }
        return bars;
    }
}
