package hearthcloth.cloth;

/** One of the two halves of a seam. */
public enum Half {
    FIRST,
    SECOND;

    public Half other() {
        return this == FIRST ? SECOND : FIRST;
    }
}
