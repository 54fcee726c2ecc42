package hearthcloth.cutstock.piecing.blocks;

import java.util.LinkedHashMap;
import java.util.Map;

/** Scraps that are cut to the edge of a block so that their offcuts go back. */
final class CutScraps {

    private final Stock stock;
    private final Goal goal;
    private final Blocks blocks;
    private final BlockDraft draft;
    private final SameScraps same;
    private final Map<Cut, Integer> made = new LinkedHashMap<>();

    private int scrap;
    private int scrapSide;
    private int edge;
    private int other;
    private double area;
    private long lost;

    CutScraps(Stock stock, Goal goal, Blocks blocks, BlockDraft draft, SameScraps same) {
        this.stock = stock;
        this.goal = goal;
        this.blocks = blocks;
        this.draft = draft;
        this.same = same;
    }

    private record Cut(int scrap, int side, int edge, int other) {}

    /** Whether a side of a scrap can be cut to a block's edge with an offcut that may go back; what that costs is kept. */
    boolean fits(int block, int side, int cutScrap, int cutSide) {
        int full = stock.side(cutScrap, cutSide);
        edge = blocks.side(block, side);
        if (full < edge + stock.rules().keepShort()
                || edge < stock.rules().least()
                || stock.whole(cutScrap)
                || (side != cutSide && !blocks.turnable(block) && !stock.turnable(cutScrap))) {
            return false;
        }
        int beyond = blocks.side(block, 1 - side);
        int fullOther = stock.side(cutScrap, 1 - cutSide);
        other = Math.min(fullOther, room(block, side, cutScrap, cutSide) - beyond);
        if (stock.off(cutScrap, 1 - cutSide, other) < 0) {
            return false;
        }
        scrap = cutScrap;
        scrapSide = cutSide;
        area = (double) edge * (beyond + other);
        lost = other < stock.rules().least() ? 0 : stock.rules().lost(full, fullOther, edge, other);
        return other >= stock.rules().least();
    }

    /** How far the goal lets a block and what is joined to its side reach together. */
    private int room(int block, int side, int cutScrap, int cutSide) {
        if (blocks.turnable(block) && stock.turnable(cutScrap)) {
            int less = goal.limit(Blocks.HEIGHT, true);
            return blocks.side(block, side) > less ? less : goal.limit(Blocks.WIDTH, true);
        }
        return goal.limit(1 - (blocks.turnable(block) ? cutSide : side), false);
    }

    long lost() {
        return lost;
    }

    /** The area of block and scrap together. */
    double area() {
        return area;
    }

    /** The scrap, cut, as a block; made at most once. */
    int block() {
        return made.computeIfAbsent(new Cut(scrap, scrapSide, edge, other), unknown -> {
            boolean wide = scrapSide == Blocks.WIDTH;
            draft.patch(scrap, stock, wide ? edge : other, wide ? other : edge);
            draft.cuts = 1;
            int block = draft.make();
            same.file(block);
            return block;
        });
    }

    /** Which side of that block the cut edge is: one that may be turned is stored with its longer side across. */
    int side() {
        if (!stock.turnable(scrap)) {
            return scrapSide;
        }
        return edge >= other ? Blocks.WIDTH : Blocks.HEIGHT;
    }
}
