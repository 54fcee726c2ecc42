package hearthcloth.plan.ready;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.ChoiceTest;
import hearthcloth.plan.propose.HiddenCloth;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.plan.propose.Trials;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Bars of widths that the stash has, against every way of taking strips and cloths cut to pieces. */
class ReadyStripsTest {

    private static final Length LOSS = Length.inches(6, 8);

    private static long eighths(long count) {
        return Length.inches(count, 8).nm();
    }

    private static ReadyStrips strips(List<Piece> pieces) {
        return new ReadyStrips(pieces, Ruler.EIGHTHS, Length.inches(16, 8), Length.inches(64, 8), LOSS);
    }

    private static ReadyStrips of(long... lengths) {
        List<Piece> pieces = new ArrayList<>();
        for (long length : lengths) {
            pieces.add(Trials.piece(pieces.size() + 2, Trials.GREY, 32, length));
        }
        return strips(pieces);
    }

    private static void taken(ReadyStrips.Taken taken, double price, long used) {
        assertThat(taken.price()).isCloseTo(price, within(1e-9));
        assertThat(taken.used()).isEqualTo(used);
    }

    /** Strips of 80, 120 and 160 eighths, sorted by length; a join loses 6. Bits say which are used. */
    @Test
    void a_bar_takes_the_shortest_strip_that_is_long_enough_or_joins_two_or_more() {
        ReadyStrips strips = of(120, 80, 160);
        taken(strips.take(0, 0, eighths(120)), 0, 0b010);
        taken(strips.take(0, 0, eighths(100)), 0.2, 0b010);
        taken(strips.take(0, 0b010, eighths(100)), 0.2, 0b110);
        // 80 + 120 − 6 = 194 just so; 190 with a cut
        taken(strips.take(0, 0, eighths(194)), 1, 0b011);
        taken(strips.take(0, 0, eighths(190)), 1.2, 0b011);
        // 160 + 120 + 80 − 12 = 348
        taken(strips.take(0, 0, eighths(348)), 2, 0b111);
        taken(strips.take(0, 0, eighths(340)), 2.2, 0b111);
        assertThat(strips.take(0, 0, eighths(349)).price()).isInfinite();
        assertThat(strips.take(0, 0b111, eighths(20)).price()).isInfinite();
    }

    @Test
    void something_wider_may_be_ripped_at_the_price_of_two_cuts() {
        List<Piece> pieces = List.of(
                Trials.piece(2, Trials.GREY, 32, 40),
                Trials.piece(3, Trials.GREY, 32, 40),
                Trials.piece(4, Trials.GREY, 200, 300));
        ReadyStrips strips = strips(pieces);
        int narrow = strips.widths().indexOf(Length.inches(4));
        // too long for both strips together: 300 from the wide one without a join
        taken(strips.take(narrow, 0, eighths(250)), 0.4, 0);
        // 294 gained by each part after the first
        taken(strips.take(narrow, 0, eighths(301)), 1.4, 0);
    }

    @Test
    void for_pairs_no_other_two_are_cheaper() {
        Random random = new Random(8);
        for (int i = 0; i < 300; i++) {
            long[] lengths = random.longs(6, 40, 200).sorted().toArray();
            long used = random.nextInt(64);
            long length = 200L + random.nextInt(150);
            ReadyStrips.Taken taken = of(lengths).take(0, used, eighths(length));
            long least = Long.MAX_VALUE;
            for (int a = 0; a < 6; a++) {
                for (int b = a + 1; b < 6; b++) {
                    boolean free = (used & (1L << a)) == 0 && (used & (1L << b)) == 0;
                    long both = lengths[a] + lengths[b] - 6;
                    if (free && both >= length) {
                        least = Math.min(least, both);
                    }
                }
            }
            if (least < Long.MAX_VALUE) {
                assertThat(taken.price()).isCloseTo(least == length ? 1 : 1.2, within(1e-9));
            } else {
                assertThat(taken.price()).isGreaterThanOrEqualTo(2);
            }
            assertThat(taken.used() & used).isEqualTo(used);
        }
    }

    @Test
    void widths_come_with_most_length_first_rounded_down_and_within_their_limits() {
        Piece odd = Stashes.piece(9, Trials.GREY, new Size(Length.mm(51), Length.inches(30)));
        ReadyStrips strips = strips(List.of(
                Trials.piece(2, Trials.GREY, 32, 100),
                Trials.piece(3, Trials.GREY, 120, 32),
                odd,
                Trials.piece(5, Trials.GREY, 15, 500),
                Trials.piece(6, Trials.GREY, 65, 500),
                Trials.piece(7, Trials.GREY, 64, 70)));
        // 240 of 2 in (51 mm), 220 of 4 in, 70 of 8 in
        assertThat(strips.widths()).containsExactly(Length.inches(2), Length.inches(4), Length.inches(8));
    }

    private static final Making MAKING = Making.inches();

    private static Wish wish() {
        return ChoiceTest.wish(Optional.empty());
    }

    /** Seed 7. What was cut to pieces is found again, or something as easy: a hundredth for each bar and no join. */
    @Test
    void a_cloth_cut_to_pieces_is_among_the_easiest_and_every_one_is_of_widths_there_are() {
        Random random = new Random(7);
        int easy = 0;
        for (int i = 0; i < 8; i++) {
            Order order = i % 2 == 0 ? Order.ROUND : Order.PAIRS;
            HiddenCloth hidden = HiddenCloth.of(random, order, HiddenCloth.Widths.BY_ROUND);
            List<Piece> pieces = hidden.stash().pieces();
            ReadyStrips strips = new ReadyStrips(
                    pieces,
                    Ruler.EIGHTHS,
                    Length.inches(2),
                    Length.inches(8),
                    MAKING.seam().loss());
            ReadyWidths ready = new ReadyWidths(
                    strips,
                    MAKING,
                    size -> pieces.stream()
                            .anyMatch(piece -> piece.size().holds(size)
                                    || piece.size().turned().holds(size)),
                    Length.inches(1));
            List<ReadyWidths.Found> found = ready.of(hidden.finished(), order, List.of(2, 3, 4));

            assertThat(found).isNotEmpty().hasSizeLessThanOrEqualTo(12);
            double before = 0;
            for (ReadyWidths.Found one : found) {
                assertThat(one.layout().finished()).isEqualTo(hidden.finished());
                assertThat(LayoutCandidate.isWell(one.layout().hearth(), hidden.finished()))
                        .isTrue();
                assertThat(strips.widths()).containsAll(one.cut());
                List<Layout.Course> cut = new ArrayList<>();
                for (int bar = 0; bar < one.cut().size(); bar++) {
                    cut.add(new Layout.Course(
                            one.layout().courses().get(bar).side(), one.cut().get(bar)));
                }
                assertThat(Layout.finishedOfCut(cut, MAKING))
                        .isEqualTo(one.layout().courses());
                assertThat(one.cut()).hasSize(4 * one.rounds());
                assertThat(one.ease()).isGreaterThanOrEqualTo(before);
                before = one.ease();
            }
            easy += found.get(0).ease() < 0.01 * found.get(0).cut().size() + 1e-9 ? 1 : 0;
        }
        assertThat(easy).isGreaterThanOrEqualTo(6);
    }

    @Test
    void a_hearth_that_no_piece_holds_makes_no_cloth() {
        HiddenCloth hidden = HiddenCloth.of(new Random(7), Order.ROUND, HiddenCloth.Widths.BY_ROUND);
        ReadyStrips strips = strips(hidden.stash().pieces());
        ReadyWidths none = new ReadyWidths(strips, MAKING, size -> false, Length.inches(1));
        assertThat(none.of(hidden.finished(), Order.ROUND, List.of(2, 3, 4))).isEmpty();
        ReadyWidths wide = new ReadyWidths(strips, MAKING, size -> true, Length.inches(40));
        assertThat(wide.of(hidden.finished(), Order.ROUND, List.of(2, 3, 4))).isEmpty();
    }

    @Test
    void what_was_chosen_is_told_with_each_layout() {
        HiddenCloth hidden = HiddenCloth.of(new Random(7), Order.ROUND, HiddenCloth.Widths.BY_ROUND);
        ReadyLayouts layouts = new ReadyLayouts(wish(), hidden.stash().pieces(), Length.inches(1));

        assertThat(layouts.widths()).isNotEmpty().hasSizeLessThanOrEqualTo(8);
        List<LayoutCandidate> found = layouts.of(hidden.finished(), Order.ROUND, List.of(2, 3, 4));
        assertThat(found).isNotEmpty();
        for (LayoutCandidate one : found) {
            assertThat(one.ease()).isPresent();
            assertThat(one.finished()).isEqualTo(hidden.finished());
            assertThat(one.chosen()).hasSize(4);
            assertThat(one.chosen().get(0)).hasToString("The order: round the square.");
            assertThat(one.chosen().get(1))
                    .asString()
                    .matches(
                            "(Bars cut .* in wide, the widths of pieces you have\\."
                                    + "|Bar widths as cut, the widths of pieces you have: round 1: .* in; round 2: .* in.*\\.)");
            assertThat(one.chosen().get(2)).hasToString(one.rounds() + " rounds.");
            Size hearth = Layout.hearthEdges(one.layout().courses(), MAKING)
                    .around(one.layout().hearth());
            assertThat(one.chosen().get(3))
                    .hasToString(
                            "The hearth is cut " + Ruler.EIGHTHS.write(hearth, hearthcloth.measure.Rounding.UP) + ".");
            assertThat(hidden.stash().pieces())
                    .anyMatch(piece ->
                            piece.size().holds(hearth) || piece.size().turned().holds(hearth));
        }
    }
}
