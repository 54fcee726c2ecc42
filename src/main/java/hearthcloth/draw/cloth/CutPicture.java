package hearthcloth.draw.cloth;

import hearthcloth.cloth.Rect;
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
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.CutLine;
import hearthcloth.sew.PieceTask;
import hearthcloth.stash.Fabric;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;

/** A piece of the stash as it lies on the mat: what is cut from it, in which order, and what is left. */
public final class CutPicture {

    private static final double WANTED = 4;
    private static final double LEAST = 2.8;

    private final Plan plan;
    private final PieceTask task;
    private final PieceCut cut;
    private final Voice voice;
    private boolean small;

    public CutPicture(Plan plan, PieceTask task, Voice voice) {
        this.plan = plan;
        this.task = task;
        this.cut = task.cut();
        this.voice = voice;
    }

    /**
     * The largest drawing of the piece that fits into {@code width} by {@code height} millimetres, with dimensions and
     * leaders.
     */
    public ScaledPicture within(double width, double height) {
        DrawingScale scale = DrawingScale.fitting(cut.piece().size(), width, height);
        return ScaledPicture.within(width, height, scale, this::at);
    }

    /**
     * The same for a small cell whose title and list tell the sizes: names and cuts alone, and an arrow only where a nap
     * has a direction.
     */
    public ScaledPicture small(double width, double height) {
        CutPicture bare = new CutPicture(plan, task, voice);
        bare.small = true;
        return bare.within(width, height);
    }

    private Picture at(DrawingScale scale) {
        Sketch sketch = new Sketch();
        Bounds frame = scale.bounds(cut.tree().at(), 0, 0);
        FabricLook.of(cut.piece().fabric()).fill(sketch, frame.outline(), scale.laid(0, 0), 0);
        leftovers().forEach(left -> leftover(sketch, scale.bounds(left.at(), 0, 0), left.isScrap()));
        task.lines().forEach(line -> cutLine(sketch, run(line, scale)));
        sketch.outline(frame, Stroke.solid(0.3, Palette.INK));
        List<CutNumber> numbers = new ArrayList<>();
        List<Label> labels = new ArrayList<>();
        number(scale, numbers, labels);
        List<Bounds> taken = numbers.stream().map(CutNumber::room).toList();
        labels.addAll(labels(scale, taken));
        Labels placed = new Labels(frame, WANTED, LEAST, labels);
        placed.draw(sketch);
        numbers.forEach(number -> number.draw(sketch));
        dimensions(sketch, frame, placed);
        return sketch.trimmed(title(), 1);
    }

    private String title() {
        return voice.printing()
                .altCut(
                        cut.piece().fabric().name(),
                        task.lines().size(),
                        cut.piece().id(),
                        voice.write(cut.piece().size(), Rounding.DOWN));
    }

    /** A cut's line on paper, without thickness. */
    static Bounds run(CutLine line, DrawingScale scale) {
        Rect at = line.cut().at();
        Rect second = line.cut().second().at();
        return line.cut().upright()
                ? new Bounds(scale.mm(second.x()), scale.mm(at.y()), 0, scale.mm(at.height()))
                : new Bounds(scale.mm(at.x()), scale.mm(second.y()), scale.mm(at.width()), 0);
    }

    /** A leftover: an offcut with a name, or a scrap too small to keep. */
    record Leftover(Rect at, String name) {
        boolean isScrap() {
            return name.isEmpty();
        }
    }

    /** The leftovers, largest first; offcuts are numbered from 1. */
    List<Leftover> leftovers() {
        List<Leftover> out = new ArrayList<>();
        int named = 0;
        for (Rect left : cut.tree().left()) {
            boolean kept = CutTree.isReusable(left.size(), plan.rules().leastPiece());
            out.add(new Leftover(left, kept ? voice.printing().labelOffcut(Integer.toString(++named)) : ""));
        }
        return List.copyOf(out);
    }

    /** Draws a leftover pale, so that what is wanted stands out, and a scrap crossed out; a hatch is for wrong sides. */
    private static void leftover(Sketch sketch, Bounds at, boolean scrap) {
        sketch.add(new Mark.Tint(at.outline(), Palette.SHEET, 2 / 3.0));
        if (scrap) {
            Stroke stroke = Stroke.solid(0.3, Palette.SECOND_INK);
            sketch.line(new Point(at.x(), at.y()), new Point(at.right(), at.bottom()), stroke);
            sketch.line(new Point(at.x(), at.bottom()), new Point(at.right(), at.y()), stroke);
        }
    }

    /** The fabric's colour, two thirds of the way to paper. */
    private static Colour pale(Colour ground) {
        return Colour.of(towardsPaper(ground.red()), towardsPaper(ground.green()), towardsPaper(ground.blue()));
    }

    private static int towardsPaper(int channel) {
        return (channel + 2 * 255) / 3;
    }

    private static void cutLine(Sketch sketch, Bounds line) {
        Point from = new Point(line.x(), line.y());
        Point to = new Point(line.right(), line.bottom());
        sketch.line(from, to, Stroke.solid(1.1, Palette.SHEET));
        sketch.line(from, to, Stroke.solid(0.5, Palette.MADDER));
    }

    /** Places each cut's number on its line; a line that is too short or too crowded gets a leader. */
    private void number(DrawingScale scale, List<CutNumber> numbers, List<Label> labels) {
        List<Bounds> taken = new ArrayList<>();
        for (CutLine line : task.lines()) {
            String measure = voice.number(line.measure(), Rounding.UP);
            CutNumber.placed(line, run(line, scale), measure, taken)
                    .ifPresentOrElse(
                            number -> {
                                numbers.add(number);
                                taken.add(number.room());
                            },
                            () -> labels.add(Label.of(
                                    run(line, scale), Palette.SHEET, "cut " + line.number() + ": " + measure)));
        }
    }

    private List<Label> labels(DrawingScale scale, List<Bounds> taken) {
        Colour ground = cut.piece().fabric().colour();
        List<Label> labels = new ArrayList<>();
        for (CutTree.Kept kept : cut.tree().kept()) {
            String name = PatchName.of(kept.patch(), voice);
            labels.add(new Label(room(scale, kept.at(), taken), ground, wordings(name, kept.at(), Rounding.UP)));
        }
        for (Leftover left : leftovers()) {
            Bounds room = room(scale, left.at(), taken);
            if (!left.isScrap()) {
                labels.add(new Label(room, pale(ground), wordings(left.name(), left.at(), Rounding.DOWN)));
            }
        }
        return labels;
    }

    static Bounds room(DrawingScale scale, Rect at, List<Bounds> taken) {
        Bounds room = scale.bounds(at, 0, 0).inset(0.8);
        for (Bounds other : taken) {
            room = room.without(other);
        }
        return room;
    }

    List<List<String>> wordings(String name, Rect at, Rounding rounding) {
        if (small) {
            return List.of(List.of(name));
        }
        String size = asItLies(at.size(), rounding);
        return List.of(List.of(name, size), List.of(name + "\u00a0\u00a0" + size));
    }

    /** The size as it lies on the mat, width by height, in the same order as in the words beside it. */
    public String asItLies(Size size, Rounding rounding) {
        return voice.number(size.width(), rounding) + " × " + voice.number(size.height(), rounding);
    }

    private void dimensions(Sketch sketch, Bounds frame, Labels labels) {
        Size piece = cut.piece().size();
        double bottom = frame.bottom() + labels.gutter(Labels.Edge.BOTTOM) + 1 + Dimensions.ROOM;
        double left = frame.x() - labels.gutter(Labels.Edge.LEFT) - 2;
        if (!small) {
            Dimensions.across(sketch, frame.x(), frame.right(), bottom, voice.write(piece.width(), Rounding.DOWN));
            Dimensions.down(sketch, frame.y(), frame.bottom(), left, voice.write(piece.height(), Rounding.DOWN));
        } else if (cut.piece().fabric().nap() != Fabric.Nap.LENGTHWISE) {
            return;
        }
        grain(
                sketch,
                new Point(
                        frame.right() + labels.gutter(Labels.Edge.RIGHT) + 4,
                        frame.middle().y()),
                frame.height());
    }

    /** Draws an arrow along the length; with a nap it has one head, pointing to the top of the piece. */
    private void grain(Sketch sketch, Point middle, double room) {
        boolean oneWay = cut.piece().fabric().nap() == Fabric.Nap.LENGTHWISE;
        Type type = Type.of(3.2, Weight.REGULAR, Palette.SECOND_INK)
                .at(Type.Anchor.MIDDLE)
                .running(Type.Way.UP);
        String words = oneWay ? voice.printing().grainNap() : voice.printing().grain();
        double reach = Math.min(room, 26 + type.width(words)) / 2;
        Arrow.draw(sketch, middle, reach, type.width(words) / 2 + 1.5, !oneWay);
        if (reach > type.width(words) / 2 + 3) {
            sketch.words(words, middle.plus(Dimensions.halfCaps(type), 0), type);
        }
    }
}
