package hearthcloth.wrap.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The cloth half tied is the same cloth: nothing stretched, every bit there once. */
class MomentTest {

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

    record Step(Moment moment, Fold tied) {
        @Override
        public String toString() {
            return moment + " of " + tied.fit().tie() + ", " + tied.fit().gift();
        }
    }

    static Stream<Step> steps() {
        List<Step> steps = new ArrayList<>();
        for (Gift gift : GIFTS) {
            for (Tie tie : Tie.suiting(gift)) {
                Length side = tie.smallestSquare(gift, TAIL).times(21).dividedBy(20, Rounding.UP);
                Fold tied = Fold.of(tie.fit(gift, Size.square(side), TAIL));
                for (Moment moment : Moment.values()) {
                    if (moment.isDrawn(tie, gift)) {
                        steps.add(new Step(moment, tied));
                    }
                }
            }
        }
        return steps.stream();
    }

    @ParameterizedTest
    @MethodSource("steps")
    void a_moment_is_the_same_cloth(Step step) {
        Fold fold = step.moment.of(step.tied);
        Judge.isNeverStretched(fold);
        Judge.isEveryBitOfTheClothOnce(fold);
    }

    /** Between the first and the last picture each tie has another, but the two-knot wrap of a roll. */
    @Test
    void every_tie_is_drawn_on_the_way() {
        for (Gift gift : GIFTS) {
            for (Tie tie : Tie.suiting(gift)) {
                long drawn = Stream.of(Moment.values())
                        .filter(moment -> moment.isDrawn(tie, gift))
                        .count();
                assertThat(drawn)
                        .as(tie + " " + gift)
                        .isGreaterThanOrEqualTo(tie == Tie.TWO_KNOT && gift instanceof Gift.Roll ? 2 : 3);
            }
        }
    }

    @Test
    void a_moment_of_another_tie_is_refused() {
        Step step = steps().filter(one -> one.tied.fit().tie() == Tie.ROLL)
                .findFirst()
                .orElseThrow();
        assertThatThrownBy(() -> Moment.NEAR_OVER.of(step.tied)).isInstanceOf(IllegalArgumentException.class);
    }
}
