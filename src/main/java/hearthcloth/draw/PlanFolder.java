package hearthcloth.draw;

import hearthcloth.cloth.making.Face;
import hearthcloth.draw.cloth.FacePicture;
import hearthcloth.draw.cloth.HemPicture;
import hearthcloth.draw.cloth.MatPicture;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.cloth.SeamPicture;
import hearthcloth.draw.cloth.StepPicture;
import hearthcloth.draw.guide.CutBlocks;
import hearthcloth.draw.guide.GuideLength;
import hearthcloth.draw.picture.PdfWriter;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.PngWriter;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.draw.tied.TiedGift;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.Guide;
import hearthcloth.sew.PieceTask;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.tie.Wrapped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Everything of one proposal as files: {@code plan.json}, {@code front.svg}, {@code back.svg}, {@code cut.svg} and {@code
 * guide.pdf}, with a gift {@code tied.svg} too, and on request the pictures as PNG. The same plan always gives the same files.
 *
 * @param voice in which it is said; its ruler is best the one the plan was made with
 * @param gift what the cloth is to be tied round, if anything
 */
public record PlanFolder(Plan plan, Voice voice, Paper paper, Optional<Wrapped> gift) {

    private static final double SCREEN_DPI = 120;

    /**
     * The size of a picture for a screen, in millimetres; its letters are at least 16 px high where it is shown 560 px
     * high or wide.
     */
    private static final double SCREEN_PIECE = 140;

    /**
     * The size of a picture for a telephone, in millimetres; its letters are at least 16 px high where it is shown 330
     * px wide.
     */
    private static final double HAND_PIECE = 85;

    /** The same in English. */
    public PlanFolder(Plan plan, Ruler ruler, Paper paper, Optional<Wrapped> gift) {
        this(plan, Voice.english(ruler), paper, gift);
    }

    /** The files of a cloth that is for no gift in particular. */
    public PlanFolder(Plan plan, Ruler ruler, Paper paper) {
        this(plan, ruler, paper, Optional.empty());
    }

    /** Writes the files into {@code folder}, which must exist; files of these names are replaced. */
    public void write(Path folder, GuideLength length) throws IOException {
        Guide guide = Guide.of(plan, voice);
        Files.writeString(folder.resolve("plan.json"), planFile());
        Files.writeString(folder.resolve("front.svg"), SvgWriter.write(face(Face.FRONT)));
        Files.writeString(folder.resolve("back.svg"), SvgWriter.write(face(Face.BACK)));
        Files.writeString(folder.resolve("cut.svg"), SvgWriter.write(CutBlocks.sheet(plan, guide.cutting(), voice)));
        Optional<TiedGift> tied = printed();
        Optional<Picture> sheet = tied(tied);
        if (sheet.isPresent()) {
            Files.writeString(folder.resolve("tied.svg"), SvgWriter.write(sheet.get()));
        }
        Files.write(folder.resolve("guide.pdf"), guide(guide, tied, length));
    }

    /** Writes {@code slips.pdf}, a slip of paper to pin to each patch. */
    public void writeSlips(Path folder) throws IOException {
        Files.write(folder.resolve("slips.pdf"), slips());
    }

    /** A slip of paper for each patch, as a PDF. */
    public byte[] slips() {
        return PdfWriter.write(
                GuidePages.slipsTitle(plan, voice), voice.language().tag(), GuidePages.slips(sheets()));
    }

    /** Writes {@code front.png}, {@code back.png} and {@code cut.png} into {@code folder}, which must exist. */
    public void writePngs(Path folder) throws IOException {
        Guide guide = Guide.of(plan, voice);
        Files.write(folder.resolve("front.png"), PngWriter.write(face(Face.FRONT), SCREEN_DPI));
        Files.write(folder.resolve("back.png"), PngWriter.write(face(Face.BACK), SCREEN_DPI));
        Picture cut = CutBlocks.sheet(plan, guide.cutting(), voice);
        Files.write(folder.resolve("cut.png"), PngWriter.write(cut, SCREEN_DPI));
        Optional<Picture> sheet = tied(printed());
        if (sheet.isPresent()) {
            Files.write(folder.resolve("tied.png"), PngWriter.write(sheet.get(), SCREEN_DPI));
        }
    }

    /** Writes {@code net.pdf} and {@code net.svg}, the flat cloth with its folds, where the cloth ties the gift. */
    public void writeNet(Path folder) throws IOException {
        Optional<Picture> sheet = net();
        if (sheet.isPresent()) {
            Files.writeString(folder.resolve("net.svg"), SvgWriter.write(sheet.get()));
            Files.write(folder.resolve("net.pdf"), printed(sheet.get()));
        }
    }

    /** The flat cloth with its folds on one sheet, as a PDF; empty where the cloth does not tie the gift. */
    public Optional<byte[]> printedNet() {
        return net().map(this::printed);
    }

    private PlanSheets sheets() {
        return new PlanSheets(plan, voice, paper, gift);
    }

    private Optional<Picture> net() {
        return sheets().net();
    }

    private byte[] printed(Picture sheet) {
        return PdfWriter.write(sheet.title(), voice.language().tag(), List.of(sheet));
    }

    /** The cloth tied round the gift; empty without a gift, or where the cloth is too small for it. */
    public Optional<TiedGift> tied() {
        return sheets().tied();
    }

    /** The same as soft cloth where it comes to rest, as fine as a third of a sheet shows it. */
    private Optional<TiedGift> printed() {
        return tied().map(gift -> gift.softly(PRINTED));
    }

    /** Dots along a view of the tied gift on a sheet, which is some 55 to 85 mm wide. */
    private static final int PRINTED = 400;

    private Optional<Picture> tied(Optional<TiedGift> tied) {
        return sheets().tiedSheet(tied);
    }

    /** The text of {@code plan.json}. */
    public String planFile() {
        return sheets().planFile();
    }

    /** The side of a picture to keep or to send, in millimetres. */
    private static final double KEPT = 200;

    /** Dots an inch of a picture to send: about 1,200 across. */
    public static final double KEPT_DPI = 150;

    /** Dots along the tied gift in it. */
    private static final int SENT = 900;

    /** One face without a word. */
    public Picture plain(Face face) {
        return new FacePicture(plan, face, voice).plain(KEPT);
    }

    /** The tied gift alone, seen from a corner; empty without a gift, or where the cloth is too small for it. */
    public Optional<Picture> tiedAlone() {
        return tied().map(gift -> gift.softly(SENT).alone(KEPT, KEPT, voice.printing()));
    }

    /** Both sides and the tied gift, where there is one, beside each other: to send. */
    public Picture toSend() {
        double air = 10;
        Sketch sketch = new Sketch();
        double x = air;
        for (Picture one : List.of(plain(Face.FRONT), tiedAlone().orElseGet(() -> plain(Face.BACK)))) {
            sketch.place(one, new Point(x, air + (KEPT - one.height()) / 2));
            x += one.width() + air;
        }
        return sketch.finished(plan.story().title().in(voice), x, KEPT + 2 * air);
    }

    /** One face on a sheet of its own, with its legend. */
    public Picture face(Face face) {
        return sheets().face(face);
    }

    /**
     * One piece of fabric as it lies on the mat, for a screen.
     *
     * @param made how many of its cuts are made; the ruler lies for the next
     */
    public Picture onMat(PieceTask task, int made) {
        return new MatPicture(plan, task, voice, made).within(SCREEN_PIECE, SCREEN_PIECE);
    }

    /** The same for a telephone: drawn smaller, so that its letters are as large. */
    public Picture onMatInHand(PieceTask task, int made) {
        return new MatPicture(plan, task, voice, made).within(HAND_PIECE, HAND_PIECE);
    }

    /** What is under the needle or the iron, for a screen. */
    public Picture step(AtTheMachine step) {
        return step(step, SCREEN_PIECE);
    }

    /** The same for a telephone. */
    public Picture stepInHand(AtTheMachine step) {
        return step(step, HAND_PIECE);
    }

    private Picture step(AtTheMachine step, double side) {
        return switch (step.kind()) {
            case LAY -> laid(side);
            case TRY -> SeamPicture.upright(plan, voice).orElseGet(() -> laid(side));
            case JOIN, SEAM -> new StepPicture(plan, step.seam().orElseThrow(), voice).within(side, side);
            case HEM -> new HemPicture(plan, voice).onScreen(side);
        };
    }

    private Picture laid(double side) {
        return new FacePicture(plan, Face.FRONT, voice).within(side, side).picture();
    }

    /** The printed guide as a PDF. */
    public byte[] guide(GuideLength length) {
        return guide(Guide.of(plan, voice), printed(), length);
    }

    private byte[] guide(Guide guide, Optional<TiedGift> tied, GuideLength length) {
        return PdfWriter.write(
                plan.story().title().in(voice),
                voice.language().tag(),
                switch (length) {
                    case FULL -> sheets().guidePages(guide, tied);
                    case CLASS -> GuidePages.forClass(sheets(), guide);
                });
    }
}
