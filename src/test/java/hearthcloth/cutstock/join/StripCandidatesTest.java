package hearthcloth.cutstock.join;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** {@link StripCandidates} and the {@link CandidateSelection} from them, beside every subset. */
class StripCandidatesTest {

    private static StripCandidates gathered(FixedStrips strips, long[] used, long least) {
        StripCandidates offers = new StripCandidates();
        offers.gather(strips, used, 0, least);
        return offers;
    }

    private static long[] lengths(StripCandidates offers) {
        return IntStream.range(0, offers.count()).mapToLong(offers::length).toArray();
    }

    @Test
    void remainders_and_strips_not_opened_yet_are_offered_by_length() {
        FixedStrips strips = FixedStrips.ofKinds(new long[] {90, 40, 70, 80, 20}, new int[] {0, 0, 0, 1, 0});
        long[] used = new long[5];
        strips.open(0, 0, used);
        used[0] = 35;
        strips.open(1, 3, used);
        used[3] = 10;

        StripCandidates offers = gathered(strips, used, 30);

        // of the open strip 90 - 35; the other kind's and the one of 20 are not offered
        assertThat(lengths(offers)).containsExactly(40, 55, 70);
        assertThat(IntStream.range(0, 3).map(offers::source)).containsExactly(~1, 0, ~2);
        assertThat(offers.longest()).isEqualTo(70);
        assertThat(gathered(strips, used, 20).count()).isEqualTo(4);
        assertThat(gathered(strips, used, 71).longest()).isZero();
    }

    @Test
    void an_open_strip_that_is_used_up_is_not_offered() {
        FixedStrips strips = FixedStrips.of(50);
        long[] used = new long[1];
        strips.open(0, 0, used);
        used[0] = 50;

        assertThat(gathered(strips, used, 0).count()).isZero();
    }

    @Test
    void any_number_of_places_comes_out_sorted_and_of_very_many_the_longest() {
        long[] many =
                new SplittableRandom(6).longs(1_500, 1, 1_000_000_000_000L).toArray();
        FixedStrips strips = FixedStrips.of(many);

        StripCandidates offers = gathered(strips, new long[1_500], 1);

        long[] sorted = many.clone();
        Arrays.sort(sorted);
        assertThat(lengths(offers)).isEqualTo(Arrays.copyOfRange(sorted, 1_500 - 1_024, 1_500));
        assertThat(IntStream.range(0, offers.count()).mapToLong(i -> many[~offers.source(i)]))
                .containsExactly(LongStream.of(lengths(offers)).boxed().toArray(Long[]::new));
        // what passes is offered beside it, and comes in any order
        long[] used = new long[1_500];
        for (int slot = 0; slot < 1_500; slot++) {
            strips.open(0, slot, used);
        }
        assertThat(lengths(gathered(strips, used, 1))).isEqualTo(sorted);
    }

    @Test
    void the_first_that_is_long_enough_and_the_fewest_that_cover_are_found() {
        StripCandidates offers = gathered(FixedStrips.of(30, 50, 50, 80), new long[4], 1);

        assertThat(LongStream.of(1, 30, 31, 50, 51, 81).mapToInt(offers::atLeast))
                .containsExactly(0, 0, 1, 1, 3, 4);
        // 80; 80 + 50 - 10; 80 + 50 + 50 - 20; all four are 180
        assertThat(LongStream.of(80, 81, 120, 121, 160, 161, 180, 181).mapToInt(bar -> offers.fewest(bar, 10)))
                .containsExactly(1, 2, 2, 3, 3, 4, 4, 5);
        // strips no longer than a loss add nothing: 80 + 50 + 50 - 100 is 80
        assertThat(offers.fewest(81, 50)).isEqualTo(5);
    }

    private static final long LOSS = 3;

    private static boolean covers(StripCandidates offers, List<Integer> chosen, long bar) {
        long sum = chosen.stream().mapToLong(offers::length).sum();
        return sum - LOSS * (chosen.size() - 1) >= bar;
    }

    /** The least excess over a bar of any so many offers; -1 if none cover it. */
    private static long leastExcess(StripCandidates offers, int parts, long bar) {
        long least = -1;
        for (int set = 0; set < 1 << offers.count(); set++) {
            if (Integer.bitCount(set) != parts) {
                continue;
            }
            int mask = set;
            List<Integer> some = IntStream.range(0, offers.count())
                    .filter(i -> (mask >> i & 1) == 1)
                    .boxed()
                    .toList();
            long excess = some.stream().mapToLong(offers::length).sum() - LOSS * (parts - 1) - bar;
            least = excess >= 0 && (least < 0 || excess < least) ? excess : least;
        }
        return least;
    }

    @Test
    void every_way_of_choosing_covers_the_bar_and_finds_a_choice_where_there_is_one() {
        SplittableRandom chance = new SplittableRandom(7);
        int found = 0;
        int exact = 0;
        for (int i = 0; i < 400; i++) {
            long[] strips = chance.longs(2 + chance.nextInt(7), 5, 60).toArray();
            StripCandidates offers = gathered(FixedStrips.of(strips), new long[strips.length], 1);
            CandidateSelection selection = new CandidateSelection(offers, LOSS, 8);
            int parts = 1 + chance.nextInt(Math.min(4, strips.length));
            long bar = 10L + chance.nextInt(120);
            long excess = leastExcess(offers, parts, bar);
            for (CandidateSelection.Way way : CandidateSelection.Way.values()) {
                boolean picked = selection.pick(bar, parts, 0, way, chance);

                assertThat(picked && excess < 0).as("case %s, %s", i, way).isFalse();
                if (picked) {
                    List<Integer> chosen = Arrays.stream(selection.chosen, 0, selection.count)
                            .boxed()
                            .toList();
                    Set<Integer> distinct = new HashSet<>(chosen);
                    assertThat(distinct).as("case %s, %s", i, way).hasSize(parts);
                    assertThat(covers(offers, chosen, bar))
                            .as("case %s, %s", i, way)
                            .isTrue();
                    found++;
                }
                if (way == CandidateSelection.Way.PAIR && parts == 2) {
                    assertThat(picked).as("case %s", i).isEqualTo(excess >= 0);
                    exact += picked ? 1 : 0;
                    assertThat(!picked
                                    || offers.length(selection.chosen[0])
                                                    + offers.length(selection.chosen[1])
                                                    - LOSS
                                                    - bar
                                            == excess)
                            .as("case %s", i)
                            .isTrue();
                }
            }
        }
        assertThat(found).isGreaterThan(300);
        assertThat(exact).isGreaterThan(20);
    }

    @Test
    void the_longest_and_the_shortest_go_first_where_they_are_asked_for() {
        StripCandidates offers = gathered(FixedStrips.of(20, 30, 40, 50, 60), new long[5], 1);
        CandidateSelection selection = new CandidateSelection(offers, LOSS, 4);
        SplittableRandom chance = new SplittableRandom(8);

        // 80: with the longest, 60, 23 are left, which 30 gives; with 60 to come the shortest that does is 30
        assertThat(selection.pick(80, 2, 0, CandidateSelection.Way.LONGEST, chance))
                .isTrue();
        assertThat(offers.length(selection.chosen[0])).isEqualTo(60);
        assertThat(offers.length(selection.chosen[1])).isEqualTo(30);
        assertThat(selection.pick(80, 2, 0, CandidateSelection.Way.SHORTEST, chance))
                .isTrue();
        assertThat(offers.length(selection.chosen[0])).isEqualTo(30);
        assertThat(offers.length(selection.chosen[1])).isEqualTo(60);
    }

    @Test
    void no_part_is_shorter_than_the_least() {
        StripCandidates offers = gathered(FixedStrips.of(20, 55, 60), new long[3], 1);
        CandidateSelection selection = new CandidateSelection(offers, LOSS, 4);

        // 70 = 60 + 13 - 3, but the last must have 25: the one of 20 does not do
        assertThat(selection.pick(70, 2, 25, CandidateSelection.Way.LONGEST, new SplittableRandom(9)))
                .isTrue();
        assertThat(offers.length(selection.chosen[1])).isGreaterThanOrEqualTo(55);
    }
}
