package hearthcloth.cutstock.piecing.blocks;

/** What a search of blocks looks for. */
public enum Until {
    /** The first cover. */
    FIRST,
    /** A cover, then ever better ones. */
    BEST,
    /** As many covers as there are. */
    ALL
}
