package hearthcloth.words.typing;

/** What is said in the room of typing, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface TypingWords {

    String commandUnknown(String command, String commands);

    String guidelineFavourite(String fabrics, String name);

    String guidelineTwice(String option);

    String guidelineWrote(String file, String name);

    String ideaLarge(String most, String size);

    String ideaNoPieces();

    String ideaWrote(String file, String size);

    String inside(String what);

    String kitsBoth();

    String kitsEmpty();

    String kitsWhich();

    String language(String tags, String text);

    String memory();

    String missing(String what);

    String notFile(String text);

    String note(String what);

    String optionNoValue(String option, String text);

    String optionTwice(String option);

    String optionUnknown(String option);

    String pictureColours(String what);

    String pictureNear(String colour, String fabric, String percent);

    String pictureNothing(String colour, String percent);

    String progress(String percent, String what);

    String readCannot(String file);

    String readCannotInput();

    String readDrawn(String file);

    String readMemory();

    String readNothing();

    String report();

    String settings(String file, String line, String name);

    String sheetWrote(String file);

    String shown(String command);

    String sizeReach(String text);

    String sizeWhich();

    String unread(String what);

    String unusable(String file);

    String unusableInput(String what);

    String wordTooMany(String word);
}
