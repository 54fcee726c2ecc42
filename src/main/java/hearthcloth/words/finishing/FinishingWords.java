package hearthcloth.words.finishing;

import hearthcloth.words.Language;

/** What is said in the room of finishing, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface FinishingWords {

    /** What is said in one language; the class of no other is loaded. */
    static FinishingWords in(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishFinishing();
            case KOREAN -> new KoreanFinishing();
            case JAPANESE -> new JapaneseFinishing();
            case FRENCH -> new FrenchFinishing();
            case GERMAN -> new GermanFinishing();
            case SPANISH -> new SpanishFinishing();
        };
    }

    String againBefore(int n);

    String againFor(String who);

    String againSomething();

    String againTitle();

    String againUsed(String cloth, int n);

    String againWhat();

    String againWhen();

    String againWho();

    String bars(int n);

    String date(String day, String month, String year);

    String how(int days, int fabrics, String parts);

    String labelAgain();

    String labelSlip();

    String labelSlipOf(String cloth);

    String lastStep();

    String leftBack(int n);

    String leftFirst();

    String leftHeading(int n);

    String leftNone();

    String leftOne(String fabric, String size);

    String leftSome(String n);

    String leftUse();

    String leftUsed();

    String notMade();

    String patches(int n);

    String photoAnother();

    String photoAway();

    String photoAwayAsk();

    String photoDrawn(String cloth);

    String photoIsAway();

    String photoIts();

    String photoKeep();

    String photoKept();

    String photoNone();

    String photoSend();

    String photoTake();

    String photoYours(String cloth);

    String picture(String cloth);

    String slipAgainst(String across, String both, String height, String up, String width);

    String slipAnd();

    String slipAsPlanned();

    String slipCorners();

    String slipCornersOther();

    String slipHeight();

    String slipIsKept();

    String slipIts();

    String slipKeep();

    String slipKeeper();

    String slipLeans(String length);

    String slipLongName(String most);

    String slipLongNote(String most);

    String slipMade();

    String slipMeasures(String unit);

    String slipMissing(String side);

    String slipName();

    String slipPlanned(String size);

    String slipPrint();

    String slipSewn();

    String slipStraight();

    String slipTie();

    String slipUnread(String field, String why);

    String slipWidth();

    String slipWord();

    String slipWrapped();

    String title();
}
