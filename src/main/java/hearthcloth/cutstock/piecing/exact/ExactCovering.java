package hearthcloth.cutstock.piecing.exact;

import hearthcloth.cutstock.piecing.blocks.Stock;
import hearthcloth.cutstock.piecing.parameter.SeveralParameters;
import hearthcloth.cutstock.piecing.tree.Pieced;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Several rectangles from a heap that gives just their area. Then nothing may be trimmed and no scrap is left over, edges that
 * meet are equally long, and that leaves few blocks: all of them are made, those of few scraps first, and of the ones that cover
 * a rectangle some are picked that share no scrap and leave none. The pick goes on from the scrap with fewest ways (D. E. Knuth,
 * "Dancing links", in Millennial Perspectives in Computer Science, 2000, algorithm X; from memory).
 */
public final class ExactCovering {

    private final int scraps;
    private final int[] widths;
    private final int[] heights;
    private final SeveralParameters.Exact parameters;
    private final ExactBlock[] picked;
    private int looks;

    private ExactCovering(int scraps, int[] widths, int[] heights, SeveralParameters.Exact parameters) {
        this.parameters = parameters;
        this.scraps = scraps;
        this.widths = widths;
        this.heights = heights;
        this.picked = new ExactBlock[widths.length];
    }

    /**
     * A tree for each rectangle; empty where the heap has more or less than they need, or no way was found.
     *
     * @param widths net widths of the rectangles
     * @param heights net heights
     * @param parameters how far it is searched
     * @param spent asked now and then; true ends the search
     */
    public static Optional<List<Pieced>> of(
            Stock stock, int[] widths, int[] heights, SeveralParameters.Exact parameters, BooleanSupplier spent) {
        long area = 0;
        boolean large = stock.size() <= ScrapSet.MOST;
        for (int i = 0; i < stock.size(); i++) {
            area += (long) stock.width(i) * stock.height(i);
            large &= Math.min(stock.width(i), stock.height(i)) >= stock.rules().least();
        }
        for (int n = 0; n < widths.length; n++) {
            area -= (long) widths[n] * heights[n];
        }
        return area == 0 && large
                ? new ExactCovering(stock.size(), widths, heights, parameters).searched(stock, spent)
                : Optional.empty();
    }

    private Optional<List<Pieced>> searched(Stock stock, BooleanSupplier spent) {
        Set<List<Integer>> sizes = new LinkedHashSet<>();
        for (int n = 0; n < widths.length; n++) {
            sizes.add(List.of(widths[n], heights[n]));
        }
        ExactBlocks blocks = new ExactBlocks(stock, sizes, parameters.blocks(), spent);
        for (int most = 2; most <= parameters.scraps() && blocks.more(); most++) {
            looks = 0;
            if (most * widths.length >= scraps && pick(blocks.covers(), ScrapSet.NONE)) {
                return Optional.of(trees());
            }
        }
        return Optional.empty();
    }

    private List<Pieced> trees() {
        List<Pieced> trees = new ArrayList<>();
        for (int n = 0; n < picked.length; n++) {
            trees.add(picked[n].tree(widths[n], heights[n]));
        }
        return trees;
    }

    /** Covers what is open with some of these, which share no scrap with what is used. */
    private boolean pick(List<ExactBlock> covers, ScrapSet used) {
        int scrap = fewest(covers, used);
        if (scrap < 0) {
            return used.size() == scraps && Arrays.stream(picked).noneMatch(block -> block == null);
        }
        for (ExactBlock cover : covers) {
            if (cover.scraps().has(scrap) && looks++ < parameters.looks() && pick(cover, covers, used)) {
                return true;
            }
        }
        return false;
    }

    private boolean pick(ExactBlock cover, List<ExactBlock> covers, ScrapSet used) {
        for (int n = 0; n < picked.length; n++) {
            if (picked[n] == null && cover.covers(widths[n], heights[n]) && isFirst(n)) {
                picked[n] = cover;
                List<ExactBlock> left = covers.stream()
                        .filter(other -> other.scraps().isApartFrom(cover.scraps()) && isOpen(other))
                        .toList();
                if (pick(left, used.with(cover.scraps()))) {
                    return true;
                }
                picked[n] = null;
            }
        }
        return false;
    }

    /** Whether no open rectangle before is as large. */
    private boolean isFirst(int n) {
        for (int i = 0; i < n; i++) {
            if (picked[i] == null && widths[i] == widths[n] && heights[i] == heights[n]) {
                return false;
            }
        }
        return true;
    }

    private boolean isOpen(ExactBlock cover) {
        for (int n = 0; n < picked.length; n++) {
            if (picked[n] == null && cover.covers(widths[n], heights[n])) {
                return true;
            }
        }
        return false;
    }

    /** The scrap not used yet that fewest covers have, also where it is none; -1 where all are used. */
    private int fewest(List<ExactBlock> covers, ScrapSet used) {
        int[] counts = new int[ScrapSet.MOST];
        covers.forEach(cover -> cover.scraps().count(counts));
        int best = -1;
        for (int i = 0; i < scraps; i++) {
            if (!used.has(i) && (best < 0 || counts[i] < counts[best])) {
                best = i;
            }
        }
        return best;
    }
}
