package hearthcloth.store.journal;

import com.fasterxml.jackson.annotation.JsonInclude;
import hearthcloth.store.json.Json;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.StoringSentences;
import org.jspecify.annotations.Nullable;

/**
 * One change of something that is stored as a document: the stretch of its text that differs, before and after, so that
 * a tick costs a line and not a copy of the cloth.
 *
 * @param at where the stretch begins, in characters
 */
public record DocumentEdit(int at, String was, String is) {

    /** The shortest single stretch that differs. */
    public static DocumentEdit of(String before, String after) {
        int shorter = Math.min(before.length(), after.length());
        int begin = 0;
        while (begin < shorter && before.charAt(begin) == after.charAt(begin)) {
            begin++;
        }
        int end = 0;
        while (end < shorter - begin
                && before.charAt(before.length() - 1 - end) == after.charAt(after.length() - 1 - end)) {
            end++;
        }
        return new DocumentEdit(
                begin, before.substring(begin, before.length() - end), after.substring(begin, after.length() - end));
    }

    public DocumentEdit reversed() {
        return new DocumentEdit(at, is, was);
    }

    /**
     * The document after the change.
     *
     * @throws StoreException where {@code document} is not as it was before the change
     */
    public String appliedTo(String document) {
        if (at < 0 || !document.startsWith(was, at)) {
            throw new StoreException(StoringSentences.misfit());
        }
        return document.substring(0, at) + is + document.substring(at + was.length());
    }

    public String text() {
        return Json.text(this);
    }

    /**
     * The record of a change as earlier files hold it too.
     *
     * @param before the whole document, in place of the stretch; with {@code after}
     */
    private record Written(
            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Integer at,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            String was,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            String is,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            String before,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            String after) {}

    /** Reads what {@link #text} wrote, and the whole documents before and after that earlier files hold. */
    public static DocumentEdit read(String text) {
        try {
            Written written = Json.read(text, Written.class);
            if (written.before != null && written.after != null) {
                return of(written.before, written.after);
            }
            if (written.at != null && written.was != null && written.is != null) {
                return new DocumentEdit(written.at, written.was, written.is);
            }
        } catch (IllegalArgumentException e) {
            throw new StoreException(StoringSentences.record("none", "none"), e);
        }
        throw new StoreException(StoringSentences.record("none", "none"));
    }
}
