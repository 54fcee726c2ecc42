package hearthcloth.web.photo;

import hearthcloth.store.PhotoBook;
import hearthcloth.store.SavedPhoto;
import hearthcloth.work.photo.PhotoSorting;
import hearthcloth.work.photo.SeenTwice;
import hearthcloth.work.photo.SortedPiece;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A piece of this photograph that may be one of another photograph too.
 *
 * @param piece its key here
 * @param there its key on the other photograph
 * @param href the other photograph's page
 * @param isIn whether the other one is in the stash already
 */
public record TwiceShown(String piece, String there, String href, boolean isIn) {

    /** Whether the other is in the stash, as a catalogue asks. */
    public String in() {
        return isIn ? "yes" : "no";
    }

    /** All such pieces, each named once; the latest photographs are looked at first. */
    static List<TwiceShown> of(PhotoBook book, SavedPhoto photo) {
        List<TwiceShown> out = new ArrayList<>();
        List<SortedPiece> open = new ArrayList<>(open(photo.read().orElseThrow(), book.taken(photo.id())));
        for (SavedPhoto other : book.all()) {
            if (other.id().equals(photo.id()) || other.read().isEmpty() || open.isEmpty()) {
                continue;
            }
            Set<String> taken = book.taken(other.id());
            List<SortedPiece> there = other.read().orElseThrow().sorting().pieces().stream()
                    .filter(piece -> !piece.dropped())
                    .toList();
            SeenTwice.of(open, there).forEach((here, its) -> {
                out.add(new TwiceShown(here, its, PhotoAddress.address(other.id()), PhotoSorting.isAmong(its, taken)));
                open.removeIf(piece -> piece.key().equals(here));
            });
        }
        return out;
    }

    private static List<SortedPiece> open(SavedPhoto.Read read, Set<String> taken) {
        return read.sorting().pieces().stream()
                .filter(piece -> !piece.dropped() && !PhotoSorting.isAmong(piece.key(), taken))
                .toList();
    }
}
