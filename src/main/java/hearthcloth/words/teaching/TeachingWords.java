package hearthcloth.words.teaching;

import hearthcloth.words.Language;

/** What is said in the room of teaching, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface TeachingWords {

    /** What is said in one language; the class of no other is loaded. */
    static TeachingWords in(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishTeaching();
            case KOREAN -> new KoreanTeaching();
            case JAPANESE -> new JapaneseTeaching();
            case FRENCH -> new FrenchTeaching();
            case GERMAN -> new GermanTeaching();
            case SPANISH -> new SpanishTeaching();
        };
    }

    String classBegin();

    String classCode();

    String classCount(int inside);

    String classEnd();

    String classEndAsk();

    String classEnded();

    String classFile();

    String classFromCloth();

    String classFromFile();

    String classHidden();

    String classIntro();

    String classIsOut(String name);

    String classNoCloth();

    String classNotShared();

    String classOut(String name);

    String classPoint();

    String classQr();

    String classSeams(String all, String sewn);

    String classTitle();

    String classWall();

    String classWith();

    String comeCode();

    String comeFull();

    String comeIn();

    String comeName();

    String comeNone();

    String comeTitle();

    String comeWait();

    String comeWrong();

    String cutCut();

    String cutFabric();

    String cutList();

    String cutPatch();

    String cutPiece();

    String ideaBack();

    String ideaBy(String name);

    String ideaCare(String words);

    String ideaEmpty();

    String ideaExample(String size);

    String ideaExampleBack();

    String ideaFirst();

    String ideaFoot();

    String ideaFront();

    String ideaGuide();

    String ideaHeapHelp();

    String ideaKeep();

    String ideaLabel();

    String ideaLanguage();

    String ideaMade();

    String ideaMadeMore();

    String ideaNoCloth(String all, String name);

    String ideaNoneKept(String name);

    String ideaOld();

    String ideaOne();

    String ideaOwn();

    String ideaPieces();

    String ideaPrint();

    String ideaSave();

    String ideaStop();

    String ideaStopped();

    String ideaSuchAs(String fabric);

    String ideaTied();

    String ideaTrouble();

    String ideaTwo();

    String ideaTying();

    String kitCame();

    String kitHelp();

    String kitRefused();

    String kitsAnew();

    String kitsAsked(String asked);

    String kitsCount();

    String kitsCountFault(String given, String most);

    String kitsEmpty();

    String kitsFair(String least, String most);

    String kitsFile();

    String kitsForget();

    String kitsGoing(String all, String tried);

    String kitsGuide();

    String kitsHeap(int count);

    String kitsInTurn(String joins, String lacking);

    String kitsIntro();

    String kitsJoins(int count);

    String kitsKeep();

    String kitsKeepHelp();

    String kitsKept(int count);

    String kitsLines();

    String kitsLinesHelp();

    String kitsList();

    String kitsMove();

    String kitsMoveIt();

    String kitsMoved(String name, String piece);

    String kitsNearest();

    String kitsNotMoved(String name, String piece);

    String kitsNothing();

    String kitsPiece();

    String kitsPlan();

    String kitsPlanGifts();

    String kitsPrint();

    String kitsSample();

    String kitsSize();

    String kitsStop();

    String kitsStudents();

    String kitsTheList();

    String kitsTitle();

    String kitsTo();

    String mineAgain();

    String mineAnother();

    String mineCentimetres();

    String mineFavourite();

    String mineGuide();

    String mineHelp();

    String mineHide();

    String mineInches();

    String mineKeep();

    String mineKeeps();

    String mineLeave();

    String mineLess();

    String mineLooking();

    String mineMore();

    String mineNearest();

    String mineNone();

    String mineOnWall();

    String minePlan();

    String minePlanFile();

    String mineRuler();

    String mineRules();

    String mineSample();

    String mineScraps();

    String mineScrapsOnly();

    String mineShow();

    String mineWhy();
}
