package hearthcloth.cutstock.piecing.blocks;

import hearthcloth.cutstock.piecing.parameter.BlockParameters;
import hearthcloth.cutstock.piecing.tree.Trimming;
import java.util.ArrayList;
import java.util.List;
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

    private final Stock stock;
    private final Goal goal;
    private final Effort effort;
    private final BlockParameters parameters;
    private final BlockParameters.Keys keys;
    private final Blocks blocks = new Blocks();
    private final EdgeIndex index;
    private final SameScraps same;
    private final Beam beam;
    private final BlockDraft draft;
    private final List<Integer> spanning = new ArrayList<>();
    private final CutScraps cutScraps;
    private final List<Integer> covers = new ArrayList<>();
    private boolean all;
    private boolean exhausted;
    private final double sparePrice;
    private final long must;
    private double mostCost;
    private int found = Blocks.NONE;

    /** Prepares a search; {@link #run} does the work. */
    public BlockSearch(Stock stock, Goal goal, Effort effort, BlockParameters parameters) {
        this.parameters = parameters;
        this.keys = parameters.keys();
        this.stock = stock;
        this.goal = goal;
        this.effort = effort;
        this.index = new EdgeIndex(Math.max(goal.width(), goal.height()));
        this.same = new SameScraps(blocks, effort.all(), parameters.same());
        this.beam = new Beam(effort);
        this.draft = new BlockDraft(blocks, goal, stock.rules());
        this.mostCost = goal.mostLost();
        this.sparePrice = Math.min(
                parameters.spare().dearest(), parameters.spare().price() * goal.area() / Math.max(1, goal.spare()));
        this.must = stock.must();
        this.cutScraps = new CutScraps(stock, goal, blocks, draft, same);
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
        while (!(until == Until.FIRST && found >= 0)
                && mostCost >= 0
                && blocks.count < parameters.blocks()
                && !spent.getAsBoolean()) {
            int block = beam.take(b -> blocks.lost[b] + price(blocks.cuts[b]) <= mostCost);
            if (block < 0) {
                exhausted = true;
                return;
            }
            follow(block);
        }
    }

    /** Whether nothing was left to be followed, so that there is no better cover. */
    public boolean exhausted() {
        return exhausted && effort.all();
    }

    /** The best cover found, its patches numbered as in the stock. */
    public Optional<BlockCover> best() {
        return found < 0 ? Optional.empty() : Optional.of(cover(found));
    }

    /** All covers found. */
    public List<BlockCover> covers() {
        return covers.stream().map(this::cover).toList();
    }

    /** Blocks that reach from one side of the goal to the other. */
    public List<BlockCover> spanning() {
        return spanning.stream().map(this::cover).toList();
    }

    private BlockCover cover(int block) {
        boolean turned = blocks.turnable(block) && goal.width() < goal.height();
        int width = blocks.side(block, turned ? Blocks.HEIGHT : Blocks.WIDTH);
        int height = blocks.side(block, turned ? Blocks.WIDTH : Blocks.HEIGHT);
        return new BlockCover(blocks.set[block], width, height, blocks.lost[block], () -> blocks.tree(block, turned));
    }

    private double price(int cuts) {
        return Math.max(0, effort.cutPrice()) * cuts;
    }

    private void single(int scrap) {
        boolean turnable = stock.turnable(scrap);
        int across = stock.width(scrap);
        int down = stock.height(scrap);
        boolean high = turnable && across < down;
        int limitAcross = goal.limit(high ? Blocks.HEIGHT : Blocks.WIDTH, turnable);
        int limitDown = goal.limit(high ? Blocks.WIDTH : Blocks.HEIGHT, turnable);
        draft.patch(scrap, stock, Math.min(across, limitAcross), Math.min(down, limitDown));
        draft.ease = stock.ease(scrap);
        if (draft.allowed()) {
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
        boolean whole = acrossAll && downAll;
        if (whole && (draft.set & must) != must) {
            return;
        }
        double key = key(cost, area);
        if (whole ? !effort.all() && same.surpassed(draft) : !beam.admits(kind, key) || same.surpassed(draft)) {
            return;
        }
        int block = draft.make();
        same.file(block);
        if (whole) {
            take(block, cost);
            return;
        }
        if (acrossAll || downAll) {
            spanning.add(block);
        }
        beam.add(kind, block, key);
    }

    /** By what blocks wait: the share they lose, with a little chance in it. */
    private double key(double cost, double area) {
        double share = (cost + sparePrice * Math.max(0, draft.held - area)) / area;
        return (share * (1 + keys.jumble() * Chance.of(effort.seed(), draft.set)) + keys.jitter() * tie()) * lacking();
    }

    /** Takes a cover down. What a block loses is reckoned as if the cheapest trims never ran out, so it is looked up here. */
    private void take(int block, double reckoned) {
        covers.add(block);
        if (all) {
            return;
        }
        double cost = reckoned;
        if (effort.all()) {
            blocks.lost[block] = lost(block);
            cost = blocks.lost[block];
        }
        if (cost <= mostCost) {
            found = block;
            mostCost = cost - 1;
        }
    }

    private long lost(int block) {
        BlockCover cover = cover(block);
        return Trimming.to(cover.tree().get(), cover.width(), cover.height(), stock.limits())
                .map(stock::lost)
                .orElse(Long.MAX_VALUE / 4);
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
        int slack = goal.spare() == 0
                ? 0
                : (int) Math.min(goal.limit(Blocks.WIDTH, true), edge * effort.cap() * parameters.slack());
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
        if (!(sideA == sideB || blocks.turnable(a) || blocks.turnable(b)) || !draft.join(a, sideA, b, sideB)) {
            return;
        }
        boolean standsOut = draft.standsOut();
        if (standsOut) {
            draft.turnIfCheaper();
        }
        if (draft.clip()) {
            offer();
        }
        if (standsOut && effort.all() && draft.join(a, sideA, b, sideB)) {
            draft.turn();
            if (draft.clip()) {
                offer();
            }
        }
    }

    /** Joins scraps that are cut to a block's edge so that their offcuts go back. */
    private void joinCut(int block, int side) {
        for (int scrap = 0; scrap < stock.size(); scrap++) {
            if ((blocks.set[block] >>> scrap & 1) == 0) {
                joinCut(block, side, scrap, Blocks.HEIGHT);
                joinCut(block, side, scrap, Blocks.WIDTH);
            }
        }
    }

    private void joinCut(int block, int side, int scrap, int scrapSide) {
        if (!cutScraps.fits(block, side, scrap, scrapSide)) {
            return;
        }
        double cost = blocks.lost[block] + cutScraps.lost() + price(blocks.cuts[block] + 1);
        if (cost <= Math.min(mostCost, effort.cap() * cutScraps.area())) {
            int cut = cutScraps.block();
            join(block, side, cut, cutScraps.side());
        }
    }

    /** One, and less the more a block has of the scraps that must be in. */
    private double lacking() {
        return must == 0 ? 1 : 1 - keys.keen() * Long.bitCount(draft.set & must) / Long.bitCount(must);
    }

    /** By what blocks that lose the same share are told apart: those of scraps that are hard to place first. */
    private double tie() {
        return keys.lot() * Chance.of(effort.seed(), draft.set) + draft.ease / (keys.ease() * Long.bitCount(draft.set));
    }
}
