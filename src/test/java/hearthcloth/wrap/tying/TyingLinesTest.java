package hearthcloth.wrap.tying;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.tying.TyingWords;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.TyingMoment;
import hearthcloth.wrap.tie.TiedFold;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The words of each step, against the cloth that is drawn beside them. */
class TyingLinesTest {

    private static final TyingWords WORDS = Voice.english(Ruler.MILLIMETRES).tying();

    private static final Length TAIL = Length.cm(12);

    private static final List<Gift> GIFTS = Stream.of(
                    "box 30 x 20 x 8 cm",
                    "bottle 8 x 30 cm",
                    "two bottles 8 x 30 cm",
                    "ball 22 cm",
                    "books 21 x 15 x 2 cm",
                    "roll 6 x 38 cm")
            .map(written -> Gift.parse(written, null))
            .toList();

    /** A knot comes into the picture at the step that says to tie, and at no other. A handle ties tips of a knot undone. */
    @ParameterizedTest
    @EnumSource(Tie.class)
    void a_step_says_to_tie_where_the_picture_gets_a_knot(Tie tie) {
        for (Gift gift : GIFTS.stream().filter(tie::suits).toList()) {
            Length side = tie.smallestSquare(gift, TAIL).times(21).dividedBy(20, Rounding.UP);
            Fold tied = TiedFold.of(tie.fit(gift, Size.square(side), TAIL));
            int before = 0;
            for (Tying.Step line : new TyingLines(WORDS).of(tie, gift)) {
                int knots = TiedFold.at(line.moment(), tied).knots().size();
                boolean ties = line.words().matches("(?s).*\\b(Tie|tie (it|them))\\b.*");
                if (line.moment() != TyingMoment.HANDLE) {
                    assertThat(ties).as("%s: %s", tie, line.words()).isEqualTo(knots > before);
                }
                before = knots;
            }
            assertThat(before).as("%s", tie).isEqualTo(tied.knots().size());
        }
    }

    /** A corner that is named is one that the tie has: a diamond has no far left corner, and each is brought in once. */
    @ParameterizedTest
    @EnumSource(Tie.class)
    void every_tie_begins_with_laying_the_cloth_and_uses_all_four_corners(Tie tie) {
        for (Gift gift : GIFTS.stream().filter(tie::suits).toList()) {
            List<Tying.Step> lines = new TyingLines(WORDS).of(tie, gift);
            assertThat(lines.get(0).words()).startsWith("Lay the cloth ");
            assertThat(lines.get(0).moment()).isEqualTo(TyingMoment.LAID);
            String said = String.join(" ", lines.stream().map(Tying.Step::words).toList());
            assertThat(said).as("%s", tie).containsAnyOf("corner", "sides");
            if (tie != Tie.EDGE_ALONG_EDGE) {
                assertThat(said).as("%s", tie).contains("near", "far").doesNotContain("far left");
            }
        }
    }

    @Test
    void what_to_do_when_a_corner_is_short_names_a_tie_there_is() {
        assertThat(TyingLines.ifShort(Tie.FOUR_CORNER, WORDS)).contains("as in the " + Tie.TWO_KNOT.words());
        assertThat(TyingLines.ifShort(Tie.FLAT, WORDS)).contains("use the " + Tie.ERRAND.words());
        assertThat(Arrays.stream(Tie.values()).map(tie -> TyingLines.ifShort(tie, WORDS)))
                .allMatch(line -> line.startsWith("If "));
    }
}
