package hearthcloth.cutstock.join;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.join.JoinPlaces.Apart;
import hearthcloth.cutstock.join.JoinPlaces.Stretch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** {@link JoinPlaces}, one set of {@link JoinRules}, beside every order and place of a few short parts. */
class JoinPlacesTest {

    /** A neighbour that is pieced already: its cut lengths. */
    private record Neighbour(List<Long> cuts) implements JoinRules.Placed {
        @Override
        public int parts(int bar) {
            return bar == 1 ? cuts.size() : 0;
        }

        @Override
        public long cut(int bar, int part) {
            return cuts.get(part);
        }
    }

    private static final JoinRules.Placed NOBODY = new Neighbour(List.of());

    private static WantedBar bar(long length, long leastPart) {
        return new WantedBar(length, List.of(0), 9, leastPart);
    }

    private static JoinPlaces places(
            WantedBar bar, List<Stretch> forbidden, List<Apart> pairs, long loss, long offset) {
        return new JoinPlaces(List.of(bar, bar), List.of(forbidden, List.of()), pairs, loss, offset);
    }

    private static BarParts parts(long[][] cutAndMost) {
        BarParts parts = new BarParts(cutAndMost.length);
        for (int i = 0; i < cutAndMost.length; i++) {
            parts.add(i, cutAndMost[i][0], cutAndMost[i][1]);
        }
        return parts;
    }

    private static long[] cuts(BarParts parts) {
        return Arrays.copyOf(parts.cut, parts.count());
    }

    @Test
    void without_rules_every_join_lies_well() {
        BarParts parts = parts(new long[][] {{50, 50}, {60, 60}});

        assertThat(JoinRules.NONE.concerns(0)).isFalse();
        assertThat(JoinRules.NONE.arrange(0, parts, NOBODY)).isTrue();
        assertThat(cuts(parts)).containsExactly(50, 60);
    }

    @Test
    void only_bars_with_a_stretch_or_a_neighbour_are_concerned() {
        WantedBar bar = bar(100, 10);
        List<WantedBar> bars = List.of(bar, bar, bar, bar);
        List<List<Stretch>> forbidden = List.of(List.of(new Stretch(1, 2)), List.of(), List.of(), List.of());
        JoinPlaces places = new JoinPlaces(bars, forbidden, List.of(new Apart(1, 3, 0, 5)), 0, 0);
        // a bar in one piece has no join, and bar 2 no rule
        assertThat(places.arrange(0, parts(new long[][] {{100, 100}}), NOBODY)).isTrue();
        assertThat(places.arrange(2, parts(new long[][] {{1, 1}, {99, 99}}), NOBODY))
                .isTrue();

        assertThat(places.concerns(0)).isTrue();
        assertThat(places.concerns(1)).isTrue();
        assertThat(places.concerns(2)).isFalse();
        assertThat(places.concerns(3)).isTrue();
    }

    @Test
    void a_join_moves_to_the_nearer_end_of_the_stretch_it_lay_in() {
        // parts 50 and 60 of a bar of 100 with a loss of 10 and an offset of 4: the join lies at 46, 44 to 50 is
        // forbidden
        JoinPlaces places = places(bar(100, 10), List.of(new Stretch(44, 50)), List.of(), 10, 4);
        BarParts parts = parts(new long[][] {{50, 80}, {60, 90}});

        assertThat(places.arrange(0, parts, NOBODY)).isTrue();

        assertThat(cuts(parts)).containsExactly(54, 56);
    }

    @Test
    void a_join_at_the_end_of_a_stretch_stands_as_it_is() {
        JoinPlaces places = places(bar(100, 10), List.of(new Stretch(46, 50)), List.of(), 10, 4);
        BarParts parts = parts(new long[][] {{50, 80}, {60, 90}});

        assertThat(places.arrange(0, parts, NOBODY)).isTrue();

        assertThat(cuts(parts)).containsExactly(50, 60);
    }

    @Test
    void parts_that_have_nothing_to_spare_change_places() {
        JoinPlaces places = places(bar(100, 10), List.of(new Stretch(25, 35)), List.of(), 0, 0);
        BarParts parts = parts(new long[][] {{30, 30}, {70, 70}});

        assertThat(places.arrange(0, parts, NOBODY)).isTrue();

        assertThat(cuts(parts)).containsExactly(70, 30);
        assertThat(parts.source).containsExactly(1, 0);
        assertThat(parts.most).containsExactly(70, 30);
    }

    @Test
    void what_cannot_be_arranged_stays_as_it_was() {
        JoinPlaces places = places(bar(100, 10), List.of(new Stretch(5, 95)), List.of(), 0, 0);
        BarParts parts = parts(new long[][] {{30, 60}, {70, 80}});

        assertThat(places.arrange(0, parts, NOBODY)).isFalse();

        assertThat(cuts(parts)).containsExactly(30, 70);
        assertThat(parts.source).containsExactly(0, 1);
    }

    @Test
    void a_join_keeps_clear_of_a_neighbours_seen_from_either_side() {
        // the neighbour's join lies at 40; |p + 5 - 40| >= 8 or, the other way round, |40 + 5 - q| >= 8
        BarParts first = parts(new long[][] {{36, 90}, {64, 90}});
        BarParts second = parts(new long[][] {{41, 90}, {59, 90}});

        assertThat(places(bar(100, 10), List.of(), List.of(new Apart(0, 1, 5, 8)), 0, 0)
                        .arrange(0, first, new Neighbour(List.of(40L, 60L))))
                .isTrue();
        assertThat(places(bar(100, 10), List.of(), List.of(new Apart(1, 0, 5, 8)), 0, 0)
                        .arrange(0, second, new Neighbour(List.of(40L, 60L))))
                .isTrue();

        // 35 - 8 = 27 and 43 for the first, 37 and 53 for the second
        assertThat(cuts(first)).containsExactly(43, 57);
        assertThat(cuts(second)).containsExactly(53, 47);
    }

    /** The positions of joins by their definition. */
    private static List<Long> joins(BarParts parts, long loss, long offset) {
        List<Long> joins = new ArrayList<>();
        long sum = 0;
        for (int i = 0; i < parts.count() - 1; i++) {
            sum += parts.cut[i];
            joins.add(sum - i * loss - offset);
        }
        return joins;
    }

    private static boolean clear(long join, List<Stretch> forbidden) {
        return forbidden.stream().noneMatch(stretch -> stretch.from() < join && join < stretch.to());
    }

    /** Whether a bar of two parts can be arranged, by every order and every cut. */
    private static boolean possible(WantedBar bar, long[][] given, List<Stretch> forbidden, long loss, long offset) {
        for (int first = 0; first < 2; first++) {
            for (long cut = bar.leastPart(); cut <= given[first][1]; cut++) {
                long other = bar.length() + loss - cut;
                if (other >= bar.leastPart() && other <= given[1 - first][1] && clear(cut - offset, forbidden)) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void every_join_of_random_bars_lies_clear_and_a_single_one_wherever_it_can() {
        SplittableRandom chance = new SplittableRandom(10);
        int moved = 0;
        int refused = 0;
        for (int i = 0; i < 3_000; i++) {
            int count = 2 + chance.nextInt(3);
            long loss = chance.nextInt(3);
            long offset = chance.nextInt(2);
            long[][] given = new long[count][];
            long length = loss;
            for (int k = 0; k < count; k++) {
                long cut = 4L + chance.nextInt(8);
                given[k] = new long[] {cut, cut + chance.nextInt(5)};
                length += cut - loss;
            }
            List<Stretch> forbidden = new ArrayList<>();
            for (int k = 1 + chance.nextInt(3); k > 0; k--) {
                long from = chance.nextInt((int) length);
                forbidden.add(new Stretch(from, from + 1 + chance.nextInt(7)));
            }
            WantedBar bar = bar(length, 3);
            BarParts parts = parts(given);

            boolean arranged = places(bar, forbidden, List.of(), loss, offset).arrange(0, parts, NOBODY);

            String which = "case " + i + ": " + Arrays.deepToString(given) + forbidden;
            long sum = Arrays.stream(cuts(parts)).sum() - loss * (count - 1);
            assertThat(sum).as(which).isEqualTo(length);
            boolean[] seen = new boolean[count];
            for (int k = 0; k < count; k++) {
                int from = parts.source[k];
                assertThat(seen[from]).as(which).isFalse();
                seen[from] = true;
                assertThat(parts.most[k]).as(which).isEqualTo(given[from][1]);
                assertThat(parts.cut[k]).as(which).isBetween(3L, given[from][1]);
            }
            if (arranged) {
                moved += parts.cut[0] != given[0][0] ? 1 : 0;
                assertThat(joins(parts, loss, offset)).as(which).allMatch(join -> clear(join, forbidden));
            } else {
                refused++;
            }
            if (count == 2) {
                assertThat(arranged).as(which).isEqualTo(possible(bar, given, forbidden, loss, offset));
            }
        }
        assertThat(moved).isGreaterThan(300);
        assertThat(refused).isBetween(10, 900);
    }
}
