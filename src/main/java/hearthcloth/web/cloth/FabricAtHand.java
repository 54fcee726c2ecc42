package hearthcloth.web.cloth;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.words.speech.Voice;

/**
 * What there is of a fabric for one bar, in a few words, from the pieces that no other cloth counts on. It looks at this
 * bar alone: whether the whole cloth can be cut so is told once the bar is given the fabric.
 *
 * @param isShort true where it cannot be
 */
public record FabricAtHand(String words, boolean isShort) {

    /** @param needed width and length to cut */
    static FabricAtHand of(Stash stash, Fabric fabric, Size needed, Voice voice) {
        DesigningWords words = DesigningWords.in(voice.language());
        Length widest = Length.ZERO;
        Length run = Length.ZERO;
        for (Piece piece : stash.of(fabric)) {
            Length narrow = piece.size().width().min(piece.size().height());
            Length wide = piece.size().width().max(piece.size().height());
            if (holds(narrow, wide, needed)) {
                return new FabricAtHand(words.handEnough(), false);
            }
            widest = widest.max(narrow);
            if (!narrow.isLessThan(needed.width())) {
                run = run.plus(wide);
            }
        }
        if (widest.isLessThan(needed.width())) {
            return new FabricAtHand(words.handWide(voice.number(widest, Rounding.DOWN)), true);
        }
        return run.isLessThan(needed.height())
                ? new FabricAtHand(words.handShort(), true)
                : new FabricAtHand(words.handJoined(), false);
    }

    private static boolean holds(Length narrow, Length wide, Size needed) {
        Length small = needed.width().min(needed.height());
        Length large = needed.width().max(needed.height());
        return !narrow.isLessThan(small) && !wide.isLessThan(large);
    }
}
