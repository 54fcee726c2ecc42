package hearthcloth.words.sentence;

import hearthcloth.words.mending.MendingWords;
import hearthcloth.words.speech.Voice;
import org.jspecify.annotations.Nullable;

/** Sentences of the room of mending. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class MendingSentences implements Room {

    static final Room ROOM = new MendingSentences();

    private MendingSentences() {}

    public static Sentence bar(Argument bar) {
        return new Sentence(ROOM, "bar", bar);
    }

    public static Sentence deedAgain(String what) {
        return new Sentence(ROOM, "deed.again", new Argument.Text(what));
    }

    public static Sentence deedAllCut(Argument cloth) {
        return new Sentence(ROOM, "deed.allCut", cloth);
    }

    public static Sentence deedCut(int count, Argument cut, String made, Argument piece) {
        return new Sentence(ROOM, "deed.cut", new Argument.Count(count), cut, new Argument.Text(made), piece);
    }

    public static Sentence deedLeft(Argument bar, String wrong) {
        return new Sentence(ROOM, "deed.left", bar, new Argument.Text(wrong));
    }

    public static Sentence deedMistake(Argument piece) {
        return new Sentence(ROOM, "deed.mistake", piece);
    }

    public static Sentence deedSewn(Argument name, Argument size, String what) {
        return new Sentence(ROOM, "deed.sewn", name, size, new Argument.Text(what));
    }

    public static Sentence deedShort(Argument bar, String way) {
        return new Sentence(ROOM, "deed.short", bar, new Argument.Text(way));
    }

    public static Sentence deedUnpicked(int more, Argument name, String what) {
        return new Sentence(ROOM, "deed.unpicked", new Argument.Count(more), name, new Argument.Text(what));
    }

    public static Sentence hearth() {
        return new Sentence(ROOM, "hearth");
    }

    public static Sentence noBar(Argument bar) {
        return new Sentence(ROOM, "no.bar", bar);
    }

    public static Sentence noLarge() {
        return new Sentence(ROOM, "no.large");
    }

    public static Sentence noLeft() {
        return new Sentence(ROOM, "no.left");
    }

    public static Sentence noNothing() {
        return new Sentence(ROOM, "no.nothing");
    }

    public static Sentence noShort(Argument bar) {
        return new Sentence(ROOM, "no.short", bar);
    }

    public static Sentence noWork() {
        return new Sentence(ROOM, "no.work");
    }

    public static Sentence piece(Argument fabric, Argument piece, Argument size) {
        return new Sentence(ROOM, "piece", fabric, piece, size);
    }

    public static Sentence shortAnew(Argument bar, Argument pieces) {
        return new Sentence(ROOM, "short.anew", bar, pieces);
    }

    public static Sentence shortBack() {
        return new Sentence(ROOM, "short.back");
    }

    public static Sentence shortPieced(Argument bar, Argument pieces) {
        return new Sentence(ROOM, "short.pieced", bar, pieces);
    }

    public static Sentence shortStrip(Argument bar, Argument piece, Argument size) {
        return new Sentence(ROOM, "short.strip", bar, piece, size);
    }

    public static Sentence shortTrim(Argument bar, Argument from, Argument less, Argument to, String way) {
        return new Sentence(ROOM, "short.trim", bar, from, less, to, new Argument.Text(way));
    }

    public static Sentence small(Argument by, Argument size, Argument what) {
        return new Sentence(ROOM, "small", by, size, what);
    }

    public static Sentence smallAcross(Argument length) {
        return new Sentence(ROOM, "small.across", length);
    }

    public static Sentence smallAlong(Argument length) {
        return new Sentence(ROOM, "small.along", length);
    }

    public static Sentence wayAgain(Argument pieces, Argument what) {
        return new Sentence(ROOM, "way.again", pieces, what);
    }

    public static Sentence wayBars(Argument bars, int count, Argument width) {
        return new Sentence(ROOM, "way.bars", bars, new Argument.Count(count), width);
    }

    public static Sentence wayFabric(Argument now, Argument was, Argument what) {
        return new Sentence(ROOM, "way.fabric", now, was, what);
    }

    public static Sentence waySmaller(Argument size, Argument what) {
        return new Sentence(ROOM, "way.smaller", size, what);
    }

    public static Sentence wayStrip(Argument pieces, Argument what) {
        return new Sentence(ROOM, "way.strip", pieces, what);
    }

    public static Sentence wayWider(Argument bars, Argument size, Argument what) {
        return new Sentence(ROOM, "way.wider", bars, size, what);
    }

    @Override
    public String name() {
        return "mending";
    }

    @Override
    public @Nullable String kinds(String key) {
        return switch (key) {
            case "bar" -> "t";
            case "deed.again" -> "w";
            case "deed.allCut" -> "t";
            case "deed.cut" -> "ctwt";
            case "deed.left" -> "tw";
            case "deed.mistake" -> "t";
            case "deed.sewn" -> "ttw";
            case "deed.short" -> "tw";
            case "deed.unpicked" -> "ctw";
            case "hearth" -> "";
            case "no.bar" -> "t";
            case "no.large" -> "";
            case "no.left" -> "";
            case "no.nothing" -> "";
            case "no.short" -> "t";
            case "no.work" -> "";
            case "piece" -> "ttt";
            case "short.anew" -> "tt";
            case "short.back" -> "";
            case "short.pieced" -> "tt";
            case "short.strip" -> "ttt";
            case "short.trim" -> "ttttw";
            case "small" -> "ttt";
            case "small.across" -> "t";
            case "small.along" -> "t";
            case "way.again" -> "tt";
            case "way.bars" -> "tct";
            case "way.fabric" -> "ttt";
            case "way.smaller" -> "tt";
            case "way.strip" -> "tt";
            case "way.wider" -> "ttt";
            default -> null;
        };
    }

    @Override
    public String said(Sentence sentence, Voice voice) {
        MendingWords words = voice.rooms().mending();
        return switch (sentence.key()) {
            case "bar" -> words.bar(sentence.text(0, voice));
            case "deed.again" -> words.deedAgain(sentence.word(0));
            case "deed.allCut" -> words.deedAllCut(sentence.text(0, voice));
            case "deed.cut" -> words.deedCut(sentence.count(0), sentence.text(1, voice), sentence.word(2), sentence.text(3, voice));
            case "deed.left" -> words.deedLeft(sentence.text(0, voice), sentence.word(1));
            case "deed.mistake" -> words.deedMistake(sentence.text(0, voice));
            case "deed.sewn" -> words.deedSewn(sentence.text(0, voice), sentence.text(1, voice), sentence.word(2));
            case "deed.short" -> words.deedShort(sentence.text(0, voice), sentence.word(1));
            case "deed.unpicked" -> words.deedUnpicked(sentence.count(0), sentence.text(1, voice), sentence.word(2));
            case "hearth" -> words.hearth();
            case "no.bar" -> words.noBar(sentence.text(0, voice));
            case "no.large" -> words.noLarge();
            case "no.left" -> words.noLeft();
            case "no.nothing" -> words.noNothing();
            case "no.short" -> words.noShort(sentence.text(0, voice));
            case "no.work" -> words.noWork();
            case "piece" -> words.piece(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "short.anew" -> words.shortAnew(sentence.text(0, voice), sentence.text(1, voice));
            case "short.back" -> words.shortBack();
            case "short.pieced" -> words.shortPieced(sentence.text(0, voice), sentence.text(1, voice));
            case "short.strip" -> words.shortStrip(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "short.trim" -> words.shortTrim(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice), sentence.text(3, voice), sentence.word(4));
            case "small" -> words.small(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "small.across" -> words.smallAcross(sentence.text(0, voice));
            case "small.along" -> words.smallAlong(sentence.text(0, voice));
            case "way.again" -> words.wayAgain(sentence.text(0, voice), sentence.text(1, voice));
            case "way.bars" -> words.wayBars(sentence.text(0, voice), sentence.count(1), sentence.text(2, voice));
            case "way.fabric" -> words.wayFabric(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "way.smaller" -> words.waySmaller(sentence.text(0, voice), sentence.text(1, voice));
            case "way.strip" -> words.wayStrip(sentence.text(0, voice), sentence.text(1, voice));
            case "way.wider" -> words.wayWider(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            default -> throw new IllegalStateException("no message " + sentence.key());
        };
    }
}
