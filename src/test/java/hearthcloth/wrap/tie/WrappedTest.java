package hearthcloth.wrap.tie;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class WrappedTest {

    /** One gift for each kind, in every tie that suits it. */
    static Stream<Arguments> gifts() {
        return Stream.of(
                        "box 30 x 20 x 8 cm",
                        "bottle 8 x 30 cm",
                        "two bottles 8 x 30 cm",
                        "ball 22 cm",
                        "books 21 x 15 x 2 cm",
                        "roll 6 x 40 cm")
                .map(text -> Gift.parse(text, Unit.CENTIMETRE))
                .flatMap(gift -> Tie.suiting(gift).stream().map(tie -> Arguments.of(gift, tie)));
    }

    private static Cloth square(Length side) {
        return new Cloth(new Patch(new Place.Hearth(), "Kelp", Size.square(side), Showing.SAME), Making.metric());
    }

    @ParameterizedTest
    @MethodSource("gifts")
    void a_few_millimetres_under_the_least_leave_the_picture_and_are_told(Gift gift, Tie tie) {
        Wrapped wrapped = Wrapped.of(gift, tie, Tail.METRIC);
        Length least = tie.smallestSquare(gift, Tail.METRIC.usual());
        for (long under : new long[] {1, 4, 9}) {
            Cloth cloth = square(least.minus(Length.mm(under)));
            assertThat(wrapped.fold(cloth)).as(under + " mm under").isPresent();
            assertThat(wrapped.sentence(cloth.finished(), Voice.english(Ruler.MILLIMETRES)))
                    .containsPattern("It still ties: .* is left|It does tie round");
        }
        assertThat(wrapped.fold(square(least))).isPresent();
        assertThat(wrapped.fold(square(least.dividedBy(2, hearthcloth.measure.Rounding.DOWN))))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("gifts")
    void ends_that_are_left_shorter_are_those_that_make_the_cloth_the_least(Gift gift, Tie tie) {
        Length least = tie.smallestSquare(gift, Tail.METRIC.usual());
        Length side = least.minus(Length.mm(4));
        Length tail = Wrapped.of(gift, tie, Tail.METRIC).fit(square(side)).tail();
        if (tail.isLessThan(Tail.METRIC.usual())) {
            assertThat(tie.smallestSquare(gift, tail).minus(side).nm()).isBetween(-100L, 100L);
        }
    }
}
