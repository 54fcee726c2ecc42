package hearthcloth.plan.patchwork;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.face.Layers;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.cutstock.piecing.compose.Composed;
import hearthcloth.measure.Rounding;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;

/** Says whether seams keep clear of each other. */
final class Meetings {

    private Meetings() {}

    /** Where four seams meet, as they do at the corners of blocks: told from the cloth itself. */
    static Sentence sentence(Cloth cloth) {
        SeamKind.Build build = cloth.making().seam().build();
        int plain = build.plies(build.plies(1, 1), 1);
        long thick = Layers.spots(cloth).stream()
                .filter(spot -> spot.kind() == Layers.Kind.CROSSING && spot.plies() > plain)
                .count();
        return thick == 0 ? PlanningSentences.seamsNowhere() : PlanningSentences.seamsThick((int) thick);
    }

    static Sentence sentence(Composed composed, MarkedHeap heap) {
        Argument clear = Argument.of(heap.wish().rules().clearance(), Rounding.NEAREST);
        int crossings = composed.crossings().size();
        Sentence seams =
                crossings == 0 ? PlanningSentences.seamsClear(clear) : PlanningSentences.seamsNear(clear, crossings);
        return composed.alike() == 0 ? seams.then(PlanningSentences.seamsApart()) : seams;
    }
}
