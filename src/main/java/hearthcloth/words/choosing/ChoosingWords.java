package hearthcloth.words.choosing;

import hearthcloth.words.Language;

/** What is said in the room of choosing, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface ChoosingWords {

    /** What is said in one language; the class of no other is loaded. */
    static ChoosingWords in(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishChoosing();
            case KOREAN -> new KoreanChoosing();
            case JAPANESE -> new JapaneseChoosing();
            case FRENCH -> new FrenchChoosing();
            case GERMAN -> new GermanChoosing();
            case SPANISH -> new SpanishChoosing();
        };
    }

    String chipBars(String bars, String width);

    String chipKind(String kind);

    String chipNeeds(String what);

    String chipNoGift();

    String chipNoPiece();

    String chipNotTogether();

    String chipQuick();

    String chooseNone();

    String chooseSee();

    String contrast(String contrast);

    String countPieces(int n, String name);

    String foundBack();

    String foundBackFace();

    String foundBeside();

    String foundCannot();

    String foundFailed();

    String foundFigures(int joins, String lost, String patches);

    String foundFiguresFree(String lost, String patches);

    String foundFront(String size, String title);

    String foundGone();

    String foundJoins(String joins);

    String foundKept();

    String foundKeptTap();

    String foundLooking();

    String foundMore();

    String foundNearest();

    String foundNotYet();

    String foundOneScale();

    String foundPatches(int n);

    String foundSoFar(int n);

    String foundStop();

    String foundStopped();

    String foundTake();

    String foundTakeNamed(String title);

    String galleryAddWish();

    String galleryChange();

    String galleryDropWishes();

    String galleryEmpty();

    String galleryEmptySays();

    String galleryFor(String gift);

    String galleryKeepWishes();

    String galleryKept();

    String galleryLarge();

    String galleryNoneLeft();

    String gallerySayGift();

    String gallerySpent();

    String galleryTakeBack(String kind, String wish);

    String galleryTitle();

    String galleryWaiting(String gift);

    String galleryWish();

    String giftCloth();

    String giftClothExample(String unit);

    String giftClothSize(String unit);

    String giftHow();

    String giftHowSays(String unit);

    String giftKinds();

    String giftPlanSize();

    String giftRuler();

    String giftShow();

    String giftType();

    String giftWhatTies();

    String heldKind();

    String heldLargest();

    String heldSmall();

    String heldTie();

    String heldTitle();

    String leftAside(int n);

    String leftCloth(String cloth, int n);

    String leftMore(String before, String next);

    String leftOut(String what);

    String leftShared(String what);

    String leftUnuse();

    String leftUse();

    String lovedFile();

    String lovedFind();

    String lovedList();

    String lovedNone();

    String lovedNothing();

    String lovedTitle();

    String nameNumber(String n, String title);

    String nameOf(String hearth, String most, String scheme);

    String nameSeams(int n, String title);

    String tiesCannot(String most);

    String tiesFinished(String size, String tie);

    String tiesGo();

    String tiesJust();

    String tiesLaid();

    String tiesNote(String tie);

    String tiesRange(String least, String most);

    String tiesSee();

    String tiesSquare(String size);

    String tiesTheirs();

    String tiesTheirsNote();

    String tiesTitle();

    String tiesUnsized();

    String way(String way);

    String wishAgain();

    String wishAlso();

    String wishAny();

    String wishBands();

    String wishBandsPick(String way);

    String wishBarWidths(String unit);

    String wishBars();

    String wishBefore();

    String wishColours();

    String wishContrast();

    String wishContrastPick(String contrast);

    String wishCutting();

    String wishCuttingPick(String rule);

    String wishExact();

    String wishGood();

    String wishGoodWhy(String fabric, String kind);

    String wishHeading(String what);

    String wishHearth(String unit);

    String wishMiddle();

    String wishMixed();

    String wishMostTrim(String unit);

    String wishNarrow();

    String wishOpen();

    String wishOpenSays();

    String wishOrder();

    String wishPatches();

    String wishPatchesPick(String sizes);

    String wishPick(String fabric, String what);

    String wishQuick();

    String wishRounds();

    String wishScraps();

    String wishSlack(String unit);

    String wishTogether();

    String wishWide();

    String wishWith();
}
