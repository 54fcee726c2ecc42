package hearthcloth.wrap;

import static hearthcloth.wrap.CheckedTie.cm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What holds of every {@link Tie} and gift. */
class TieLawsTest {

    private static final Length TAIL = Length.cm(12);

    /** Laws, 4 000 seeded gifts: the size found ties the gift, and its inverse is no smaller; a hair less does not. */
    @Test
    void size_and_gift_are_inverse_of_each_other() {
        Random chance = new Random(20261125);
        for (int i = 0; i < 4000; i++) {
            Gift gift = some(chance);
            Length tail = Length.mm(chance.nextInt(200));
            for (Tie tie : Tie.suiting(gift)) {
                Length side = tie.smallestSquare(gift, tail);
                assertThat(tie.fit(gift, Size.square(side), tail).holds()).isTrue();
                Length less = side.minus(new Length(10));
                assertThat(tie.fit(gift, Size.square(less), tail).holds()).isFalse();
                if (i % 40 == 0) {
                    Gift back = tie.largest(gift, Size.square(side), tail).orElseThrow();
                    assertThat(back.leading()).isGreaterThanOrEqualTo(gift.leading());
                    Size same = tie.smallest(gift, tail, Size.square(Length.mm(1)), Placing.CENTRED);
                    assertThat(same.width().minus(side).nm()).isBetween(-1L, 1L);
                }
            }
        }
    }

    /** Laws: a larger gift or a longer tail never needs less cloth; bare cover never needs more than the tie. */
    @Test
    void more_gift_or_more_tail_never_needs_less_cloth() {
        Random chance = new Random(4711);
        for (int i = 0; i < 3000; i++) {
            Gift gift = some(chance);
            Gift larger = gift.like(gift.leading().plus(Length.mm(1 + chance.nextInt(20))));
            Length tail = Length.mm(chance.nextInt(200));
            for (Tie tie : Tie.suiting(gift)) {
                Length side = tie.smallestSquare(gift, tail);
                assertThat(tie.smallestSquare(larger, tail)).isGreaterThan(side);
                assertThat(tie.smallestSquare(gift, tail.plus(Length.mm(7)))).isGreaterThanOrEqualTo(side);
            }
        }
    }

    /** Saved by the two-knot wrap on the four-corner tie: (l − w)/√2 of the side (both derivations). */
    @Test
    void the_two_knot_wrap_saves_half_the_difference_of_the_sides() {
        Gift box = Gift.parse("box 60 x 12 x 12 cm", null);
        double saved = cm(Tie.FOUR_CORNER.smallestSquare(box, TAIL)) - cm(Tie.TWO_KNOT.smallestSquare(box, TAIL));
        assertThat(saved).isCloseTo(48 / Math.sqrt(2), within(1e-6));
    }

    private static Gift some(Random chance) {
        Length a = new Length(30_000_000L + chance.nextInt(500_000_000));
        Length b = new Length(30_000_000L + chance.nextInt(500_000_000));
        Length c = new Length(5_000_000L + chance.nextInt(300_000_000));
        return switch (chance.nextInt(6)) {
            case 0 -> new Gift.Box(a, b, c);
            case 1 -> Gift.Bottle.of(a.min(b), a.max(b));
            case 2 -> new Gift.TwoBottles(Gift.Bottle.of(a.min(b), a.max(b)));
            case 3 -> new Gift.Round(a);
            case 4 -> new Gift.Books(a.max(b), a.min(b), c);
            default -> new Gift.Roll(a.min(b), a.max(b));
        };
    }
}
