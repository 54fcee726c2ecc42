package hearthcloth.web.stash;

import hearthcloth.stash.Arrivals;
import hearthcloth.stash.Piece;
import hearthcloth.store.StashBook;
import hearthcloth.store.StashEdit;
import java.util.List;

/** Takes what arrives into the stash as one change that is undone at once. */
final class StashIntake {

    private final StashBook book;

    StashIntake(StashBook book) {
        this.book = book;
    }

    Arrivals arrivals() {
        return new Arrivals(book.whole(), book.nextPiece());
    }

    /** Keeps what arrived as one change; what to say of it. */
    String keep(String label, Arrivals arrivals) {
        book.edit(new StashEdit(label, List.of(), arrivals.pieces()));
        List<Piece> come = arrivals.pieces();
        String numbers = come.size() == 1
                ? "number " + come.get(0).id()
                : "numbers " + come.get(0).id() + "–"
                        + come.get(come.size() - 1).id();
        String said = "Added " + StashView.pieces(come.size()) + ", " + numbers + ".";
        return said + (arrivals.notes().isEmpty() ? "" : " " + String.join(" ", arrivals.notes()));
    }
}
