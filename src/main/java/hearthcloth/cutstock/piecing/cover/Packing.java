package hearthcloth.cutstock.piecing.cover;

import hearthcloth.cutstock.piecing.blocks.BlockCover;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Of many covers of each of a few rectangles, picks one each that have no scrap in common and lose least in sum. A scrap
 * larger than the area that may stay unused has to be in one of them, so the search goes on from the largest such scrap.
 */
final class Packing {

    private final List<List<BlockCover>> lists;
    private final long[] areas;
    private final long[] sizes;
    private final BlockCover[] now;
    private List<BlockCover> best = List.of();
    private final long mostLooks;
    private long least;
    private long looks;

    /**
     * Prepares.
     *
     * @param covers those of each rectangle, sorted by loss; rectangles of one size share one list
     * @param areas net areas of the scraps
     * @param most what may be lost in sum
     * @param mostLooks so many choices are looked at
     */
    Packing(List<List<BlockCover>> covers, long[] areas, long most, long mostLooks) {
        this.mostLooks = mostLooks;
        this.lists = covers;
        this.areas = areas;
        this.now = new BlockCover[covers.size()];
        this.least = most + 1;
        this.sizes = covers.stream()
                .mapToLong(list -> list.isEmpty()
                        ? 0
                        : (long) list.get(0).width() * list.get(0).height())
                .toArray();
    }

    /** The best choice, one cover for each rectangle; empty if none is found. */
    List<BlockCover> best() {
        if (lists.stream().noneMatch(List::isEmpty)) {
            pick(
                    now.length,
                    0,
                    0,
                    Arrays.stream(areas).sum() - Arrays.stream(sizes).sum());
        }
        return best;
    }

    private void pick(int open, long used, long lost, long spare) {
        if (open == 0) {
            least = lost;
            best = List.of(now.clone());
            return;
        }
        int must = must(used, spare);
        for (int n = 0; n < now.length; n++) {
            if (now[n] == null && first(n)) {
                pick(n, must < 0 ? 0 : 1L << must, open, used, lost, spare);
                if (must < 0) {
                    return;
                }
            }
        }
    }

    private void pick(int n, long must, int open, long used, long lost, long spare) {
        for (BlockCover cover : lists.get(n)) {
            if (lost + cover.lost() >= least || looks++ > mostLooks) {
                return;
            }
            if ((cover.scraps() & used) == 0 && (cover.scraps() & must) == must) {
                long rest = spare - (area(cover.scraps()) - sizes[n]);
                if (rest >= 0) {
                    now[n] = cover;
                    pick(open - 1, used | cover.scraps(), lost + cover.lost(), rest);
                    now[n] = null;
                }
            }
        }
    }

    /** Whether no open rectangle before has the same covers. */
    @SuppressWarnings("ReferenceEquality") // rectangles of one size share the very list
    private boolean first(int n) {
        for (int i = 0; i < n; i++) {
            if (now[i] == null && lists.get(i) == lists.get(n)) {
                return false;
            }
        }
        return true;
    }

    /** The largest scrap that has to be used; -1 if any may be left out. */
    private int must(long used, long spare) {
        int largest = -1;
        for (int i = 0; i < areas.length; i++) {
            if ((used >>> i & 1) == 0 && areas[i] > spare && (largest < 0 || areas[i] > areas[largest])) {
                largest = i;
            }
        }
        return largest;
    }

    private long area(long scraps) {
        long area = 0;
        for (long left = scraps; left != 0; left &= left - 1) {
            area += areas[Long.numberOfTrailingZeros(left)];
        }
        return area;
    }

    /** By loss, as {@link Packing} wants them. */
    static List<BlockCover> sorted(List<BlockCover> covers) {
        return covers.stream()
                .sorted(Comparator.comparingLong(BlockCover::lost))
                .toList();
    }
}
