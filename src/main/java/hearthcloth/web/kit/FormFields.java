package hearthcloth.web.kit;

import hearthcloth.colour.Colour;
import hearthcloth.colour.ColourException;
import hearthcloth.measure.MeasureException;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What fields of a form say, beyond plain text. */
public final class FormFields {

    private FormFields() {}

    /** A colour she wrote: as a number, a CSS name or in everyday words. */
    public static Colour colour(String written) {
        try {
            return Colour.parse(written);
        } catch (ColourException e) {
            return Colour.named(written)
                    .orElseThrow(() -> new MeasureException("\"" + written
                            + "\" is no colour we know; write one such as sage green or #8a9a5b, or leave it blank"));
        }
    }

    /** The choice of a select box; empty where none, or one that is not offered, was sent. */
    public static <E extends Enum<E>> Optional<E> choice(Class<E> type, String word) {
        return Arrays.stream(type.getEnumConstants())
                .filter(each -> each.name().equals(word.toUpperCase(Locale.ROOT)))
                .findFirst();
    }
}
