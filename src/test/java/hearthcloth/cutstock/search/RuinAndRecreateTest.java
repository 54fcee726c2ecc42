package hearthcloth.cutstock.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** {@link RuinAndRecreate} walking over states that are {@link Reworkable}. */
class RuinAndRecreateTest {

    /** A whole number that steps at random to one beside it; it costs its distance from 17. */
    private static final class Line implements Reworkable {
        private int at;
        private int saved;
        private int reworks;

        @Override
        public void rework(SplittableRandom chance) {
            reworks++;
            at += chance.nextBoolean() ? 1 : -1;
        }

        @Override
        public double cost() {
            return Math.abs(at - 17);
        }

        @Override
        public void save() {
            saved = at;
        }

        @Override
        public void restore() {
            at = saved;
        }
    }

    @Test
    void a_cold_walk_goes_straight_down_and_stays() {
        Line line = new Line();
        List<Double> seen = new ArrayList<>();

        new RuinAndRecreate(1e-9, 1e-9)
                .walk(line, Budget.steps(500), new SplittableRandom(1), () -> seen.add(line.cost()), () -> false);

        assertThat(line.at).isEqualTo(17);
        assertThat(line.reworks).isEqualTo(500);
        assertThat(seen).hasSize(17).first().isEqualTo(16.0);
        for (int i = 1; i < seen.size(); i++) {
            assertThat(seen.get(i)).isEqualTo(seen.get(i - 1) - 1);
        }
    }

    @Test
    void a_walk_ends_as_soon_as_nothing_better_exists() {
        Line line = new Line();

        new RuinAndRecreate(1e-9, 1e-9)
                .walk(line, Budget.steps(100_000), new SplittableRandom(2), () -> {}, () -> line.at == 5);

        assertThat(line.at).isEqualTo(5);
        assertThat(line.reworks).isLessThan(100);
    }

    /** Each rework raises the cost by one; after a rise that is kept the next brings it down again. */
    private static final class Rising implements Reworkable {
        private boolean high;
        private boolean saved;
        private final List<Boolean> kept = new ArrayList<>();

        @Override
        public void rework(SplittableRandom chance) {
            high = !high;
            if (high) {
                kept.add(true);
            }
        }

        @Override
        public double cost() {
            return high ? 1 : 0;
        }

        @Override
        public void save() {
            saved = high;
        }

        @Override
        public void restore() {
            kept.set(kept.size() - 1, false);
            high = saved;
        }
    }

    @Test
    void a_rise_is_kept_as_often_as_in_simulated_annealing() {
        for (double tolerance : new double[] {0.5, 1, 3}) {
            Rising rising = new Rising();

            new RuinAndRecreate(tolerance, tolerance)
                    .walk(rising, Budget.steps(20_000), new SplittableRandom(3), () -> {}, () -> false);

            // the rule of Metropolis: a rise of 1 at tolerance t with probability exp(-1 / t)
            double share = (double) rising.kept.stream().filter(kept -> kept).count() / rising.kept.size();
            assertThat(share).isCloseTo(Math.exp(-1 / tolerance), within(0.02));
        }
    }

    /** Each rework costs one more than the state before, whatever was kept: kept or not is told step by step. */
    private static final class Climbing implements Reworkable {
        private double cost;
        private double saved;
        private final List<Boolean> kept = new ArrayList<>();

        @Override
        public void rework(SplittableRandom chance) {
            cost++;
            kept.add(true);
        }

        @Override
        public double cost() {
            return cost;
        }

        @Override
        public void save() {
            saved = cost;
        }

        @Override
        public void restore() {
            kept.set(kept.size() - 1, false);
            cost = saved;
        }
    }

    @Test
    void a_round_begins_warm_and_ends_cold_and_each_is_twice_as_long() {
        Climbing climbing = new Climbing();

        new RuinAndRecreate(1e9, 1e-9)
                .walk(climbing, Budget.steps(256 + 512 + 64), new SplittableRandom(4), () -> {}, () -> false);

        // the tolerance falls through 1 in the middle of each round, by 18 powers of ten over all of it
        assertThat(climbing.kept.subList(0, 64)).doesNotContain(false);
        assertThat(climbing.kept.subList(160, 256)).doesNotContain(true);
        assertThat(climbing.kept.subList(256, 256 + 128)).doesNotContain(false);
        assertThat(climbing.kept.subList(256 + 320, 768)).doesNotContain(true);
        assertThat(climbing.kept.subList(768, 832)).doesNotContain(false);
    }
}
