package hearthcloth.words.wrapping;

import hearthcloth.words.Language;

/** What is said in the room of wrapping, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface WrappingWords {

    /** What is said in one language; the class of no other is loaded. */
    static WrappingWords in(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishWrapping();
            case KOREAN -> new KoreanWrapping();
            case JAPANESE -> new JapaneseWrapping();
            case FRENCH -> new FrenchWrapping();
            case GERMAN -> new GermanWrapping();
            case SPANISH -> new SpanishWrapping();
        };
    }

    String labelKeep();

    String showsCaption(String what);

    String showsEnds();

    String showsFrom();

    String showsHidden();

    String showsName(String what);

    String showsOf();

    String showsSides();

    String showsTop();

    String showsUnder();

    String showsView(String view);

    String showsWhere(String what);

    String tieCare();

    String tieFits(String fits);

    String tieKnot();

    String tieLarge();

    String tieLead(String gift, String own, String suited);

    String tieNone();

    String tieNothing();

    String tieShort();

    String tieSold();

    String tieSoldFor();

    String tieSquare();

    String tieSquareOf();

    String tieThisGift();

    String tieTitle(String tie);

    String tieTitleNamed(String tie, String trade);

    String tieUnsuited(String gift, String suited, String tie);

    String tieUpTo();

    String tiedAwayExample();

    String tiedBack();

    String tiedByPatch();

    String tiedFolds();

    String tiedHowTie(String tie);

    String tiedIsFor(String cloth, String gift);

    String tiedKeep();

    String tiedLacks();

    String tiedNear();

    String tiedNone();

    String tiedOff();

    String tiedOffAway(String unit);

    String tiedOffRight(String unit);

    String tiedRightExample();

    String tiedShare(String percent);

    String tiedShow();

    String tiedShows();

    String tiedSides();

    String title(String cloth);

    String which();
}
