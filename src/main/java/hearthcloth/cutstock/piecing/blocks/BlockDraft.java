package hearthcloth.cutstock.piecing.blocks;

/**
 * A block that may be made: reckoned first, so that most are turned away before anything is stored. One object is used
 * again and again.
 */
final class BlockDraft {

    private final Blocks blocks;
    private final Goal goal;
    private final Stock.Rules rules;

    long set;
    int width;
    int height;
    long lost;
    long held;
    float ease;
    int cuts;
    private int acrossWidth;
    private int acrossHeight;
    private int trimWidth;
    private int trimHeight;
    private int first;
    private int second;
    private int way;

    BlockDraft(Blocks blocks, Goal goal, Stock.Rules rules) {
        this.blocks = blocks;
        this.goal = goal;
        this.rules = rules;
    }

    boolean turnable() {
        return (way & Blocks.TURNABLE) != 0;
    }

    /** Whether no side is trimmed farther than it may be. */
    boolean allowed() {
        return trimWidth >= 0 && trimHeight >= 0;
    }

    boolean spansWidth() {
        return width == goal.limit(Blocks.WIDTH, turnable());
    }

    boolean spansHeight() {
        return height == goal.limit(Blocks.HEIGHT, turnable());
    }

    /** One scrap, cut to a net size as it lies in the heap. */
    void patch(int scrap, Stock stock, int cutWidth, int cutHeight) {
        boolean turnable = stock.turnable(scrap);
        set = 1L << scrap;
        held = (long) stock.width(scrap) * stock.height(scrap);
        lost = rules.lost(stock.width(scrap), stock.height(scrap), cutWidth, cutHeight);
        cuts = 0;
        ease = 0;
        width = cutWidth;
        height = cutHeight;
        acrossWidth = 1;
        acrossHeight = 1;
        trimWidth = stock.off(scrap, Blocks.WIDTH, cutWidth);
        trimHeight = stock.off(scrap, Blocks.HEIGHT, cutHeight);
        first = scrap;
        second = Blocks.NONE;
        way = turnable ? Blocks.TURNABLE : 0;
        turnIfHigh();
    }

    /** Two blocks joined along a side of each; false if this would cut a patch too small. */
    boolean join(int a, int sideA, int b, int sideB) {
        int lengthA = blocks.side(a, sideA);
        int lengthB = blocks.side(b, sideB);
        int edge = Math.min(lengthA, lengthB);
        int trimA = blocks.trim(a, sideA) - lengthA + edge;
        int trimB = blocks.trim(b, sideB) - lengthB + edge;
        if (trimA < 0 || trimB < 0) {
            return false;
        }
        int otherA = blocks.side(a, 1 - sideA);
        int otherB = blocks.side(b, 1 - sideB);
        int acrossA = blocks.across(a, sideA);
        int acrossB = blocks.across(b, sideB);
        lost = blocks.lost[a]
                + blocks.lost[b]
                + (lengthA - edge) * (otherA + (long) rules.seam() * acrossA)
                + (lengthB - edge) * (otherB + (long) rules.seam() * acrossB);
        first = a;
        second = b;
        int side = frame(a, sideA, b, sideB);
        along(side, otherA + otherB, edge);
        across(side, Math.min(blocks.across(a, 1 - sideA), blocks.across(b, 1 - sideB)), acrossA + acrossB);
        trims(side, blocks.trim(a, 1 - sideA) + blocks.trim(b, 1 - sideB), Math.min(trimA, trimB));
        turnIfHigh();
        return true;
    }

    /** Whether joined at the heights or at the widths, as the parts lie: one that may not be turned says so. */
    private int frame(int a, int sideA, int b, int sideB) {
        boolean turnableA = blocks.turnable(a);
        boolean turnableB = blocks.turnable(b);
        int side = !turnableA ? sideA : !turnableB ? sideB : Blocks.HEIGHT;
        way = (side == Blocks.HEIGHT ? Blocks.BESIDE : 0)
                | (side == sideA ? 0 : Blocks.FIRST_TURNED)
                | (side == sideB ? 0 : Blocks.SECOND_TURNED)
                | (turnableA && turnableB ? Blocks.TURNABLE : 0);
        set = blocks.set[a] | blocks.set[b];
        held = blocks.held[a] + blocks.held[b];
        ease = blocks.ease[a] + blocks.ease[b];
        cuts = blocks.cuts[a] + blocks.cuts[b];
        return side;
    }

    private void along(int side, int sum, int edge) {
        width = side == Blocks.HEIGHT ? sum : edge;
        height = side == Blocks.HEIGHT ? edge : sum;
    }

    private void across(int side, int fewer, int both) {
        acrossWidth = side == Blocks.HEIGHT ? fewer : both;
        acrossHeight = side == Blocks.HEIGHT ? both : fewer;
    }

    private void trims(int side, int sum, int less) {
        trimWidth = side == Blocks.HEIGHT ? sum : less;
        trimHeight = side == Blocks.HEIGHT ? less : sum;
    }

    private void turnIfHigh() {
        if (turnable() && width < height) {
            turn();
        }
    }

    /** Turns it by a quarter. */
    void turn() {
        way ^= Blocks.TURNED;
        int kept = width;
        width = height;
        height = kept;
        kept = acrossWidth;
        acrossWidth = acrossHeight;
        acrossHeight = kept;
        kept = trimWidth;
        trimWidth = trimHeight;
        trimHeight = kept;
    }

    /** Whether it stands out over the goal both ways it may lie. */
    boolean standsOut() {
        return turnable() && height > goal.limit(Blocks.HEIGHT, true);
    }

    /** Lays a block that stands out either way so that less is trimmed. */
    void turnIfCheaper() {
        int wide = goal.limit(Blocks.WIDTH, true);
        int high = goal.limit(Blocks.HEIGHT, true);
        long lying = trimmed(Math.max(0, width - wide), height - high);
        boolean possible = height - Math.min(height, wide) <= trimHeight && width - high <= trimWidth;
        turn();
        long standing = trimmed(Math.max(0, width - wide), height - high);
        if (!possible || standing >= lying) {
            turn();
        }
    }

    /** Trims what stands out over the goal; false if this would cut a patch too small. */
    boolean clip() {
        int wide = goal.limit(Blocks.WIDTH, turnable());
        int high = goal.limit(Blocks.HEIGHT, turnable());
        int overWidth = Math.max(0, width - wide);
        int overHeight = Math.max(0, height - high);
        if (overWidth > trimWidth || overHeight > trimHeight) {
            return false;
        }
        lost += trimmed(overWidth, overHeight);
        trimWidth -= overWidth;
        trimHeight -= overHeight;
        width -= overWidth;
        height -= overHeight;
        return true;
    }

    /** What is lost when so much is trimmed off the width, then off the height. */
    private long trimmed(int overWidth, int overHeight) {
        return overWidth * (height + (long) rules.seam() * acrossWidth)
                + overHeight * (width - overWidth + (long) rules.seam() * acrossHeight);
    }

    /** Whether a block is at least as large each way. */
    boolean within(int block) {
        return blocks.width[block] >= width && blocks.height[block] >= height;
    }

    /** Whether a block is of the same size and can be trimmed as far and as cheaply. */
    boolean noBetterThan(int block) {
        return blocks.width[block] == width
                && blocks.height[block] == height
                && blocks.acrossWidth[block] <= acrossWidth
                && blocks.acrossHeight[block] <= acrossHeight
                && blocks.trimWidth[block] >= trimWidth
                && blocks.trimHeight[block] >= trimHeight;
    }

    /** Stores the block and tells its number. */
    int make() {
        int block = blocks.add();
        blocks.set[block] = set;
        blocks.width[block] = width;
        blocks.height[block] = height;
        blocks.lost[block] = lost;
        blocks.held[block] = held;
        blocks.ease[block] = ease;
        blocks.acrossWidth[block] = (short) acrossWidth;
        blocks.acrossHeight[block] = (short) acrossHeight;
        blocks.trimWidth[block] = trimWidth;
        blocks.trimHeight[block] = trimHeight;
        blocks.cuts[block] = (short) cuts;
        blocks.first[block] = first;
        blocks.second[block] = second;
        blocks.way[block] = (byte) way;
        return block;
    }
}
