package hearthcloth.plan.colour;

import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutPiece;
import hearthcloth.cutstock.job.CutPlan;
import hearthcloth.cutstock.job.Cutting;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.NeighbourBars;
import hearthcloth.cutstock.job.Span;
import hearthcloth.cutstock.job.StockPiece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A cutting whose parts may change their places in the cloth: which cut-out goes to which bar and in what order, and
 * which of two pieces of one size is cut in which way. None of it changes how many cuts, joins and leftovers there are.
 * Changed in place by its search; it says itself whether it may stand.
 */
final class Exchanged {

    /** A part where it is cut out: from which of the cut pieces, in which size, lying which way. */
    record Leaf(int tree, long width, long length, boolean turned) {}

    private final CutJoinJob job;
    private final CutPlan plan;
    private final List<Leaf> leaves = new ArrayList<>();
    private final Map<List<Integer>, Integer> leafOf = new LinkedHashMap<>();
    private final int[][] order;
    private final List<StockPiece> pieces = new ArrayList<>();

    Exchanged(CutJoinJob job, CutPlan plan) {
        this.job = job;
        this.plan = plan;
        this.order = new int[job.bars().size()][];
        for (int tree = 0; tree < plan.pieces().size(); tree++) {
            pieces.add(plan.pieces().get(tree).piece());
            for (Cutting leaf : plan.pieces().get(tree).cutting().leaves().toList()) {
                if (leaf instanceof Cutting.Part part && part.demand() > 0) {
                    leafOf.put(List.of(part.demand(), part.index()), leaves.size());
                    long width = part.turned() ? part.height() : part.width();
                    leaves.add(new Leaf(tree, width, part.cutLength(), part.turned()));
                }
            }
        }
        for (int bar = 0; bar < order.length; bar++) {
            int id = job.bars().get(bar).id();
            order[bar] = plan.partsOf(id).stream()
                    .mapToInt(
                            part -> leafOf.getOrDefault(List.of(id, part.part().index()), -1))
                    .toArray();
        }
    }

    int bars() {
        return order.length;
    }

    int parts(int bar) {
        return order[bar].length;
    }

    Leaf leaf(int bar, int part) {
        return leaves.get(order[bar][part]);
    }

    /** The number of the leaf that lies there, the same wherever it lies. */
    int leafNumber(int bar, int part) {
        return order[bar][part];
    }

    int trees() {
        return pieces.size();
    }

    StockPiece piece(int tree) {
        return pieces.get(tree);
    }

    StockPiece pieceOf(int bar, int part) {
        return pieces.get(leaf(bar, part).tree());
    }

    void swapParts(int bar, int part, int otherBar, int otherPart) {
        int leaf = order[bar][part];
        order[bar][part] = order[otherBar][otherPart];
        order[otherBar][otherPart] = leaf;
    }

    void swapBars(int bar, int other) {
        int[] leavesOfBar = order[bar];
        order[bar] = order[other];
        order[other] = leavesOfBar;
    }

    /** Cuts what one tree is cut from another piece; where that one is cut too, the two trade. */
    void cutFrom(int tree, StockPiece piece) {
        int other = pieces.indexOf(piece);
        StockPiece was = pieces.get(tree);
        pieces.set(tree, piece);
        if (other >= 0) {
            pieces.set(other, was);
        }
    }

    /** Whether every bar is of fabrics it may have, lies as the nap allows and has its joins where they may be. */
    boolean stands() {
        for (int bar = 0; bar < order.length; bar++) {
            if (!allows(bar) || !joinsClear(bar)) {
                return false;
            }
        }
        return job.neighbours().stream().allMatch(this::apart) && hearthStands();
    }

    private boolean hearthStands() {
        for (int tree = 0; tree < pieces.size(); tree++) {
            StockPiece piece = pieces.get(tree);
            StockPiece was = plan.pieces().get(tree).piece();
            if (!piece.equals(was) && plan.pieces().get(tree).cutting().leaves().anyMatch(Exchanged::isHearth)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isHearth(Cutting leaf) {
        return leaf instanceof Cutting.Part part && part.demand() == 0;
    }

    private boolean allows(int bar) {
        JobBar wanted = job.bars().get(bar);
        for (int part = 0; part < order[bar].length; part++) {
            StockPiece piece = pieceOf(bar, part);
            boolean isOther = piece.fabric() != pieceOf(bar, 0).fabric();
            if ((wanted.oneFabric() && isOther)
                    || !wanted.fabrics().has(piece.fabric())
                    || !wanted.turn().allows(leaf(bar, part).turned(), piece.lengthwiseOnly())) {
                return false;
            }
        }
        return true;
    }

    /** The position of a bar's join, as {@link CutJoinJob} counts it. */
    long join(int bar, int join) {
        long at = -job.joinOffset() + job.joinLoss();
        for (int part = 0; part <= join; part++) {
            at += leaf(bar, part).length() - job.joinLoss();
        }
        return at;
    }

    private boolean joinsClear(int bar) {
        for (int join = 0; join + 1 < order[bar].length; join++) {
            long at = join(bar, join);
            for (Span span : job.bars().get(bar).forbidden()) {
                if (span.from() < at && at < span.to()) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean apart(NeighbourBars pair) {
        int first = index(pair.first());
        int second = index(pair.second());
        for (int one = 0; one + 1 < order[first].length; one++) {
            for (int other = 0; other + 1 < order[second].length; other++) {
                if (Math.abs(join(first, one) + pair.shift() - join(second, other)) < pair.clearance()) {
                    return false;
                }
            }
        }
        return true;
    }

    private int index(int id) {
        int at = 0;
        while (job.bars().get(at).id() != id) {
            at++;
        }
        return at;
    }

    /** The plan as it now stands. */
    CutPlan plan() {
        Map<Integer, Cutting.Part> places = new LinkedHashMap<>();
        for (int bar = 0; bar < order.length; bar++) {
            for (int part = 0; part < order[bar].length; part++) {
                int demand = job.bars().get(bar).id();
                places.put(order[bar][part], new Cutting.Part(demand, part, 0, 0, 0, 0, false));
            }
        }
        List<CutPiece> cut = new ArrayList<>();
        for (int tree = 0; tree < pieces.size(); tree++) {
            cut.add(new CutPiece(
                    pieces.get(tree), relabelled(plan.pieces().get(tree).cutting(), places)));
        }
        return CutPlan.of(cut, job.blocks().size(), job.bars().size(), job.leastOffcut());
    }

    private Cutting relabelled(Cutting cutting, Map<Integer, Cutting.Part> places) {
        if (cutting instanceof Cutting.Cut cut) {
            return new Cutting.Cut(
                    cut.x(),
                    cut.y(),
                    cut.width(),
                    cut.height(),
                    cut.lengthwise(),
                    cut.at(),
                    relabelled(cut.first(), places),
                    relabelled(cut.second(), places));
        }
        if (cutting instanceof Cutting.Part part && part.demand() > 0) {
            int leaf = leafOf.getOrDefault(List.of(part.demand(), part.index()), -1);
            Cutting.Part place = places.getOrDefault(leaf, part);
            return new Cutting.Part(
                    place.demand(), place.index(), part.x(), part.y(), part.width(), part.height(), part.turned());
        }
        return cutting;
    }
}
