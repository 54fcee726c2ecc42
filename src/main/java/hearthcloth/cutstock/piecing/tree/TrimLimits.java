package hearthcloth.cutstock.piecing.tree;

/** How far patches may still be trimmed. Lengths are net. */
public interface TrimLimits {

    /** How much may be taken off a patch's width as it lies in the cloth; negative where it is too small already. */
    long offWidth(ScrapPatch patch);

    /** The same of its height. */
    long offHeight(ScrapPatch patch);
}
