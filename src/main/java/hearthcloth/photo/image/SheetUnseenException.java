package hearthcloth.photo.image;

import hearthcloth.words.sentence.Sentence;

/**
 * No sheet was made out in a photograph at the size it was looked at; at a smaller one it may be, since folds, grain and soft
 * rims are then out of the way. The message is a sentence for the maker.
 */
public final class SheetUnseenException extends PhotoRefusedException {

    private static final long serialVersionUID = 1L;

    public SheetUnseenException(Sentence sentence) {
        super(sentence);
    }
}
