package hearthcloth.cutstock.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cutstock.join.FewestJoins.Bars;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.cutstock.search.RuinAndRecreate;
import hearthcloth.cutstock.search.SearchParameters;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** {@link Joinery} with {@link BarPiecing} and {@link JoinReduction}, beside {@link FewestJoins}, which tries everything. */
class JoineryTest {

    private static List<WantedBar> bars(long least, int mostJoins, long... lengths) {
        return LongStream.of(lengths)
                .mapToObj(length -> new WantedBar(length, List.of(0), mostJoins, least))
                .toList();
    }

    /** Bars, strips and the parts of a search over them. */
    private static final class Bench {
        final FixedStrips strips;
        final Piecework work;
        final BarPiecing piecing;
        final JoinReduction reduction;
        final SplittableRandom chance = new SplittableRandom(1);

        Bench(FixedStrips strips, List<WantedBar> bars, long loss) {
            this.strips = strips;
            this.work = new Piecework(bars, strips.slots(), loss);
            StripCandidates offers = new StripCandidates();
            this.piecing = new BarPiecing(
                    work,
                    strips,
                    JoinRules.NONE,
                    offers,
                    loss,
                    50,
                    SearchParameters.standard().piecing());
            this.reduction = new JoinReduction(
                    work,
                    strips,
                    JoinRules.NONE,
                    offers,
                    loss,
                    SearchParameters.standard().reduction());
        }

        void place(int bar, long[][] sourceAndCut) {
            BarParts parts = new BarParts(work.capacity);
            for (long[] one : sourceAndCut) {
                parts.add((int) one[0], one[1], one[1]);
            }
            work.place(bar, parts, 0, strips);
            assertThat(work.pieced(bar)).isTrue();
        }
    }

    @Test
    void a_bar_is_pieced_from_the_strips_that_spoil_least() {
        // 110 with a loss of 10: 80 + 40 fit exactly, 100 + 80 would leave 60
        Bench bench = new Bench(FixedStrips.of(100, 80, 40), bars(5, 5, 110), 10);

        bench.piecing.piece(0, true, bench.chance);

        assertThat(bench.work.pieced(0)).isTrue();
        assertThat(bench.work.used()).containsExactly(0, 80, 40);
    }

    @Test
    void a_bar_is_pieced_from_one_strip_where_one_is_long_enough_the_nearest_first() {
        Bench bench = new Bench(FixedStrips.of(120, 60, 111, 60), bars(5, 5, 110), 10);

        bench.piecing.piece(0, true, bench.chance);

        assertThat(bench.work.used()).containsExactly(0, 0, 110, 0);
    }

    @Test
    void a_bar_takes_the_kind_that_serves_it() {
        FixedStrips strips = FixedStrips.ofKinds(new long[] {60, 60, 90}, new int[] {0, 1, 1});
        WantedBar either = new WantedBar(90, List.of(0, 1), 5, 5);
        Bench bench = new Bench(strips, List.of(either), 10);

        bench.piecing.piece(0, true, bench.chance);

        assertThat(bench.work.used()).containsExactly(0, 0, 90);
    }

    @Test
    void a_bar_with_too_many_joins_is_not_pieced() {
        Bench bench = new Bench(FixedStrips.of(60, 60), bars(5, 0, 100), 10);

        bench.piecing.piece(0, true, bench.chance);
        bench.piecing.piece(0, false, bench.chance);

        assertThat(bench.work.pieced(0)).isFalse();
        assertThat(bench.strips.opened()).isZero();
    }

    @Test
    void a_bar_of_which_there_is_not_enough_is_begun_with_the_longest() {
        Bench bench = new Bench(FixedStrips.of(30, 50, 20), bars(5, 5, 100), 10);

        bench.piecing.begin(0);

        // 50 + 30 + 20 less two losses are 80: 20 and one more loss are lacking
        assertThat(bench.work.pieced(0)).isFalse();
        assertThat(bench.work.parts(0)).isEqualTo(3);
        assertThat(bench.work.strip(0, 0)).isEqualTo(1);
        assertThat(bench.work.strip(0, 1)).isZero();
        assertThat(bench.work.lacking(0)).isEqualTo(30);
    }

    @Test
    void two_bars_that_share_two_strips_crosswise_are_divided_anew() {
        Bench bench = new Bench(FixedStrips.of(50, 50), bars(5, 5, 50, 50), 0);
        bench.place(0, new long[][] {{~0, 30}, {~1, 20}});
        bench.place(1, new long[][] {{0, 20}, {1, 30}});
        assertThat(bench.work.joins()).isEqualTo(2);

        boolean won = false;
        for (int i = 0; i < 20 && !won; i++) {
            won = bench.reduction.win(bench.chance);
        }

        assertThat(won).isTrue();
        assertThat(bench.work.joins()).isZero();
        assertThat(bench.work.missing()).isZero();
        assertThat(bench.strips.faults(bench.work, new long[] {50, 50}, 0)).isEmpty();
    }

    @Test
    void a_bar_that_may_not_be_joined_gets_the_strip_another_lies_on() {
        Bench bench = new Bench(FixedStrips.of(60, 40), bars(5, 0, 40, 60), 0);
        bench.place(0, new long[][] {{~0, 40}});

        boolean won = false;
        for (int i = 0; i < 20 && !won; i++) {
            won = bench.reduction.win(bench.chance);
        }

        assertThat(won).isTrue();
        assertThat(bench.work.missing()).isZero();
        assertThat(bench.work.used()).containsExactly(60, 40);
        assertThat(bench.work.joins()).isZero();
    }

    @Test
    void nothing_is_won_where_there_is_nothing_to_win() {
        Bench bench = new Bench(FixedStrips.of(30, 40), bars(5, 5, 60), 10);
        bench.place(0, new long[][] {{~0, 30}, {~1, 40}});

        for (int i = 0; i < 10; i++) {
            assertThat(bench.reduction.win(bench.chance)).isFalse();
        }
        assertThat(bench.work.joins()).isEqualTo(1);
        assertThat(bench.work.missing()).isZero();
    }

    private static Joinery searched(Bars job, int fewest, FixedStrips strips, SplittableRandom chance) {
        long[] lengths = job.bars().stream().mapToLong(Long::longValue).toArray();
        Joinery joinery = new Joinery(
                bars(job.leastPart(), 99, lengths), strips, JoinRules.NONE, job.loss(), SearchParameters.standard());
        joinery.build(chance);
        new RuinAndRecreate(0.4, 0.01)
                .walk(
                        joinery,
                        Budget.steps(300),
                        chance,
                        () -> {},
                        () -> joinery.work().missing() == 0 && joinery.work().joins() == fewest);
        return joinery;
    }

    @Test
    void tiny_jobs_are_joined_with_as_few_joins_as_trying_everything_finds() {
        SplittableRandom chance = new SplittableRandom(13);
        int done = 0;
        for (int i = 0; i < 120; i++) {
            List<Long> lengths =
                    chance.longs(1 + chance.nextInt(3), 3, 11).boxed().toList();
            List<Long> stock =
                    chance.longs(2 + chance.nextInt(3), 3, 11).boxed().toList();
            Bars job = new Bars(lengths, stock, chance.nextInt(2), 1 + chance.nextInt(2));
            int fewest = FewestJoins.of(job);
            FixedStrips strips =
                    FixedStrips.of(stock.stream().mapToLong(Long::longValue).toArray());

            Joinery joinery = searched(job, fewest, strips, chance);

            long[] bars = lengths.stream().mapToLong(Long::longValue).toArray();
            assertThat(strips.faults(joinery.work(), bars, job.loss()))
                    .as("case %s: %s", i, job)
                    .isEmpty();
            if (fewest < FewestJoins.NONE) {
                done++;
                assertThat(joinery.work().missing()).as("case %s: %s", i, job).isZero();
                assertThat(joinery.work().joins()).as("case %s: %s", i, job).isEqualTo(fewest);
            } else {
                assertThat(joinery.work().missing()).as("case %s: %s", i, job).isPositive();
            }
        }
        assertThat(done).isGreaterThan(50);
    }

    @Test
    void the_longest_bar_is_pieced_first_and_one_that_may_not_be_joined_before_it() {
        FixedStrips strips = FixedStrips.of(100);
        List<WantedBar> bars = List.of(
                new WantedBar(48, List.of(0), 3, 5),
                new WantedBar(52, List.of(0), 3, 5),
                new WantedBar(45, List.of(0), 0, 5));
        Joinery joinery = new Joinery(bars, strips, JoinRules.NONE, 10, SearchParameters.standard());

        joinery.build(new SplittableRandom(1));

        // 45 may not be joined and goes first; of the 55 that are left the longer of the others is cut
        assertThat(joinery.work().pieced(2)).isTrue();
        assertThat(joinery.work().pieced(1)).isTrue();
        assertThat(joinery.work().pieced(0)).isFalse();
    }

    @Test
    void cost_and_merit_are_what_the_state_holds() {
        FixedStrips strips = FixedStrips.of(70, 40, 30);
        Joinery joinery = new Joinery(bars(20, 5, 100), strips, JoinRules.NONE, 10, SearchParameters.standard());
        // nothing is pieced: a mean bar is missing, which outweighs everything
        assertThat(joinery.merit()).isCloseTo(2e6, within(1e-6));

        joinery.build(new SplittableRandom(1));

        // one join; 0.1 of the squared lengths used, in mean bars: 0.7 and 0.4 wholly
        assertThat(joinery.work().joins()).isEqualTo(1);
        assertThat(joinery.merit()).isCloseTo(1, within(1e-9));
        assertThat(joinery.cost()).isCloseTo(1 + 0.1 * (0.49 + 0.16), within(1e-9));
    }

    @Test
    void a_bar_only_begun_costs_more_than_any_joins_and_more_the_more_is_lacking() {
        // of 100 there are 70: 30 and one loss are lacking; six parts are the most, and four joins a mean bar's length
        Joinery joinery =
                new Joinery(bars(20, 5, 100), FixedStrips.of(70), JoinRules.NONE, 10, SearchParameters.standard());

        joinery.build(new SplittableRandom(1));

        assertThat(joinery.work().missing()).isEqualTo(1);
        assertThat(joinery.cost()).isCloseTo(6 + 4 * 0.4 + 0.1 * 0.49, within(1e-9));
        assertThat(joinery.merit()).isCloseTo(1e6 * 1.4, within(1e-3));
    }

    @Test
    void what_was_saved_comes_back() {
        long[] stock = {9, 8, 7, 6, 5, 9};
        long[] lengths = {12, 11, 10};
        FixedStrips strips = FixedStrips.of(stock);
        Joinery joinery = new Joinery(bars(2, 9, lengths), strips, JoinRules.NONE, 1, SearchParameters.standard());
        SplittableRandom chance = new SplittableRandom(14);
        joinery.build(chance);
        int changed = 0;
        for (int i = 0; i < 60; i++) {
            joinery.save();
            double cost = joinery.cost();
            long[] used = joinery.work().used().clone();
            int joins = joinery.work().joins();

            joinery.rework(chance);
            assertThat(strips.faults(joinery.work(), lengths, 1))
                    .as("rework %s", i)
                    .isEmpty();
            changed += Arrays.equals(joinery.work().used(), used) ? 0 : 1;
            joinery.restore();

            assertThat(joinery.cost()).isEqualTo(cost);
            assertThat(Arrays.equals(joinery.work().used(), used)).isTrue();
            assertThat(joinery.work().joins()).isEqualTo(joins);
            assertThat(strips.faults(joinery.work(), lengths, 1)).isEmpty();
            joinery.rework(chance);
        }
        assertThat(changed).isGreaterThan(15);
    }
}
