package hearthcloth.store;

import hearthcloth.photo.scale.KeptScale;
import hearthcloth.work.photo.PhotoSorting;
import java.util.Optional;

/**
 * A photograph in the store.
 *
 * @param sheet the reference that lies in it, as {@code photo.Sheet} reads it
 * @param kept when it came
 * @param refused why nothing could be read from it; empty where it was read, or not yet
 */
public record SavedPhoto(String id, String sheet, String kept, String refused, Optional<Read> read, long version) {

    /** What was read, and what she has made of it so far. */
    public record Read(KeptScale scale, PhotoSorting sorting) {}

    /** Whether it still has to be read. */
    public boolean isWaiting() {
        return refused.isEmpty() && read.isEmpty();
    }
}
