package hearthcloth.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Arithmetic of {@link Length} and {@link Size}, held to whole numbers and to real ones. */
class LengthTest {

    /** All pairs of lengths near zero and two far from it. */
    private static final List<Length> SOME = List.of(
            new Length(-3), new Length(-1), Length.ZERO, new Length(1), new Length(3), Length.inches(5), Length.cm(20));

    @Test
    void lengths_are_compared_as_their_nanometres_are() {
        for (Length one : SOME) {
            assertThat(one.isPositive()).isEqualTo(one.nm() > 0);
            assertThat(one.isNegative()).isEqualTo(one.nm() < 0);
            for (Length other : SOME) {
                assertThat(one.isMoreThan(other)).isEqualTo(one.nm() > other.nm());
                assertThat(one.isLessThan(other)).isEqualTo(one.nm() < other.nm());
                assertThat(one.max(other).nm()).isEqualTo(Math.max(one.nm(), other.nm()));
                assertThat(one.min(other).nm()).isEqualTo(Math.min(one.nm(), other.nm()));
                assertThat(one.compareTo(other)).isEqualTo(Long.compare(one.nm(), other.nm()));
                assertThat(one.plus(other).minus(other)).isEqualTo(one);
            }
        }
    }

    @Test
    void a_length_is_so_many_of_a_unit() {
        assertThat(Length.inches(5, 2).in(Unit.MILLIMETRE)).isEqualTo(63.5);
        assertThat(Length.cm(3).in(Unit.METRE)).isEqualTo(0.03);
        assertThat(Length.of(2, Unit.YARD)).isEqualTo(Length.inches(72));
        assertThat(Length.of(3, Unit.FOOT)).isEqualTo(Length.inches(36));
        assertThat(Length.inches(4)).hasToString("101.6 mm");
        assertThat(new Length(1)).hasToString("0.000001 mm");
        assertThat(Length.mm(7).times(3)).isEqualTo(Length.mm(21));
    }

    /** Seed 3: the quotient in each direction against the real number. */
    @Test
    void rounding_goes_to_the_whole_number_on_its_side() {
        Random chance = new Random(3);
        for (int i = 0; i < 2000; i++) {
            long value = chance.nextInt(2_000_001) - 1_000_000L;
            long step = 1L + chance.nextInt(900);
            double real = (double) value / step;
            assertThat(Rounding.UP.quotient(value, step)).isEqualTo((long) Math.ceil(real));
            assertThat(Rounding.DOWN.quotient(value, step)).isEqualTo((long) Math.floor(real));
            assertThat(Rounding.NEAREST.quotient(value, step)).isEqualTo((long) Math.floor(real + 0.5));
            assertThat(Rounding.UP.whole(real)).isEqualTo((long) Math.ceil(real));
            assertThat(Rounding.DOWN.whole(real)).isEqualTo((long) Math.floor(real));
            assertThat(Rounding.NEAREST.whole(real)).isEqualTo(Math.round(real));
            Length length = new Length(value);
            assertThat(length.dividedBy(step, Rounding.UP).nm()).isEqualTo((long) Math.ceil(real));
            assertThat(length.roundedTo(new Length(step), Rounding.DOWN).nm())
                    .isEqualTo((long) Math.floor(real) * step);
        }
    }

    @Test
    void a_size_holds_what_is_no_longer_either_way_without_turning() {
        Size size = new Size(Length.cm(20), Length.cm(30));
        for (int width = 19; width <= 21; width++) {
            for (int height = 29; height <= 31; height++) {
                assertThat(size.holds(new Size(Length.cm(width), Length.cm(height))))
                        .isEqualTo(width <= 20 && height <= 30);
            }
        }
        assertThat(size.holds(size.turned())).isFalse();
        assertThat(size.turned()).isEqualTo(new Size(Length.cm(30), Length.cm(20)));
        assertThat(size.isSquare()).isFalse();
        assertThat(Size.square(Length.cm(4)).isSquare()).isTrue();
        assertThat(size.areaMm2()).isCloseTo(60_000, within(1e-6));
        assertThat(size).hasToString("200 mm x 300 mm");
    }

    @Test
    void a_length_beyond_what_a_whole_number_holds_is_refused_and_not_wrapped() {
        assertThatThrownBy(() -> new Length(Long.MAX_VALUE).plus(new Length(1)))
                .isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Length.cm(Long.MAX_VALUE / 2)).isInstanceOf(ArithmeticException.class);
    }
}
