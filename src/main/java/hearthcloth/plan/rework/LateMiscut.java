package hearthcloth.plan.rework;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A cut that was asked for while sewing went wrong, or its piece is gone: what is sewn and what is cut stay as they are, and
 * the bars still to cut are planned again from what is there.
 *
 * @param before the plan with what is cut only
 * @param gone pieces that are no longer there as they were
 * @param come what is there of them instead, with numbers of their own
 */
public record LateMiscut(Plan before, List<Piece> gone, List<Piece> come) {

    public LateMiscut {
        gone = List.copyOf(gone);
        come = List.copyOf(come);
    }

    /**
     * The table after a slip.
     *
     * @param made the cuts that were made, as {@link Miscut#made}
     * @param wrong id of the piece that went wrong; patches cut off it before are good; empty where none did
     * @param real the largest part left of what was still to be cut of it; empty where nothing is left
     * @param next the first number that is free for a new piece
     */
    public static LateMiscut of(Plan plan, Set<String> made, String wrong, Optional<Size> real, int next) {
        List<PieceCut> cuts = new ArrayList<>();
        List<Piece> gone = new ArrayList<>();
        List<Piece> come = new ArrayList<>();
        for (PieceCut cut : plan.cuts()) {
            boolean isWrong = cut.piece().id().equals(wrong);
            List<CutTree> parts = CutSoFar.parts(cut, made);
            if (cut.past()) {
                cuts.add(cut);
            } else if (isWrong || parts.size() > 1) {
                gone.add(cut.piece());
                for (CutTree part : parts) {
                    boolean usable = part instanceof CutTree.Left
                            ? CutTree.isReusable(part.at().size(), plan.rules().leastPiece())
                            : !isWrong && !(part instanceof CutTree.Kept);
                    if (usable) {
                        come.add(cut.piece().part(next + come.size(), part.at().size()));
                    }
                }
                if (isWrong && real.isPresent()) {
                    come.add(cut.piece().part(next + come.size(), real.get()));
                }
                if (parts.size() > 1) {
                    cuts.add(cut.asCut(soFar(cut, cut.tree(), made)));
                }
            }
        }
        return new LateMiscut(new Plan(plan.story(), plan.cloth(), plan.rules(), cuts, plan.bound()), gone, come);
    }

    private static CutTree soFar(PieceCut from, CutTree tree, Set<String> made) {
        if (tree instanceof CutTree.Parted cut
                && made.contains(Miscut.name(from, from.tree().cuts().indexOf(cut)))) {
            return CutTree.parted(
                    cut.at(),
                    cut.upright(),
                    cut.line(),
                    soFar(from, cut.first(), made),
                    soFar(from, cut.second(), made));
        }
        return tree instanceof CutTree.Kept ? tree : new CutTree.Left(tree.at());
    }

    /**
     * Plans what is still to cut again.
     *
     * @param bars how many are sewn on
     * @param design as it is
     * @param table what was there before the slip
     */
    public RemainingPlan.Answer fit(int bars, Design design, RemainingPlan.Table table, Budget budget) {
        List<Piece> pieces = new ArrayList<>(table.stash().pieces());
        pieces.removeAll(gone);
        pieces.addAll(come);
        RemainingPlan.Table now = new RemainingPlan.Table(new Stash(pieces), table.next() + come.size(), table.ruler());
        return new RemainingPlan(before, bars, Map.of()).fit(design, now, budget);
    }
}
