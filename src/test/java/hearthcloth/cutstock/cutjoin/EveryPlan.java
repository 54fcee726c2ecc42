package hearthcloth.cutstock.cutjoin;

import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.StockPiece;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The best that any plan of a tiny job can do, by trying everything: every way of dividing bars into parts, every piece
 * and direction for each part, every straight cut at every whole number. Shares no code with the search. Places of
 * joins are not looked at, so it judges jobs without forbidden stretches and neighbours.
 */
final class EveryPlan {

    private record Slab(long width, long height) {}

    private final CutJoinJob job;
    private final List<List<Slab>> held = new ArrayList<>();
    private final Map<String, Double> known = new HashMap<>();
    private int joins = Integer.MAX_VALUE;
    private double touched = Double.MAX_VALUE;
    private double lost = Double.MAX_VALUE;

    /** The best of each, not always of one plan; joins are the largest int where no plan exists. */
    record Optimum(int joins, double touched, double lost) {}

    private EveryPlan(CutJoinJob job) {
        this.job = job;
        job.stock().forEach(piece -> held.add(new ArrayList<>()));
    }

    static Optimum of(CutJoinJob job) {
        EveryPlan all = new EveryPlan(job);
        all.block(0, 0);
        return new Optimum(all.joins, all.touched, all.lost);
    }

    private void block(int index, int joined) {
        if (index == job.blocks().size()) {
            bar(0, joined);
            return;
        }
        JobBlock block = job.blocks().get(index);
        for (int p = 0; p < held.size(); p++) {
            StockPiece piece = job.stock().get(p);
            if (block.fabrics().has(piece.fabric())) {
                lay(p, block.width(), block.height(), () -> block(index + 1, joined));
                if (block.turnable() && !piece.lengthwiseOnly()) {
                    lay(p, block.height(), block.width(), () -> block(index + 1, joined));
                }
            }
        }
    }

    private void bar(int index, int joined) {
        if (index == job.bars().size()) {
            judge(joined);
            return;
        }
        JobBar bar = job.bars().get(index);
        for (int parts = 1; parts <= bar.mostJoins() + 1; parts++) {
            int more = parts - 1;
            long whole = bar.length() + job.joinLoss() * more;
            part(bar, whole, parts, parts == 1 ? 1 : bar.leastPart(), () -> bar(index + 1, joined + more));
        }
    }

    /** Parts of one bar from the shortest up; their order does not matter here. */
    private void part(JobBar bar, long rest, int parts, long shortest, Runnable then) {
        if (parts == 0) {
            then.run();
            return;
        }
        for (long cut = parts == 1 ? rest : shortest; cut >= shortest && cut * parts <= rest; cut++) {
            long own = cut;
            for (int p = 0; p < held.size(); p++) {
                StockPiece piece = job.stock().get(p);
                if (bar.fabrics().has(piece.fabric())) {
                    Runnable next = () -> part(bar, rest - own, parts - 1, own, then);
                    boolean nap = piece.lengthwiseOnly();
                    if (bar.turn() != BarTurn.ACROSS && !(bar.turn() == BarTurn.NAP_ACROSS && nap)) {
                        lay(p, bar.width(), own, next);
                    }
                    if (bar.turn() != BarTurn.ALONG && !(bar.turn() == BarTurn.NAP && nap)) {
                        lay(p, own, bar.width(), next);
                    }
                }
            }
        }
    }

    private void lay(int piece, long width, long height, Runnable then) {
        List<Slab> here = held.get(piece);
        here.add(new Slab(width, height));
        StockPiece stock = job.stock().get(piece);
        if (least(stock.width(), stock.length(), here) < Double.MAX_VALUE) {
            then.run();
        }
        here.remove(here.size() - 1);
    }

    private void judge(int joined) {
        double cut = 0;
        double wasted = 0;
        for (int p = 0; p < held.size(); p++) {
            if (!held.get(p).isEmpty()) {
                StockPiece piece = job.stock().get(p);
                cut += (double) piece.width() * piece.length();
                wasted += least(piece.width(), piece.length(), held.get(p));
            }
        }
        joins = Math.min(joins, joined);
        touched = Math.min(touched, cut);
        lost = Math.min(lost, wasted);
    }

    /** The least loss of any straight cutting of a rectangle into these slabs; the largest double if there is none. */
    private double least(long width, long height, List<Slab> slabs) {
        if (slabs.isEmpty()) {
            return Math.min(width, height) < job.leastOffcut() ? (double) width * height : 0;
        }
        long area = slabs.stream().mapToLong(slab -> slab.width * slab.height).sum();
        if (area > width * height) {
            return Double.MAX_VALUE;
        }
        if (slabs.size() == 1 && slabs.get(0).equals(new Slab(width, height))) {
            return 0;
        }
        List<String> names = slabs.stream().map(Slab::toString).sorted().toList();
        String key = width + "x" + height + names;
        Double before = known.get(key);
        if (before == null) {
            before = cut(width, height, slabs);
            known.put(key, before);
        }
        return before;
    }

    private double cut(long width, long height, List<Slab> slabs) {
        double best = Double.MAX_VALUE;
        for (int set = 0; set < 1 << slabs.size(); set++) {
            List<Slab> one = new ArrayList<>();
            List<Slab> other = new ArrayList<>();
            for (int i = 0; i < slabs.size(); i++) {
                ((set >> i & 1) == 1 ? one : other).add(slabs.get(i));
            }
            for (long at = 1; at < width; at++) {
                best = Math.min(best, both(least(at, height, one), width - at, height, other));
            }
            for (long at = 1; at < height; at++) {
                best = Math.min(best, both(least(width, at, one), width, height - at, other));
            }
        }
        return best;
    }

    private double both(double one, long width, long height, List<Slab> other) {
        return one == Double.MAX_VALUE ? one : Math.min(Double.MAX_VALUE, one + least(width, height, other));
    }
}
