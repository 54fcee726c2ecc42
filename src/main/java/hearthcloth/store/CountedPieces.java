package hearthcloth.store;

import hearthcloth.plan.model.PieceCut;
import hearthcloth.stash.Piece;
import hearthcloth.work.Project;
import hearthcloth.work.Promises;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jdbi.v3.core.Handle;

/**
 * What each cloth counts on, kept in memory while the cloth's version stays the same: nearly every page asks, and reading
 * all cloths again for each would take longer the more she has made. Thread-safe.
 */
final class CountedPieces {

    private record Known(long version, List<Piece> pieces) {}

    private record Row(String id, String name, long version) {}

    private final Map<String, Known> known = new ConcurrentHashMap<>();

    /** What the cloths that are planned and not cut yet count on. */
    Promises promises(Handle handle) {
        List<Row> rows = handle.createQuery("select id, name, version from cloth order by changed desc, id")
                .map((row, context) -> new Row(row.getString("id"), row.getString("name"), row.getLong("version")))
                .list();
        List<Promises.Counting> counting = new ArrayList<>();
        for (Row row : rows) {
            List<Piece> pieces = pieces(handle, row);
            if (!pieces.isEmpty()) {
                counting.add(new Promises.Counting(row.id(), row.name(), pieces));
            }
        }
        known.keySet().retainAll(rows.stream().map(Row::id).toList());
        return new Promises(counting);
    }

    private List<Piece> pieces(Handle handle, Row row) {
        Known kept = known.get(row.id());
        if (kept != null && kept.version() == row.version()) {
            return kept.pieces();
        }
        List<Piece> pieces =
                ClothBook.document(handle, row.id()).map(CountedPieces::counted).orElse(List.of());
        known.put(row.id(), new Known(row.version(), pieces));
        return pieces;
    }

    private static List<Piece> counted(Project document) {
        return document.life().stage().isToCut()
                ? document.plan().stream()
                        .flatMap(plan -> plan.cuts().stream())
                        .filter(cut -> !cut.past())
                        .map(PieceCut::piece)
                        .toList()
                : List.of();
    }
}
