package hearthcloth.words.refusing;

/** What is said in the room of refusing, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface RefusingWords {

    String fileAfterQuote(String text);

    String fileAt(String column, String line, String what);

    String fileCells(String cells, String columns);

    String fileChoice(String one, String other, String text);

    String fileColour(String text);

    String fileCount(String most, String text);

    String fileDisagree(String before, String name, String now, String was);

    String fileEmpty();

    String fileLongName(String letters, String most, String name);

    String fileMore(String more);

    String fileMost(String metres, String text);

    String fileNoColumn(String header);

    String fileNoName();

    String fileNoPieces();

    String fileNoUnit(int more);

    String fileNothing(String text);

    String fileQuoteOpen();

    String fileTooMany(String most);

    String fileTwice();

    String fileTwoColours(String before, String line, String name, String now, String side, String was);

    String fileUnit(String text);

    String giftBook();

    String giftBottle();

    String giftCount(String count, String rule, String text);

    String giftKinds();

    String giftLarge(String size);

    String giftLong(String kinds, String text);

    String giftNone(String kinds);

    String giftRule(String kind);

    String giftSmall();

    String giftUnmeasured(String rule, String text);

    String giftWhat(String kinds, String text);

    String giftWord(String kinds, String text, String word);

    String giftZero();

    String givenCsv(String name, String such);

    String givenEmpty(String name);

    String givenGone(String name, String place);

    String givenInput();

    String givenLarge(String most, String name);

    String givenNoText(String line, String name, String why);

    String givenNot(String name, String why);

    String givenPhoto(String name);

    String givenPhotoEmpty(String name);

    String heapLine(String line, String what);

    String heapMany(String most, String pieces);

    String listAt(String line, String list, String what);

    String listColumn(String names, String text);

    String listExtent();

    String listFile(String list, String what);

    String listMissing();

    String listMost(String list, String most);

    String listNoName();

    String listNone(String list);

    String listSame(String text);

    String listTwice(String text);

    String listUnder(String text);

    String listWhole(String line, String list, String what);

    String listYes(String text);

    String outEnding(String ending, String name, String option);

    String outFile(String name, String option, String why);

    String outFolder(String name, String why);

    String outHolds(String name, String thing);

    String outInWay(String name, String thing);

    String outStopped(String name);

    String stashFull(String most);

    String stashKnown(String fabric);

    String tieFirst();

    String tieOther(String names, String suited, String tie);

    String tieUnknown(String names, String text);

    String wishAt(String field, String what);

    String wishBands();

    String wishBlocks(String text);

    String wishBlocksReach(String most, String text);

    String wishBoth();

    String wishCloth(String text);

    String wishContrast(String names, String text);

    String wishFabric(int more, String name, String names);

    String wishFar(String text);

    String wishFell(String text);

    String wishGoes(String other);

    String wishGoesBars();

    String wishManyWidths(String count, String most);

    String wishMiddle();

    String wishMixed(String text);

    String wishNarrow(String band, String eaten, String how, String needed, String text);

    String wishNeed(String most, String size, String tie);

    String wishNoCloth(String most, String text);

    String wishNotWith(String other);

    String wishNothing();

    String wishOff(String text);

    String wishOrder(String text);

    String wishPair(int count, String text, String what);

    String wishPart(String most, String text);

    String wishReach(String least, String most, String text);

    String wishScheme(String names, String text);

    String wishScraps(String text);

    String wishSeam(String names, String text);

    String wishSeed(String text);

    String wishSetting(String text);

    String wishShow(String text);

    String wishSlack(String most, String text);

    String wishTied();

    String wishTime(String text);

    String wishTimeReach(String text);

    String wishUnit(String text);

    String wishWhole(String least, String most, String text);

    String wishWidths(int rounds, int widths);

    String wishWord(String names, String text);
}
