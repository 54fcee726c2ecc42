package hearthcloth.sew;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Layout;
import hearthcloth.cloth.Making;
import hearthcloth.cloth.Order;
import hearthcloth.cloth.Showing;
import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.Plan;
import hearthcloth.plan.Rules;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class GuideTest {

    private static final Fabric OAT = new Fabric("Oat", Colour.of(0xd9c7a0), Fabric.Faces.SAME, Fabric.Nap.ANY);
    private static final Fabric KELP = new Fabric("Kelp", Colour.of(0x1f3d32), Fabric.Faces.RIGHT, Fabric.Nap.ANY);

    @Test
    void printsMore() {
        Cloth cloth = inches().cloth();
        for (String seam : List.of("french", "lapped", "gamchimjil", "felled and trimmed")) {
            Making making = Making.metric()
                    .withSeam(hearthcloth.cloth.SeamKind.named(seam).orElseThrow())
                    .withHem(new hearthcloth.cloth.Hem(
                            Length.mm(10), Length.mm(10), hearthcloth.cloth.Hem.Corner.MITRED))
                    .felledOn(hearthcloth.cloth.Face.FRONT);
            Cloth other = new Cloth(cloth.work(), making);
            System.out.println("#### " + seam);
            System.out.println(Guide.of(
                            HandPlans.of(other, Rules.metric(), List.of(OAT, KELP), Piece.Washed.YES),
                            Ruler.MILLIMETRES)
                    .text());
        }
    }

    @Test
    void prints() {
        System.out.println(Guide.of(inches(), Ruler.EIGHTHS).text());
    }

    private static Plan inches() {
        Making making = Making.inches();
        List<Layout.Course> cut = Layout.courses(Order.ROUND, 1, List.of(Length.inches(4)));
        Size hearth = Layout.hearthOfCut(Size.square(Length.inches(8)), cut, making);
        Layout layout = Layout.ofCutBars(hearth, cut, making);
        List<List<Layout.Part>> bars = new ArrayList<>();
        for (Layout.Slot slot : layout.slots()) {
            bars.add(List.of(new Layout.Part("Kelp", Showing.RIGHT, slot.length())));
        }
        Length all = layout.slots().get(3).length();
        bars.set(
                3,
                List.of(
                        new Layout.Part("Kelp", Showing.RIGHT, Length.inches(5)),
                        new Layout.Part("Oat", Showing.SAME, all.minus(Length.inches(5)))));
        Cloth cloth = new Cloth(layout.sewn("Oat", Showing.SAME, bars), making);
        return HandPlans.of(cloth, Rules.inches(), List.of(OAT, KELP), Piece.Washed.NO);
    }

    static final String USED = "";
}
