package hearthcloth.photo.image;

/** Receives how far a reading has come, on the thread that reads. */
@FunctionalInterface
public interface ReadingProgress {

    /** Ignores everything. */
    ReadingProgress NONE = (share, what) -> {};

    /**
     * Receives how far it is.
     *
     * @param share done so far, from 0 to 1, never decreasing
     * @param what is being done now, as a short phrase for the maker
     */
    void at(double share, String what);
}
