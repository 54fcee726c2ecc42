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

    String tiedBackFace();

    String tiedByPatch();

    String tiedCanvas();

    String tiedDown();

    String tiedDrag();

    String tiedExample(String unit);

    String tiedFace();

    String tiedFarther();

    String tiedFolds();

    String tiedFromAbove();

    String tiedFromCorner();

    String tiedFromFront();

    String tiedFront();

    String tiedHow();

    String tiedHowTie(String tie);

    String tiedIsFor(String cloth, String gift);

    String tiedKeep();

    String tiedLacks();

    String tiedLeft();

    String tiedNear();

    String tiedNearer();

    String tiedNone();

    String tiedOffAway(String unit);

    String tiedOffRight(String unit);

    String tiedQuarter(String turns);

    String tiedQuarters();

    String tiedRight();

    String tiedRightExample();

    String tiedSay();

    String tiedShow();

    String tiedShows();

    String tiedTie();

    String tiedTurn();

    String tiedTurned(String way);

    String tiedTurning();

    String tiedUp();

    String tiedWhat();

    String title(String cloth);

    String which();
}
