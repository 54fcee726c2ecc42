package hearthcloth.store;

import com.fasterxml.jackson.annotation.JsonInclude;
import hearthcloth.stash.Piece;
import hearthcloth.store.json.Json;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.work.Thing;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

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
    record SetAside(List<String> pieces, boolean on) {
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
        return Json.text(Written.of(this));
    }

    /** @throws StoreException naming the change and what its record lacks */
    static StashEdit read(String label, String text) {
        try {
            return Json.read(text, Written.class).edit(label);
        } catch (IllegalArgumentException e) {
            throw new StoreException(StoringSentences.record(label, "none"), e);
        }
    }

    /** A change as it is kept; what it does not touch is left out. */
    private record Written(
            List<Piece> gone,
            List<Piece> come,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            List<PicturedWritten> pictured,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            AsideWritten aside,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            PhotoWritten photo) {

        static Written of(StashEdit edit) {
            List<PicturedWritten> pictured =
                    edit.pictured().stream().map(PicturedWritten::of).toList();
            return new Written(
                    edit.gone,
                    edit.come,
                    pictured.isEmpty() ? null : pictured,
                    edit.along
                            .aside()
                            .map(one -> new AsideWritten(one.on, one.pieces))
                            .orElse(null),
                    edit.photo()
                            .map(from -> new PhotoWritten(from.photograph, from.in, from.keys))
                            .orElse(null));
        }

        StashEdit edit(String label) {
            Along along = new Along(
                    pictured == null
                            ? List.of()
                            : pictured.stream().map(PicturedWritten::pictured).toList(),
                    Optional.ofNullable(photo).map(from -> new FromPhoto(from.id, from.keys, from.in)),
                    Optional.ofNullable(aside).map(one -> new SetAside(one.pieces, one.on)));
            return new StashEdit(label, gone, come, along);
        }
    }

    private record AsideWritten(boolean on, List<String> pieces) {}

    private record PhotoWritten(String id, boolean in, List<String> keys) {}

    private record PicturedWritten(
            String fabric,
            @JsonInclude(JsonInclude.Include.NON_NULL) SwatchBook.@Nullable Swatch was,
            @JsonInclude(JsonInclude.Include.NON_NULL) SwatchBook.@Nullable Swatch is) {

        static PicturedWritten of(Pictured one) {
            return new PicturedWritten(one.fabric, one.was.orElse(null), one.is.orElse(null));
        }

        Pictured pictured() {
            return new Pictured(fabric, Optional.ofNullable(was), Optional.ofNullable(is));
        }
    }
}
