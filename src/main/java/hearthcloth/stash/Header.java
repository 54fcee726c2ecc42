package hearthcloth.stash;

import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusingSentences;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The first line of a stash file, which says which column is where.
 *
 * @param others headers that this program does not know, by place
 * @param width how many cells a line may fill
 */
record Header(Map<StashColumn, Integer> places, Map<Integer, String> others, int width) {

    /** Columns beyond this are not read. */
    private static final int MOST_COLUMNS = 100;

    private static final List<StashColumn> NEEDED = List.of(StashColumn.FABRIC, StashColumn.WIDTH, StashColumn.LENGTH);

    static Header of(Csv.Row row, List<Problem> problems) {
        Map<StashColumn, Integer> places = new EnumMap<>(StashColumn.class);
        Map<Integer, String> others = new LinkedHashMap<>();
        for (int i = 0; i < Math.min(row.cells().size(), MOST_COLUMNS); i++) {
            String word = Names.plain(Names.unguarded(row.cells().get(i)));
            StashColumn column = StashColumn.named(word).orElse(null);
            if (column != null && places.putIfAbsent(column, i) != null) {
                problems.add(new Problem(row.line(), word, RefusingSentences.fileTwice()));
            }
            if (column == null && !word.isEmpty()) {
                others.put(i, word);
            }
        }
        for (StashColumn needed : NEEDED) {
            if (!places.containsKey(needed)) {
                problems.add(new Problem(
                        row.line(),
                        needed.word(),
                        RefusingSentences.fileNoColumn(Argument.text(Names.quoted(String.join(", ", row.cells()))))));
            }
        }
        return new Header(places, others, row.cells().size());
    }

    boolean isUsable() {
        return places.keySet().containsAll(NEEDED);
    }

    boolean has(StashColumn column) {
        return places.containsKey(column);
    }

    /** What {@code row} says under {@code column} on one line; empty where it says nothing. */
    String cell(Csv.Row row, StashColumn column) {
        Integer at = places.get(column);
        return at == null || at >= row.cells().size()
                ? ""
                : Names.plain(Names.unguarded(row.cells().get(at)));
    }

    /** What {@code row} says in columns that we do not know. */
    Map<String, String> kept(Csv.Row row) {
        Map<String, String> kept = new LinkedHashMap<>();
        others.forEach((at, word) -> {
            if (at < row.cells().size() && !row.cells().get(at).isEmpty()) {
                kept.put(word, Names.unguarded(row.cells().get(at)));
            }
        });
        return kept;
    }
}
