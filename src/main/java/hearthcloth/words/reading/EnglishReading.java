package hearthcloth.words.reading;

/** The room of reading in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishReading implements ReadingWords {

    @Override
    public String lengthBelow(String text) {
        return "\"" + text + "\" is below zero; a length is zero or more";
    }

    @Override
    public String lengthByZero(String text) {
        return "\"" + text + "\" parts by zero; write a fraction such as 1/2";
    }

    @Override
    public String lengthMissing() {
        return "a length is missing; write one such as \"6 1/2 in\" or \"16.5 cm\"";
    }

    @Override
    public String lengthNoUnit(String text) {
        return "\"" + text + "\" has no unit; write in, cm or mm after the number";
    }

    @Override
    public String lengthNumbers(String n, String text) {
        return "\"" + text + "\" has " + n + " numbers; a size has one (a square) or two, such as \"12 x 9 in\"";
    }

    @Override
    public String lengthTooLong(String text) {
        return "\"" + text + "\" is longer than a kilometre; check the number and its unit";
    }

    @Override
    public String lengthTwoWays(String one, String other, String text) {
        return "\"" + text + "\" can be read two ways; write " + one + " or " + other;
    }

    @Override
    public String lengthUnit(String text, String word) {
        return "\"" + text + "\": \"" + word + "\" is not a unit; write in, cm, mm, m, ft or yd";
    }

    @Override
    public String lengthUnread(String text) {
        return "\"" + text + "\" is not a length; write one such as \"6 1/2 in\" or \"16.5 cm\"";
    }

    @Override
    public String lineColour(String text) {
        return "\"" + text + "\" is not a colour; write one such as #8a9a5b or a name such as teal";
    }

    @Override
    public String lineHowMany(String most) {
        return "how many of them? write a number from 1 to " + most;
    }

    @Override
    public String lineLong(String n) {
        return "this line is " + n + " letters long; write one kind of piece on each line";
    }

    @Override
    public String lineLongName(String most) {
        return "the fabric's name is too long for a label; " + most + " letters fit";
    }

    @Override
    public String lineNoName() {
        return "what is the fabric called? a colour will do, such as \"green print\"";
    }

    @Override
    public String sizeMissing() {
        return "how large is it? write a size such as \"4 x 8 in\"";
    }

    @Override
    public String sizeNothing() {
        return "one side is nothing; write a size above zero";
    }

    @Override
    public String sizeOneSide(String side) {
        return side + " is one side; and the other? write \"" + side + " x 8 in\", \"" + side + " square\" or \"1 yd of 44 in\"";
    }

    @Override
    public String sizeTooMuch() {
        return "that is more than any bolt holds; check the numbers and their unit";
    }
}
