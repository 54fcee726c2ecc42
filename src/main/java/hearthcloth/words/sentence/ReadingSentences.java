package hearthcloth.words.sentence;

import hearthcloth.words.reading.ReadingWords;
import hearthcloth.words.speech.Voice;
import org.jspecify.annotations.Nullable;

/** Sentences of the room of reading. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class ReadingSentences implements Room {

    static final Room ROOM = new ReadingSentences();

    private ReadingSentences() {}

    public static Sentence lengthBelow(Argument text) {
        return new Sentence(ROOM, "length.below", text);
    }

    public static Sentence lengthByZero(Argument text) {
        return new Sentence(ROOM, "length.byZero", text);
    }

    public static Sentence lengthMissing() {
        return new Sentence(ROOM, "length.missing");
    }

    public static Sentence lengthNoUnit(Argument text) {
        return new Sentence(ROOM, "length.noUnit", text);
    }

    public static Sentence lengthNumbers(Argument n, Argument text) {
        return new Sentence(ROOM, "length.numbers", n, text);
    }

    public static Sentence lengthTooLong(Argument text) {
        return new Sentence(ROOM, "length.tooLong", text);
    }

    public static Sentence lengthTwoWays(Argument one, Argument other, Argument text) {
        return new Sentence(ROOM, "length.twoWays", one, other, text);
    }

    public static Sentence lengthUnit(Argument text, Argument word) {
        return new Sentence(ROOM, "length.unit", text, word);
    }

    public static Sentence lengthUnread(Argument text) {
        return new Sentence(ROOM, "length.unread", text);
    }

    public static Sentence lineColour(Argument text) {
        return new Sentence(ROOM, "line.colour", text);
    }

    public static Sentence lineHowMany(Argument most) {
        return new Sentence(ROOM, "line.howMany", most);
    }

    public static Sentence lineLong(Argument n) {
        return new Sentence(ROOM, "line.long", n);
    }

    public static Sentence lineLongName(Argument most) {
        return new Sentence(ROOM, "line.longName", most);
    }

    public static Sentence lineNoName() {
        return new Sentence(ROOM, "line.noName");
    }

    public static Sentence sizeMissing() {
        return new Sentence(ROOM, "size.missing");
    }

    public static Sentence sizeNothing() {
        return new Sentence(ROOM, "size.nothing");
    }

    public static Sentence sizeOneSide(Argument side) {
        return new Sentence(ROOM, "size.oneSide", side);
    }

    public static Sentence sizeTooMuch() {
        return new Sentence(ROOM, "size.tooMuch");
    }

    @Override
    public String name() {
        return "reading";
    }

    @Override
    public @Nullable String kinds(String key) {
        return switch (key) {
            case "length.below" -> "t";
            case "length.byZero" -> "t";
            case "length.missing" -> "";
            case "length.noUnit" -> "t";
            case "length.numbers" -> "tt";
            case "length.tooLong" -> "t";
            case "length.twoWays" -> "ttt";
            case "length.unit" -> "tt";
            case "length.unread" -> "t";
            case "line.colour" -> "t";
            case "line.howMany" -> "t";
            case "line.long" -> "t";
            case "line.longName" -> "t";
            case "line.noName" -> "";
            case "size.missing" -> "";
            case "size.nothing" -> "";
            case "size.oneSide" -> "t";
            case "size.tooMuch" -> "";
            default -> null;
        };
    }

    @Override
    public String said(Sentence sentence, Voice voice) {
        ReadingWords words = voice.rooms().reading();
        return switch (sentence.key()) {
            case "length.below" -> words.lengthBelow(sentence.text(0, voice));
            case "length.byZero" -> words.lengthByZero(sentence.text(0, voice));
            case "length.missing" -> words.lengthMissing();
            case "length.noUnit" -> words.lengthNoUnit(sentence.text(0, voice));
            case "length.numbers" -> words.lengthNumbers(sentence.text(0, voice), sentence.text(1, voice));
            case "length.tooLong" -> words.lengthTooLong(sentence.text(0, voice));
            case "length.twoWays" -> words.lengthTwoWays(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "length.unit" -> words.lengthUnit(sentence.text(0, voice), sentence.text(1, voice));
            case "length.unread" -> words.lengthUnread(sentence.text(0, voice));
            case "line.colour" -> words.lineColour(sentence.text(0, voice));
            case "line.howMany" -> words.lineHowMany(sentence.text(0, voice));
            case "line.long" -> words.lineLong(sentence.text(0, voice));
            case "line.longName" -> words.lineLongName(sentence.text(0, voice));
            case "line.noName" -> words.lineNoName();
            case "size.missing" -> words.sizeMissing();
            case "size.nothing" -> words.sizeNothing();
            case "size.oneSide" -> words.sizeOneSide(sentence.text(0, voice));
            case "size.tooMuch" -> words.sizeTooMuch();
            default -> throw new IllegalStateException("no message " + sentence.key());
        };
    }
}
