package hearthcloth.words.reading;

/** What is said in the room of reading, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface ReadingWords {

    String lengthBelow(String text);

    String lengthByZero(String text);

    String lengthMissing();

    String lengthNoUnit(String text);

    String lengthNumbers(String n, String text);

    String lengthTooLong(String text);

    String lengthTwoWays(String one, String other, String text);

    String lengthUnit(String text, String word);

    String lengthUnread(String text);

    String lineColour(String text);

    String lineHowMany(String most);

    String lineLong(String n);

    String lineLongName(String most);

    String lineNoName();

    String sizeMissing();

    String sizeNothing();

    String sizeOneSide(String side);

    String sizeTooMuch();
}
