package hearthcloth.words.sentence;

import hearthcloth.words.typing.TypingWords;
import hearthcloth.words.speech.Voice;
import org.jspecify.annotations.Nullable;

/** Sentences of the room of typing. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class TypingSentences implements Room {

    static final Room ROOM = new TypingSentences();

    private TypingSentences() {}

    public static Sentence commandUnknown(Argument command, Argument commands) {
        return new Sentence(ROOM, "command.unknown", command, commands);
    }

    public static Sentence guidelineFavourite(Argument fabrics, Argument name) {
        return new Sentence(ROOM, "guideline.favourite", fabrics, name);
    }

    public static Sentence guidelineTwice(Argument option) {
        return new Sentence(ROOM, "guideline.twice", option);
    }

    public static Sentence guidelineWrote(Argument file, Argument name) {
        return new Sentence(ROOM, "guideline.wrote", file, name);
    }

    public static Sentence ideaLarge(Argument most, Argument size) {
        return new Sentence(ROOM, "idea.large", most, size);
    }

    public static Sentence ideaNoPieces() {
        return new Sentence(ROOM, "idea.noPieces");
    }

    public static Sentence ideaWrote(Argument file, Argument size) {
        return new Sentence(ROOM, "idea.wrote", file, size);
    }

    public static Sentence inside(Argument what) {
        return new Sentence(ROOM, "inside", what);
    }

    public static Sentence kitsBoth() {
        return new Sentence(ROOM, "kits.both");
    }

    public static Sentence kitsEmpty() {
        return new Sentence(ROOM, "kits.empty");
    }

    public static Sentence kitsWhich() {
        return new Sentence(ROOM, "kits.which");
    }

    public static Sentence language(Argument tags, Argument text) {
        return new Sentence(ROOM, "language", tags, text);
    }

    public static Sentence memory() {
        return new Sentence(ROOM, "memory");
    }

    public static Sentence missing(Argument what) {
        return new Sentence(ROOM, "missing", what);
    }

    public static Sentence notFile(Argument text) {
        return new Sentence(ROOM, "notFile", text);
    }

    public static Sentence note(Argument what) {
        return new Sentence(ROOM, "note", what);
    }

    public static Sentence optionNoValue(Argument option, Argument text) {
        return new Sentence(ROOM, "option.noValue", option, text);
    }

    public static Sentence optionTwice(Argument option) {
        return new Sentence(ROOM, "option.twice", option);
    }

    public static Sentence optionUnknown(Argument option) {
        return new Sentence(ROOM, "option.unknown", option);
    }

    public static Sentence pictureColours(Argument what) {
        return new Sentence(ROOM, "picture.colours", what);
    }

    public static Sentence pictureNear(Argument colour, Argument fabric, Argument percent) {
        return new Sentence(ROOM, "picture.near", colour, fabric, percent);
    }

    public static Sentence pictureNothing(Argument colour, Argument percent) {
        return new Sentence(ROOM, "picture.nothing", colour, percent);
    }

    public static Sentence progress(Argument percent, String what) {
        return new Sentence(ROOM, "progress", percent, new Argument.Text(what));
    }

    public static Sentence readCannot(Argument file) {
        return new Sentence(ROOM, "read.cannot", file);
    }

    public static Sentence readCannotInput() {
        return new Sentence(ROOM, "read.cannotInput");
    }

    public static Sentence readDrawn(Argument file) {
        return new Sentence(ROOM, "read.drawn", file);
    }

    public static Sentence readMemory() {
        return new Sentence(ROOM, "read.memory");
    }

    public static Sentence readNothing() {
        return new Sentence(ROOM, "read.nothing");
    }

    public static Sentence report() {
        return new Sentence(ROOM, "report");
    }

    public static Sentence settings(Argument file, Argument line, Argument name) {
        return new Sentence(ROOM, "settings", file, line, name);
    }

    public static Sentence sheetWrote(Argument file) {
        return new Sentence(ROOM, "sheet.wrote", file);
    }

    public static Sentence shown(Argument command) {
        return new Sentence(ROOM, "shown", command);
    }

    public static Sentence sizeReach(Argument text) {
        return new Sentence(ROOM, "size.reach", text);
    }

    public static Sentence sizeWhich() {
        return new Sentence(ROOM, "size.which");
    }

    public static Sentence unread(Argument what) {
        return new Sentence(ROOM, "unread", what);
    }

    public static Sentence unusable(Argument file) {
        return new Sentence(ROOM, "unusable", file);
    }

    public static Sentence unusableInput(String what) {
        return new Sentence(ROOM, "unusableInput", new Argument.Text(what));
    }

    public static Sentence wordTooMany(Argument word) {
        return new Sentence(ROOM, "word.tooMany", word);
    }

    @Override
    public String name() {
        return "typing";
    }

    @Override
    public @Nullable String kinds(String key) {
        return switch (key) {
            case "command.unknown" -> "tt";
            case "guideline.favourite" -> "tt";
            case "guideline.twice" -> "t";
            case "guideline.wrote" -> "tt";
            case "idea.large" -> "tt";
            case "idea.noPieces" -> "";
            case "idea.wrote" -> "tt";
            case "inside" -> "t";
            case "kits.both" -> "";
            case "kits.empty" -> "";
            case "kits.which" -> "";
            case "language" -> "tt";
            case "memory" -> "";
            case "missing" -> "t";
            case "notFile" -> "t";
            case "note" -> "t";
            case "option.noValue" -> "tt";
            case "option.twice" -> "t";
            case "option.unknown" -> "t";
            case "picture.colours" -> "t";
            case "picture.near" -> "ttt";
            case "picture.nothing" -> "tt";
            case "progress" -> "tw";
            case "read.cannot" -> "t";
            case "read.cannotInput" -> "";
            case "read.drawn" -> "t";
            case "read.memory" -> "";
            case "read.nothing" -> "";
            case "report" -> "";
            case "settings" -> "ttt";
            case "sheet.wrote" -> "t";
            case "shown" -> "t";
            case "size.reach" -> "t";
            case "size.which" -> "";
            case "unread" -> "t";
            case "unusable" -> "t";
            case "unusableInput" -> "w";
            case "word.tooMany" -> "t";
            default -> null;
        };
    }

    @Override
    public String said(Sentence sentence, Voice voice) {
        TypingWords words = voice.rooms().typing();
        return switch (sentence.key()) {
            case "command.unknown" -> words.commandUnknown(sentence.text(0, voice), sentence.text(1, voice));
            case "guideline.favourite" -> words.guidelineFavourite(sentence.text(0, voice), sentence.text(1, voice));
            case "guideline.twice" -> words.guidelineTwice(sentence.text(0, voice));
            case "guideline.wrote" -> words.guidelineWrote(sentence.text(0, voice), sentence.text(1, voice));
            case "idea.large" -> words.ideaLarge(sentence.text(0, voice), sentence.text(1, voice));
            case "idea.noPieces" -> words.ideaNoPieces();
            case "idea.wrote" -> words.ideaWrote(sentence.text(0, voice), sentence.text(1, voice));
            case "inside" -> words.inside(sentence.text(0, voice));
            case "kits.both" -> words.kitsBoth();
            case "kits.empty" -> words.kitsEmpty();
            case "kits.which" -> words.kitsWhich();
            case "language" -> words.language(sentence.text(0, voice), sentence.text(1, voice));
            case "memory" -> words.memory();
            case "missing" -> words.missing(sentence.text(0, voice));
            case "notFile" -> words.notFile(sentence.text(0, voice));
            case "note" -> words.note(sentence.text(0, voice));
            case "option.noValue" -> words.optionNoValue(sentence.text(0, voice), sentence.text(1, voice));
            case "option.twice" -> words.optionTwice(sentence.text(0, voice));
            case "option.unknown" -> words.optionUnknown(sentence.text(0, voice));
            case "picture.colours" -> words.pictureColours(sentence.text(0, voice));
            case "picture.near" -> words.pictureNear(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "picture.nothing" -> words.pictureNothing(sentence.text(0, voice), sentence.text(1, voice));
            case "progress" -> words.progress(sentence.text(0, voice), sentence.word(1));
            case "read.cannot" -> words.readCannot(sentence.text(0, voice));
            case "read.cannotInput" -> words.readCannotInput();
            case "read.drawn" -> words.readDrawn(sentence.text(0, voice));
            case "read.memory" -> words.readMemory();
            case "read.nothing" -> words.readNothing();
            case "report" -> words.report();
            case "settings" -> words.settings(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "sheet.wrote" -> words.sheetWrote(sentence.text(0, voice));
            case "shown" -> words.shown(sentence.text(0, voice));
            case "size.reach" -> words.sizeReach(sentence.text(0, voice));
            case "size.which" -> words.sizeWhich();
            case "unread" -> words.unread(sentence.text(0, voice));
            case "unusable" -> words.unusable(sentence.text(0, voice));
            case "unusableInput" -> words.unusableInput(sentence.word(0));
            case "word.tooMany" -> words.wordTooMany(sentence.text(0, voice));
            default -> throw new IllegalStateException("no message " + sentence.key());
        };
    }
}
