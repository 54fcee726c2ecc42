package hearthcloth.plan.join;

import hearthcloth.plan.search.Answer;
import hearthcloth.plan.search.Budget;
import hearthcloth.plan.search.RuinAndRecreate;
import hearthcloth.plan.search.Search;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * Joins bars from strips of their own width with the fewest joins: one construction, then {@link RuinAndRecreate} over
 * {@link Joinery} until the larger of {@link JoinBounds} and {@link LeftoverBound} is reached or the budget is spent.
 */
public final class Joining implements Search<JoinJob, JoinPlan, Integer> {

    private static final double WARMEST = 0.4;
    private static final double COOLEST = 0.01;
    private static final int FIRST_WALK = 200;

    /** At least this much length is missing, whatever the plan; 0 if nothing proves that any is. */
    public static long missing(JoinJob job) {
        return new JoinBounds(lengths(job.bars()), useful(job), job.loss()).missing();
    }

    @Override
    public Answer<JoinPlan, Integer> run(
            JoinJob job, Budget budget, long seed, Consumer<? super Answer<JoinPlan, Integer>> improvements) {
        return new Run(job, improvements).search(budget, new SplittableRandom(seed));
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
        private final Consumer<? super Answer<JoinPlan, Integer>> improvements;
        private final Joinery joinery;
        private final JoinBounds simple;
        private final LeftoverBound dual;
        private int bound;
        private Optional<JoinPlan> best = Optional.empty();
        private int joins = Integer.MAX_VALUE;

        Run(JoinJob job, Consumer<? super Answer<JoinPlan, Integer>> improvements) {
            this.improvements = improvements;
            List<WantedBar> bars = job.bars().stream()
                    .map(bar -> new WantedBar(bar, List.of(0), Integer.MAX_VALUE - 1, job.leastPart()))
                    .toList();
            joinery = new Joinery(bars, new FixedStrips(job.strips()), JoinRules.NONE, job.loss());
            simple = new JoinBounds(lengths(job.bars()), useful(job), job.loss());
            dual = new LeftoverBound(lengths(job.bars()), useful(job), job.loss(), simple);
            bound = simple.joins();
        }

        Answer<JoinPlan, Integer> search(Budget budget, SplittableRandom chance) {
            if (simple.missing() == 0 && joinery.work().bars() > 0) {
                joinery.build(chance);
                look();
                walk(Budget.either(budget, Budget.steps(FIRST_WALK)), chance);
                if (joins > bound) {
                    bound = Math.max(bound, dual.joins(joins, budget));
                }
                walk(budget, chance);
            }
            return answer();
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
                                .mapToObj(i -> new JoinPlan.Part(work.strip(bar, i), work.cut(bar, i)))
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
