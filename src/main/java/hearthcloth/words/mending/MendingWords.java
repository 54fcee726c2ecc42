package hearthcloth.words.mending;

/** What is said in the room of mending, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface MendingWords {

    String bar(String bar);

    String deedAgain(String what);

    String deedAllCut(String cloth);

    String deedCut(int count, String cut, String made, String piece);

    String deedLeft(String bar, String wrong);

    String deedMistake(String piece);

    String deedSewn(String name, String size, String what);

    String deedShort(String bar, String way);

    String deedUnpicked(int more, String name, String what);

    String hearth();

    String noBar(String bar);

    String noLarge();

    String noLeft();

    String noNothing();

    String noShort(String bar);

    String noWork();

    String piece(String fabric, String piece, String size);

    String shortAnew(String bar, String pieces);

    String shortBack();

    String shortPieced(String bar, String pieces);

    String shortStrip(String bar, String piece, String size);

    String shortTrim(String bar, String from, String less, String to, String way);

    String small(String by, String size, String what);

    String smallAcross(String length);

    String smallAlong(String length);

    String wayAgain(String pieces, String what);

    String wayBars(String bars, int count, String width);

    String wayFabric(String now, String was, String what);

    String waySmaller(String size, String what);

    String wayStrip(String pieces, String what);

    String wayWider(String bars, String size, String what);
}
