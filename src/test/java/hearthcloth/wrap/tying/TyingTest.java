package hearthcloth.wrap.tying;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Ruler;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.TyingMoment;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TyingTest {

    private static final List<Gift> GIFTS = Stream.of(
                    "box 30 x 20 x 8 cm",
                    "bottle 8 x 30 cm",
                    "two bottles 8 x 30 cm",
                    "ball 22 cm",
                    "books 21 x 15 x 2 cm",
                    "roll 6 x 38 cm")
            .map(written -> Gift.parse(written, null))
            .toList();

    /** Steps begin with the open cloth; each has its picture, in the order they come; cautions are never left out. */
    @ParameterizedTest
    @EnumSource(Tie.class)
    void every_tie_is_told_from_the_open_cloth_to_the_end(Tie tie) {
        for (Gift gift : GIFTS.stream().filter(tie::suits).toList()) {
            Tying tying = Tying.of(tie, gift, Voice.english(Ruler.MILLIMETRES).tying());
            assertThat(tying.steps()).hasSizeBetween(4, 6);
            List<TyingMoment> drawn =
                    tying.steps().stream().map(Tying.Step::moment).toList();
            assertThat(drawn)
                    .containsExactlyElementsOf(TyingMoment.of(tie, gift))
                    .contains(TyingMoment.TIED);
            assertThat(tying.steps())
                    .allMatch(step -> step.words().endsWith(".") && step.words().length() < 330);
            assertThat(tying.ifShort()).startsWith("If ");
            assertThat(tying.cautions()).hasSizeGreaterThanOrEqualTo(2);
            assertThat(String.join(" ", tying.cautions()).contains("children")).isEqualTo(tie.isKnotted());
        }
    }
}
