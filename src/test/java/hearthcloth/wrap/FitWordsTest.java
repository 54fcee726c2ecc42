package hearthcloth.wrap;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.words.speech.Voice;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is said of a size beside a gift. */
class FitWordsTest {

    private static final Voice METRIC = Voice.english(Ruler.MILLIMETRES);
    private static final Length TAIL = Length.cm(12);
    private static final Gift BOX = Gift.parse("box 30 x 20 x 8 cm", null);

    private static String said(Tie tie, Length side) {
        return tie.fit(BOX, Size.square(side), TAIL).sentence(METRIC);
    }

    /** 70.8 cm is the least with ends of 12 cm: √2 (30 + 8 + 12) is 70.71; 75 cm has 75/√2 − 50 = 3.03 cm more at a corner. */
    @Test
    void a_cloth_just_large_enough_and_one_with_more() {
        assertThat(said(Tie.FOUR_CORNER, Length.mm(708)))
                .isEqualTo("This cloth is just large enough for a box 30 × 20 × 8 cm with the four-corner tie."
                        + " It leaves 12 cm at each knotted corner for the knot and its end.");
        assertThat(said(Tie.FOUR_CORNER, Length.cm(75)))
                .startsWith("This cloth ties round a box 30 × 20 × 8 cm with the four-corner tie, with 3 cm more")
                .endsWith("Sewn 4.2 cm smaller, it would still do.");
    }

    /** Without a knot: left and right need 30 + 8 + 5, so √2 · 43 = 60.81 cm. */
    @Test
    void a_wrap_without_a_knot_has_no_ends() {
        assertThat(said(Tie.FLAT, Length.mm(609)))
                .isEqualTo("This cloth is just large enough for a box 30 × 20 × 8 cm with the flat wrap.");
        assertThat(said(Tie.FLAT, Length.cm(65)))
                .startsWith("This cloth wraps a box 30 × 20 × 8 cm with the flat wrap, with 2.9 cm more");
    }

    @Test
    void the_rule_of_thumb_beside_what_the_tie_needs() {
        PublishedRule rule = PublishedRule.DIAGONAL_THREE_TIMES_THE_LONGEST_SIDE;
        assertThat(rule.sentence(BOX, Tie.FOUR_CORNER, TAIL, METRIC)).endsWith("× 8 cm, because it is tall.");
        Gift low = Gift.parse("box 30 x 20 x 7.5 cm", null);
        assertThat(rule.sentence(low, Tie.FOUR_CORNER, TAIL, METRIC)).endsWith("too small for a box 30 × 20 × 7.5 cm.");
        Gift ball = Gift.parse("ball 6 cm", null);
        assertThat(rule.sentence(ball, Tie.ROUND, TAIL, METRIC)).doesNotContain("tall");
    }

    @Test
    void ready_made_sizes_that_do_and_that_do_not() {
        assertThat(TradeFit.sentence(TradeFit.of(Tie.FOUR_CORNER, BOX, TAIL), METRIC))
                .isEqualTo("Ready-made sizes that are large enough: 75 cm, 90 cm, 100 cm, 118 cm."
                        + " Too small: 45 cm, 50 cm, 53 cm, 68 cm.");
        Gift tiny = Gift.parse("box 6 x 6 x 5 cm", null);
        assertThat(TradeFit.sentence(TradeFit.of(Tie.FOUR_CORNER, tiny, TAIL), METRIC))
                .startsWith("Ready-made sizes that are large enough: 45 cm")
                .doesNotContain("Too small");
        Gift huge = Gift.parse("box 150 x 90 x 60 cm", null);
        assertThat(TradeFit.sentence(TradeFit.of(Tie.FOUR_CORNER, huge, TAIL), METRIC))
                .startsWith("Every ready-made size for gifts is too small here: 45 cm");
    }

    @Test
    void what_is_planned_larger_is_said_and_nothing_where_nothing_is() {
        assertThat(new Slack(Length.mm(12)).sentence(METRIC))
                .isEqualTo("It is planned 1.2 cm larger than the least, for what sewing may take.");
        assertThat(Slack.NONE.sentence(METRIC)).isEmpty();
    }

    /** With ends of 8 and 16 cm: √2 · 46 and √2 · 54. */
    @Test
    void how_unsure_a_size_is_in_either_unit() {
        assertThat(Tail.METRIC.doubt(Tie.FOUR_CORNER, BOX, METRIC))
                .contains("take 8 cm of each corner, a square of 65.1 cm")
                .contains("take 16 cm, you need 76.4 cm")
                .contains("allows 12 cm")
                .contains("about 3.5 cm");
        assertThat(Tail.INCHES.doubt(Tie.FOUR_CORNER, BOX, Voice.english(Ruler.EIGHTHS)))
                .contains("about 1⅜ in");
    }

    /** A cube in 75 cm with the four-corner tie: 2 a + 12 = 75/√2, so 20.5 cm. */
    @Test
    void what_a_cloth_can_tie_is_told_for_each_tie() {
        Size cloth = Size.square(Length.cm(75));
        List<Capacity> four = Capacity.of(Tie.FOUR_CORNER, cloth, TAIL).toList();
        assertThat(four)
                .extracting(one -> one.shape(METRIC))
                .containsExactly("a box 3 : 2 : 0.8, like a cake box", "a cube");
        Optional<Gift> cube = four.get(1).largest().flatMap(gift -> gift.onMarks(Ruler.MILLIMETRES));
        assertThat(cube).map(gift -> gift.describe(METRIC)).contains("a box 20.5 × 20.5 × 20.5 cm");
        assertThat(Capacity.of(cloth, TAIL)).extracting(Capacity::tie).contains(Tie.values());
    }

    @Test
    void a_gift_too_small_for_a_mark_of_the_ruler_is_none() {
        Gift.Roll thin = new Gift.Roll(Gift.SHORTEST, Gift.SHORTEST.plus(Length.mm(3)));
        assertThat(thin.onMarks(Ruler.EIGHTHS)).isPresent();
        assertThat(new Gift.Round(Gift.SHORTEST).onMarks(Ruler.EIGHTHS)).isEmpty();
    }
}
