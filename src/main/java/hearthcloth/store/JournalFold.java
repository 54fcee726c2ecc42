package hearthcloth.store;

import hearthcloth.stash.Piece;
import hearthcloth.store.journal.ClothFact;
import hearthcloth.store.json.BenchText;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.work.Thing;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * Holds stash and cloths to the journal: every change in force is taken back in thought, the last first, and must find what
 * it left. So far as changes are kept, the tables are then their fold.
 */
final class JournalFold {

    private final Map<String, Piece> pieces = new HashMap<>();
    private final Map<String, String> documents = new HashMap<>();
    private final Map<String, String> names = new HashMap<>();
    /** Cloths whose text is held open while work on the bench is taken out of it, one fact after another. */
    private final Map<String, BenchText> open = new HashMap<>();

    private record Row(String label, String book, String what) {}

    private JournalFold(Handle handle, List<Piece> heap) {
        heap.forEach(piece -> pieces.put(piece.id(), piece));
        handle.createQuery("select id, name, document from cloth")
                .map((row, context) -> List.of(row.getString(1), row.getString(2), row.getString(3)))
                .forEach(cloth -> {
                    names.put(cloth.get(0), cloth.get(1));
                    documents.put(cloth.get(0), cloth.get(2));
                });
    }

    /** What does not fit, in a sentence; empty where all does. */
    static Optional<Sentence> fault(Handle handle, List<Piece> heap) {
        JournalFold fold = new JournalFold(handle, heap);
        List<Row> rows = handle.createQuery("select label, book, what from fact join change on number = fact.change"
                        + " where undone = 0 order by number desc, place desc")
                .map((row, context) -> new Row(row.getString(1), row.getString(2), row.getString(3)))
                .list();
        for (Row row : rows) {
            try {
                if (!fold.takenBack(row)) {
                    return Optional.of(sentence(row.label()));
                }
            } catch (StoreException | IllegalArgumentException e) {
                return Optional.of(sentence(row.label()));
            }
        }
        return Optional.empty();
    }

    private static Sentence sentence(String label) {
        return StoringSentences.misfitAt(Argument.text(label));
    }

    private boolean takenBack(Row row) {
        Thing thing = Thing.read(row.book());
        return switch (thing.kind()) {
            case STASH -> isStash(StashEdit.read(row.label(), row.what()));
            case CLOTH -> isCloth(thing.id(), ClothFact.read(row.what()));
            case PHOTOGRAPH -> true;
            case PIECE, SHELF -> false;
        };
    }

    private boolean isStash(StashEdit edit) {
        for (Piece piece : edit.come()) {
            if (!piece.equals(pieces.remove(piece.id()))) {
                return false;
            }
        }
        edit.gone().forEach(piece -> pieces.put(piece.id(), piece));
        return true;
    }

    private boolean isCloth(String id, ClothFact fact) {
        if (fact instanceof ClothFact.Worked worked) {
            return isWork(id, worked);
        }
        BenchText bench = open.remove(id);
        if (bench != null) {
            documents.put(id, bench.text());
        }
        String document = documents.get(id);
        if (fact instanceof ClothFact.Edited edited && document != null) {
            documents.put(id, edited.edit().reversed().appliedTo(document));
            return true;
        }
        if (fact instanceof ClothFact.Renamed renamed && document != null) {
            return renamed.is().equals(names.put(id, renamed.was()));
        }
        if (!(fact instanceof ClothFact.Stands stands)) {
            return false;
        }
        if (stands.comes()) {
            names.remove(id);
            return stands.document().equals(documents.remove(id));
        }
        names.put(id, stands.name());
        return documents.put(id, stands.document()) == null;
    }

    private boolean isWork(String id, ClothFact.Worked worked) {
        BenchText bench = open.get(id);
        if (bench == null) {
            String document = documents.get(id);
            if (document == null) {
                return false;
            }
            bench = BenchText.of(document);
            open.put(id, bench);
        }
        worked.reversed().on(bench);
        return true;
    }
}
