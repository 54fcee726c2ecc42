package hearthcloth.web.cloth;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;

/**
 * What there is of a fabric for one bar, in a few words, from the pieces that no other cloth counts on. It looks at this
 * bar alone: whether the whole cloth can be cut so is told once the bar is given the fabric.
 *
 * @param isShort true where it cannot be
 */
public record FabricAtHand(String words, boolean isShort) {

    /** @param needed width and length to cut */
    static FabricAtHand of(Stash stash, Fabric fabric, Size needed, Ruler ruler) {
        Length widest = Length.ZERO;
        Length run = Length.ZERO;
        for (Piece piece : stash.of(fabric)) {
            Length narrow = piece.size().width().min(piece.size().height());
            Length wide = piece.size().width().max(piece.size().height());
            if (holds(narrow, wide, needed)) {
                return new FabricAtHand("enough", false);
            }
            widest = widest.max(narrow);
            if (!narrow.isLessThan(needed.width())) {
                run = run.plus(wide);
            }
        }
        if (widest.isLessThan(needed.width())) {
            return new FabricAtHand(ruler.number(widest, Rounding.DOWN) + " wide", true);
        }
        return run.isLessThan(needed.height())
                ? new FabricAtHand("too short", true)
                : new FabricAtHand("joined", false);
    }

    private static boolean holds(Length narrow, Length wide, Size needed) {
        Length small = needed.width().min(needed.height());
        Length large = needed.width().max(needed.height());
        return !narrow.isLessThan(small) && !wide.isLessThan(large);
    }
}
