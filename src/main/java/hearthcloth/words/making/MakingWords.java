package hearthcloth.words.making;

import hearthcloth.words.Language;

/** What is said in the room of making, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface MakingWords {

    /** What is said in one language; the class of no other is loaded. */
    static MakingWords in(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishMaking();
            case KOREAN -> new KoreanMaking();
            case JAPANESE -> new JapaneseMaking();
            case FRENCH -> new FrenchMaking();
            case GERMAN -> new GermanMaking();
            case SPANISH -> new SpanishMaking();
        };
    }

    String amissBar(String bar);

    String amissBarNoWay(String told);

    String amissBarPage();

    String amissBarSewn(String bar);

    String amissBarTold(String bar, String measured, String planned);

    String amissRedo();

    String amissTitle();

    String back();

    String care();

    String caution(String topic, String words);

    String cutAgain();

    String cutAlready();

    String cutAmiss();

    String cutChanged();

    String cutGone();

    String cutIsCut(int n);

    String cutNone();

    String cutPieceGone();

    String cutTicked(int n);

    String cutTitle(String cloth);

    String cutWhich();

    String done();

    String height();

    String keys();

    String length();

    String listed(String before, String last);

    String lookAgain();

    String matAll();

    String matAllAreCut();

    String matAllDone(int n);

    String matAllIsCut();

    String matAsItIs();

    String matClothIsCut();

    String matCount(String all, String done);

    String matCounted();

    String matCutOf(String all, String n);

    String matDescribed(String fabric, String size);

    String matGives(String gives);

    String matLeave();

    String matMore();

    String matNextPiece();

    String matNow(String measure, String n);

    String matOff(String side);

    String matPicture();

    String matPiece(String done, String n, String words);

    String matPieceIsCut();

    String matPin();

    String matPrintSlips();

    String matProgress(String all, String done, String n);

    String matSew();

    String matShown(String n, String words);

    String measureAgain();

    String measuredBefore();

    String measuredCrooked(String by, String trim);

    String measuredFar(String planned, String written);

    String measuredFarMeant(String meant, String planned, String written);

    String measuredIsIt(String meant);

    String measuredIsRight();

    String measuredOtherStep();

    String measuredScraps();

    String measuredSquare();

    String measuredSwapped();

    String measuredSwappedHow(String planned, String size);

    String measuredTitle();

    String measuredTold(String across, String both, String height, String size, String up, String width);

    String measuredTooMany(String written);

    String more();

    String printGuide();

    String printPage();

    String sewAsPlanned();

    String sewAsleep();

    String sewBackToCut();

    String sewDiffers();

    String sewFinish();

    String sewFollows();

    String sewHours(String hours, String minutes);

    String sewHow();

    String sewHowLabel();

    String sewLookOnly();

    String sewMeasureHow(String unit);

    String sewMeasures();

    String sewMeasuresHow();

    String sewMinutes(String minutes);

    String sewNext();

    String sewNoStep();

    String sewNotCut();

    String sewPace(String time);

    String sewPlanned();

    String sewPlannedCut();

    String sewProgress(String all, String done, String n);

    String sewRead();

    String sewSaid(String progress, String title);

    String sewThick(String where);

    String sewTitle(String cloth);

    String sewToCut();

    String sewToNow();

    String sewWhich();

    String sewWhole(String all, String done);

    String sewYes();

    String showWays();

    String sideAlike();

    String sideCannot();

    String sideFrayed();

    String sideGoBack();

    String sideLead(String bar, String wrong);

    String sideLeave();

    String sideLeft();

    String sideLooks();

    String sideNoBar();

    String sideNoFit();

    String sideNotSewn();

    String sidePage();

    String sidePicture(String bar, String wrong);

    String sideRight();

    String sideSteps(int n);

    String sideUnpick();

    String sideWrong(String bar, String wrong);

    String smallAcross();

    String smallAllCut();

    String smallDown();

    String smallHow();

    String smallLarger();

    String smallNoWay();

    String smallPage();

    String smallTitle();

    String smallWrite();

    String waysAfterCut(String way);

    String waysCut(String told);

    String waysGone();

    String waysLacking();

    String waysMeasured(String way);

    String waysNoCut();

    String waysPicture(String size);

    String waysSewn(String told);

    String waysShortBar(String way);

    String waysSize(String size);

    String waysSizeLabel();

    String waysThis();

    String waysTies(String gift, String tie);

    String waysToCut(String bars, int n, int pieces);

    String width();

    String wrongAllUsed();

    String wrongChange();

    String wrongFewerJoins(int n);

    String wrongHow();

    String wrongLateLacking(String why);

    String wrongLatePlanned();

    String wrongMoreJoins(int n);

    String wrongPlan();

    String wrongPlanned();

    String wrongSameJoins();

    String wrongScraps();

    String wrongSomeUsed(int n, int used);

    String wrongTitle();
}
