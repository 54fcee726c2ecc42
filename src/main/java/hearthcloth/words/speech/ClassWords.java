package hearthcloth.words.speech;

import hearthcloth.words.Language;
import hearthcloth.words.teaching.EnglishTeaching;
import hearthcloth.words.teaching.FrenchTeaching;
import hearthcloth.words.teaching.GermanTeaching;
import hearthcloth.words.teaching.JapaneseTeaching;
import hearthcloth.words.teaching.KoreanTeaching;
import hearthcloth.words.teaching.SpanishTeaching;
import hearthcloth.words.teaching.TeachingWords;

/** What is said of handing on: classes, kits, and the page of an idea; a room apart, which a guide needs nothing of. */
public final class ClassWords {

    private ClassWords() {}

    /** The words in a language. */
    public static TeachingWords in(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishTeaching();
            case KOREAN -> new KoreanTeaching();
            case JAPANESE -> new JapaneseTeaching();
            case FRENCH -> new FrenchTeaching();
            case GERMAN -> new GermanTeaching();
            case SPANISH -> new SpanishTeaching();
        };
    }
}
