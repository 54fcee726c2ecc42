package hearthcloth.web.gift;

import hearthcloth.words.choosing.ChoosingWords;
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

    public static HeldGift of(Capacity capacity, Voice voice) {
        Optional<String> largest =
                capacity.largest().flatMap(gift -> gift.onMarks(voice.ruler())).map(gift -> gift.describe(voice));
        return new HeldGift(
                voice.tying().tieName(capacity.tie().name()),
                capacity.shape(voice),
                largest.orElseGet(ChoosingWords.in(voice.language())::heldSmall),
                largest.isPresent());
    }
}
