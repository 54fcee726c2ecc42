package hearthcloth.words.sentence;

import hearthcloth.words.storing.StoringWords;
import hearthcloth.words.speech.Voice;
import org.jspecify.annotations.Nullable;

/** Sentences of the room of storing. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class StoringSentences implements Room {

    static final Room ROOM = new StoringSentences();

    private StoringSentences() {}

    public static Sentence again() {
        return new Sentence(ROOM, "again");
    }

    public static Sentence archive(String why) {
        return new Sentence(ROOM, "archive", new Argument.Text(why));
    }

    public static Sentence archiveIn() {
        return new Sentence(ROOM, "archive.in");
    }

    public static Sentence archiveLacks(Argument name) {
        return new Sentence(ROOM, "archive.lacks", name);
    }

    public static Sentence archivePass(Argument most) {
        return new Sentence(ROOM, "archive.pass", most);
    }

    public static Sentence changed(Argument name, String what) {
        return new Sentence(ROOM, "changed", name, new Argument.Text(what));
    }

    public static Sentence copy(Argument path, String why) {
        return new Sentence(ROOM, "copy", path, new Argument.Text(why));
    }

    public static Sentence copyWhole() {
        return new Sentence(ROOM, "copy.whole");
    }

    public static Sentence example() {
        return new Sentence(ROOM, "example");
    }

    public static Sentence gone(String what) {
        return new Sentence(ROOM, "gone", new Argument.Text(what));
    }

    public static Sentence journal() {
        return new Sentence(ROOM, "journal");
    }

    public static Sentence lacking() {
        return new Sentence(ROOM, "lacking");
    }

    public static Sentence misfit() {
        return new Sentence(ROOM, "misfit");
    }

    public static Sentence misfitAt(Argument what) {
        return new Sentence(ROOM, "misfit.at", what);
    }

    public static Sentence missing(String name, Argument path) {
        return new Sentence(ROOM, "missing", new Argument.Text(name), path);
    }

    public static Sentence openAlready(String address) {
        return new Sentence(ROOM, "open.already", new Argument.Text(address));
    }

    public static Sentence openAt(Argument address) {
        return new Sentence(ROOM, "open.at", address);
    }

    public static Sentence openCamera(Argument address) {
        return new Sentence(ROOM, "open.camera", address);
    }

    public static Sentence openClose(String address) {
        return new Sentence(ROOM, "open.close", new Argument.Text(address));
    }

    public static Sentence openCode(Argument code) {
        return new Sentence(ROOM, "open.code", code);
    }

    public static Sentence openFolder(Argument file) {
        return new Sentence(ROOM, "open.folder", file);
    }

    public static Sentence openKept(Argument file) {
        return new Sentence(ROOM, "open.kept", file);
    }

    public static Sentence openLan(Argument address) {
        return new Sentence(ROOM, "open.lan", address);
    }

    public static Sentence openRestoreStudio() {
        return new Sentence(ROOM, "open.restoreStudio");
    }

    public static Sentence openRestored(Argument made) {
        return new Sentence(ROOM, "open.restored", made);
    }

    public static Sentence openStudio(Argument address) {
        return new Sentence(ROOM, "open.studio", address);
    }

    public static Sentence openedDamaged(String copy, Argument name) {
        return new Sentence(ROOM, "opened.damaged", new Argument.Text(copy), name);
    }

    public static Sentence openedFile(Argument name, String why) {
        return new Sentence(ROOM, "opened.file", name, new Argument.Text(why));
    }

    public static Sentence openedGone(String copy, Argument path) {
        return new Sentence(ROOM, "opened.gone", new Argument.Text(copy), path);
    }

    public static Sentence openedOlder(Argument name, Argument why) {
        return new Sentence(ROOM, "opened.older", name, why);
    }

    public static Sentence person(Argument most, String why) {
        return new Sentence(ROOM, "person", most, new Argument.Text(why));
    }

    public static Sentence photoUnread() {
        return new Sentence(ROOM, "photo.unread");
    }

    public static Sentence photosFull() {
        return new Sentence(ROOM, "photos.full");
    }

    public static Sentence piece(Argument fabric, Argument piece) {
        return new Sentence(ROOM, "piece", fabric, piece);
    }

    public static Sentence placeArriving(Argument path) {
        return new Sentence(ROOM, "place.arriving", path);
    }

    public static Sentence placeNoPort(Argument port) {
        return new Sentence(ROOM, "place.noPort", port);
    }

    public static Sentence proxy() {
        return new Sentence(ROOM, "proxy");
    }

    public static Sentence record(String what, String why) {
        return new Sentence(ROOM, "record", new Argument.Text(what), new Argument.Text(why));
    }

    public static Sentence studio(Argument address, String why) {
        return new Sentence(ROOM, "studio", address, new Argument.Text(why));
    }

    public static Sentence teacher() {
        return new Sentence(ROOM, "teacher");
    }

    public static Sentence trouble(String why) {
        return new Sentence(ROOM, "trouble", new Argument.Text(why));
    }

    public static Sentence troubleGone(Argument path) {
        return new Sentence(ROOM, "trouble.gone", path);
    }

    public static Sentence work(Argument path, String why) {
        return new Sentence(ROOM, "work", path, new Argument.Text(why));
    }

    @Override
    public String name() {
        return "storing";
    }

    @Override
    public @Nullable String kinds(String key) {
        return switch (key) {
            case "again" -> "";
            case "archive" -> "w";
            case "archive.in" -> "";
            case "archive.lacks" -> "t";
            case "archive.pass" -> "t";
            case "changed" -> "tw";
            case "copy" -> "tw";
            case "copy.whole" -> "";
            case "example" -> "";
            case "gone" -> "w";
            case "journal" -> "";
            case "lacking" -> "";
            case "misfit" -> "";
            case "misfit.at" -> "t";
            case "missing" -> "wt";
            case "open.already" -> "w";
            case "open.at" -> "t";
            case "open.camera" -> "t";
            case "open.close" -> "w";
            case "open.code" -> "t";
            case "open.folder" -> "t";
            case "open.kept" -> "t";
            case "open.lan" -> "t";
            case "open.restoreStudio" -> "";
            case "open.restored" -> "t";
            case "open.studio" -> "t";
            case "opened.damaged" -> "wt";
            case "opened.file" -> "tw";
            case "opened.gone" -> "wt";
            case "opened.older" -> "tt";
            case "person" -> "tw";
            case "photo.unread" -> "";
            case "photos.full" -> "";
            case "piece" -> "tt";
            case "place.arriving" -> "t";
            case "place.noPort" -> "t";
            case "proxy" -> "";
            case "record" -> "ww";
            case "studio" -> "tw";
            case "teacher" -> "";
            case "trouble" -> "w";
            case "trouble.gone" -> "t";
            case "work" -> "tw";
            default -> null;
        };
    }

    @Override
    public String said(Sentence sentence, Voice voice) {
        StoringWords words = voice.rooms().storing();
        return switch (sentence.key()) {
            case "again" -> words.again();
            case "archive" -> words.archive(sentence.word(0));
            case "archive.in" -> words.archiveIn();
            case "archive.lacks" -> words.archiveLacks(sentence.text(0, voice));
            case "archive.pass" -> words.archivePass(sentence.text(0, voice));
            case "changed" -> words.changed(sentence.text(0, voice), sentence.word(1));
            case "copy" -> words.copy(sentence.text(0, voice), sentence.word(1));
            case "copy.whole" -> words.copyWhole();
            case "example" -> words.example();
            case "gone" -> words.gone(sentence.word(0));
            case "journal" -> words.journal();
            case "lacking" -> words.lacking();
            case "misfit" -> words.misfit();
            case "misfit.at" -> words.misfitAt(sentence.text(0, voice));
            case "missing" -> words.missing(sentence.word(0), sentence.text(1, voice));
            case "open.already" -> words.openAlready(sentence.word(0));
            case "open.at" -> words.openAt(sentence.text(0, voice));
            case "open.camera" -> words.openCamera(sentence.text(0, voice));
            case "open.close" -> words.openClose(sentence.word(0));
            case "open.code" -> words.openCode(sentence.text(0, voice));
            case "open.folder" -> words.openFolder(sentence.text(0, voice));
            case "open.kept" -> words.openKept(sentence.text(0, voice));
            case "open.lan" -> words.openLan(sentence.text(0, voice));
            case "open.restoreStudio" -> words.openRestoreStudio();
            case "open.restored" -> words.openRestored(sentence.text(0, voice));
            case "open.studio" -> words.openStudio(sentence.text(0, voice));
            case "opened.damaged" -> words.openedDamaged(sentence.word(0), sentence.text(1, voice));
            case "opened.file" -> words.openedFile(sentence.text(0, voice), sentence.word(1));
            case "opened.gone" -> words.openedGone(sentence.word(0), sentence.text(1, voice));
            case "opened.older" -> words.openedOlder(sentence.text(0, voice), sentence.text(1, voice));
            case "person" -> words.person(sentence.text(0, voice), sentence.word(1));
            case "photo.unread" -> words.photoUnread();
            case "photos.full" -> words.photosFull();
            case "piece" -> words.piece(sentence.text(0, voice), sentence.text(1, voice));
            case "place.arriving" -> words.placeArriving(sentence.text(0, voice));
            case "place.noPort" -> words.placeNoPort(sentence.text(0, voice));
            case "proxy" -> words.proxy();
            case "record" -> words.record(sentence.word(0), sentence.word(1));
            case "studio" -> words.studio(sentence.text(0, voice), sentence.word(1));
            case "teacher" -> words.teacher();
            case "trouble" -> words.trouble(sentence.word(0));
            case "trouble.gone" -> words.troubleGone(sentence.text(0, voice));
            case "work" -> words.work(sentence.text(0, voice), sentence.word(1));
            default -> throw new IllegalStateException("no message " + sentence.key());
        };
    }
}
