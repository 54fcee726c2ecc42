package hearthcloth.wrap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each way that a corner goes over a gift, in millimetres worked out by hand from the formula at each demand. */
class PathsTest {

    private static final Length TAIL = Length.mm(120);

    private static void assertPaths(List<Demand> demands, double... paths) {
        assertThat(demands).hasSize(paths.length);
        for (int i = 0; i < paths.length; i++) {
            assertThat(demands.get(i).path())
                    .as(demands.get(i).reach().toString())
                    .isCloseTo(paths[i], within(0.001));
        }
    }

    /** r 50, mouth 20, shoulder 260, height 300: taut is 50; up 360; round 50 + √(130² + 235.6194²). */
    @Test
    void up_and_round_a_bottle() {
        Gift bottle = new Gift.Bottle(Length.mm(100), Length.mm(300), Length.mm(40), Length.mm(260));
        assertPaths(
                Tie.ONE_BOTTLE.demands(bottle, TAIL),
                380,
                380,
                319.1032,
                319.1032,
                360 * Math.sqrt(2),
                360 + 1.58 * 50);
    }

    /** Two of it: they start 100 from the middle. Shoulder and half a round, 417.0796; for a low shoulder the mouth, 362.8319. */
    @Test
    void along_two_bottles_and_round_what_is_longer() {
        Gift.Bottle high = new Gift.Bottle(Length.mm(100), Length.mm(300), Length.mm(40), Length.mm(260));
        Gift.Bottle low = new Gift.Bottle(Length.mm(100), Length.mm(300), Length.mm(40), Length.mm(150));
        assertPaths(Tie.TWO_BOTTLES.demands(new Gift.TwoBottles(high), TAIL), 450, 450, 517.0796);
        assertPaths(Tie.TWO_BOTTLES.demands(new Gift.TwoBottles(low), TAIL), 450, 450, 462.8319);
    }

    @Test
    void under_and_between_two_books() {
        Gift books = new Gift.Books(Length.mm(210), Length.mm(150), Length.mm(25));
        List<Demand> demands = Tie.BOOKS.demands(books, TAIL);
        assertPaths(demands, 445, 445, 350, 350, 305);
        assertThat(demands.stream().map(Demand::spare)).containsExactly(120.0, 120.0, 20.0, 20.0, 0.0);
    }

    /** r 30, 500 long: all four ends are equal, (500 + 60 + 94.2478)/2. A stout one does not turn along itself at all. */
    @Test
    void two_knots_on_a_long_roll_and_on_a_stout_one() {
        Gift thin = new Gift.Roll(Length.mm(60), Length.mm(500));
        assertPaths(Tie.TWO_KNOT.demands(thin, TAIL), 327.1239, 327.1239, 327.1239, 327.1239, 374.2478);
        Gift stout = new Gift.Roll(Length.mm(200), Length.mm(20));
        assertPaths(Tie.TWO_KNOT.demands(stout, TAIL), 220, 220, 314.1593, 314.1593, 424.1593);
    }

    /** 1000/2 − 100 − 300 is 100, exactly what is asked for. */
    @Test
    void what_is_just_met_is_met() {
        Spread cloth = Spread.of(Size.square(Length.mm(1000)), Placing.CENTRED);
        Reach lid = new Reach.Lid(100, 200);
        assertThat(new Demand(Reason.COVER, lid, 300, 100).isMet(cloth)).isTrue();
        assertThat(new Demand(Reason.COVER, lid, 300, 100.001).isMet(cloth)).isFalse();
    }

    @Test
    void quarter_turns_add_up() {
        Placing placing = Placing.CENTRED.turned(3).turned(2);
        assertThat(placing.quarterTurns()).isEqualTo(1);
        assertThat(placing.turned(-2).quarterTurns()).isEqualTo(3);
    }

    @Test
    void an_oblong_cloth_keeps_its_proportions() {
        Gift box = Gift.parse("box 30 x 20 x 8 cm", null);
        Size oblong = Tie.FOUR_CORNER.smallest(box, TAIL, new Size(Length.mm(200), Length.mm(300)), Placing.CENTRED);
        assertThat(2.0 * oblong.height().nm() / oblong.width().nm()).isCloseTo(3, within(1e-8));
    }

    @Test
    void each_gift_has_the_ties_made_for_it() {
        assertThat(Tie.suiting(Gift.parse("box 30 x 20 x 8 cm", null)))
                .containsExactly(Tie.FOUR_CORNER, Tie.EDGE_ALONG_EDGE, Tie.ERRAND, Tie.FLAT, Tie.TWO_KNOT);
        assertThat(Tie.suiting(Gift.parse("bottle 8 x 30 cm", null))).containsExactly(Tie.ONE_BOTTLE);
        assertThat(Tie.suiting(Gift.parse("two bottles 8 x 30 cm", null))).containsExactly(Tie.TWO_BOTTLES);
        assertThat(Tie.suiting(Gift.parse("ball 20 cm", null))).containsExactly(Tie.ROUND);
        assertThat(Tie.suiting(Gift.parse("books 21 x 15 x 2 cm", null))).containsExactly(Tie.BOOKS);
        assertThat(Tie.suiting(Gift.parse("roll 6 x 40 cm", null))).containsExactly(Tie.TWO_KNOT, Tie.ROLL);
        assertThat(Tie.FLAT.isKnotted()).isFalse();
        assertThat(Tie.ROLL.isKnotted()).isTrue();
        assertThat(Tie.ERRAND.trade()).isEqualTo("otsukai-tsutsumi");
        assertThat(TradeSize.FUTAHABA.trade()).isEqualTo("futahaba");
    }

    /** The ends that a cloth between the two sizes has are those with which it is just the smallest. */
    @Test
    void ends_are_as_long_as_the_cloth_has_them() {
        Gift box = Gift.parse("box 30 x 20 x 8 cm", null);
        Tail tail = Tail.METRIC;
        Length side = Tie.FOUR_CORNER.smallestSquare(box, Length.cm(10));
        Fit between = Tie.FOUR_CORNER.fit(box, Size.square(side), tail, Placing.CENTRED);
        assertThat(between.holds()).isTrue();
        assertThat(between.tail().minus(Length.cm(10)).nm()).isBetween(-1L, 20L);
        Size large = Size.square(Tie.FOUR_CORNER.smallestSquare(box, tail.usual()));
        assertThat(Tie.FOUR_CORNER.fit(box, large, tail, Placing.CENTRED).tail())
                .isEqualTo(tail.usual());
        Size small = Size.square(Tie.FOUR_CORNER.smallestSquare(box, Length.cm(7)));
        Fit none = Tie.FOUR_CORNER.fit(box, small, tail, Placing.CENTRED);
        assertThat(none.holds()).isFalse();
        assertThat(none.tail()).isEqualTo(tail.usual());
    }
}
