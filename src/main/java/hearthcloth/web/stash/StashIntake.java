package hearthcloth.web.stash;

import hearthcloth.stash.Arrivals;
import hearthcloth.stash.Piece;
import hearthcloth.store.StashBook;
import hearthcloth.store.StashEdit;
import hearthcloth.words.stashing.StashingWords;
import java.util.List;

/** Takes what arrives into the stash as one change that is undone at once. */
final class StashIntake {

    private final StashBook book;
    private final StashingWords words;

    StashIntake(StashBook book, StashingWords words) {
        this.book = book;
        this.words = words;
    }

    Arrivals arrivals() {
        return new Arrivals(book.whole(), book.nextPiece());
    }

    /** Keeps what arrived as one change; what to say of it. */
    String keep(String label, Arrivals arrivals) {
        book.edit(new StashEdit(label, List.of(), arrivals.pieces()));
        List<Piece> come = arrivals.pieces();
        String said = words.added(come.get(0).id(), come.get(come.size() - 1).id(), come.size());
        StringBuilder out = new StringBuilder(said);
        arrivals.known().forEach(fabric -> out.append(' ').append(words.addedKnown(fabric)));
        return out.toString();
    }
}
