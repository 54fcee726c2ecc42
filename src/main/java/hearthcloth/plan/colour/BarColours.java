package hearthcloth.plan.colour;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Solves a {@link BarColouring}: a greedy choice, changes of one bar and exchanges of two until none helps, then
 * branch and bound, bar by bar from the rim inwards, with what the bars not yet chosen cost at least. Where that ends
 * by itself no choice costs less; where its looks are used up, the least bound it left open holds. The same problem,
 * looks and seed give the same answer. For one use.
 */
final class BarColours {

    /** Changes below this, in millimetres of edge, are none. */
    private static final double NEAR = 1e-6;

    /** Bars given another fabric at random before a new descent. */
    private static final int SHAKE = 3;

    /** The most looks for descents; the rest is for branches. */
    private static final long DESCENTS = 2000;

    private final BarColouring problem;
    private final int[] chosen;
    private final int[] best;
    private final double[] left;
    private final double[][] inside;
    private long looks;
    private double least = Double.POSITIVE_INFINITY;
    private double open = Double.POSITIVE_INFINITY;

    /**
     * What was found: its cost, infinite where nothing was, and a bound that no choice costs less than, the same as the cost
     * where it is proven.
     */
    static final class Found {
        private final int[] chosen;
        private final double cost;
        private final double bound;

        private Found(int[] chosen, double cost, double bound) {
            this.chosen = chosen;
            this.cost = cost;
            this.bound = bound;
        }

        /** The fabric of a bar. */
        int chosen(int bar) {
            return chosen[bar];
        }

        double bound() {
            return bound;
        }

        boolean isFound() {
            return cost < Double.POSITIVE_INFINITY;
        }
    }

    private BarColours(BarColouring problem, long looks) {
        this.problem = problem;
        this.looks = looks;
        this.chosen = new int[problem.bars()];
        this.best = new int[problem.bars()];
        this.left = new double[problem.fabrics()];
        this.inside = costsInside();
    }

    /**
     * The best choice found.
     *
     * @param looks how many changes and branches are looked at, at most
     */
    static Found of(BarColouring problem, long looks, long seed) {
        return new BarColours(problem, looks).found(new SplittableRandom(seed));
    }

    private Found found(SplittableRandom chance) {
        if (problem.fabrics() == 0) {
            return new Found(best, least, least);
        }
        long kept = Math.max(looks / 2, looks - DESCENTS);
        looks -= kept;
        if (begin()) {
            BarChoice choice = new BarChoice(problem, chosen);
            descend(choice);
            while (looks > 0 && least > NEAR) {
                shake(choice, chance);
                descend(choice);
            }
        }
        looks = kept + Math.max(0, looks);
        for (int fabric = 0; fabric < left.length; fabric++) {
            left[fabric] = problem.room(fabric);
        }
        branch(problem.bars() - 1, 0, costsAlone());
        return new Found(best, least, Math.min(least, open));
    }

    /** Gives each bar, the outermost first, the fabric that costs least by itself and of which most is left. */
    private boolean begin() {
        double[] rest =
                IntStream.range(0, left.length).mapToDouble(problem::room).toArray();
        for (int bar = chosen.length - 1; bar >= 0; bar--) {
            int at = bar;
            int fabric = IntStream.range(0, left.length)
                    .filter(one -> rest[one] >= problem.area(at) && problem.alone(at, one) < Double.POSITIVE_INFINITY)
                    .boxed()
                    .min(Comparator.comparingDouble((Integer one) -> problem.alone(at, one))
                            .thenComparing(one -> -rest[one]))
                    .orElse(-1);
            if (fabric < 0) {
                return false;
            }
            chosen[bar] = fabric;
            rest[fabric] -= problem.area(bar);
        }
        return true;
    }

    private void shake(BarChoice choice, SplittableRandom chance) {
        for (int bar = 0; bar < best.length; bar++) {
            choice.set(bar, best[bar]);
        }
        for (int i = 0; i < SHAKE; i++) {
            choice.set(chance.nextInt(chosen.length), chance.nextInt(problem.fabrics()));
        }
    }

    private void descend(BarChoice choice) {
        double now = looked(choice);
        boolean better = true;
        while (better && looks > 0) {
            double before = now;
            for (int bar = 0; bar < chosen.length && looks > 0; bar++) {
                now = changed(choice, bar, now);
                now = exchanged(choice, bar, now);
            }
            better = now < before - NEAR;
        }
        for (int bar = 0; bar < chosen.length; bar++) {
            chosen[bar] = choice.chosen(bar);
        }
        keep(now);
    }

    private double changed(BarChoice choice, int bar, double from) {
        double now = from;
        for (int fabric = 0; fabric < problem.fabrics(); fabric++) {
            int was = choice.chosen(bar);
            choice.set(bar, fabric);
            double then = looked(choice);
            if (then < now - NEAR) {
                now = then;
            } else {
                choice.set(bar, was);
            }
        }
        return now;
    }

    private double exchanged(BarChoice choice, int bar, double from) {
        double now = from;
        for (int other = 0; other < bar; other++) {
            choice.exchange(bar, other);
            double then = looked(choice);
            if (then < now - NEAR) {
                now = then;
            } else {
                choice.exchange(bar, other);
            }
        }
        return now;
    }

    private double looked(BarChoice choice) {
        looks--;
        return choice.cost();
    }

    private void keep(double cost) {
        if (cost < least - NEAR) {
            least = cost;
            System.arraycopy(chosen, 0, best, 0, best.length);
        }
    }

    private double[][] costsAlone() {
        double[][] costs = new double[problem.bars()][problem.fabrics()];
        for (int bar = 0; bar < costs.length; bar++) {
            for (int fabric = 0; fabric < costs[bar].length; fabric++) {
                costs[bar][fabric] = problem.alone(bar, fabric);
            }
        }
        return costs;
    }

    /** What a bar of a fabric costs at least where it meets the bars inside it, whatever those are of. */
    private double[][] costsInside() {
        double[][] costs = new double[problem.bars()][problem.fabrics()];
        for (int fabric = 0; fabric < problem.fabrics(); fabric++) {
            for (int bar = 0; bar < costs.length; bar++) {
                for (BarColouring.Meeting meeting : problem.meetingsOf(bar)) {
                    costs[bar][fabric] += meeting.other() < bar ? least(meeting, fabric) : 0;
                }
            }
        }
        return costs;
    }

    private double least(BarColouring.Meeting meeting, int fabric) {
        double cheapest = Double.POSITIVE_INFINITY;
        for (int other = 0; other < problem.fabrics(); other++) {
            cheapest = Math.min(cheapest, problem.between(meeting, fabric, other));
        }
        return cheapest;
    }

    /**
     * Every choice for this bar and those inside it.
     *
     * @param spent by the bars already chosen
     * @param costs of each fabric for each bar not yet chosen, beside those already chosen
     */
    private void branch(int bar, double spent, double[][] costs) {
        if (bar < 0) {
            keep(spent + problem.unbalanced(chosen));
            return;
        }
        double[] mine = costs[bar];
        int[] order = IntStream.range(0, mine.length)
                .boxed()
                .sorted(Comparator.comparingDouble(fabric -> mine[fabric]))
                .mapToInt(Integer::intValue)
                .toArray();
        for (int fabric : order) {
            if (left[fabric] < problem.area(bar) || mine[fabric] == Double.POSITIVE_INFINITY) {
                continue;
            }
            double[][] then = costs(bar, fabric, costs);
            double bound = spent + mine[fabric] + rest(bar, then);
            if (bound >= least - NEAR) {
                continue;
            }
            if (looks-- <= 0) {
                open = Math.min(open, bound);
                continue;
            }
            chosen[bar] = fabric;
            left[fabric] -= problem.area(bar);
            branch(bar - 1, spent + mine[fabric], then);
            left[fabric] += problem.area(bar);
        }
    }

    private double[][] costs(int bar, int fabric, double[][] costs) {
        double[][] then = Arrays.copyOf(costs, bar);
        for (BarColouring.Meeting meeting : problem.meetingsOf(bar)) {
            if (meeting.other() < bar) {
                double[] more = then[meeting.other()].clone();
                for (int other = 0; other < more.length; other++) {
                    more[other] += problem.between(meeting, fabric, other);
                }
                then[meeting.other()] = more;
            }
        }
        return then;
    }

    /** What the bars inside this one cost at least: each its cheapest fabric, beside whatever those inside it cost least. */
    private double rest(int bar, double[][] costs) {
        double sum = 0;
        for (int inner = 0; inner < bar; inner++) {
            double cheapest = Double.POSITIVE_INFINITY;
            for (int fabric = 0; fabric < costs[inner].length; fabric++) {
                cheapest = Math.min(cheapest, costs[inner][fabric] + inside[inner][fabric]);
            }
            sum += cheapest;
        }
        return sum;
    }
}
