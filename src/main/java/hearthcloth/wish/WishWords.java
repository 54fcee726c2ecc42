package hearthcloth.wish;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Wishes as they were typed, in the shell or on a page. All of them stay text here, so that {@link WishReader} can say of
 * each what is wrong with it. Immutable.
 */
public record WishWords(Map<WishField, String> given) {

    public static final WishWords NOTHING = new WishWords(Map.of());

    public WishWords {
        given = Map.copyOf(given);
    }

    /** These wishes and one more; the same where it was not given. */
    public WishWords with(WishField field, @Nullable String text) {
        if (text == null) {
            return this;
        }
        Map<WishField, String> more = new EnumMap<>(WishField.class);
        more.putAll(given);
        more.put(field, text);
        return new WishWords(more);
    }

    @Nullable
    String of(WishField field) {
        return given.get(field);
    }

    boolean has(WishField field) {
        return given.containsKey(field);
    }
}
