package hearthcloth.store.journal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import hearthcloth.store.json.DesignCodec;
import hearthcloth.store.json.StoreException;

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
            throw new StoreException("The record of this change does not fit what is kept. Nothing was changed.");
        }
        return document.substring(0, at) + is + document.substring(at + was.length());
    }

    public String text() {
        return DesignCodec.object().put("at", at).put("was", was).put("is", is).toString();
    }

    /** Reads what {@link #text} wrote, and the whole documents before and after that earlier files hold. */
    public static DocumentEdit read(String text) {
        try {
            JsonNode node = DesignCodec.JSON.readTree(text);
            if (node.has("before")) {
                return of(
                        DesignCodec.field(node, "before").asText(),
                        DesignCodec.field(node, "after").asText());
            }
            return new DocumentEdit(
                    DesignCodec.field(node, "at").asInt(),
                    DesignCodec.field(node, "was").asText(),
                    DesignCodec.field(node, "is").asText());
        } catch (JsonProcessingException | IllegalArgumentException e) {
            throw new StoreException("The record of this change cannot be read.", e);
        }
    }
}
