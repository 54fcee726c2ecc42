package hearthcloth.plan.patchwork;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.face.Layers;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.cutstock.piecing.compose.Composed;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;

/** Says whether seams keep clear of each other. */
final class Meetings {

    private Meetings() {}

    /** Where four seams meet, as they do at the corners of blocks: told from the cloth itself. */
    static String sentence(Cloth cloth) {
        SeamKind.Build build = cloth.making().seam().build();
        int plain = build.plies(build.plies(1, 1), 1);
        long thick = Layers.spots(cloth).stream()
                .filter(spot -> spot.kind() == Layers.Kind.CROSSING && spot.plies() > plain)
                .count();
        return thick == 0
                ? "Nowhere do four seams meet."
                : "At " + (thick == 1 ? "one place" : thick + " places")
                        + " seams meet on both sides of a third; the guide says" + " where it is thick.";
    }

    static String sentence(Composed composed, MarkedHeap heap, Ruler ruler) {
        String clear = ruler.write(heap.wish().rules().clearance(), Rounding.NEAREST);
        int crossings = composed.crossings().size();
        String seams = crossings == 0
                ? "No two seams end within " + clear + " of each other across a third."
                : (crossings == 1 ? "At one place seams end" : "At " + crossings + " places seams end") + " within "
                        + clear + " of each other across a third; the guide says where it is thick.";
        return seams + (composed.alike() == 0 ? " No fabric lies beside itself." : "");
    }
}
