package hearthcloth.words.stashing;

import hearthcloth.words.Language;

/** What is said in the room of stashing, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface StashingWords {

    /** What is said in one language; the class of no other is loaded. */
    static StashingWords in(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishStashing();
            case KOREAN -> new KoreanStashing();
            case JAPANESE -> new JapaneseStashing();
            case FRENCH -> new FrenchStashing();
            case GERMAN -> new GermanStashing();
            case SPANISH -> new SpanishStashing();
        };
    }

    String added(String first, String last, int n);

    String addedKnown(String fabric);

    String and(String before, String next);

    String area(String number, String unit);

    String asideBack();

    String asideNote();

    String asideSet();

    String asideTitle();

    String backStash();

    String backTable();

    String chosen();

    String chosenBack();

    String chosenFirst();

    String chosenFreeAlready();

    String chosenKeep();

    String chosenKeptAlready();

    String chosenMany();

    String chosenMore();

    String chosenNone();

    String chosenNothing();

    String chosenUsed();

    String colour(String hue, String tone);

    String colourUnknown();

    String deedAdd(String what);

    String deedAddFile(String what);

    String deedAside(String what);

    String deedBack(String what);

    String deedChange(String what);

    String deedDelete(String what);

    String deedFabric(String fabric);

    String deedSplit(String what);

    String deedUse(String what);

    String done(String deed);

    String fabricAbout(String colour, String faces, String nap);

    String fabricAboutWrong(String colour, String faces, String nap, String wrong);

    String fabricAcross();

    String fabricAll();

    String fabricAsideAll();

    String fabricAsideSome(String aside, String pieces);

    String fabricAway();

    String fabricAwaySure();

    String fabricBackAll();

    String fabricChanged(String pieces);

    String fabricFile();

    String fabricHow();

    String fabricIsAside();

    String fabricIsBack();

    String fabricMerge();

    String fabricNoPicture();

    String fabricNone();

    String fabricOwn();

    String fabricPicture(String about);

    String fabricSavePicture();

    String fabricTiled();

    String fabricUntiled();

    String fabricWrongAcross();

    String fieldColour();

    String fieldColourBlank();

    String fieldFabric();

    String fieldFaces();

    String fieldFacesAre(String faces);

    String fieldHowMany();

    String fieldHowManyOf(String n);

    String fieldLength();

    String fieldLengthIn(String unit);

    String fieldName();

    String fieldNap();

    String fieldNapIs(String nap);

    String fieldWashed();

    String fieldWashedIs(String washed);

    String fieldWidth();

    String fieldWidthIn(String unit);

    String fieldWrong();

    String fieldWrongOwn();

    String fileColumns();

    String fileEncoding();

    String fileRefused();

    String goCloth();

    String goGift();

    String goneDelete();

    String goneNoPiece();

    String goneTitle();

    String goneUndo();

    String groupNote(String faces, String nap, String pieces);

    String heardAbout(String about, String length, String width);

    String heardFabrics(int fabrics, String pieces);

    String heardKnown(String about, String fabric);

    String heardUnclear(String first, int n);

    String heardWhat(String fabric, String size);

    String heldAside(int n);

    String heldFor(String cloth, int n);

    String heldMore(String before, String next);

    String hue(String hue);

    String lineAdd();

    String lineAsks();

    String lineExample(String unit);

    String lineListening();

    String lineMany(String lines, String most);

    String lineMend();

    String linePhotograph();

    String lineSay();

    String lineSpeak();

    String lineStill();

    String lineUnclear(String line, String why);

    String lot(String fabric, int n, String numbers, String size);

    String lotWashed(String fabric, int n, String numbers, String size, String washed);

    String markClaimed();

    String markGreys();

    String markKept();

    String markNap();

    String markRight();

    String moreAll();

    String moreByFabric();

    String moreFiles();

    String moreFill();

    String moreFind();

    String moreLeast();

    String moreLeastExample();

    String moreSave();

    String moreText();

    String moreTitle();

    String photoBegun(String day, String pieces);

    String photoDay();

    String photoNotRead(String day);

    String photoNothing(String day);

    String pieceAlike(int n, String numbers);

    String pieceChange();

    String pieceTitle(String fabric, String size);

    String pieceWay(String about);

    String pieces(int n);

    String piecesOf(String fabric, int n);

    String piecesSaid(String fabric, int n);

    String redo();

    String redoNothing();

    String redone(String deed);

    String save();

    String splitAt(String unit);

    String splitDivides();

    String splitLength(String length);

    String splitTitle();

    String splitWidth(String width);

    String staleChoose();

    String staleFabric();

    String staleFabricNow(String about, String colour, String fabric, String pieces);

    String staleGone();

    String staleLast(String deed);

    String staleNothing();

    String staleNow(String pieces, String size);

    String staleNowWashed(String pieces, String size, String washed);

    String stalePieces();

    String summary(String area, int n);

    String summarySome(String area, String found, int n);

    String tableBefore();

    String tableChange(String fabric);

    String tableColour();

    String tableColours();

    String tableDrawn();

    String tableFarther();

    String tableGreys();

    String tableKeep();

    String tableNearer();

    String tableNext();

    String tableNone();

    String tablePage(String page, String pages);

    String tablePages();

    String tableShowAll();

    String tableShown();

    String tableTap();

    String tableUnknown();

    String title();

    String titleWays();

    String unchanged();

    String undo();

    String undoNothing();

    String undoWhat(String deed);

    String undone(String deed);

    String washed(String washed);

    String waysAddFile();

    String waysAlso(String unit);

    String waysColumns();

    String waysFields();

    String waysFile();

    String waysHelp();

    String waysHelpSays(String unit);

    String wrongCount(String count);

    String wrongHowMany(String n);

    String wrongLongName(String most);

    String wrongNoName();

    String wrongOutside(String whole);
}
