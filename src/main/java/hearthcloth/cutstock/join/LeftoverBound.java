package hearthcloth.cutstock.join;

import hearthcloth.cutstock.search.Budget;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/**
 * A lower bound on the number of joins, from how many bars can be cut whole out of single strips: the linear programme
 * over whole-bar patterns of the strips, bounded from its dual (docs/sources.md#knapsack-bounds).
 *
 * <p>A bar b that is not cut whole has at least c = max(1, fewest parts - 1) joins and takes its length plus the losses
 * from what the patterns leave over. With a price v(b) on cutting b whole, at most c (1 + p s), and a price p on
 * leftover length, every plan has at least
 *
 * <pre>  p (sum of bars - sum of strips) + sum of v - sum over strips of the best knapsack of bars by v</pre>
 *
 * joins, whatever the prices, which are dual to the column generation master. So the bound holds without convergence;
 * convergence only makes it good. Prices are moved by subgradients, with one knapsack for each different strip and step;
 * a knapsack is solved by branch and bound, and where that takes too long its fractional bound is used, which errs on the
 * safe side.
 */
public final class LeftoverBound {

    /** The most subgradient steps. */
    private static final int MOST_STEPS = 120;
    /** The most nodes of one knapsack's branch and bound. */
    private static final int MOST_NODES = 2_000;
    /** Subtracted before rounding up, against the rounding errors of doubles. */
    private static final double SAFETY = 1e-6;

    private final double[] bars;
    private final double[] joins;
    private final double[] strips;
    private final int[] copies;
    private final double loss;
    private final double unit;
    private final double surplus;

    private final double[] value;
    private double price;
    private final double[] slope;

    // one knapsack at a time
    private final Integer[] order;
    private final int[] sorted;
    private final boolean[] inside;
    private final boolean[] bestInside;
    private double bestValue;
    private int nodes;

    /** Prepares the bound for the same bars and strips as {@code simple}; lengths are scaled by the mean bar. */
    public LeftoverBound(long[] bars, long[] strips, long loss, JoinBounds simple) {
        int n = bars.length;
        this.unit = Math.max(1, Arrays.stream(bars).average().orElse(1));
        this.bars = Arrays.stream(bars).mapToDouble(length -> length / unit).toArray();
        this.joins = Arrays.stream(bars)
                .mapToDouble(length -> Math.max(1, simple.fewestParts(length) - 1))
                .toArray();
        this.loss = loss / unit;
        long shortest = Arrays.stream(bars).min().orElse(0);
        Map<Long, Integer> counts = new TreeMap<>();
        Arrays.stream(strips).filter(strip -> strip >= shortest).forEach(strip -> counts.merge(strip, 1, Integer::sum));
        this.strips =
                counts.keySet().stream().mapToDouble(length -> length / unit).toArray();
        this.copies = counts.values().stream().mapToInt(Integer::intValue).toArray();
        this.surplus = Arrays.stream(strips).asDoubleStream().reduce(0, Double::sum) / unit
                - Arrays.stream(this.bars).reduce(0, Double::sum);
        this.value = joins.clone();
        this.slope = new double[n + 1];
        this.order = new Integer[n];
        Arrays.setAll(order, i -> i);
        this.sorted = new int[n];
        this.inside = new boolean[n];
        this.bestInside = new boolean[n];
    }

    /** The bound, improved until the budget is spent, until it reaches {@code enough} or until it stops rising. */
    public int joins(int enough, Budget budget) {
        double best = 0;
        double reach = 1;
        for (int step = 0; step < MOST_STEPS && rounded(best) < enough && !budget.spent(); step++) {
            double now = evaluate();
            reach *= now > best ? 1 : 0.95;
            best = Math.max(best, now);
            double squares = 0;
            for (double part : slope) {
                squares += part * part;
            }
            if (squares < SAFETY) {
                break;
            }
            move(reach * (Math.max(best, Math.min(enough, rounded(best) + 1)) - now + 0.05) / squares);
        }
        return rounded(best);
    }

    private static int rounded(double bound) {
        return Math.max(0, (int) Math.ceil(bound - SAFETY * (1 + Math.abs(bound))));
    }

    /** The bound at the present prices; leaves the subgradient in slope. */
    private double evaluate() {
        int n = bars.length;
        double bound = -price * surplus;
        for (int i = 0; i < n; i++) {
            bound += value[i];
            slope[i] = 1;
        }
        slope[n] = -surplus;
        Arrays.sort(order, (i, j) -> Double.compare(value[j] / bars[j], value[i] / bars[i]));
        for (int i = 0; i < n; i++) {
            sorted[i] = order[i];
        }
        for (int strip = 0; strip < strips.length; strip++) {
            bound -= copies[strip] * knapsack(strips[strip]);
            for (int i = 0; i < n; i++) {
                slope[i] -= bestInside[i] ? copies[strip] : 0;
            }
        }
        return bound;
    }

    private void move(double step) {
        int n = bars.length;
        price = Math.max(0, price + step * slope[n]);
        for (int i = 0; i < n; i++) {
            double most = joins[i] * (1 + price * loss);
            value[i] = Math.max(0, Math.min(most, value[i] + step * slope[i]));
        }
    }

    /** An upper bound on the value of the best set of bars that fits; exact unless that takes too long. */
    private double knapsack(double capacity) {
        bestValue = 0;
        nodes = 0;
        Arrays.fill(bestInside, false);
        Arrays.fill(inside, false);
        branch(0, capacity * (1 + 1e-12), 0);
        return nodes > MOST_NODES ? fractional(0, capacity * (1 + 1e-12)) : bestValue;
    }

    private void branch(int depth, double room, double gained) {
        if (gained > bestValue) {
            bestValue = gained;
            System.arraycopy(inside, 0, bestInside, 0, inside.length);
        }
        if (depth == sorted.length || ++nodes > MOST_NODES || gained + fractional(depth, room) <= bestValue) {
            return;
        }
        int bar = sorted[depth];
        if (bars[bar] <= room) {
            inside[bar] = true;
            branch(depth + 1, room - bars[bar], gained + value[bar]);
            inside[bar] = false;
        }
        branch(depth + 1, room, gained);
    }

    private double fractional(int depth, double room) {
        double left = room;
        double sum = 0;
        for (int i = depth; i < sorted.length; i++) {
            int bar = sorted[i];
            if (bars[bar] > left) {
                return sum + value[bar] * left / bars[bar];
            }
            left -= bars[bar];
            sum += value[bar];
        }
        return sum;
    }
}
