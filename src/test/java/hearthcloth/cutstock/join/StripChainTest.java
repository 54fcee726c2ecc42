package hearthcloth.cutstock.join;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** {@link StripChain} and the {@link JoinSets} that are laid with it. */
class StripChainTest {

    private static long[] filled(int count, long value) {
        long[] all = new long[count];
        Arrays.fill(all, value);
        return all;
    }

    private static StripChain chain(long[] strips, long[] bars, long least, int mostParts, long loss) {
        int[] most = new int[bars.length];
        Arrays.fill(most, mostParts);
        return new StripChain(strips, bars, filled(bars.length, least), most, loss);
    }

    private static StripChain full(long[] strips, long[] bars, long least, int mostParts, long loss) {
        StripChain chain = chain(strips, bars, least, mostParts, loss);
        for (int i = 0; i < strips.length; i++) {
            chain.addStrip(i);
        }
        for (int i = 0; i < bars.length; i++) {
            chain.addBar(i);
        }
        return chain;
    }

    @Test
    void strips_are_laid_end_to_end_and_bars_cut_off_them() {
        // a bar of 100 out of 70 and 60 with a loss of 10: 70 and 40 of the second, of which 20 are left for the other
        StripChain chain = full(new long[] {70, 60}, new long[] {100, 20}, 5, 9, 10);

        assertThat(chain.lay(new SplittableRandom(1))).isTrue();

        assertThat(chain.bars()).isEqualTo(2);
        assertThat(chain.bar(0)).isZero();
        assertThat(chain.firstPart(0)).isZero();
        assertThat(chain.firstPart(1)).isEqualTo(2);
        assertThat(chain.firstPart(2)).isEqualTo(3);
        assertThat(new long[] {chain.cut(0), chain.cut(1), chain.cut(2)}).containsExactly(70, 40, 20);
        assertThat(new int[] {chain.source(0), chain.source(1), chain.source(2)})
                .containsExactly(0, 1, 1);
        // the first strip gives one part, which could be all of it; the second gives two
        assertThat(new long[] {chain.most(0), chain.most(1), chain.most(2)}).containsExactly(70, 40, 20);
    }

    @Test
    void a_part_that_would_be_too_short_takes_from_the_ones_before_it() {
        // 95 and 15 more would do, but a part has 20
        StripChain chain = full(new long[] {95, 60}, new long[] {100}, 20, 9, 10);

        assertThat(chain.lay(new SplittableRandom(1))).isTrue();

        assertThat(new long[] {chain.cut(0), chain.cut(1)}).containsExactly(90, 20);
        assertThat(chain.most(0)).isEqualTo(95);
        assertThat(chain.most(1)).isEqualTo(60);
    }

    @Test
    void a_set_without_bars_is_laid_and_one_without_enough_is_not() {
        StripChain chain = full(new long[] {50, 40}, new long[] {81}, 1, 9, 10);
        assertThat(chain.lay(new SplittableRandom(1))).isFalse();

        chain.clear();
        assertThat(chain.lay(new SplittableRandom(1))).isTrue();
        assertThat(chain.bars()).isZero();
        assertThat(full(new long[] {50, 40}, new long[] {80}, 1, 9, 10).lay(new SplittableRandom(1)))
                .isTrue();
        assertThat(full(new long[] {50, 40}, new long[] {80}, 1, 1, 10).lay(new SplittableRandom(1)))
                .isFalse();
    }

    @Test
    void another_order_is_tried_where_the_first_does_not_do() {
        // 30 then 60 off 60 and 30 needs a join, which is forbidden; the other way round none
        StripChain chain = full(new long[] {60, 30}, new long[] {30, 60}, 1, 1, 0);

        assertThat(chain.lay(new SplittableRandom(2))).isTrue();
        assertThat(chain.firstPart(2)).isEqualTo(2);
    }

    @Test
    void whatever_is_laid_can_be_cut_and_has_a_join_less_than_strips() {
        SplittableRandom chance = new SplittableRandom(3);
        int laid = 0;
        for (int i = 0; i < 500; i++) {
            long[] strips = chance.longs(1 + chance.nextInt(6), 3, 60).toArray();
            long[] bars = chance.longs(1 + chance.nextInt(3), 10, 90).toArray();
            long least = 1L + chance.nextInt(12);
            long loss = chance.nextInt(4);
            StripChain chain = full(strips, bars, least, 4, loss);
            if (!chain.lay(chance)) {
                continue;
            }
            laid++;
            long[] cut = new long[strips.length];
            for (int k = 0; k < bars.length; k++) {
                int first = chain.firstPart(k);
                int end = chain.firstPart(k + 1);
                long sum = loss;
                assertThat(end - first).isBetween(1, 4);
                for (int part = first; part < end; part++) {
                    sum += chain.cut(part) - loss;
                    cut[chain.source(part)] += chain.cut(part);
                    assertThat(end - first == 1 || chain.cut(part) >= least)
                            .as("case %s", i)
                            .isTrue();
                    assertThat(chain.most(part)).isBetween(chain.cut(part), strips[chain.source(part)]);
                }
                assertThat(sum).as("case %s", i).isEqualTo(bars[chain.bar(k)]);
            }
            for (int k = 0; k < strips.length; k++) {
                assertThat(cut[k]).as("case %s", i).isLessThanOrEqualTo(strips[k]);
            }
            assertThat(chain.firstPart(bars.length) - bars.length).isLessThan(strips.length);
        }
        assertThat(laid).isGreaterThan(100);
    }

    private static JoinSets sets(long[] strips, long[] bars, long loss, int count, int... set) {
        return new JoinSets(strips, bars, loss, set, count, chain(strips, bars, 1, 9, loss));
    }

    @Test
    void one_set_that_can_be_two_is_parted() {
        // four strips and two bars in one set have three joins; 30 + 20 and 25 + 25 are each a bar of 50
        long[] strips = {30, 25, 20, 25};
        long[] bars = {50, 50};
        SplittableRandom chance = new SplittableRandom(4);
        JoinSets sets = sets(strips, bars, 0, 1, 0, 0, 0, 0, 0, 0);

        assertThat(sets.win(300, chance)).isTrue();

        assertThat(sets.count()).isEqualTo(2);
        assertThat(sets.ofBar(0)).isNotEqualTo(sets.ofBar(1));
        assertThat(sets.changed(0) && sets.changed(1)).isTrue();
        assertThat(sets.works(0, chance)).isTrue();
        assertThat(sets.works(1, chance)).isTrue();
    }

    @Test
    void a_set_that_cannot_be_two_is_not_parted() {
        SplittableRandom chance = new SplittableRandom(5);

        assertThat(sets(new long[] {30, 25, 22, 23}, new long[] {50, 50}, 0, 1, 0, 0, 0, 0, 0, 0)
                        .win(300, chance))
                .isFalse();
        assertThat(sets(new long[] {50}, new long[] {50}, 0, 1, 0, 0).win(300, chance))
                .isFalse();
    }

    @Test
    void a_set_that_falls_short_is_helped_by_strips_that_give_nothing() {
        // bar 1 of 70 has the strip of 40 and lacks 30; the strip of 35, set 2, gives nothing
        SplittableRandom chance = new SplittableRandom(6);
        JoinSets sets = sets(new long[] {50, 40, 35}, new long[] {50, 70}, 5, 3, 0, 1, 2, 0, 1);

        assertThat(sets.help(1, 300, chance)).isTrue();

        assertThat(sets.changed(1)).isTrue();
        assertThat(sets.works(sets.ofBar(1), chance)).isTrue();
        assertThat(sets.works(sets.ofBar(0), chance)).isTrue();
        // 40 + 34 - 5 is too short by one
        assertThat(sets(new long[] {50, 40, 34}, new long[] {50, 70}, 5, 3, 0, 1, 2, 0, 1)
                        .help(1, 300, chance))
                .isFalse();
    }

    @Test
    void a_long_strip_goes_from_a_short_bar_to_the_one_that_lacks_it() {
        // the bar of 40 lies on the strip of 60, the bar of 60 has only 40: exchanged both are whole
        SplittableRandom chance = new SplittableRandom(7);
        JoinSets sets = sets(new long[] {60, 40}, new long[] {40, 60}, 0, 2, 0, 1, 0, 1);

        assertThat(sets.help(1, 300, chance)).isTrue();

        for (int bar = 0; bar < 2; bar++) {
            assertThat(sets.works(sets.ofBar(bar), chance)).isTrue();
        }
        assertThat(sets.ofBar(0)).isNotEqualTo(sets.ofBar(1));
    }
}
