package hearthcloth.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;

/** One change of what is kept as a document: it before and after. */
record DocumentEdit(String before, String after) {

    String text() {
        return Codec.object().put("before", before).put("after", after).toString();
    }

    static DocumentEdit read(String text) {
        try {
            JsonNode node = Codec.JSON.readTree(text);
            return new DocumentEdit(
                    Codec.field(node, "before").asText(),
                    Codec.field(node, "after").asText());
        } catch (JsonProcessingException e) {
            throw new StoreException("The record of this change cannot be read.", e);
        }
    }
}
