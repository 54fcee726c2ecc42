package hearthcloth.web.stash;

import hearthcloth.stash.Lot;
import hearthcloth.stash.Piece;
import hearthcloth.store.StashEdit;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.gift.FirstUse;
import hearthcloth.web.kit.PageContext;
import hearthcloth.words.stashing.StashingWords;
import hearthcloth.work.StashAtHand;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What she does with the pieces she chose on the table; each is one change that is undone at once. */
final class ChosenPieces {

    private final PageContext room;
    private final StashAtHand heap;
    private final StashingWords words;
    private final List<Lot> lots = new ArrayList<>();

    /**
     * Those in the form.
     *
     * @throws StoreException where they are no longer as the page showed them
     */
    ChosenPieces(PageContext room, Context context) {
        this.room = room;
        this.heap = room.store().atHand();
        this.words = StashingWords.in(room.language());
        for (String ids : context.formParams("piece")) {
            lots.add(lot(ids));
        }
    }

    /** The lot whose first piece and count these are. */
    private Lot lot(String ids) {
        int colon = ids.lastIndexOf(':');
        String id = ids.substring(0, Math.max(0, colon));
        return heap.stash().pieces().stream()
                .filter(piece -> piece.id().equals(id))
                .map(piece -> Lot.around(piece, heap.stash()))
                .filter(lot -> (id + ":" + lot.count()).equals(ids))
                .findFirst()
                .orElseThrow(() -> new StoreException(words.staleChoose()));
    }

    boolean isEmpty() {
        return lots.isEmpty();
    }

    /** The page that says more of the first one. */
    String page() {
        return "/stash/piece/" + lots.get(0).first().id();
    }

    private List<Piece> pieces() {
        return lots.stream().flatMap(lot -> lot.pieces().stream()).toList();
    }

    /** {@code 2 of oat} or {@code 5 pieces}. */
    private String words(List<Piece> pieces) {
        Set<String> fabrics = new LinkedHashSet<>();
        pieces.forEach(piece -> fabrics.add(piece.fabric().name()));
        return fabrics.size() == 1
                ? words.piecesOf(fabrics.iterator().next(), pieces.size())
                : words.pieces(pieces.size());
    }

    /** Kept for something else, or given back to what can be planned with; what to say of it. */
    String keep(boolean on) {
        List<Piece> meant =
                pieces().stream().filter(piece -> heap.isAside(piece) != on).toList();
        if (meant.isEmpty()) {
            return on ? words.chosenKeptAlready() : words.chosenFreeAlready();
        }
        String label = on ? words.deedAside(words(meant)) : words.deedBack(words(meant));
        room.store()
                .stash()
                .edit(StashEdit.aside(label, meant.stream().map(Piece::id).toList(), on));
        return words.done(label);
    }

    /** Gone from the stash. */
    String useUp() {
        String label = words.deedUse(words(pieces()));
        room.store().stash().edit(new StashEdit(label, pieces(), List.of()));
        return words.done(label);
    }

    /** The next cloth is made of these as far as it can be. */
    void useFirst() {
        FirstUse.keep(room.store(), pieces());
    }
}
