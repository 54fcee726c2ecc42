package hearthcloth.cutstock.piecing.cover;

import hearthcloth.cutstock.piecing.blocks.Cover;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Of many covers of each of a few rectangles, picks one each that have no scrap in common and lose least in sum. */
final class Packing {

    private static final int MOST_NODES = 200_000;

    private final List<List<Cover>> lists = new ArrayList<>();
    private final Cover[] now;
    private List<Cover> best = List.of();
    private long least;
    private int nodes;

    /** {@code most} is what may be lost in sum. */
    Packing(List<List<Cover>> covers, long most) {
        for (List<Cover> list : covers) {
            lists.add(
                    list.stream().sorted(Comparator.comparingLong(Cover::lost)).toList());
        }
        now = new Cover[covers.size()];
        least = most + 1;
    }

    /** The best choice, one cover for each rectangle; empty if there is none. */
    List<Cover> best() {
        pick(0, 0, 0);
        return best;
    }

    private void pick(int at, long used, long lost) {
        if (at == now.length) {
            least = lost;
            best = List.of(now.clone());
            return;
        }
        for (Cover cover : lists.get(at)) {
            if (lost + cover.lost() >= least || nodes++ > MOST_NODES) {
                return;
            }
            if ((cover.scraps() & used) == 0) {
                now[at] = cover;
                pick(at + 1, used | cover.scraps(), lost + cover.lost());
            }
        }
    }
}
