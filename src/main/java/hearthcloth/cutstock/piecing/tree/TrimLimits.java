package hearthcloth.cutstock.piecing.tree;

/** How far patches may still be trimmed. Lengths are net. */
public interface TrimLimits {

    /** How much may be taken off a patch's width as it lies in the cloth; negative where it is too small already. */
    long offWidth(ScrapPatch patch);

    /** The same of its height. */
    long offHeight(ScrapPatch patch);

    /** Every patch down to the least side. */
    static TrimLimits downTo(long least) {
        return new TrimLimits() {
            @Override
            public long offWidth(ScrapPatch patch) {
                return patch.width() - least;
            }

            @Override
            public long offHeight(ScrapPatch patch) {
                return patch.height() - least;
            }
        };
    }
}
