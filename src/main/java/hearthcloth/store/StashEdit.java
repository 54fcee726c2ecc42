package hearthcloth.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hearthcloth.measure.Length;
import hearthcloth.stash.Piece;
import hearthcloth.store.json.DesignCodec;
import hearthcloth.store.json.StoreException;
import hearthcloth.work.Thing;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One change of the stash: pieces that go and pieces that come. A changed piece goes and comes with the same id.
 * Reversed, it is the change that undoes it.
 *
 * @param label what was done, for "Undo …"
 * @param along what changes with the pieces
 */
public record StashEdit(String label, List<Piece> gone, List<Piece> come, Along along) {

    /**
     * What changes along with pieces.
     *
     * @param pictured fabrics whose picture changes
     * @param photo the photograph the pieces came from, if any
     * @param aside pieces that are set aside or given back, if any
     */
    public record Along(List<Pictured> pictured, Optional<FromPhoto> photo, Optional<SetAside> aside) {

        static final Along NOTHING = new Along(List.of(), Optional.empty(), Optional.empty());

        public Along {
            pictured = List.copyOf(pictured);
        }

        Along reversed() {
            return new Along(
                    pictured.stream()
                            .map(one -> new Pictured(one.fabric(), /* was= */ one.is(), /* is= */ one.was()))
                            .toList(),
                    photo.map(from -> new FromPhoto(from.photograph(), from.keys(), !from.in())),
                    aside.map(one -> new SetAside(one.pieces(), !one.on())));
        }
    }

    /**
     * Pieces kept for something else: never planned with, still seen.
     *
     * @param pieces their ids
     * @param on false where they are given back
     */
    public record SetAside(List<String> pieces, boolean on) {
        public SetAside {
            pieces = List.copyOf(pieces);
        }
    }

    /** A fabric's picture before and after. */
    public record Pictured(String fabric, Optional<SwatchBook.Swatch> was, Optional<SwatchBook.Swatch> is) {}

    /**
     * Pieces of a photograph that come into the stash.
     *
     * @param in false where they go back to the photograph
     */
    public record FromPhoto(String photograph, List<String> keys, boolean in) {
        public FromPhoto {
            keys = List.copyOf(keys);
        }
    }

    public StashEdit {
        gone = List.copyOf(gone);
        come = List.copyOf(come);
    }

    public StashEdit(String label, List<Piece> gone, List<Piece> come) {
        this(label, gone, come, Along.NOTHING);
    }

    public StashEdit(
            String label, List<Piece> gone, List<Piece> come, List<Pictured> pictured, Optional<FromPhoto> photo) {
        this(label, gone, come, new Along(pictured, photo, Optional.empty()));
    }

    /** Sets pieces aside, or gives them back; none comes or goes. */
    public static StashEdit aside(String label, List<String> pieces, boolean on) {
        return new StashEdit(
                label,
                List.of(),
                List.of(),
                new Along(List.of(), Optional.empty(), Optional.of(new SetAside(pieces, on))));
    }

    List<Pictured> pictured() {
        return along.pictured();
    }

    Optional<FromPhoto> photo() {
        return along.photo();
    }

    public StashEdit reversed() {
        return new StashEdit(label, /* gone= */ come, /* come= */ gone, along.reversed());
    }

    /** Everything it touches: its pieces, and the stash they lie in. */
    Set<Thing> touched() {
        Set<Thing> touched = new HashSet<>(Set.of(Thing.STASH));
        gone.forEach(piece -> touched.add(Thing.piece(piece.id())));
        come.forEach(piece -> touched.add(Thing.piece(piece.id())));
        along.aside().ifPresent(one -> one.pieces().forEach(id -> touched.add(Thing.piece(id))));
        return touched;
    }

    String text() {
        ObjectNode node = DesignCodec.object();
        node.set("gone", DesignCodec.list(gone, DesignCodec::piece));
        node.set("come", DesignCodec.list(come, DesignCodec::piece));
        if (!pictured().isEmpty()) {
            node.set("pictured", DesignCodec.list(pictured(), StashEdit::pictured));
        }
        along.aside()
                .ifPresent(one ->
                        node.putObject("aside").put("on", one.on()).set("pieces", DesignCodec.texts(one.pieces())));
        photo().ifPresent(from -> node.putObject("photo")
                .put("id", from.photograph())
                .put("in", from.in())
                .set("keys", DesignCodec.texts(from.keys())));
        return node.toString();
    }

    static StashEdit read(String label, String text) {
        try {
            JsonNode node = DesignCodec.JSON.readTree(text);
            return new StashEdit(
                    label,
                    DesignCodec.list(DesignCodec.field(node, "gone"), DesignCodec::piece),
                    DesignCodec.list(DesignCodec.field(node, "come"), DesignCodec::piece),
                    new Along(
                            DesignCodec.list(node.path("pictured"), StashEdit::pictured),
                            Optional.ofNullable(node.get("photo"))
                                    .map(from -> new FromPhoto(
                                            DesignCodec.field(from, "id").asText(),
                                            DesignCodec.texts(DesignCodec.field(from, "keys")),
                                            DesignCodec.field(from, "in").asBoolean())),
                            Optional.ofNullable(node.get("aside"))
                                    .map(one -> new SetAside(
                                            DesignCodec.texts(DesignCodec.field(one, "pieces")),
                                            DesignCodec.field(one, "on").asBoolean()))));
        } catch (JsonProcessingException e) {
            throw new StoreException("The record of \"" + label + "\" cannot be read.", e);
        }
    }

    private static JsonNode pictured(Pictured one) {
        ObjectNode node = DesignCodec.object().put("fabric", one.fabric());
        one.was().ifPresent(swatch -> node.set("was", swatch(swatch)));
        one.is().ifPresent(swatch -> node.set("is", swatch(swatch)));
        return node;
    }

    private static Pictured pictured(JsonNode node) {
        return new Pictured(
                DesignCodec.field(node, "fabric").asText(),
                Optional.ofNullable(node.get("was")).map(StashEdit::swatch),
                Optional.ofNullable(node.get("is")).map(StashEdit::swatch));
    }

    private static JsonNode swatch(SwatchBook.Swatch swatch) {
        return DesignCodec.object()
                .put("kind", swatch.kind())
                .put("picture", swatch.picture())
                .put("across", swatch.across().nm());
    }

    private static SwatchBook.Swatch swatch(JsonNode node) {
        Length across = DesignCodec.length(node, "across");
        return new SwatchBook.Swatch(
                DesignCodec.field(node, "kind").asText(),
                DesignCodec.field(node, "picture").asText(),
                across);
    }
}
