package hearthcloth.wrap.fold;

import hearthcloth.measure.Ruler;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Fit;

/** A cloth that is too small to tie the gift; the message says what is short and which size would do. */
public final class ShortClothException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    public ShortClothException(Fit fit) {
        super(fit.sentence(Voice.english(Ruler.MILLIMETRES)));
    }
}
