package hearthcloth.cutstock.job;

/** How a bar may lie on a piece: its length along the piece's length, or turned across it. */
public enum BarTurn {
    /** Either way, on every piece. */
    ANY,
    /** Along the piece's length only. */
    ALONG,
    /** Across the piece only. */
    ACROSS,
    /** Either way, but along the length on a piece whose nap forbids turning. */
    NAP,
    /** Either way, but across the piece where its nap forbids turning: a bar that lies across the cloth. */
    NAP_ACROSS;

    /** Whether a bar may lie turned (or not) on a piece. */
    public boolean allows(boolean turned, boolean lengthwiseOnly) {
        return switch (this) {
            case ANY -> true;
            case ALONG -> !turned;
            case ACROSS -> turned;
            case NAP -> !turned || !lengthwiseOnly;
            case NAP_ACROSS -> turned || !lengthwiseOnly;
        };
    }
}
