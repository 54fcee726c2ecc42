package hearthcloth.web.gift;

import hearthcloth.measure.Ruler;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Capacity;
import java.util.Optional;

/**
 * What a cloth ties round in one tie.
 *
 * @param tie its name
 * @param shape in a few words
 * @param largest gift of that shape that it ties, in words
 * @param fits false where none does
 */
public record HeldGift(String tie, String shape, String largest, boolean fits) {

    public static HeldGift of(Capacity capacity, Ruler ruler) {
        Optional<String> largest =
                capacity.largest().flatMap(gift -> gift.onMarks(ruler)).map(gift -> gift.describe(ruler));
        return new HeldGift(
                capacity.tie().words(),
                capacity.shape(Voice.english(ruler)),
                largest.orElse("too small for this tie"),
                largest.isPresent());
    }
}
