package hearthcloth.plan.rework;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Seam;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Bound;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Puts a plan for the parts on the table back into the pieces they were cut from, so that the plan tells everything:
 * what was cut of which piece, what is still to cut, and what is lost and used of the whole cloth.
 */
final class WholeStory {

    private final CutTable table;
    private final Map<String, CutTree> found = new HashMap<>();
    private final Set<CutTree> done = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<String> made = new HashSet<>();

    WholeStory(CutTable table) {
        this.table = table;
    }

    /** The cuts of the plan that are made already. */
    Set<String> made() {
        return Set.copyOf(made);
    }

    /**
     * The plan over whole pieces.
     *
     * @param plan found for the parts on the table
     * @param story the words that go with it
     */
    Plan of(Plan plan, Plan.Story story) {
        plan.cuts().forEach(cut -> found.put(cut.piece().id(), cut.tree()));
        List<PieceCut> cuts = new ArrayList<>();
        Set<String> begun = new HashSet<>();
        for (PieceCut was : table.miscut().plan().cuts()) {
            boolean isBegun = table.at(was.piece(), was.tree()).isPresent()
                    || was.tree().cuts().stream().anyMatch(cut -> table.isFixedCut(was, cut));
            if (isBegun) {
                begun.add(was.piece().id());
                add(cuts, new PieceCut(was.piece(), grown(was, was.tree()), was.past()));
            }
        }
        plan.cuts().stream()
                .filter(cut -> !cut.piece().id().startsWith("part "))
                .filter(cut -> !begun.contains(cut.piece().id()))
                .forEach(cuts::add);
        Cloth cloth = new Cloth(
                plan.cloth().work().fold(new InFabrics(fabrics(cuts))),
                plan.cloth().making());
        Plan whole = new Plan(story, cloth, plan.rules(), cuts, new Bound(0, 0)).checked();
        return new KeptNames(table.miscut().plan()).of(whole);
    }

    private static Map<String, String> fabrics(List<PieceCut> cuts) {
        Map<String, String> fabrics = new LinkedHashMap<>();
        cuts.forEach(cut -> cut.tree()
                .kept()
                .forEach(kept -> fabrics.put(kept.patch(), cut.piece().fabric().name())));
        return fabrics;
    }

    /** Adds a piece that gives a patch or was cut into; one that was only planned and gives nothing stays whole. */
    private void add(List<PieceCut> cuts, PieceCut cut) {
        List<CutTree.Parted> all = cut.tree().cuts();
        boolean isCut = false;
        for (int i = 0; i < all.size(); i++) {
            if (done.contains(all.get(i))) {
                if (!cut.past()) {
                    made.add(Miscut.name(cut, i));
                }
                isCut = true;
            }
        }
        if (isCut || !cut.tree().kept().isEmpty()) {
            cuts.add(cut);
        }
    }

    private CutTree grown(PieceCut was, CutTree tree) {
        if (tree instanceof CutTree.Parted cut && table.isFixedCut(was, cut)) {
            CutTree first = grown(was, cut.first());
            CutTree second = grown(was, cut.second());
            boolean isMade = table.miscut()
                    .made()
                    .contains(Miscut.name(was, was.tree().cuts().indexOf(cut)));
            if (!isMade && first instanceof CutTree.Left && second instanceof CutTree.Left) {
                return new CutTree.Left(cut.at());
            }
            CutTree grown = CutTree.parted(cut.at(), cut.upright(), cut.line(), first, second);
            if (isMade) {
                done.add(grown);
            }
            return grown;
        }
        Optional<Piece> part = table.at(was.piece(), tree);
        boolean isShort = tree instanceof CutTree.Kept kept
                && kept.patch().equals(table.miscut().patch());
        Size real = isShort ? table.miscut().measured() : tree.at().size();
        CutTree used = part.map(piece -> found.get(piece.id()))
                .map(cut -> moved(cut, tree.at().x(), tree.at().y()))
                .orElse(new CutTree.Left(Rect.at(tree.at().x(), tree.at().y(), real)));
        if (was.past() && used.kept().size() == 1) {
            // She trims it as she sews it on; a piece that was cut long ago is not cut at the table again.
            CutTree.Kept one = used.kept().get(0);
            return new CutTree.Kept(tree.at(), one.patch(), one.turned());
        }
        return isShort ? trimmed(used, tree.at()) : used;
    }

    /** What was cut off too much lies beside the patch; where it went, nobody measured, so it counts as lost. */
    private CutTree trimmed(CutTree used, Rect at) {
        CutTree tree = used;
        if (tree.at().height().isLessThan(at.height())) {
            Rect below = Rect.at(
                    at.x(),
                    tree.at().bottom(),
                    new Size(tree.at().width(), at.height().minus(tree.at().height())));
            Rect column = Rect.at(at.x(), at.y(), new Size(tree.at().width(), at.height()));
            tree = CutTree.parted(column, false, used.at().bottom(), tree, new CutTree.Left(below));
            done.add(tree);
        }
        if (tree.at().width().isLessThan(at.width())) {
            Length line = tree.at().right();
            Rect beside = Rect.at(line, at.y(), new Size(at.right().minus(line), at.height()));
            tree = CutTree.parted(at, true, line, tree, new CutTree.Left(beside));
            done.add(tree);
        }
        return tree;
    }

    private static CutTree moved(CutTree tree, Length x, Length y) {
        Rect at = tree.at().movedBy(x, y);
        if (tree instanceof CutTree.Parted cut) {
            Length line = cut.line().plus(cut.upright() ? x : y);
            return CutTree.parted(at, cut.upright(), line, moved(cut.first(), x, y), moved(cut.second(), x, y));
        }
        return tree instanceof CutTree.Kept kept
                ? new CutTree.Kept(at, kept.patch(), kept.turned())
                : new CutTree.Left(at);
    }

    private record InFabrics(Map<String, String> fabrics) implements Assembly.Fold<Assembly> {

        @Override
        public Assembly patch(Patch patch) {
            String fabric = fabrics.getOrDefault(patch.place().id(), patch.fabric());
            return new Patch(patch.place(), fabric, patch.size(), patch.showing());
        }

        @Override
        public Assembly seam(Seam seam, Assembly first, Assembly second) {
            return Seam.of(seam.join(), seam.wraps(), first, second);
        }
    }
}
