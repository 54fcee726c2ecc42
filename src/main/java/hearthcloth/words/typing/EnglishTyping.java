package hearthcloth.words.typing;

/** The room of typing in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishTyping implements TypingWords {

    @Override
    public String commandUnknown(String command, String commands) {
        return "There is no command " + command + "; there are " + commands + ".";
    }

    @Override
    public String guidelineFavourite(String fabrics, String name) {
        return "--favourite: no fabric of the stash is called \"" + name + "\"; there are " + fabrics + ".";
    }

    @Override
    public String guidelineTwice(String option) {
        return option + ": the guideline says this; leave " + option + " out, or write it in the guideline.";
    }

    @Override
    public String guidelineWrote(String file, String name) {
        return "Wrote " + file + ": " + name + ".";
    }

    @Override
    public String ideaLarge(String most, String size) {
        return "The page would be " + size + " kB, over " + most + " kB; leave the picture out, or make it smaller.";
    }

    @Override
    public String ideaNoPieces() {
        return "The example's pieces are missing; give some with --from STASH.csv.";
    }

    @Override
    public String ideaWrote(String file, String size) {
        return "Wrote " + file + ", " + size + " kB: one file, which opens without a network. Send it, or put it on your site.";
    }

    @Override
    public String inside(String what) {
        return "Something went wrong inside Hearthcloth (" + what + ").";
    }

    @Override
    public String kitsBoth() {
        return "--students: a list says how many cloths there are; leave out --students or --wishes.";
    }

    @Override
    public String kitsEmpty() {
        return "The stash is empty; add at least one piece.";
    }

    @Override
    public String kitsWhich() {
        return "Which cloths? Give --wishes LIST.csv, or --students 12 --size \"16 in\".";
    }

    @Override
    public String language(String tags, String text) {
        return "\"" + text + "\" is no language that is spoken here; write one of " + tags + ", or its name";
    }

    @Override
    public String memory() {
        return "Hearthcloth ran out of memory on this stash. Leave some pieces out and try again.";
    }

    @Override
    public String missing(String what) {
        return "Something is missing: " + what + ".";
    }

    @Override
    public String notFile(String text) {
        return "\"" + text + "\" is not a file name; choose another";
    }

    @Override
    public String note(String what) {
        return "Note: " + what;
    }

    @Override
    public String optionNoValue(String option, String text) {
        return option + " takes no value; leave \"" + text + "\" out.";
    }

    @Override
    public String optionTwice(String option) {
        return option + " is typed twice; leave one of the two out.";
    }

    @Override
    public String optionUnknown(String option) {
        return "There is no option " + option + ".";
    }

    @Override
    public String pictureColours(String what) {
        return "The picture's colours and your nearest fabrics: " + what + ".";
    }

    @Override
    public String pictureNear(String colour, String fabric, String percent) {
        return colour + " " + percent + ", " + fabric;
    }

    @Override
    public String pictureNothing(String colour, String percent) {
        return colour + " " + percent + ", nothing near it";
    }

    @Override
    public String progress(String percent, String what) {
        return (what.equals("drawing") ? "drawing" : "reading: " + percent);
    }

    @Override
    public String readCannot(String file) {
        return file + " cannot be read:";
    }

    @Override
    public String readCannotInput() {
        return "The picture cannot be read:";
    }

    @Override
    public String readDrawn(String file) {
        return "Drawn on the picture: " + file + ".";
    }

    @Override
    public String readMemory() {
        return "There was not enough memory for this picture; send a smaller one.";
    }

    @Override
    public String readNothing() {
        return "No stash file was written, since no piece can be put into it as it is.";
    }

    @Override
    public String report() {
        return "Your files are untouched. Please report it with the stash file and the words you typed.";
    }

    @Override
    public String settings(String file, String line, String name) {
        return "The settings file " + file + ", named by " + name + ", cannot be read; write lines such as " + line + ", or leave " + name + " out.";
    }

    @Override
    public String sheetWrote(String file) {
        return "Wrote " + file + ". Print it at 100 %, not fitted to the page; the thin line on it is then 20 cm, or 7 7/8 in, long.";
    }

    @Override
    public String shown(String command) {
        return "\"" + command + "\" shows how to write it.";
    }

    @Override
    public String sizeReach(String text) {
        return "\"" + text + "\" is out of reach; a cloth is from 5 cm to 5 m, so check the number and its unit";
    }

    @Override
    public String sizeWhich() {
        return "Say either what you wrap, --gift \"box 30 x 20 x 8 cm\", or which cloth you have, --cloth \"38 1/2 in\".";
    }

    @Override
    public String unread(String what) {
        return "This cannot be read as it is typed: " + what + ".";
    }

    @Override
    public String unusable(String file) {
        return file + " cannot be used as it is:";
    }

    @Override
    public String unusableInput(String what) {
        return (what.equals("stash") ? "The stash" : "What came in") + " cannot be used as it is:";
    }

    @Override
    public String wordTooMany(String word) {
        return "\"" + word + "\" is one word too many; put quotes round a wish of several words.";
    }
}
