package hearthcloth.words.sentence;

import hearthcloth.words.photographing.PhotographingWords;
import hearthcloth.words.speech.Voice;
import org.jspecify.annotations.Nullable;

/** Sentences of the room of photographing. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class PhotographingSentences implements Room {

    static final Room ROOM = new PhotographingSentences();

    private PhotographingSentences() {}

    public static Sentence absent(Argument sheet) {
        return new Sentence(ROOM, "absent", sheet);
    }

    public static Sentence again(String how, Argument sheet) {
        return new Sentence(ROOM, "again", new Argument.Text(how), sheet);
    }

    public static Sentence doubtCutOff() {
        return new Sentence(ROOM, "doubt.cutOff");
    }

    public static Sentence doubtEdge() {
        return new Sentence(ROOM, "doubt.edge");
    }

    public static Sentence doubtFar() {
        return new Sentence(ROOM, "doubt.far");
    }

    public static Sentence doubtFrayed(Argument mm) {
        return new Sentence(ROOM, "doubt.frayed", mm);
    }

    public static Sentence doubtGround() {
        return new Sentence(ROOM, "doubt.ground");
    }

    public static Sentence doubtOver(Argument piece) {
        return new Sentence(ROOM, "doubt.over", piece);
    }

    public static Sentence doubtRim() {
        return new Sentence(ROOM, "doubt.rim");
    }

    public static Sentence doubtRough() {
        return new Sentence(ROOM, "doubt.rough");
    }

    public static Sentence doubtSheetAlike(Argument sheet) {
        return new Sentence(ROOM, "doubt.sheetAlike", sheet);
    }

    public static Sentence doubtSheetFaint(Argument sheet) {
        return new Sentence(ROOM, "doubt.sheetFaint", sheet);
    }

    public static Sentence doubtSheetSkew(Argument share, Argument sheet) {
        return new Sentence(ROOM, "doubt.sheetSkew", share, sheet);
    }

    public static Sentence doubtSheetTapped(Argument share, Argument sheet) {
        return new Sentence(ROOM, "doubt.sheetTapped", share, sheet);
    }

    public static Sentence doubtSheetUnseen(Argument sheet, int sides) {
        return new Sentence(ROOM, "doubt.sheetUnseen", sheet, new Argument.Count(sides));
    }

    public static Sentence doubtSheetsApart(Argument share) {
        return new Sentence(ROOM, "doubt.sheetsApart", share);
    }

    public static Sentence doubtSides() {
        return new Sentence(ROOM, "doubt.sides");
    }

    public static Sentence doubtTwo() {
        return new Sentence(ROOM, "doubt.two");
    }

    public static Sentence doubtUneven() {
        return new Sentence(ROOM, "doubt.uneven");
    }

    public static Sentence goneFabric() {
        return new Sentence(ROOM, "gone.fabric");
    }

    public static Sentence gonePiece(Argument piece) {
        return new Sentence(ROOM, "gone.piece", piece);
    }

    public static Sentence kept(String why) {
        return new Sentence(ROOM, "kept", new Argument.Text(why));
    }

    public static Sentence noMarks() {
        return new Sentence(ROOM, "no.marks");
    }

    public static Sentence noRival(Argument sheet) {
        return new Sentence(ROOM, "no.rival", sheet);
    }

    public static Sentence noRound(Argument sheet) {
        return new Sentence(ROOM, "no.round", sheet);
    }

    public static Sentence noShadow(Argument sheet) {
        return new Sentence(ROOM, "no.shadow", sheet);
    }

    public static Sentence noShare(Argument share, Argument sheet) {
        return new Sentence(ROOM, "no.share", share, sheet);
    }

    public static Sentence noSizes(Argument sheet) {
        return new Sentence(ROOM, "no.sizes", sheet);
    }

    public static Sentence noTwin(Argument sheet, Argument twin) {
        return new Sentence(ROOM, "no.twin", sheet, twin);
    }

    public static Sentence notePicture(Argument numbers) {
        return new Sentence(ROOM, "note.picture", numbers);
    }

    public static Sentence outlineCorner() {
        return new Sentence(ROOM, "outline.corner");
    }

    public static Sentence outlineFault(String fault, Argument most) {
        return new Sentence(ROOM, "outline.fault", new Argument.Text(fault), most);
    }

    public static Sentence outlineGrain() {
        return new Sentence(ROOM, "outline.grain");
    }

    public static Sentence outlineNone() {
        return new Sentence(ROOM, "outline.none");
    }

    public static Sentence outlineSplit(Argument piece) {
        return new Sentence(ROOM, "outline.split", piece);
    }

    public static Sentence pictureDamaged() {
        return new Sentence(ROOM, "picture.damaged");
    }

    public static Sentence pictureHeic() {
        return new Sentence(ROOM, "picture.heic");
    }

    public static Sentence pictureKind() {
        return new Sentence(ROOM, "picture.kind");
    }

    public static Sentence pictureLarge() {
        return new Sentence(ROOM, "picture.large");
    }

    public static Sentence picturePixels(Argument height, Argument mega, Argument width) {
        return new Sentence(ROOM, "picture.pixels", height, mega, width);
    }

    public static Sentence pictureScans() {
        return new Sentence(ROOM, "picture.scans");
    }

    public static Sentence pictureSmall(Argument height, Argument width) {
        return new Sentence(ROOM, "picture.small", height, width);
    }

    public static Sentence pictureUnread() {
        return new Sentence(ROOM, "picture.unread");
    }

    public static Sentence referenceCorner(Argument corner) {
        return new Sentence(ROOM, "reference.corner", corner);
    }

    public static Sentence referenceCorners(Argument count) {
        return new Sentence(ROOM, "reference.corners", count);
    }

    public static Sentence referenceLine() {
        return new Sentence(ROOM, "reference.line");
    }

    public static Sentence referenceSmall(Argument size) {
        return new Sentence(ROOM, "reference.small", size);
    }

    public static Sentence seenCut(String where, String white, String why) {
        return new Sentence(ROOM, "seen.cut", new Argument.Text(where), new Argument.Text(white), new Argument.Text(why));
    }

    public static Sentence seenNothing(String white) {
        return new Sentence(ROOM, "seen.nothing", new Argument.Text(white));
    }

    public static Sentence seenSkew(Argument share, Argument sheet, String where, String white) {
        return new Sentence(ROOM, "seen.skew", share, sheet, new Argument.Text(where), new Argument.Text(white));
    }

    public static Sentence seenWhite(Argument sheet) {
        return new Sentence(ROOM, "seen.white", sheet);
    }

    public static Sentence sheet(String sheet) {
        return new Sentence(ROOM, "sheet", new Argument.Text(sheet));
    }

    @Override
    public String name() {
        return "photographing";
    }

    @Override
    public @Nullable String kinds(String key) {
        return switch (key) {
            case "absent" -> "t";
            case "again" -> "wt";
            case "doubt.cutOff" -> "";
            case "doubt.edge" -> "";
            case "doubt.far" -> "";
            case "doubt.frayed" -> "t";
            case "doubt.ground" -> "";
            case "doubt.over" -> "t";
            case "doubt.rim" -> "";
            case "doubt.rough" -> "";
            case "doubt.sheetAlike" -> "t";
            case "doubt.sheetFaint" -> "t";
            case "doubt.sheetSkew" -> "tt";
            case "doubt.sheetTapped" -> "tt";
            case "doubt.sheetUnseen" -> "tc";
            case "doubt.sheetsApart" -> "t";
            case "doubt.sides" -> "";
            case "doubt.two" -> "";
            case "doubt.uneven" -> "";
            case "gone.fabric" -> "";
            case "gone.piece" -> "t";
            case "kept" -> "w";
            case "no.marks" -> "";
            case "no.rival" -> "t";
            case "no.round" -> "t";
            case "no.shadow" -> "t";
            case "no.share" -> "tt";
            case "no.sizes" -> "t";
            case "no.twin" -> "tt";
            case "note.picture" -> "t";
            case "outline.corner" -> "";
            case "outline.fault" -> "wt";
            case "outline.grain" -> "";
            case "outline.none" -> "";
            case "outline.split" -> "t";
            case "picture.damaged" -> "";
            case "picture.heic" -> "";
            case "picture.kind" -> "";
            case "picture.large" -> "";
            case "picture.pixels" -> "ttt";
            case "picture.scans" -> "";
            case "picture.small" -> "tt";
            case "picture.unread" -> "";
            case "reference.corner" -> "t";
            case "reference.corners" -> "t";
            case "reference.line" -> "";
            case "reference.small" -> "t";
            case "seen.cut" -> "www";
            case "seen.nothing" -> "w";
            case "seen.skew" -> "ttww";
            case "seen.white" -> "t";
            case "sheet" -> "w";
            default -> null;
        };
    }

    @Override
    public String said(Sentence sentence, Voice voice) {
        PhotographingWords words = voice.rooms().photographing();
        return switch (sentence.key()) {
            case "absent" -> words.absent(sentence.text(0, voice));
            case "again" -> words.again(sentence.word(0), sentence.text(1, voice));
            case "doubt.cutOff" -> words.doubtCutOff();
            case "doubt.edge" -> words.doubtEdge();
            case "doubt.far" -> words.doubtFar();
            case "doubt.frayed" -> words.doubtFrayed(sentence.text(0, voice));
            case "doubt.ground" -> words.doubtGround();
            case "doubt.over" -> words.doubtOver(sentence.text(0, voice));
            case "doubt.rim" -> words.doubtRim();
            case "doubt.rough" -> words.doubtRough();
            case "doubt.sheetAlike" -> words.doubtSheetAlike(sentence.text(0, voice));
            case "doubt.sheetFaint" -> words.doubtSheetFaint(sentence.text(0, voice));
            case "doubt.sheetSkew" -> words.doubtSheetSkew(sentence.text(0, voice), sentence.text(1, voice));
            case "doubt.sheetTapped" -> words.doubtSheetTapped(sentence.text(0, voice), sentence.text(1, voice));
            case "doubt.sheetUnseen" -> words.doubtSheetUnseen(sentence.text(0, voice), sentence.count(1));
            case "doubt.sheetsApart" -> words.doubtSheetsApart(sentence.text(0, voice));
            case "doubt.sides" -> words.doubtSides();
            case "doubt.two" -> words.doubtTwo();
            case "doubt.uneven" -> words.doubtUneven();
            case "gone.fabric" -> words.goneFabric();
            case "gone.piece" -> words.gonePiece(sentence.text(0, voice));
            case "kept" -> words.kept(sentence.word(0));
            case "no.marks" -> words.noMarks();
            case "no.rival" -> words.noRival(sentence.text(0, voice));
            case "no.round" -> words.noRound(sentence.text(0, voice));
            case "no.shadow" -> words.noShadow(sentence.text(0, voice));
            case "no.share" -> words.noShare(sentence.text(0, voice), sentence.text(1, voice));
            case "no.sizes" -> words.noSizes(sentence.text(0, voice));
            case "no.twin" -> words.noTwin(sentence.text(0, voice), sentence.text(1, voice));
            case "note.picture" -> words.notePicture(sentence.text(0, voice));
            case "outline.corner" -> words.outlineCorner();
            case "outline.fault" -> words.outlineFault(sentence.word(0), sentence.text(1, voice));
            case "outline.grain" -> words.outlineGrain();
            case "outline.none" -> words.outlineNone();
            case "outline.split" -> words.outlineSplit(sentence.text(0, voice));
            case "picture.damaged" -> words.pictureDamaged();
            case "picture.heic" -> words.pictureHeic();
            case "picture.kind" -> words.pictureKind();
            case "picture.large" -> words.pictureLarge();
            case "picture.pixels" -> words.picturePixels(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "picture.scans" -> words.pictureScans();
            case "picture.small" -> words.pictureSmall(sentence.text(0, voice), sentence.text(1, voice));
            case "picture.unread" -> words.pictureUnread();
            case "reference.corner" -> words.referenceCorner(sentence.text(0, voice));
            case "reference.corners" -> words.referenceCorners(sentence.text(0, voice));
            case "reference.line" -> words.referenceLine();
            case "reference.small" -> words.referenceSmall(sentence.text(0, voice));
            case "seen.cut" -> words.seenCut(sentence.word(0), sentence.word(1), sentence.word(2));
            case "seen.nothing" -> words.seenNothing(sentence.word(0));
            case "seen.skew" -> words.seenSkew(sentence.text(0, voice), sentence.text(1, voice), sentence.word(2), sentence.word(3));
            case "seen.white" -> words.seenWhite(sentence.text(0, voice));
            case "sheet" -> words.sheet(sentence.word(0));
            default -> throw new IllegalStateException("no message " + sentence.key());
        };
    }
}
