package hearthcloth.store;

import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.StashAtHand;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * All that is kept at one moment, read once.
 *
 * @param fault what of the tables is not the journal's fold
 * @param next the next free number of a piece
 */
record Seen(Optional<Sentence> fault, StashAtHand heap, int next, List<SavedCloth> cloths) {

    static Seen of(Store store) {
        return store.atOnce(() -> new Seen(
                store.fault(),
                store.atHand(),
                store.stash().nextPiece(),
                store.cloths().all().stream()
                        .sorted(Comparator.comparing(SavedCloth::id))
                        .toList()));
    }

    static Plan plan(SavedCloth cloth) {
        return cloth.document().plan().orElseThrow();
    }

    /** What undo and redo, or a kill, must leave as it was. */
    List<Object> everything() {
        List<Object> all = new ArrayList<>(List.of(heap.stash().pieces(), new TreeSet<>(heap.aside()), next));
        cloths.forEach(cloth -> all.add(List.of(cloth.id(), cloth.name(), cloth.document())));
        return all;
    }

    /** All fabric in square millimetres, in the stash and in what is cut. */
    double fabric() {
        double there =
                heap.stash().pieces().stream().mapToDouble(Piece::areaMm2).sum();
        for (SavedCloth cloth : cloths) {
            there += cuts(cloth).stream()
                    .filter(cut ->
                            cut.past() || !cloth.document().life().stage().isToCut())
                    .flatMap(cut -> cut.tree().kept().stream())
                    .mapToDouble(kept -> kept.at().size().areaMm2())
                    .sum();
        }
        return there;
    }

    private static List<PieceCut> cuts(SavedCloth cloth) {
        return cloth.document().plan().map(Plan::cuts).orElse(List.of());
    }
}
