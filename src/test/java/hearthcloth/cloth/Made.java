package hearthcloth.cloth;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.List;

/** Cloths of one fabric for tests: a layout with every bar in one piece. */
public final class Made {

    private Made() {}

    /** {@code layout} sewn of one fabric that looks alike from both sides. */
    public static Cloth cloth(Layout layout, Making making) {
        List<List<Layout.Part>> bars = layout.slots().stream()
                .map(slot -> List.of(new Layout.Part("oat", Showing.SAME, slot.length())))
                .toList();
        return new Cloth(layout.sewn("oat", Showing.SAME, bars), making);
    }

    /** The felled example of docs/sources.md#felled-example: hearth 100, bars 40, three rounds in opposite pairs, 12 + 6 mm, hem 10 + 10 mm. */
    public static Cloth felledExample() {
        Layout layout = new Layout(Size.square(Length.mm(100)), Layout.courses(Order.PAIRS, 3, List.of(Length.mm(40))));
        return cloth(layout, felledExampleMaking());
    }

    public static Making felledExampleMaking() {
        return new Making(
                SeamKind.felled(Length.mm(6), Length.mm(12)),
                Hem.square(Length.mm(10), Length.mm(10)),
                Length.ZERO,
                Length.ZERO,
                Face.BACK);
    }

    /** Seams that lose {@code allowance} of both edges, and as much at the rim: a block that is not hemmed yet. */
    public static Making plain(Length allowance) {
        SeamKind seam = new SeamKind("plain", SeamKind.Build.FELLED, allowance, allowance, Length.ZERO);
        return new Making(seam, Hem.square(Length.ZERO, allowance), Length.ZERO, Length.ZERO, Face.BACK);
    }

    /** ¼ + ½ in felled, no hem, no margins. */
    public static Making unhemmed() {
        return Making.inches()
                .withHem(Hem.square(Length.ZERO, Length.ZERO))
                .withLeeway(Length.ZERO)
                .withTrim(Length.ZERO);
    }
}
