package hearthcloth.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Held to the functions of the class library, which are within one unit in the last place of the true value. */
class ElementaryTest {

    private static final int TRIES = 20_000;

    private static void within(
            int units, double from, double to, DoubleUnaryOperator ours, DoubleUnaryOperator theirs) {
        SplittableRandom chance = new SplittableRandom(1);
        for (int i = 0; i < TRIES; i++) {
            double x = chance.nextDouble(from, to);
            double expected = theirs.applyAsDouble(x);
            assertThat(Math.abs(ours.applyAsDouble(x) - expected))
                    .as("at %s", x)
                    .isLessThanOrEqualTo(units * Math.ulp(expected));
        }
    }

    private static void within(
            int units, double from, double to, DoubleBinaryOperator ours, DoubleBinaryOperator theirs) {
        SplittableRandom chance = new SplittableRandom(2);
        for (int i = 0; i < TRIES; i++) {
            double x = chance.nextDouble(from, to);
            double y = chance.nextDouble(from, to);
            double expected = theirs.applyAsDouble(x, y);
            assertThat(Math.abs(ours.applyAsDouble(x, y) - expected))
                    .as("at %s, %s", x, y)
                    .isLessThanOrEqualTo(units * Math.ulp(expected));
        }
    }

    @Test
    void logarithms_powers_and_roots_are_those_of_the_class_library() {
        within(2, 1e-12, 1, Elementary::log, StrictMath::log);
        within(2, 1, 1e9, Elementary::log, StrictMath::log);
        within(2, -40, 40, Elementary::exp, StrictMath::exp);
        within(2, -2, 2, Elementary::cbrt, StrictMath::cbrt);
        within(2, -1e9, 1e9, Elementary::hypot, StrictMath::hypot);
        within(16, 0.05, 1, (x, y) -> Elementary.pow(x, 2.4 * y), (x, y) -> StrictMath.pow(x, 2.4 * y));
    }

    @Test
    void angles_are_those_of_the_class_library() {
        within(4, -0.7, 0.7, Elementary::sin, StrictMath::sin);
        within(4, -0.7, 0.7, Elementary::cos, StrictMath::cos);
        within(4, -20, 20, Elementary::atan, StrictMath::atan);
        within(4, -3, 3, Elementary::atan2, StrictMath::atan2);
        within(4, -0.9, 0.9, Elementary::acos, StrictMath::acos);
        SplittableRandom chance = new SplittableRandom(3);
        for (int i = 0; i < TRIES; i++) {
            double angle = chance.nextDouble(-100, 100);
            assertThat(Math.abs(Elementary.sin(angle) - StrictMath.sin(angle))).isLessThan(1e-15);
            assertThat(Math.abs(Elementary.cos(angle) - StrictMath.cos(angle))).isLessThan(1e-15);
        }
    }

    @Test
    void what_is_round_stays_round() {
        assertThat(Elementary.log(1)).isEqualTo(0);
        assertThat(Elementary.log(0)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(Elementary.log(-1)).isNaN();
        assertThat(Elementary.exp(0)).isEqualTo(1);
        assertThat(Elementary.exp(1000)).isInfinite();
        assertThat(Elementary.exp(-1000)).isEqualTo(0);
        assertThat(Elementary.pow(0, 2)).isEqualTo(0);
        assertThat(Elementary.pow(7, 0)).isEqualTo(1);
        assertThat(Elementary.cbrt(27)).isEqualTo(3);
        assertThat(Elementary.cbrt(-8)).isEqualTo(-2);
        assertThat(Elementary.cbrt(0)).isEqualTo(0);
        assertThat(Elementary.hypot(3, 4)).isEqualTo(5);
        assertThat(Elementary.sin(0)).isEqualTo(0);
        assertThat(Elementary.cos(0)).isEqualTo(1);
        assertThat(Elementary.tan(Math.PI / 4)).isCloseTo(1, org.assertj.core.data.Offset.offset(1e-15));
        assertThat(Elementary.atan2(0, 1)).isEqualTo(0);
        assertThat(Elementary.atan2(0, 0)).isEqualTo(0);
        assertThat(Elementary.atan2(0, -1)).isEqualTo(Math.PI);
        assertThat(Elementary.atan2(2, 0)).isEqualTo(Math.PI / 2);
        assertThat(Elementary.atan2(-2, 0)).isEqualTo(-Math.PI / 2);
        assertThat(Elementary.atan2(1, 1)).isEqualTo(Math.PI / 4);
        assertThat(Elementary.atan2(1, -1)).isEqualTo(3 * Math.PI / 4);
        assertThat(Elementary.acos(1)).isEqualTo(0);
        assertThat(Elementary.acos(-1)).isEqualTo(Math.PI);
    }
}
