package hearthcloth.cli.report;

import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.wish.GiftWish;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Capacity;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What {@code size --json} prints: for a gift the smallest square cloth each tie needs, or for a cloth the largest gift
 * each tie takes. Lengths are whole nanometres, not rounded to a ruler's marks.
 *
 * @param ties for a gift
 * @param takes for a cloth
 */
public record SizeJson(
        String format,
        int version,
        String units,
        @Nullable List<Need> ties,
        @Nullable List<Take> takes) {

    /**
     * The side of the square a tie needs, by the length of each knotted end's tail.
     *
     * @param square with the usual tail
     * @param squareLeastTail with the least
     * @param squareMostTail with the most
     */
    record Need(String tie, boolean knotted, long square, long squareLeastTail, long squareMostTail) {}

    /**
     * The largest gift of a typical shape.
     *
     * @param largest in words; left out where the cloth is too small for any
     * @param leading its leading measure: a box's length, a bottle's height, a ball's diameter
     */
    record Take(
            String tie,
            String shape,
            @Nullable String largest,
            @Nullable Long leading) {}

    public static SizeJson forGift(Gift gift, @Nullable Tie tie, Ruler ruler) {
        Tail tail = GiftWish.tail(ruler);
        List<Tie> ties = tie == null ? Tie.suiting(gift) : List.of(tie);
        return made(ties.stream().map(each -> need(each, gift, tail)).toList(), null);
    }

    public static SizeJson forCloth(Size cloth, @Nullable Tie tie, Ruler ruler) {
        Tail tail = GiftWish.tail(ruler);
        Stream<Capacity> all =
                tie == null ? Capacity.of(cloth, tail.usual()).stream() : Capacity.of(tie, cloth, tail.usual());
        return made(null, all.map(each -> take(each, ruler)).toList());
    }

    private static SizeJson made(@Nullable List<Need> ties, @Nullable List<Take> takes) {
        return new SizeJson("hearthcloth-sizes", 1, "nm", ties, takes);
    }

    private static Need need(Tie tie, Gift gift, Tail tail) {
        return new Need(
                tie.words(),
                tie.isKnotted(),
                tie.smallestSquare(gift, tail.usual()).nm(),
                tie.smallestSquare(gift, tail.least()).nm(),
                tie.smallestSquare(gift, tail.most()).nm());
    }

    private static Take take(Capacity capacity, Ruler ruler) {
        Optional<Gift> told = capacity.largest().flatMap(gift -> gift.onMarks(ruler));
        return new Take(
                capacity.tie().words(),
                capacity.shape(Voice.english(Ruler.EIGHTHS)),
                told.map(gift -> gift.describe(ruler)).orElse(null),
                told.flatMap(gift -> capacity.largest())
                        .map(gift -> gift.leading().nm())
                        .orElse(null));
    }
}
