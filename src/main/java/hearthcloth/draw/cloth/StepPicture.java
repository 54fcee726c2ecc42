package hearthcloth.draw.cloth;

import hearthcloth.cloth.Half;
import hearthcloth.cloth.Join;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.Step;
import hearthcloth.cloth.face.Shown;
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
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;

/**
 * The two halves of one seam side by side, front up, as they lie in the cloth: where the stitches go, which edge wraps
 * the other, what is trimmed afterwards. The gap between them is not to scale.
 */
public final class StepPicture {

    /** The gap between the two halves on paper, in millimetres; less in a small picture. */
    private double gap = 9;

    private boolean small;

    private static final double WANTED = 4;
    private static final double LEAST = 2.8;

    private final Step step;
    private final Voice voice;
    private final Dyes dyes;
    private final RawPart first;
    private final RawPart second;

    public StepPicture(Plan plan, Step step, Voice voice) {
        this.voice = voice;
        this.step = step;
        this.dyes = Dyes.of(plan);
        this.first = RawPart.of(plan, step, Half.FIRST);
        this.second = RawPart.of(plan, step, Half.SECOND);
    }

    /** The largest drawing that fits into {@code width} by {@code height} millimetres. */
    public Picture within(double width, double height) {
        Join join = step.seam().join();
        Size one = first.raw().size();
        Size other = second.raw().size();
        Length along = join.edge(one).max(join.edge(other));
        Size both = join.size(join.across(one).plus(join.across(other)), along);
        DrawingScale scale = DrawingScale.fitting(both, width, height);
        return ScaledPicture.within(width, height, scale, this::at).picture();
    }

    /** The same for a small card whose words tell what is trimmed. */
    public Picture small(double width, double height) {
        small = true;
        gap = 6;
        return within(width, height);
    }

    private Picture at(DrawingScale scale) {
        Sketch sketch = new Sketch();
        List<Label> labels = new ArrayList<>();
        part(sketch, Half.FIRST, scale, labels);
        part(sketch, Half.SECOND, scale, labels);
        Bounds frame = sketch.bounds();
        Labels placed = new Labels(frame, WANTED, LEAST, labels);
        placed.draw(sketch);
        wrapping(sketch, scale);
        if (!small) {
            trimming(sketch, scale, frame, placed);
        }
        return sketch.trimmed(title(), 1);
    }

    private String title() {
        return voice.printing()
                .altStep(
                        names(step.added()),
                        Integer.toString(step.number()),
                        names(step.added().other()));
    }

    private String names(Half half) {
        List<hearthcloth.cloth.Patch> patches = step.patches(half);
        return patches.size() == 1
                ? PatchName.of(patches.get(0), voice)
                : voice.printing().altPatches(patches.size());
    }

    private RawPart part(Half half) {
        return half == Half.FIRST ? first : second;
    }

    /** The place of a rectangle of one half on paper; the second half is moved by the gap and both allowances. */
    private Bounds bounds(Rect rect, Half half, DrawingScale scale) {
        Bounds at = scale.bounds(rect, 0, 0);
        if (half == Half.FIRST) {
            return at;
        }
        Join join = step.seam().join();
        Length overlap = first.open()
                .on(join.facing(Half.FIRST))
                .plus(first.extra().on(join.facing(Half.FIRST)))
                .plus(second.open().on(join.facing(Half.SECOND)))
                .plus(second.extra().on(join.facing(Half.SECOND)));
        double off = scale.mm(overlap) + gap;
        return join == Join.BESIDE ? at.movedBy(off, 0) : at.movedBy(0, off);
    }

    private void part(Sketch sketch, Half half, DrawingScale scale, List<Label> labels) {
        RawPart part = part(half);
        // Prints lie as on the whole cloth, so that they are the same in every picture.
        Bounds corner = bounds(Rect.at(Length.ZERO, Length.ZERO, part.raw().size()), half, scale);
        for (Shown.Field field : part.shown().fields()) {
            Bounds at = bounds(part.reaching(field.at()), half, scale);
            dyes.field(sketch, field, at, at, scale.laid(corner.x(), corner.y()));
            if (!field.fell()) {
                label(field, half, scale).ifPresent(labels::add);
            }
        }
        for (Shown.Row row : part.shown().rows()) {
            if (row.kind() != Shown.Row.Kind.HEM) {
                line(sketch, bounds(part.reaching(row.at()), half, scale), dyes.stitches());
            }
        }
        sketch.outline(bounds(part.raw(), half, scale), Stroke.solid(0.25, Palette.INK));
    }

    /** A name for every patch that has room for it, and always for what is added. */
    private java.util.Optional<Label> label(Shown.Field field, Half half, DrawingScale scale) {
        Rect at = field.at()
                .movedBy(part(half).finished().x(), part(half).finished().y());
        Bounds room = bounds(at, half, scale).inset(1);
        Label label = Label.of(room, dyes.colour(field.patch().fabric()), PatchName.of(field.patch(), voice));
        boolean needed = half == step.added() || step.joinedBar().isPresent();
        return label.fits(LEAST) || needed ? java.util.Optional.of(label) : java.util.Optional.empty();
    }

    /**
     * Draws the row to stitch on both halves, and on the wrapping one its wide edge and the direction in which it goes.
     */
    private void wrapping(Sketch sketch, DrawingScale scale) {
        Half wraps = step.seam().wraps();
        Bounds wide = edge(wraps, scale);
        Bounds narrow = edge(wraps.other(), scale);
        for (Shown.Field field : part(wraps).shown().fields()) {
            Bounds at = bounds(part(wraps).reaching(field.at()), wraps, scale).shared(wide);
            sketch.add(new Mark.Tint(at.outline(), Dyes.SHADE, 0.3));
        }
        sketch.outline(wide, Stroke.solid(0.35, Palette.INK));
        for (Half half : Half.values()) {
            Bounds line = bounds(joiningLine(half), half, scale);
            line(sketch, line, Stroke.solid(0.9, Palette.SHEET));
            line(sketch, line, Stroke.stitches(0.45, Palette.INK));
        }
        arrow(sketch, wide, narrow);
    }

    /** The strip from the joining line to the raw edge that will be sewn. */
    private Bounds edge(Half half, DrawingScale scale) {
        Side side = step.seam().join().facing(half);
        RawPart part = part(half);
        Rect raw = part.exact();
        Length wide = part.open().on(side);
        Rect strip = switch (side) {
            case LEFT -> Rect.at(raw.x(), raw.y(), new Size(wide, raw.height()));
            case RIGHT -> Rect.at(raw.right().minus(wide), raw.y(), new Size(wide, raw.height()));
            case TOP -> Rect.at(raw.x(), raw.y(), new Size(raw.width(), wide));
            case BOTTOM -> Rect.at(raw.x(), raw.bottom().minus(wide), new Size(raw.width(), wide));
        };
        return bounds(strip, half, scale);
    }

    private Rect joiningLine(Half half) {
        Rect raw = part(half).exact();
        Length at = RawPart.line(part(half).finished(), step.seam().join().facing(half));
        return step.seam().join() == Join.BESIDE
                ? Rect.at(at, raw.y(), new Size(Length.ZERO, raw.height()))
                : Rect.at(raw.x(), at, new Size(raw.width(), Length.ZERO));
    }

    /** Draws an arrow across the gap, from the wrapping edge to the wrapped one. */
    private void arrow(Sketch sketch, Bounds wide, Bounds narrow) {
        boolean beside = step.seam().join() == Join.BESIDE;
        boolean onwards = beside ? narrow.x() > wide.x() : narrow.y() > wide.y();
        double way = onwards ? 1 : -1;
        double from = beside ? (onwards ? wide.right() : wide.x()) : (onwards ? wide.bottom() : wide.y());
        double middle = beside ? wide.middle().y() : wide.middle().x();
        Type type = Type.of(3.4, Weight.SEMIBOLD, Palette.INK).at(Type.Anchor.MIDDLE);
        String wraps = voice.printing().stepWraps();
        double apart = beside ? wide.height() : wide.width();
        double aside = Math.min(apart / 2 - 1, type.width(wraps) / 2 + 5);
        for (double side : new double[] {-aside, aside}) {
            Point tail = beside ? new Point(from + way, middle + side) : new Point(middle + side, from + way);
            Point tip = beside ? tail.plus(way * (gap - 2), 0) : tail.plus(0, way * (gap - 2));
            head(sketch, tail, tip, beside, way);
        }
        if (apart > type.width(wraps) + 4) {
            double line = from + way * gap / 2 + Dimensions.halfCaps(type);
            sketch.words(
                    wraps,
                    beside ? new Point(line, middle) : new Point(middle, line),
                    type.running(beside ? Type.Way.UP : Type.Way.ALONG));
        }
    }

    private static void head(Sketch sketch, Point tail, Point tip, boolean beside, double way) {
        sketch.line(tail, tip, Stroke.solid(0.45, Palette.INK));
        Point left = beside ? tip.plus(-way * 2, 1.2) : tip.plus(1.2, -way * 2);
        Point right = beside ? tip.plus(-way * 2, -1.2) : tip.plus(-1.2, -way * 2);
        sketch.add(new Mark.Line(List.of(left, tip, right), Stroke.solid(0.6, Palette.INK)));
    }

    /** Draws the trim line of what is too long or too wide, and its word outside the drawing. */
    private void trimming(Sketch sketch, DrawingScale scale, Bounds frame, Labels labels) {
        if (step.joinedBar().isPresent()) {
            return;
        }
        RawPart added = part(step.added());
        Bounds exact = bounds(added.exact(), step.added(), scale);
        Bounds raw = bounds(added.raw(), step.added(), scale);
        for (Side side : Side.values()) {
            if (!added.extra().on(side).isPositive()) {
                continue;
            }
            boolean upright = side.isUpright();
            double at = switch (side) {
                case LEFT -> exact.x();
                case RIGHT -> exact.right();
                case TOP -> exact.y();
                case BOTTOM -> exact.bottom();
            };
            Point from = upright ? new Point(at, raw.y() - 2) : new Point(raw.x() - 2, at);
            Point to = upright ? new Point(at, raw.bottom() + 2) : new Point(raw.right() + 2, at);
            sketch.line(from, to, Stroke.solid(1.1, Palette.SHEET));
            sketch.line(from, to, Stroke.dots(0.6, Palette.MADDER));
            words(sketch, frame, raw, side, to, labels);
        }
    }

    /** Writes the word beyond the end of the line that lies at the rim of the drawing, farther out than the leaders. */
    private void words(Sketch sketch, Bounds frame, Bounds raw, Side side, Point at, Labels labels) {
        Type type = Type.of(3.4, Weight.SEMIBOLD, Palette.MADDER);
        if (side.isUpright()) {
            boolean below = Math.abs(raw.bottom() - frame.bottom()) < Math.abs(raw.y() - frame.y());
            double y = below
                    ? frame.bottom() + labels.gutter(Labels.Edge.BOTTOM) + 6
                    : frame.y() - labels.gutter(Labels.Edge.TOP) - 3.5;
            sketch.words(voice.printing().stepTrim(), new Point(at.x(), y), type.at(Type.Anchor.MIDDLE));
        } else {
            boolean after = Math.abs(raw.right() - frame.right()) < Math.abs(raw.x() - frame.x());
            double x = after
                    ? frame.right() + labels.gutter(Labels.Edge.RIGHT) + 3.5
                    : frame.x() - labels.gutter(Labels.Edge.LEFT) - 3.5;
            Type.Anchor anchor = after ? Type.Anchor.START : Type.Anchor.END;
            sketch.words(
                    voice.printing().stepTrim(), new Point(x, at.y() + Dimensions.halfCaps(type)), type.at(anchor));
        }
    }

    private static void line(Sketch sketch, Bounds line, Stroke stroke) {
        sketch.line(new Point(line.x(), line.y()), new Point(line.right(), line.bottom()), stroke);
    }
}
