package hearthcloth.store.journal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import hearthcloth.store.json.DesignCodec;
import hearthcloth.store.json.StoreException;

/** One change of something that is stored as a document: the document before and after. */
public record DocumentEdit(String before, String after) {

    public String text() {
        return DesignCodec.object().put("before", before).put("after", after).toString();
    }

    static DocumentEdit read(String text) {
        try {
            JsonNode node = DesignCodec.JSON.readTree(text);
            return new DocumentEdit(
                    DesignCodec.field(node, "before").asText(),
                    DesignCodec.field(node, "after").asText());
        } catch (JsonProcessingException e) {
            throw new StoreException("The record of this change cannot be read.", e);
        }
    }
}
