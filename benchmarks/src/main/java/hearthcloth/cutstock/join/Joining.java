package hearthcloth.cutstock.join;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.cutstock.search.RuinAndRecreate;
import hearthcloth.cutstock.search.SearchParameters;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * Joins bars from strips of their own width with the fewest joins: one construction, then {@link RuinAndRecreate} over
 * {@link Joinery} until the larger of {@link JoinBounds} and {@link LeftoverBound} is reached or the budget is spent.
 *
 * <p>A plan of n bars and J joins uses at most n + J strips, and each part can be cut from a longer strip instead. So
 * once there is a plan, only the n + J longest strips matter: the search uses twice as many as the bound asks for if a
 * first plan shows that to be enough, and otherwise all.
 */
public final class Joining implements Search<JoinJob, JoinPlan, Integer> {

    /** The tolerance at the start of a round of the search, in joins. */
    private static final double WARMEST = 0.4;
    /** The tolerance at the end of a round, in joins. */
    private static final double COOLEST = 0.01;
    /** Steps of the first search, before the bound is raised. */
    private static final int FIRST_WALK = 200;

    /** A length that is missing at least, whatever the plan; 0 if nothing proves that any is. */
    public static long missing(JoinJob job) {
        return new JoinBounds(lengths(job.bars()), useful(job), job.loss()).missing();
    }

    @Override
    public Answer<JoinPlan, Integer> run(
            JoinJob job, Budget budget, long seed, Consumer<? super Answer<JoinPlan, Integer>> improvements) {
        SplittableRandom chance = new SplittableRandom(seed);
        int[] longestFirst = IntStream.range(0, job.strips().size())
                .boxed()
                .sorted(Comparator.comparing(job.strips()::get, Comparator.reverseOrder()))
                .mapToInt(Integer::intValue)
                .toArray();
        JoinBounds bounds = new JoinBounds(lengths(job.bars()), useful(job), job.loss());
        int some = 2 * (job.bars().size() + bounds.joins());
        if (some < longestFirst.length && bounds.missing() == 0) {
            Run run = new Run(job, Arrays.copyOf(longestFirst, some), bounds, improvements);
            run.begin(chance);
            if (run.joins <= some - job.bars().size()) {
                return run.search(budget, chance);
            }
        }
        Run run = new Run(job, longestFirst, bounds, improvements);
        run.begin(chance);
        return run.search(budget, chance);
    }

    private static long[] lengths(List<Long> lengths) {
        return lengths.stream().mapToLong(Long::longValue).toArray();
    }

    /** The strips that any part could be cut from. */
    private static long[] useful(JoinJob job) {
        long shortest = Math.min(
                job.leastPart(),
                job.bars().stream().mapToLong(Long::longValue).min().orElse(0));
        return job.strips().stream()
                .mapToLong(Long::longValue)
                .filter(strip -> strip >= shortest)
                .toArray();
    }

    private static final class Run {
        private final JoinJob job;
        private final int[] strips;
        private final Consumer<? super Answer<JoinPlan, Integer>> improvements;
        private final Joinery joinery;
        private final JoinBounds simple;
        private int bound;
        private Optional<JoinPlan> best = Optional.empty();
        private int joins = Integer.MAX_VALUE;

        /** A search over some of the strips, the longest first. */
        Run(JoinJob job, int[] strips, JoinBounds simple, Consumer<? super Answer<JoinPlan, Integer>> improvements) {
            this.job = job;
            this.strips = strips;
            this.simple = simple;
            this.improvements = improvements;
            List<WantedBar> bars = job.bars().stream()
                    .map(bar -> new WantedBar(bar, List.of(0), Integer.MAX_VALUE - 1, job.leastPart()))
                    .toList();
            long[] stock = IntStream.of(strips).mapToLong(job.strips()::get).toArray();
            joinery = new Joinery(bars, FixedStrips.of(stock), JoinRules.NONE, job.loss(), SearchParameters.standard());
            bound = simple.joins();
        }

        void begin(SplittableRandom chance) {
            if (simple.missing() == 0 && joinery.work().bars() > 0) {
                joinery.build(chance);
                look();
            }
        }

        Answer<JoinPlan, Integer> search(Budget budget, SplittableRandom chance) {
            if (simple.missing() == 0 && joinery.work().bars() > 0) {
                walk(Budget.either(budget, Budget.steps(FIRST_WALK)), chance);
                raise(budget);
                walk(budget, chance);
            }
            return answer();
        }

        /**
         * Raises the bound. A plan of J joins would do with the n + J longest strips; if {@link LeftoverBound} denies
         * that, there is none.
         */
        private void raise(Budget budget) {
            while (joins > bound) {
                long[] longest = Arrays.stream(useful(job)).sorted().toArray();
                int few = Math.min(longest.length, job.bars().size() + bound);
                long[] enough = Arrays.copyOfRange(longest, longest.length - few, longest.length);
                LeftoverBound dual = new LeftoverBound(lengths(job.bars()), enough, job.loss(), simple);
                if (dual.joins(bound + 1, budget) <= bound) {
                    return;
                }
                bound++;
            }
        }

        private void walk(Budget budget, SplittableRandom chance) {
            new RuinAndRecreate(WARMEST, COOLEST).walk(joinery, budget, chance, this::look, () -> joins <= bound);
        }

        private void look() {
            Piecework work = joinery.work();
            if (work.missing() == 0 && work.joins() < joins) {
                joins = work.joins();
                best = Optional.of(new JoinPlan(IntStream.range(0, work.bars())
                        .mapToObj(bar -> IntStream.range(0, work.parts(bar))
                                .mapToObj(i -> new JoinPlan.Part(strips[work.strip(bar, i)], work.cut(bar, i)))
                                .toList())
                        .toList()));
                improvements.accept(answer());
            }
        }

        private Answer<JoinPlan, Integer> answer() {
            return new Answer<>(best, bound, best.isPresent() && joins <= bound);
        }
    }
}
