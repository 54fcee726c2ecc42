package hearthcloth.cutstock.piecing.blocks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Covers a rectangle by scraps, bottom-up: every scrap is a block, and two blocks without a common scrap whose edges
 * differ by little make a larger one, trimmed at the goal's edges. Blocks that lose least of their own area are followed
 * first, in each class of size ({@link Beam}).
 *
 * <p>A step of the budget is one block that is followed. With the same stock, goal, effort and steps the answer is the
 * same.
 */
public final class BlockSearch {

    private static final double SLACK = 3;
    private static final double JITTER = 1e-5;
    static final double CH = Double.parseDouble(System.getProperty("ch", "0.3"));
    static final int EM = Integer.getInteger("em", 4);
    private final float[] ease;
    private static final int MOST_BLOCKS = 400_000;

    private final Stock stock;
    private final Goal goal;
    private final Effort effort;
    private final Blocks blocks = new Blocks();
    private final EdgeIndex index;
    private final SameScraps same;
    private final Beam beam;
    private final Draft draft;
    private final List<Integer> spanning = new ArrayList<>();
    private final Map<Long, Integer> cutScraps = new HashMap<>();
    private final List<Integer> covers = new ArrayList<>();
    private boolean all;
    private double mostCost;
    private int found = Blocks.NONE;

    /** Prepares a search; {@link #run} does the work. */
    public BlockSearch(Stock stock, Goal goal, Effort effort) {
        this.stock = stock;
        this.goal = goal;
        this.effort = effort;
        this.index = new EdgeIndex(Math.max(goal.width(), goal.height()));
        this.same = new SameScraps(blocks);
        this.beam = new Beam(effort);
        this.draft = new Draft(blocks, goal, stock.rules());
        this.mostCost = goal.mostLost();
        this.ease = new float[stock.size()];
        for (int i = 0; i < ease.length; i++) {
            if (EM == 1) ease[i] = -(float) (stock.width()[i] * (double) stock.height()[i] / goal.area()) * stock.size();
            if (EM == 2) ease[i] = -Math.max(stock.width()[i], stock.height()[i]) / (float) Math.max(goal.width(), goal.height());
            if (EM == 3) { int c = 0; for (int j = 0; j < ease.length; j++) if (j != i) for (int x : new int[] {stock.width()[i], stock.height()[i]}) for (int y : new int[] {stock.width()[j], stock.height()[j]}) if (x == y) c++; ease[i] = c / 10f; }
            if (EM == 4) { double c = 0; for (int x : new int[] {stock.width()[i], stock.height()[i]}) { int k = 0; for (int j = 0; j < ease.length; j++) if (j != i)  for (int y : new int[] {stock.width()[j], stock.height()[j]}) if (x == y) k++; c += Math.log(1 + k); } ease[i] = (float) c / 3; }
        }
    }

    /**
     * Follows blocks until the budget is spent or none is left.
     *
     * @param until what is looked for
     */
    public void run(BooleanSupplier spent, Until until) {
        all = until == Until.ALL;
        for (int scrap = 0; scrap < stock.size(); scrap++) {
            single(scrap);
        }
        while (!(until == Until.FIRST && found >= 0) && mostCost >= 0 && blocks.count < MOST_BLOCKS && !spent.getAsBoolean()) {
            int block = beam.take(b -> blocks.lost[b] + price(blocks.cuts[b]) <= mostCost);
            if (block < 0) {
                return;
            }
            follow(block);
        }
    }

    /** The best cover found, its patches numbered as in the stock. */
    public Optional<Cover> best() {
        return found < 0 ? Optional.empty() : Optional.of(cover(found));
    }

    /** All covers found. */
    public List<Cover> covers() {
        return covers.stream().map(this::cover).toList();
    }

    /** Blocks that reach from one side of the goal to the other. */
    public List<Cover> spanning() {
        return spanning.stream().map(this::cover).toList();
    }

    private Cover cover(int block) {
        boolean turned = blocks.turnable(block) && goal.width() < goal.height();
        int width = blocks.side(block, turned ? Blocks.HEIGHT : Blocks.WIDTH);
        int height = blocks.side(block, turned ? Blocks.WIDTH : Blocks.HEIGHT);
        return new Cover(blocks.set[block], width, height, blocks.lost[block], () -> blocks.tree(block, turned));
    }

    private double price(int cuts) {
        return Math.max(0, effort.cutPrice()) * cuts;
    }

    private void single(int scrap) {
        boolean turnable = stock.turnable()[scrap];
        int across = stock.width()[scrap];
        int down = stock.height()[scrap];
        boolean high = turnable && across < down;
        int limitAcross = goal.limit(high ? Blocks.HEIGHT : Blocks.WIDTH, turnable);
        int limitDown = goal.limit(high ? Blocks.WIDTH : Blocks.HEIGHT, turnable);
        draft.patch(scrap, stock, Math.min(across, limitAcross), Math.min(down, limitDown));
        draft.ease = ease[scrap];
        if (Math.min(draft.width, draft.height) >= stock.rules().least()) {
            offer();
        }
    }

    /** Makes the draft a block if it is good enough. */
    private void offer() {
        double area = (double) draft.width * draft.height;
        double cost = draft.lost + price(draft.cuts);
        if (cost > mostCost || cost > effort.cap() * area || draft.held - area > goal.spare()) {
            return;
        }
        boolean acrossAll = draft.spansWidth();
        boolean downAll = draft.spansHeight();
        int kind = Beam.classOf(Long.bitCount(draft.set), acrossAll || downAll);
        double key = cost / area + JITTER * (CH * Chance.of(effort.seed(), draft.set) + draft.ease / Long.bitCount(draft.set));
        boolean whole = acrossAll && downAll;
        if (!whole && !beam.admits(kind, key)
                || same.surpassed(draft.set, draft.width, draft.height, draft.lost)) {
            return;
        }
        int block = draft.make();
        same.file(block);
        if (whole) {
            covers.add(block);
            if (!all) {
                found = block;
                mostCost = cost - 1;
            }
            return;
        }
        if (acrossAll || downAll) {
            spanning.add(block);
        }
        beam.add(kind, block, key);
    }

    private void follow(int block) {
        for (int side = Blocks.HEIGHT; side <= Blocks.WIDTH; side++) {
            joinAll(block, side);
            if (effort.cutPrice() >= 0 && stock.rules().keepShort() > 0) {
                joinCut(block, side);
            }
        }
        index.file(blocks.height[block], blocks.set[block], 2 * block);
        index.file(blocks.width[block], blocks.set[block], 2 * block + 1);
    }

    private void joinAll(int block, int side) {
        int edge = blocks.side(block, side);
        int slack = goal.spare() == 0 ? 0 : (int) (edge * effort.cap() * SLACK);
        long set = blocks.set[block];
        int last = index.drawer(edge + slack);
        for (int drawer = index.drawer(edge - slack); drawer <= last; drawer++) {
            int count = index.count(drawer);
            long[] sets = index.sets(drawer);
            int[] entries = index.entries(drawer);
            for (int i = 0; i < count; i++) {
                if ((sets[i] & set) == 0) {
                    join(block, side, entries[i] >> 1, entries[i] & 1);
                }
            }
        }
    }

    private void join(int a, int sideA, int b, int sideB) {
        if ((sideA == sideB || blocks.turnable(a) || blocks.turnable(b))
                && draft.join(a, sideA, b, sideB)
                && draft.clip()) {
            offer();
        }
    }

    /** Joins scraps that are cut to a block's edge so that their offcuts go back. */
    private void joinCut(int block, int side) {
        for (int scrap = 0; scrap < stock.size(); scrap++) {
            if ((blocks.set[block] >>> scrap & 1) == 0) {
                for (int scrapSide = Blocks.HEIGHT; scrapSide <= Blocks.WIDTH; scrapSide++) {
                    if (side == scrapSide || blocks.turnable(block) || stock.turnable()[scrap]) {
                        joinCut(block, side, scrap, scrapSide);
                    }
                }
            }
        }
    }

    private void joinCut(int block, int side, int scrap, int scrapSide) {
        int edge = blocks.side(block, side);
        int full = scrapSide == Blocks.WIDTH ? stock.width()[scrap] : stock.height()[scrap];
        if (full < edge + stock.rules().keepShort() || edge < stock.rules().least()) {
            return;
        }
        int other = blocks.side(block, 1 - side);
        int fullOther = scrapSide == Blocks.WIDTH ? stock.height()[scrap] : stock.width()[scrap];
        int cutOther = Math.min(fullOther, room(block, side, scrap, scrapSide) - other);
        if (cutOther < stock.rules().least()) {
            return;
        }
        long lost = blocks.lost[block] + stock.rules().lost(full, fullOther, edge, cutOther);
        double area = (double) edge * (other + cutOther);
        if (lost + price(blocks.cuts[block] + 1) <= Math.min(mostCost, effort.cap() * area)) {
            join(block, side, cutScrap(scrap, scrapSide, edge, cutOther), scrapSideOf(scrap, scrapSide, edge, cutOther));
        }
    }

    /** How far the goal lets a block and what is joined to its side reach together. */
    private int room(int block, int side, int scrap, int scrapSide) {
        boolean turnable = blocks.turnable(block) && stock.turnable()[scrap];
        if (turnable) {
            int less = goal.limit(Blocks.HEIGHT, true);
            return blocks.side(block, side) > less ? less : goal.limit(Blocks.WIDTH, true);
        }
        int frame = blocks.turnable(block) ? scrapSide : side;
        return goal.limit(1 - frame, false);
    }

    /** The block of a scrap cut to an edge; made at most once. */
    private int cutScrap(int scrap, int scrapSide, int edge, int other) {
        long name = ((((long) scrap * 2 + scrapSide) << 28) + edge << 28) + other;
        return cutScraps.computeIfAbsent(name, unknown -> {
            boolean wide = scrapSide == Blocks.WIDTH;
            draft.patch(scrap, stock, wide ? edge : other, wide ? other : edge);
            draft.cuts = 1;
            draft.ease = ease[scrap];
            int block = draft.make();
            same.file(block);
            return block;
        });
    }

    /** Which side of the stored block the edge is: one that may be turned is stored with the longer side across. */
    private int scrapSideOf(int scrap, int scrapSide, int edge, int other) {
        return stock.turnable()[scrap] ? (edge >= other ? Blocks.WIDTH : Blocks.HEIGHT) : scrapSide;
    }
}
