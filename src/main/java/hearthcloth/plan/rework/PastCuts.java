package hearthcloth.plan.rework;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What was cut before a cloth was planned anew.
 *
 * @param left the bars that are not sewn yet
 * @param asTheyAre those of them that are used as they were cut
 * @param longer the one of these to which a strip is joined
 */
record PastCuts(RemainingPlan resewing, List<Layout.Slot> left, Set<String> asTheyAre, Optional<String> longer) {

    /** Every piece that was cut before, as it was cut; what is used of it no more is left of it. */
    List<PieceCut> stillIn(Cloth cloth, List<PieceCut> cuts) {
        Set<String> used = new HashSet<>();
        cloth.patches().forEach(patch -> used.add(patch.place().id()));
        cuts.forEach(cut -> cut.tree().kept().forEach(kept -> used.remove(kept.patch())));
        List<PieceCut> past = new ArrayList<>();
        for (PieceCut was : resewing.before().cuts()) {
            CutTree now = still(was.tree(), used);
            if (!now.kept().isEmpty() || !now.cuts().isEmpty()) {
                past.add(was.asCut(now));
            }
        }
        return past;
    }

    private CutTree still(CutTree tree, Set<String> used) {
        if (tree instanceof CutTree.Parted cut) {
            return CutTree.parted(
                    cut.at(), cut.upright(), cut.line(), still(cut.first(), used), still(cut.second(), used));
        }
        if (!(tree instanceof CutTree.Kept kept)) {
            return tree;
        }
        String name = nameNow(kept.patch());
        return used.contains(name) ? asItIs(kept, name) : new CutTree.Left(kept.at());
    }

    /** A bar with a strip more, or with a part fewer that was never cut, counts its parts anew. */
    private String nameNow(String patch) {
        for (Layout.Slot slot : left) {
            String bar = slot.place().bar();
            List<Patch> of = resewing.parts(bar);
            int all = of.size() + (longer.filter(bar::equals).isPresent() ? 1 : 0);
            for (int i = 0; i < of.size() && asTheyAre.contains(bar); i++) {
                if (of.get(i).place().id().equals(patch)) {
                    return all == 1 ? bar : slot.place().part(i + 1).id();
                }
            }
        }
        return patch;
    }

    /** A patch of a bar that was found too short is no larger than it was found. */
    private CutTree asItIs(CutTree.Kept kept, String name) {
        Size real = resewing.realSize(kept);
        Rect at = kept.at();
        if (!at.size().holds(real) || at.size().equals(real)) {
            return new CutTree.Kept(at, name, kept.turned());
        }
        CutTree.Kept now = new CutTree.Kept(Rect.at(at.x(), at.y(), real), name, kept.turned());
        return real.width().isLessThan(at.width())
                ? CutTree.parted(
                        at,
                        true,
                        now.at().right(),
                        now,
                        new CutTree.Left(Rect.at(
                                now.at().right(), at.y(), new Size(at.width().minus(real.width()), at.height()))))
                : CutTree.parted(
                        at,
                        false,
                        now.at().bottom(),
                        now,
                        new CutTree.Left(Rect.at(
                                at.x(),
                                now.at().bottom(),
                                new Size(at.width(), at.height().minus(real.height())))));
    }
}
