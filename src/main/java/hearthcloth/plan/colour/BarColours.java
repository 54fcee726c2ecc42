package hearthcloth.plan.colour;

import hearthcloth.plan.parameter.ColourParameters;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Solves a {@link BarColouring}: a greedy choice, changes of one bar and exchanges of two until none helps, then
 * branch and bound, bar by bar from the rim inwards, with what the bars not yet chosen cost at least; a long one begins
 * anew with costs spread so that this says more ({@link BarColouring.Tables#spread}). Where that ends by itself no choice
 * costs less; where its looks are used up, the least bound it left open holds. The same problem, looks and seed give the
 * same answer. For one use.
 */
final class BarColours {

    /** Changes below this, in millimetres of edge, are none. */
    private static final double NEAR = 1e-6;

    private static final ColourParameters.Branching BRANCHING =
            ColourParameters.standard().search().branching();

    private final BarColouring problem;
    private final BarColouring.Tables tables;
    private final int[] chosen;
    private final int[] best;
    private final double[] left;
    private double[][] inside;
    private long looks;
    private double least = Double.POSITIVE_INFINITY;
    private double open = Double.POSITIVE_INFINITY;

    /**
     * What was found: the fabric of each bar.
     *
     * @param cost infinite where nothing was found
     * @param bound no choice costs less; the same as the cost where that is proven
     */
    record Found(List<Integer> fabrics, double cost, double bound) {

        private static Found of(int[] chosen, double cost, double bound) {
            return new Found(Arrays.stream(chosen).boxed().toList(), cost, Math.min(cost, bound));
        }

        /** The fabric of a bar. */
        int chosen(int bar) {
            return fabrics.get(bar);
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
        this.tables = problem.new Tables();
        this.inside = tables.inside();
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
            return Found.of(best, least, least);
        }
        Optional<BarChoice> begun = begin() ? Optional.of(new BarChoice(problem, chosen)) : Optional.empty();
        begun.ifPresent(this::descend);
        double bound = branched(Math.min(looks / 2, BRANCHING.quick()));
        if (bound < least - NEAR && looks > BRANCHING.many()) {
            tables.spread();
            inside = tables.inside();
            bound = Math.max(bound, branched(BRANCHING.many()));
        }
        if (bound < least - NEAR) {
            begun.ifPresent(choice -> wander(choice, chance));
            bound = Math.max(bound, branched(looks));
        }
        return Found.of(best, least, bound);
    }

    /** Descends from places a few random changes away. */
    private void wander(BarChoice choice, SplittableRandom chance) {
        long kept = Math.max(looks / 2, looks - BRANCHING.descents());
        looks -= kept;
        while (looks > 0 && least > NEAR) {
            shake(choice, chance);
            descend(choice);
        }
        looks = kept + Math.max(0, looks);
    }

    /** Branches for so many looks. */
    private double branched(long most) {
        long later = Math.max(0, looks - most);
        looks = most;
        open = Double.POSITIVE_INFINITY;
        for (int fabric = 0; fabric < left.length; fabric++) {
            left[fabric] = problem.room(fabric);
        }
        double[][] alone = tables.alone();
        branch(problem.bars() - 1, 0, alone, cheapest(alone));
        looks = later + Math.max(0, looks);
        return open;
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
        for (int i = 0; i < BRANCHING.shaken(); i++) {
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

    /**
     * Every choice for this bar and those inside it.
     *
     * @param spent by the bars already chosen
     * @param costs of each fabric for each bar not yet chosen, beside those already chosen
     * @param rest what each of them costs at least: its cheapest fabric, beside whatever those inside it cost least
     */
    private void branch(int bar, double spent, double[][] costs, double[] rest) {
        if (bar < 0) {
            keep(spent + problem.unbalanced(chosen));
            return;
        }
        double[] mine = costs[bar];
        for (int fabric : cheapestFirst(mine)) {
            if (left[fabric] < problem.area(bar) || mine[fabric] == Double.POSITIVE_INFINITY) {
                continue;
            }
            double[] then = rest(bar, fabric, costs, rest);
            double bound = spent + mine[fabric] + sum(then);
            if (bound >= least - NEAR) {
                continue;
            }
            if (looks-- <= 0) {
                open = Math.min(open, bound);
                continue;
            }
            chosen[bar] = fabric;
            left[fabric] -= problem.area(bar);
            branch(bar - 1, spent + mine[fabric], tables.beside(bar, fabric, costs), then);
            left[fabric] += problem.area(bar);
        }
    }

    private static double sum(double[] costs) {
        double sum = 0;
        for (double cost : costs) {
            sum += cost;
        }
        return sum;
    }

    private double[] cheapest(double[][] costs) {
        double[] cheapest = new double[costs.length];
        Arrays.fill(cheapest, Double.POSITIVE_INFINITY);
        for (int bar = 0; bar < cheapest.length; bar++) {
            for (int fabric = 0; fabric < costs[bar].length; fabric++) {
                cheapest[bar] = Math.min(cheapest[bar], costs[bar][fabric] + inside[bar][fabric]);
            }
        }
        return cheapest;
    }

    /** What the bars inside this one cost at least once it is of this fabric. */
    private double[] rest(int bar, int fabric, double[][] costs, double[] rest) {
        double[] then = Arrays.copyOf(rest, bar);
        List<BarColouring.Meeting> meetings = problem.meetingsOf(bar);
        for (int at = 0; at < meetings.size(); at++) {
            int inner = meetings.get(at).other();
            if (inner < bar) {
                double cheapest = Double.POSITIVE_INFINITY;
                for (int other = 0; other < costs[inner].length; other++) {
                    double each = costs[inner][other] + inside[inner][other];
                    cheapest = Math.min(cheapest, each + tables.between(bar, at, fabric, other));
                }
                then[inner] = cheapest;
            }
        }
        return then;
    }

    private static int[] cheapestFirst(double[] costs) {
        int[] order = new int[costs.length];
        for (int fabric = 0; fabric < order.length; fabric++) {
            int at = fabric;
            while (at > 0 && costs[order[at - 1]] > costs[fabric]) {
                order[at] = order[--at];
            }
            order[at] = fabric;
        }
        return order;
    }
}
