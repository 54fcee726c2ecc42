package hearthcloth.cutstock.piecing.exact;

import hearthcloth.cutstock.piecing.blocks.Stock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * All blocks of whole scraps that may be part of some rectangles, by their number of scraps: each is two smaller ones with an
 * edge of the same length. Beside a block there is either nothing left of a rectangle or enough for the narrowest scrap.
 */
final class ExactBlocks {

    /** The budget is asked once for so many blocks that are followed. */
    private static final int STEP = 64;

    private final Set<List<Integer>> sizes;
    private final int narrowest;
    private final int most;
    private final BooleanSupplier spent;
    private final Set<Made> known = new LinkedHashSet<>();
    private final List<List<ExactBlock>> open = new ArrayList<>();
    private final List<Map<Integer, List<Sided>>> edges = new ArrayList<>();
    private final List<ExactBlock> covers = new ArrayList<>();
    private int followed;

    /** Blocks of the same scraps and size are one. */
    private record Made(ScrapSet scraps, int width, int height) {}

    /** A block and one of its sides. */
    private record Sided(ExactBlock block, boolean isWidth) {}

    /**
     * Begins with the scraps themselves.
     *
     * @param sizes of the rectangles, width and height
     * @param most so many blocks are made at most
     */
    ExactBlocks(Stock stock, Set<List<Integer>> sizes, int most, BooleanSupplier spent) {
        this.most = most;
        this.sizes = sizes;
        this.spent = spent;
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < stock.size(); i++) {
            least = Math.min(least, Math.min(stock.width(i), stock.height(i)));
        }
        this.narrowest = least;
        open.add(List.of());
        edges.add(Map.of());
        List<ExactBlock> ones = new ArrayList<>();
        for (int i = 0; i < stock.size(); i++) {
            file(ExactBlock.of(i, stock.width(i), stock.height(i), stock.turnable(i)), ones);
        }
        close(ones);
    }

    /** Those that cover a rectangle, as far as they are made. */
    List<ExactBlock> covers() {
        return covers;
    }

    /** Makes the blocks of one scrap more; false where there are too many or the budget is spent. */
    boolean more() {
        int count = open.size();
        List<ExactBlock> made = new ArrayList<>();
        for (int few = 1; few <= count / 2; few++) {
            for (ExactBlock block : open.get(few)) {
                if (known.size() > most || (followed++ % STEP == 0 && spent.getAsBoolean())) {
                    return false;
                }
                join(block, true, edges.get(count - few), made);
                join(block, false, edges.get(count - few), made);
            }
        }
        close(made);
        return true;
    }

    private void join(ExactBlock block, boolean atWidth, Map<Integer, List<Sided>> others, List<ExactBlock> made) {
        for (Sided other : others.getOrDefault(block.side(atWidth), List.of())) {
            block.with(atWidth, other.block(), other.isWidth()).ifPresent(joined -> file(joined, made));
        }
    }

    private void file(ExactBlock block, List<ExactBlock> made) {
        boolean fits =
                fits(block.width(), block.height()) || (block.isTurnable() && fits(block.height(), block.width()));
        if (!fits || !known.add(new Made(block.scraps(), block.width(), block.height()))) {
            return;
        }
        if (sizes.stream().anyMatch(size -> block.covers(size.get(0), size.get(1)))) {
            covers.add(block);
        } else {
            made.add(block);
        }
    }

    private boolean fits(int width, int height) {
        for (List<Integer> size : sizes) {
            int beside = size.get(0) - width;
            int below = size.get(1) - height;
            if ((beside == 0 || beside >= narrowest) && (below == 0 || below >= narrowest)) {
                return true;
            }
        }
        return false;
    }

    private void close(List<ExactBlock> made) {
        Map<Integer, List<Sided>> index = new LinkedHashMap<>();
        for (ExactBlock block : made) {
            index.computeIfAbsent(block.width(), edge -> new ArrayList<>()).add(new Sided(block, true));
            index.computeIfAbsent(block.height(), edge -> new ArrayList<>()).add(new Sided(block, false));
        }
        open.add(made);
        edges.add(index);
    }
}
