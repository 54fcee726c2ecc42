package hearthcloth.draw.cloth;

import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Side;
import hearthcloth.colour.Colour;
import hearthcloth.draw.fabric.FabricLook;
import hearthcloth.draw.letters.Weight;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Label;
import hearthcloth.draw.picture.Labels;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.Type;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.CutLine;
import hearthcloth.sew.PieceTask;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece on the mat while it is cut: what is cut already, the ruler laid to the number for the cut of now, what is to
 * come. The mat's squares are inches, or two centimetres.
 */
public final class MatPicture {

    private static final double WANTED = 5;
    private static final double LEAST = 3;

    /** How far the mat is drawn beyond the piece, in millimetres of paper: room for the ruler and a number. */
    private static final double AROUND = 12;

    private static final Stroke SQUARE = Stroke.solid(0.2, Palette.MAT_LINE);
    private static final Stroke FIFTH = Stroke.solid(0.5, Palette.MAT_LINE);
    private static final Type NUMBER = Type.of(3.6, Weight.BOLD, Palette.MADDER).at(Type.Anchor.MIDDLE);
    private static final Type BIG = Type.of(4.6, Weight.BOLD, Palette.ON_MADDER).at(Type.Anchor.MIDDLE);

    /** How far the longest threads stick out of a cut edge (ours). */
    private static final double FRAY_MM = 6;

    /** Threads that stick out as far as each other: a share of the longest, and how thick they and their gaps are by turns. */
    private record Threads(double share, List<Double> dashesMm) {}

    /** Few long ones, more of middle length, and many short ones at the roots, so that no edge looks like a comb (ours). */
    private static final List<Threads> THREADS = List.of(
            new Threads(1, List.of(0.5, 4.3, 0.6, 7.1, 0.5, 2.9)),
            new Threads(0.7, List.of(0.6, 2.3, 0.5, 3.7, 0.7, 1.6)),
            new Threads(0.4, List.of(0.9, 0.8, 0.7, 1.3)));

    /** How much paler is what the cut of now does not touch. */
    private static final double PALER = 0.5;

    private final Plan plan;
    private final PieceTask task;
    private final PieceCut cut;
    private final Voice voice;
    private final int made;

    /** @param made how many of the cuts are made, in their order */
    public MatPicture(Plan plan, PieceTask task, Voice voice, int made) {
        this.plan = plan;
        this.task = task;
        this.cut = task.cut();
        this.voice = voice;
        this.made = made;
    }

    /** The largest drawing that fits into {@code width} by {@code height} millimetres. */
    public Picture within(double width, double height) {
        DrawingScale scale = DrawingScale.fitting(cut.piece().size(), width - 2 * AROUND - 8, height - 2 * AROUND - 8);
        return ScaledPicture.within(width, height, scale, this::at).picture();
    }

    private Picture at(DrawingScale scale) {
        Sketch sketch = new Sketch();
        Bounds frame = scale.bounds(cut.tree().at(), 0, 0);
        squares(sketch, frame, scale);
        fray(sketch, frame, scale);
        FabricLook.of(cut.piece().fabric()).fill(sketch, frame.outline(), scale.laid(0, 0), 0);
        cut.tree().left().forEach(left -> leftover(sketch, scale.bounds(left, 0, 0)));
        if (made < task.lines().size()) {
            pale(sketch, frame, scale.bounds(now().cut().at(), 0, 0));
        }
        sketch.outline(frame, Stroke.solid(0.3, Palette.INK));
        task.lines().forEach(line -> line(sketch, CutPicture.run(line, scale), line.number()));
        List<CutNumber> numbers = numbers(scale);
        List<Label> labels = labels(scale, numbers.stream().map(CutNumber::room).toList());
        Labels placed = new Labels(frame, WANTED, LEAST, labels);
        placed.draw(sketch);
        numbers.forEach(number -> number.drawToCome(sketch));
        if (made < task.lines().size()) {
            new LaidRuler(sketch, scale, voice.ruler()).to(now());
            cutOfNow(sketch, CutPicture.run(now(), scale));
        }
        Dimensions.across(
                sketch,
                frame.x(),
                frame.right(),
                frame.bottom() + placed.gutter(Labels.Edge.BOTTOM) + 1 + Dimensions.ROOM,
                voice.write(cut.piece().size().width(), Rounding.DOWN));
        return sketch.trimmed(title(), 0.5);
    }

    private String title() {
        return voice.printing()
                .matTitle(
                        String.valueOf(task.lines().size()),
                        String.valueOf(made),
                        cut.piece().id());
    }

    private CutLine now() {
        return task.lines().get(made);
    }

    private void squares(Sketch sketch, Bounds frame, DrawingScale scale) {
        Bounds mat = frame.grown(AROUND);
        double step = scale.mm(voice.ruler().isMetric() ? Length.cm(2) : Length.inches(1));
        int across = (int) Math.ceil(AROUND / step);
        for (int i = -across; i * step < mat.right(); i++) {
            double x = i * step;
            if (x > mat.x()) {
                sketch.line(new Point(x, mat.y()), new Point(x, mat.bottom()), i % 5 == 0 ? FIFTH : SQUARE);
            }
        }
        for (int i = -across; i * step < mat.bottom(); i++) {
            double y = i * step;
            if (y > mat.y()) {
                sketch.line(new Point(mat.x(), y), new Point(mat.right(), y), i % 5 == 0 ? FIFTH : SQUARE);
            }
        }
    }

    /** Threads of the cloth's own ground stick out of its cut edges; the piece itself lies over their roots. */
    private void fray(Sketch sketch, Bounds frame, DrawingScale scale) {
        double millimetre = scale.mm(Length.cm(1)) / 10;
        for (Threads threads : THREADS) {
            sketch.outline(
                    frame,
                    new Stroke(
                            2 * FRAY_MM * threads.share() * millimetre,
                            cut.piece().fabric().colour(),
                            threads.dashesMm().stream()
                                    .map(thread -> thread * millimetre)
                                    .toList()));
        }
    }

    private static void leftover(Sketch sketch, Bounds at) {
        sketch.add(new Mark.Tint(at.outline(), Palette.SHEET, 0.45));
        sketch.hatch(at, 4.5, Stroke.solid(0.25, Palette.SECOND_INK));
    }

    /** Takes the light off all that lies outside the part that is cut now. */
    private static void pale(Sketch sketch, Bounds frame, Bounds now) {
        for (Bounds beside : List.of(
                new Bounds(frame.x(), frame.y(), frame.width(), now.y() - frame.y()),
                new Bounds(frame.x(), now.bottom(), frame.width(), frame.bottom() - now.bottom()),
                new Bounds(frame.x(), now.y(), now.x() - frame.x(), now.height()),
                new Bounds(now.right(), now.y(), frame.right() - now.right(), now.height()))) {
            if (beside.width() > 0.01 && beside.height() > 0.01) {
                sketch.add(new Mark.Tint(beside.outline(), Palette.SHEET, PALER));
            }
        }
    }

    private void line(Sketch sketch, Bounds line, int number) {
        Point from = new Point(line.x(), line.y());
        Point to = new Point(line.right(), line.bottom());
        sketch.line(from, to, Stroke.solid(1.3, Palette.SHEET));
        sketch.line(from, to, number <= made ? Stroke.solid(0.4, Palette.INK) : Stroke.dots(0.5, Palette.MADDER));
    }

    /** The numbers of the cuts after the one of now. */
    private List<CutNumber> numbers(DrawingScale scale) {
        List<CutNumber> numbers = new ArrayList<>();
        List<Bounds> taken = new ArrayList<>();
        for (CutLine line : task.lines()) {
            if (line.number() > made + 1) {
                CutNumber.placed(line, CutPicture.run(line, scale), "", taken).ifPresent(number -> {
                    numbers.add(number);
                    taken.add(number.room());
                });
            }
        }
        return numbers;
    }

    private List<Label> labels(DrawingScale scale, List<Bounds> taken) {
        CutPicture words = new CutPicture(plan, task, voice);
        Colour ground = cut.piece().fabric().colour();
        List<Label> labels = new ArrayList<>();
        for (CutTree.Kept kept : cut.tree().kept()) {
            labels.add(new Label(
                    CutPicture.room(scale, kept.at(), taken),
                    ground,
                    words.wordings(PatchName.of(kept.patch(), voice), kept.at(), Rounding.UP)));
        }
        for (Rect left : cut.tree().left()) {
            if (CutTree.isReusable(left.size(), plan.rules().leastPiece())) {
                Label stays = new Label(
                        CutPicture.room(scale, left, taken),
                        ground,
                        words.wordings(voice.printing().matStays(), left, Rounding.DOWN));
                if (stays.fits(LEAST)) {
                    labels.add(stays);
                }
            }
        }
        return labels;
    }

    private void cutOfNow(Sketch sketch, Bounds line) {
        boolean upright = now().cut().upright();
        Point from = new Point(line.x(), line.y()).plus(upright ? 0 : -3, upright ? -3 : 0);
        Point to = new Point(line.right(), line.bottom()).plus(upright ? 0 : 3, upright ? 3 : 0);
        sketch.line(from, to, Stroke.solid(2.2, Palette.SHEET));
        sketch.line(from, to, Stroke.solid(1.2, Palette.MADDER));
        Point disc = upright ? from.plus(0, -3) : to.plus(3, 0);
        sketch.add(new Mark.Disc(disc, 4.1, Palette.SHEET));
        sketch.add(new Mark.Disc(disc, 3.5, Palette.MADDER));
        sketch.words(Integer.toString(now().number()), disc.plus(0, Dimensions.halfCaps(BIG)), BIG);
    }

    /** A cut to come: its number in a ring. */
    static void ring(Sketch sketch, Point middle, int number) {
        sketch.add(new Mark.Disc(middle, CutNumber.RADIUS + 0.5, Palette.MADDER));
        sketch.add(new Mark.Disc(middle, CutNumber.RADIUS, Palette.SHEET));
        sketch.words(Integer.toString(number), middle.plus(0, Dimensions.halfCaps(NUMBER)), NUMBER);
    }

    /** A ruler seen through, its end on the cut. */
    private record LaidRuler(Sketch sketch, DrawingScale scale, Ruler ruler) {

        private static final double OVER = 8;
        private static final double ON = 3.4;
        private static final Stroke EDGE = Stroke.solid(0.35, Palette.INDIGO);
        private static final Stroke TICK = Stroke.solid(0.25, Palette.INK);
        private static final Type UNITS = Type.of(3, Weight.REGULAR, Palette.INK);

        void to(CutLine line) {
            Bounds part = scale.bounds(line.cut().at(), 0, 0);
            Bounds run = CutPicture.run(line, scale);
            boolean upright = line.cut().upright();
            boolean forth = line.from() == Side.LEFT || line.from() == Side.TOP;
            Bounds band = upright
                    ? between(forth ? part.x() : run.x(), forth ? run.x() : part.right(), part.y() - OVER)
                    : turned(forth ? part.y() : run.y(), forth ? run.y() : part.bottom(), part.x() - OVER);
            sketch.add(new Mark.Tint(band.outline(), Palette.INDIGO, 0.13));
            sketch.outline(band, EDGE);
            units(band, upright, forth);
        }

        private static Bounds between(double from, double to, double top) {
            return new Bounds(from, top, to - from, OVER + ON);
        }

        private static Bounds turned(double from, double to, double left) {
            return new Bounds(left, from, OVER + ON, to - from);
        }

        private void units(Bounds band, boolean upright, boolean forth) {
            double unit = scale.mm(ruler.unit() == Unit.INCH ? Length.inches(1) : Length.cm(1));
            double length = upright ? band.width() : band.height();
            int every = unit >= 5 ? 1 : unit >= 2.5 ? 2 : 5;
            for (int i = 1; i * unit <= length + 0.01; i++) {
                double off = forth ? i * unit : length - i * unit;
                Point tip =
                        upright ? new Point(band.x() + off, band.bottom()) : new Point(band.right(), band.y() + off);
                double long1 = i % every == 0 ? 2.4 : 1.4;
                sketch.line(tip, upright ? tip.plus(0, -long1) : tip.plus(-long1, 0), TICK);
                if (i % every == 0 && (i + 0.4) * unit < length) {
                    Point at = upright ? tip.plus(0, -3.4) : tip.plus(-3, Dimensions.halfCaps(UNITS));
                    sketch.words(Integer.toString(i), at, UNITS.at(upright ? Type.Anchor.MIDDLE : Type.Anchor.END));
                }
            }
        }
    }
}
