package hearthcloth.words.picturing;

import hearthcloth.words.Language;

/** What is said in the room of picturing, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface PicturingWords {

    /** What is said in one language; the class of no other is loaded. */
    static PicturingWords in(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishPicturing();
            case KOREAN -> new KoreanPicturing();
            case JAPANESE -> new JapanesePicturing();
            case FRENCH -> new FrenchPicturing();
            case GERMAN -> new GermanPicturing();
            case SPANISH -> new SpanishPicturing();
        };
    }

    String added(String first, String last, int n);

    String another();

    String askBefore();

    String askChoose();

    String askHow();

    String askKinds();

    String askNoSize();

    String askNone();

    String askNotWhole();

    String askNow();

    String askPhotograph(String when);

    String askPreview();

    String askPrint();

    String askPrintHow();

    String askRead();

    String askSend();

    String askSheet();

    String back();

    String deleted();

    String drawBack();

    String drawCloser();

    String drawCorner();

    String drawCross();

    String drawFarther();

    String drawFew();

    String drawFind();

    String drawHow();

    String drawKeys();

    String drawLeave();

    String drawMeasure();

    String drawMost();

    String drawNoRim();

    String drawNone();

    String drawOne();

    String drawPicture();

    String drawSome();

    String fabricAbout(String faces, String nap, String washed);

    String fabricFaces();

    String fabricKeep();

    String fabricKnown();

    String fabricLabel(String name);

    String fabricName(String pieces);

    String fabricNap();

    String fabricNapAny();

    String fabricNapLong();

    String fabricNo();

    String fabricRight();

    String fabricSame();

    String fabricUnknown();

    String fabricWashed();

    String fabricYes();

    String formCorners();

    String formKind();

    String formNumber();

    String formPlace();

    String goingDoing(String what);

    String goingLabel();

    String goingLeave();

    String goingLook();

    String goingShare(String share, String what);

    String goingStop();

    String goingTitle();

    String goingWaits(int n);

    String gone();

    String goneElsewhere();

    String hintBlurred();

    String hintDark();

    String hintFine();

    String hintNoSheet();

    String hintSlant();

    String howAbove();

    String howAboveHow();

    String howAbovePicture();

    String howApart();

    String howApartHow();

    String howApartPicture();

    String howFlat();

    String howFlatHow();

    String howFlatPicture();

    String howSheet();

    String howSheetHow();

    String howSheetPicture();

    String kept();

    String keyDoubt();

    String keyIn();

    String keyLeft();

    String keyMeasured();

    String keyUsable();

    String labelAdd(int n);

    String labelAllRight();

    String labelBring(String piece);

    String labelCorner(String piece);

    String labelDraw(String piece);

    String labelDrop(String piece);

    String labelFabric(String name);

    String labelGrain(String piece);

    String labelLess(String piece);

    String labelMore(String piece);

    String labelMove(String piece);

    String labelName(String name);

    String labelNoGrain(String piece);

    String labelNotSure(String piece);

    String labelRight(String piece);

    String labelRim();

    String labelSplit(String piece);

    String noPiece();

    String notOpened();

    String notRead();

    String nothingToTake();

    String pieceBring();

    String pieceBringAbout(String piece);

    String pieceBy(String by, String grain);

    String pieceClose();

    String pieceCloseAbout(String piece);

    String pieceCorner(String all, String n);

    String pieceDrag();

    String pieceEnd(String n);

    String pieceFabric();

    String pieceGrain();

    String pieceIsIn();

    String pieceLeaveAbout(String piece);

    String pieceLess(String n);

    String pieceLessAbout(String n);

    String pieceLine(String doing);

    String pieceLineDone(String doing);

    String pieceMore();

    String pieceMoreAbout(String n);

    String pieceMove();

    String pieceNoGrain();

    String pieceNotSure();

    String pieceOwn();

    String piecePicture(String piece);

    String pieceSides();

    String pieceSplit();

    String pieceSquare(String degrees, String one, String same, String two);

    String pieceStraight();

    String pieceTitle(String piece);

    String pieces(int n);

    String redo();

    String redoNothing();

    String redone(String what);

    String refusedAgain();

    String refusedAnew();

    String refusedAway();

    String refusedFailed();

    String refusedHundredths();

    String refusedMark();

    String refusedNoPieces();

    String refusedNoTap();

    String refusedOnce();

    String refusedOther();

    String refusedPicture(String reference);

    String refusedRead();

    String refusedReference(String sheet);

    String refusedTake();

    String refusedTap(String n);

    String refusedTitle();

    String refusedTooMuch();

    String refusedWhere(String reference);

    String scriptChosen();

    String scriptLarge();

    String scriptNone();

    String scriptSending();

    String sheetA4();

    String sheetCard();

    String sheetLetter();

    String sheetLine();

    String sheetMeasuring();

    String sheetSize();

    String sheetSizeExample(String unit);

    String sheetSizeHow(String unit);

    String sheetWhich();

    String sortAllMine(int n);

    String sortAllMineAbout();

    String sortAway();

    String sortAwayAsk();

    String sortFabrics(int n);

    String sortFabricsHow();

    String sortFirst();

    String sortLead();

    String sortLeave();

    String sortLeaveAbout(String piece);

    String sortLook();

    String sortLookAt(String piece);

    String sortMaybe(String in, String piece, String there);

    String sortMaybeLook();

    String sortMissed();

    String sortRight();

    String sortRightAbout(String piece);

    String sortRim(int n);

    String sortRimAbout();

    String sortSame();

    String sortSameAbout(String piece);

    String sortStay(int n);

    String sortTake(int n);

    String sortTitle();

    String sortTold(String off, String size);

    String sortTwice();

    String sortTwiceHow();

    String sortWhole(int n);

    String stale();

    String staleTaking();

    String state(String state);

    String stays(int n, String pieces);

    String taken(String piece);

    String undo();

    String undoNothing();

    String undone(String what);
}
