package hearthcloth.cutstock.join;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** {@link Piecework}: each {@link WantedBar} with its {@link BarParts}, cut from strips of a {@link StripSource}. */
class PieceworkTest {

    private static final long LOSS = 10;

    private static WantedBar bar(long length, int mostJoins, long leastPart) {
        return new WantedBar(length, List.of(0), mostJoins, leastPart);
    }

    private static BarParts parts(Piecework work, long[][] sourceAndCut) {
        BarParts parts = new BarParts(work.capacity);
        for (long[] one : sourceAndCut) {
            parts.add((int) one[0], one[1], one[1]);
        }
        return parts;
    }

    @Test
    void a_bar_has_as_many_parts_as_its_joins_its_length_and_its_least_part_allow() {
        // a part adds what it is less one loss, of the least parts at least 20 - 10; (100 - 10) / 10 = 9
        Piecework work = new Piecework(
                List.of(bar(100, 99, 20), bar(100, 2, 20), bar(100, 99, 1), bar(100, 99, 56), bar(9, 5, 3)), 4, LOSS);

        assertThat(IntStream.range(0, 5).map(work::mostParts)).containsExactly(9, 3, 64, 1, 1);
        assertThat(work.capacity).isEqualTo(64);
        assertThat(work.mostJoins()).isEqualTo(9 + 3 + 64 + 1 + 1);
    }

    @Test
    void a_bar_placed_is_pieced_and_removed_leaves_all_as_it_was() {
        FixedStrips strips = FixedStrips.of(70, 40, 30);
        Piecework work = new Piecework(List.of(bar(100, 5, 20), bar(30, 5, 20)), 3, LOSS);

        work.place(0, parts(work, new long[][] {{~0, 70}, {~1, 40}}), 0, strips);

        assertThat(work.pieced(0)).isTrue();
        assertThat(work.joins()).isEqualTo(1);
        assertThat(work.missing()).isEqualTo(1);
        assertThat(work.missingLength()).isEqualTo(30);
        assertThat(work.used()).containsExactly(70, 40, 0);
        assertThat(strips.faults(work, new long[] {100, 30}, LOSS)).isEmpty();

        work.remove(0, strips);

        assertThat(work.pieced(0)).isFalse();
        assertThat(work.joins()).isZero();
        assertThat(work.missing()).isEqualTo(2);
        assertThat(work.missingLength()).isEqualTo(130);
        assertThat(work.used()).containsExactly(0, 0, 0);
        assertThat(strips.opened()).isZero();
    }

    @Test
    void parts_that_exclude_each_other_are_given_up_whole() {
        FixedStrips strips = FixedStrips.of(70, 40);
        Piecework work = new Piecework(List.of(bar(100, 5, 20)), 2, LOSS);

        work.place(0, parts(work, new long[][] {{~0, 70}, {~0, 40}}), 0, strips);

        assertThat(work.pieced(0)).isFalse();
        assertThat(work.parts(0)).isZero();
        assertThat(work.used()).containsExactly(0, 0);
        assertThat(strips.opened()).isZero();
    }

    @Test
    void a_part_longer_than_what_is_left_of_its_strip_is_given_up() {
        FixedStrips strips = FixedStrips.of(70, 60);
        Piecework work = new Piecework(List.of(bar(50, 0, 1), bar(50, 0, 1)), 2, LOSS);
        work.place(0, parts(work, new long[][] {{~0, 50}}), 0, strips);

        work.place(1, parts(work, new long[][] {{0, 50}}), 0, strips);

        assertThat(work.pieced(1)).isFalse();
        assertThat(work.used()).containsExactly(50, 0);
        work.place(1, parts(work, new long[][] {{~1, 61}}), 0, strips);
        assertThat(work.pieced(1)).isFalse();
        assertThat(strips.opened()).isEqualTo(1);
    }

    @Test
    void what_only_holds_a_strip_open_is_not_missed_by_its_parts() {
        FixedStrips strips = FixedStrips.of(50);
        Piecework work = new Piecework(List.of(bar(50, 0, 1)), 1, LOSS);
        int slot = strips.open(0, 0, work.used());
        work.used()[slot]++;

        work.place(0, parts(work, new long[][] {{slot, 50}}), 0, strips);
        assertThat(work.pieced(0)).isFalse();
        work.hold(1);
        work.place(0, parts(work, new long[][] {{slot, 50}}), 0, strips);
        assertThat(work.pieced(0)).isTrue();
    }

    @Test
    void a_bar_begun_lacks_the_rest_and_one_more_loss() {
        FixedStrips strips = FixedStrips.of(70, 60);
        Piecework work = new Piecework(List.of(bar(100, 5, 20)), 2, LOSS);

        assertThat(work.lengthen(0, ~0, 70, 0, LOSS, strips)).isTrue();
        assertThat(work.lacking(0)).isEqualTo(40);
        assertThat(work.missingLength()).isEqualTo(40);
        assertThat(work.pieced(0)).isFalse();
        assertThat(work.joins()).isZero();

        assertThat(work.lengthen(0, ~1, 60, 0, LOSS, strips)).isFalse();
        assertThat(work.pieced(0)).isTrue();
        assertThat(work.joins()).isEqualTo(1);
        assertThat(work.missingLength()).isZero();
        assertThat(work.cut(0, 1)).isEqualTo(40);
        assertThat(strips.faults(work, new long[] {100}, LOSS)).isEmpty();
    }

    @Test
    void the_first_part_is_shortened_so_that_the_last_is_not_too_short() {
        FixedStrips strips = FixedStrips.of(95, 60);
        Piecework work = new Piecework(List.of(bar(100, 5, 20)), 2, LOSS);
        work.lengthen(0, ~0, 95, 0, LOSS, strips);

        // 15 are lacking, but a part has 20: so the first gives 90
        assertThat(work.lengthen(0, ~1, 60, 0, LOSS, strips)).isFalse();

        assertThat(work.pieced(0)).isTrue();
        assertThat(work.cut(0, 0)).isEqualTo(90);
        assertThat(work.cut(0, 1)).isEqualTo(20);
        assertThat(strips.faults(work, new long[] {100}, LOSS)).isEmpty();
    }

    @Test
    void a_bar_with_as_many_parts_as_it_may_have_is_lengthened_no_more() {
        FixedStrips strips = FixedStrips.of(40, 40, 40);
        Piecework work = new Piecework(List.of(bar(100, 1, 20)), 3, LOSS);

        assertThat(work.lengthen(0, ~0, 40, 0, LOSS, strips)).isTrue();
        assertThat(work.lengthen(0, ~1, 40, 0, LOSS, strips)).isFalse();
        assertThat(work.pieced(0)).isFalse();
        assertThat(work.lacking(0)).isEqualTo(100 - 70 + LOSS);
    }

    @Test
    void any_missing_bar_may_be_picked_and_none_that_is_there() {
        FixedStrips strips = FixedStrips.of(50);
        Piecework work = new Piecework(List.of(bar(30, 0, 1), bar(50, 0, 1), bar(30, 0, 1)), 1, LOSS);
        work.place(1, parts(work, new long[][] {{~0, 50}}), 0, strips);
        SplittableRandom chance = new SplittableRandom(5);

        assertThat(IntStream.range(0, 50).map(i -> work.someMissing(chance)).distinct())
                .containsExactlyInAnyOrder(0, 2);
    }

    @Test
    void bars_are_kindred_by_kind_and_share_by_strip() {
        FixedStrips strips = FixedStrips.of(100, 100);
        WantedBar one = new WantedBar(40, List.of(0, 1), 0, 1);
        WantedBar other = new WantedBar(40, List.of(1, 2), 0, 1);
        WantedBar third = new WantedBar(40, List.of(2), 0, 1);
        Piecework work = new Piecework(List.of(one, other, third), 2, LOSS);
        work.place(0, parts(work, new long[][] {{~0, 40}}), 0, strips);
        work.place(1, parts(work, new long[][] {{0, 40}}), 0, strips);
        work.place(2, parts(work, new long[][] {{~1, 40}}), 0, strips);

        assertThat(work.kindred(0, 1)).isTrue();
        assertThat(work.kindred(0, 2)).isFalse();
        assertThat(work.share(work, 0, 1)).isTrue();
        assertThat(work.share(work, 0, 2)).isFalse();
    }

    @Test
    void a_copy_is_the_same_and_stays_so() {
        FixedStrips strips = FixedStrips.of(70, 40);
        List<WantedBar> bars = List.of(bar(100, 5, 20), bar(300, 5, 20));
        Piecework work = new Piecework(bars, 2, LOSS);
        Piecework copy = new Piecework(bars, 2, LOSS);
        work.place(0, parts(work, new long[][] {{~0, 70}, {~1, 40}}), 0, strips);

        copy.copy(work);
        work.remove(0, strips);

        assertThat(copy.pieced(0)).isTrue();
        assertThat(copy.joins()).isEqualTo(1);
        assertThat(copy.missing()).isEqualTo(1);
        assertThat(copy.missingLength()).isEqualTo(300);
        assertThat(copy.used()).containsExactly(70, 40);
        assertThat(copy.parts(0)).isEqualTo(2);
        assertThat(copy.strip(0, 1)).isEqualTo(1);
        assertThat(copy.cut(0, 1)).isEqualTo(40);
    }

    @Test
    void each_bar_has_its_own_parts() {
        FixedStrips strips = FixedStrips.of(60, 50, 40, 30);
        Piecework work = new Piecework(List.of(bar(100, 5, 20), bar(60, 5, 20)), 4, LOSS);
        work.place(1, parts(work, new long[][] {{~2, 40}, {~3, 30}}), 0, strips);
        work.place(0, parts(work, new long[][] {{~0, 60}, {~1, 50}}), 0, strips);

        assertThat(List.of(work.cut(0, 0), work.cut(0, 1), work.cut(1, 0), work.cut(1, 1)))
                .containsExactly(60L, 50L, 40L, 30L);
        assertThat(List.of(work.strip(0, 0), work.strip(0, 1), work.strip(1, 0), work.strip(1, 1)))
                .containsExactly(0, 1, 2, 3);
        assertThat(work.share(work, 0, 1)).isFalse();
        work.remove(1, strips);
        assertThat(work.used()).containsExactly(60, 50, 0, 0);
    }

    @Test
    void parts_are_copied_by_value() {
        BarParts parts = new BarParts(3);
        parts.add(4, 50, 60);
        parts.add(~2, 30, 31);
        BarParts copy = new BarParts(3);

        copy.copy(parts);
        parts.count = 0;
        parts.add(9, 9, 9);

        assertThat(copy.count()).isEqualTo(2);
        assertThat(copy.source).startsWith(4, ~2);
        assertThat(copy.cut).startsWith(50, 30);
        assertThat(copy.most).startsWith(60, 31);
    }
}
