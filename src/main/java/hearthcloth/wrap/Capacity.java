package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
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
            new Typical(Tie.FOUR_CORNER, "a box 3 : 2 : 0.8, like a cake box", box(300, 200, 80)),
            new Typical(Tie.FOUR_CORNER, "a cube", box(100, 100, 100)),
            new Typical(Tie.EDGE_ALONG_EDGE, "a box 3 : 2 : 0.8, like a cake box", box(300, 200, 80)),
            new Typical(Tie.ERRAND, "a box 3 : 2 : 0.8, like a cake box", box(300, 200, 80)),
            new Typical(Tie.FLAT, "a flat box 3 : 2 : 0.3, like a folded shirt", box(300, 200, 30)),
            new Typical(Tie.TWO_KNOT, "a long box 5 : 1 : 1", box(500, 100, 100)),
            new Typical(
                    Tie.ONE_BOTTLE,
                    "a bottle four times as high as wide, like a wine bottle",
                    Gift.Bottle.of(Length.mm(75), Length.mm(300))),
            new Typical(
                    Tie.TWO_BOTTLES,
                    "two such bottles",
                    new Gift.TwoBottles(Gift.Bottle.of(Length.mm(75), Length.mm(300)))),
            new Typical(Tie.ROUND, "a ball", new Gift.Round(Length.mm(200))),
            new Typical(
                    Tie.BOOKS,
                    "two paperbacks 1.4 : 1 : 0.14",
                    new Gift.Books(Length.mm(210), Length.mm(150), Length.mm(21))),
            new Typical(Tie.ROLL, "a roll four times as long as thick", new Gift.Roll(Length.mm(60), Length.mm(240))));

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
