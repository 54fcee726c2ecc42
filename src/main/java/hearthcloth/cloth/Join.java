package hearthcloth.cloth;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;

/** Where the second half of a seam lies, seen from the front. */
public enum Join {
    /** To the right of the first; the joining line is vertical. */
    BESIDE,
    /** Under the first; the joining line is horizontal. */
    BELOW;

    /** The edge that both halves share. */
    public Length edge(Size half) {
        return this == BESIDE ? half.height() : half.width();
    }

    /** The extent across the joining line. */
    public Length across(Size half) {
        return this == BESIDE ? half.width() : half.height();
    }

    /** A size from its extents across and along the joining line. */
    public Size size(Length across, Length along) {
        return this == BESIDE ? new Size(across, along) : new Size(along, across);
    }

    public Size joined(Size first, Size second) {
        return size(across(first).plus(across(second)), edge(first));
    }

    /** The side of the first half that is sewn. */
    public Side facing(Half half) {
        Side firstSide = this == BESIDE ? Side.RIGHT : Side.BOTTOM;
        return half == Half.FIRST ? firstSide : firstSide.opposite();
    }
}
