package hearthcloth.photo.image;


/** Told how far a reading has come, from the thread that reads. */
@FunctionalInterface
public interface ReadingProgress {

    /** Nobody listens. */
    ReadingProgress NONE = (share, what) -> {};

    /**
     * Says how far it is.
     *
     * @param share done so far, 0 to 1, never falling
     * @param what what is being done now, a short phrase for the maker
     */
    void at(double share, String what);
}
