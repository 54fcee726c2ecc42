package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.words.speech.Voice;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What one cloth can tie: for a tie and a typical shape, the largest gift.
 *
 * @param shape in a few words: {@code a cube}
 * @param largest of that shape, rounded down; empty when the cloth is too small for any
 */
public record Capacity(Tie tie, String shape, Optional<Gift> largest) {

    /** Proportions chosen as typical (ours); the numbers are only ratios. */
    private record Typical(Tie tie, String shape, Gift gift) {}

    private static final List<Typical> TYPICAL = List.of(
            new Typical(Tie.FOUR_CORNER, "cake", box(300, 200, 80)),
            new Typical(Tie.FOUR_CORNER, "cube", box(100, 100, 100)),
            new Typical(Tie.EDGE_ALONG_EDGE, "cake", box(300, 200, 80)),
            new Typical(Tie.ERRAND, "cake", box(300, 200, 80)),
            new Typical(Tie.FLAT, "flat", box(300, 200, 30)),
            new Typical(Tie.TWO_KNOT, "long", box(500, 100, 100)),
            new Typical(Tie.ONE_BOTTLE, "bottle", Gift.Bottle.of(Length.mm(75), Length.mm(300))),
            new Typical(Tie.TWO_BOTTLES, "bottles", new Gift.TwoBottles(Gift.Bottle.of(Length.mm(75), Length.mm(300)))),
            new Typical(Tie.ROUND, "ball", new Gift.Round(Length.mm(200))),
            new Typical(Tie.BOOKS, "books", new Gift.Books(Length.mm(210), Length.mm(150), Length.mm(21))),
            new Typical(Tie.ROLL, "roll", new Gift.Roll(Length.mm(60), Length.mm(240))));

    /** The shape in words. */
    public String shape(Voice voice) {
        return voice.rooms().reporting().sizeShape(shape);
    }

    /** Every tie with a typical shape or two, for a cloth of this size. */
    public static List<Capacity> of(Size cloth, Length tail) {
        return TYPICAL.stream()
                .map(typical ->
                        new Capacity(typical.tie, typical.shape, typical.tie.largest(typical.gift, cloth, tail)))
                .toList();
    }

    /** The same for one tie. */
    public static Stream<Capacity> of(Tie tie, Size cloth, Length tail) {
        return of(cloth, tail).stream().filter(capacity -> capacity.tie == tie);
    }

    private static Gift.Box box(long l, long w, long h) {
        return new Gift.Box(Length.mm(l), Length.mm(w), Length.mm(h));
    }
}
