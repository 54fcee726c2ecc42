package hearthcloth.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hearthcloth.stash.Piece;
import java.util.List;

/**
 * One change of the stash: pieces that go and pieces that come. A changed piece goes and comes with the same id. Turned
 * round, it is its own undoing.
 *
 * @param label what was done, for "Undo …"
 */
public record StashEdit(String label, List<Piece> gone, List<Piece> come) {

    public StashEdit {
        gone = List.copyOf(gone);
        come = List.copyOf(come);
    }

    public StashEdit reversed() {
        return new StashEdit(label, /* gone= */ come, /* come= */ gone);
    }

    String text() {
        ObjectNode node = Codec.object();
        node.set("gone", Codec.list(gone, Codec::piece));
        node.set("come", Codec.list(come, Codec::piece));
        return node.toString();
    }

    static StashEdit read(String label, String text) {
        try {
            JsonNode node = Codec.JSON.readTree(text);
            return new StashEdit(
                    label,
                    Codec.list(Codec.field(node, "gone"), Codec::piece),
                    Codec.list(Codec.field(node, "come"), Codec::piece));
        } catch (JsonProcessingException e) {
            throw new StoreException("The record of \"" + label + "\" cannot be read.", e);
        }
    }
}
