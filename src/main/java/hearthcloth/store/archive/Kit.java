package hearthcloth.store.archive;

import hearthcloth.stash.Piece;
import hearthcloth.store.Store;
import hearthcloth.store.json.Json;
import hearthcloth.store.json.KeptCloth;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Project;
import hearthcloth.work.Purpose;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * One cloth with the pieces it is cut from, as a file: what is in a bag of a class. Whoever brings it in has the pieces in her
 * stash and the cloth planned from them. Described by docs/formats.md.
 *
 * @param name of the cloth
 * @param document planned and not begun
 */
public record Kit(String name, Project document) {

    static final String FORMAT = "hearthcloth-kit";
    private static final int VERSION = 1;

    /** More than a kit of 400 pieces takes. */
    public static final int MOST_BYTES = 4 << 20;

    record Written(String format, int version, String name, String cloth) {}

    /** A kit of a cloth, as it was planned; what was done of it stays where it was done. Empty where it has no plan. */
    public static Optional<Kit> of(String name, Project document) {
        return document.plan().map(plan -> new Kit(name, Project.of(document.design(), plan, Purpose.NOTHING)));
    }

    /** Whether a text says that it is a kit. */
    public static boolean isOne(String text) {
        return text.contains("\"" + FORMAT + "\"");
    }

    /** The text of the file. */
    public String text() {
        return Json.text(new Written(FORMAT, VERSION, name, KeptCloth.text(document)));
    }

    /** Reads a file; empty where it is no whole kit, of a newer version, or was changed so that it makes no cloth. */
    public static Optional<Kit> read(String text) {
        try {
            Written written = Json.read(text, Written.class);
            if (!written.format().equals(FORMAT) || written.version() != VERSION) {
                return Optional.empty();
            }
            Archive.Kept kept =
                    ArchiveReader.cloth(new Archive.ClothEntry("kit", written.name(), written.cloth(), null));
            return of(kept.name(), kept.document());
        } catch (RuntimeException e) {
            // Whatever does not fit, wherever it is noticed: one answer, and nothing was kept yet.
            return Optional.empty();
        }
    }

    /** Lays the pieces into the stash and the cloth on the shelf, or nothing where that fails; the cloth's id. Undo names it by this voice. */
    public String into(Store store, Voice voice) {
        String id = UUID.randomUUID().toString().replace("-", "").substring(0, 12);
        List<Piece> pieces = document.plan().stream()
                .flatMap(plan -> plan.cuts().stream())
                .<Piece>map(cut -> cut.piece())
                .toList();
        new Archive(pieces, Set.of(), Map.of(), List.of(new Archive.Kept(id, name, document)))
                .into(store, false, voice);
        return id;
    }
}
