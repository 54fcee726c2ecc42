package hearthcloth.sew;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Rect;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Bound;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Told;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Plans laid out by hand for any cloth: one piece a fabric, patch under patch, whatever is beside them left over. */
final class HandPlans {

    private static final int FIRST_ROW = 2;

    private HandPlans() {}

    static Plan of(Cloth cloth, PiecingRules rules, List<Fabric> fabrics, Piece.Washed washed) {
        Map<String, List<Laid>> byFabric = new LinkedHashMap<>();
        cloth.laid()
                .forEach(laid -> byFabric.computeIfAbsent(laid.patch().fabric(), key -> new ArrayList<>())
                        .add(laid));
        List<PieceCut> cuts = new ArrayList<>();
        for (Fabric fabric : fabrics) {
            List<Laid> patches = byFabric.getOrDefault(fabric.name(), List.of());
            if (!patches.isEmpty()) {
                cuts.add(cut(fabric, patches, washed, cuts.size() + FIRST_ROW));
            }
        }
        Plan.Story story = Told.story("By hand", "Laid out by hand.");
        return new Plan(story, cloth, rules, cuts, new Bound(0, 0));
    }

    private static PieceCut cut(Fabric fabric, List<Laid> patches, Piece.Washed washed, int row) {
        Length width = patches.stream().map(laid -> laid.cut().width()).reduce(Length.ZERO, Length::max);
        Length height = patches.stream().map(laid -> laid.cut().height()).reduce(Length.ZERO, Length::plus);
        Size size = new Size(width.plus(Length.inches(1)), height.plus(Length.inches(3)));
        Piece piece = new Piece(String.valueOf(row), fabric, size, washed, row);
        return new PieceCut(piece, rows(patches, Rect.at(Length.ZERO, Length.ZERO, size)));
    }

    private static CutTree rows(List<Laid> patches, Rect at) {
        if (patches.isEmpty()) {
            return new CutTree.Left(at);
        }
        Size cut = patches.get(0).cut();
        Length line = at.y().plus(cut.height());
        Rect top = Rect.at(at.x(), at.y(), new Size(at.width(), cut.height()));
        Rect rest = Rect.at(at.x(), line, new Size(at.width(), at.height().minus(cut.height())));
        Rect kept = Rect.at(top.x(), top.y(), cut);
        Rect beside = Rect.at(kept.right(), top.y(), new Size(at.width().minus(cut.width()), cut.height()));
        CutTree patch = new CutTree.Kept(kept, patches.get(0).patch().place().id(), false);
        CutTree across = CutTree.parted(top, true, kept.right(), patch, new CutTree.Left(beside));
        return CutTree.parted(at, false, line, across, rows(patches.subList(1, patches.size()), rest));
    }
}
