package hearthcloth.web.kit;

import hearthcloth.colour.Colour;
import hearthcloth.colour.ColourException;
import hearthcloth.measure.MeasureException;
import hearthcloth.words.Language;
import hearthcloth.words.framing.FramingWords;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What fields of a form say, beyond plain text. */
public final class FormFields {

    private FormFields() {}

    /** A colour she wrote: as a number, a CSS name or in everyday words. */
    public static Colour colour(String written, Language language) {
        try {
            return Colour.parse(written);
        } catch (ColourException e) {
            return Colour.named(written)
                    .orElseThrow(
                            () -> new MeasureException(FramingWords.in(language).troubleColour(written)));
        }
    }

    /** The choice of a select box; empty where none, or one that is not offered, was sent. */
    public static <E extends Enum<E>> Optional<E> choice(Class<E> type, String word) {
        return Arrays.stream(type.getEnumConstants())
                .filter(each -> each.name().equals(word.toUpperCase(Locale.ROOT)))
                .findFirst();
    }
}
