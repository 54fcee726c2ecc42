package hearthcloth.draw.cloth;

import hearthcloth.cloth.Half;
import hearthcloth.cloth.Step;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.colour.Colour;
import hearthcloth.draw.letters.Weight;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.Type;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A felled seam in section, in the three states it goes through. Widths are to scale with each other; the layers are
 * drawn thick and apart.
 */
public final class SeamPicture {

    private static final double LAYER = 1.5;
    private static final double APART = 2.3;
    private static final double BODY = 14;
    private static final double CELL = 60;
    private static final double HEIGHT = 24;
    private static final double WIDE = 24;

    private static final Type CAPTION =
            Type.of(11 * Type.POINT, Weight.SEMIBOLD, Palette.INK).at(Type.Anchor.MIDDLE);

    private final Sketch sketch = new Sketch();
    private final Colour wrapping;
    private final Colour wrapped;
    private final SeamKind kind;
    private final Voice voice;
    private final List<String> names;
    private final double narrowMm;
    private final double wideMm;
    private final double bandMm;

    private SeamPicture(Plan plan, Step first, Voice voice) {
        Dyes dyes = Dyes.of(plan);
        Half wraps = first.seam().wraps();
        this.wrapping = dyes.colour(first.patches(wraps).get(0).fabric());
        this.wrapped = dyes.colour(first.patches(wraps.other()).get(0).fabric());
        this.names = List.of(name(first, wraps, voice), name(first, wraps.other(), voice));
        this.kind = plan.cloth().making().seam();
        this.voice = voice;
        double scale = Math.min(2.2, WIDE / kind.wide().in(Unit.MILLIMETRE));
        this.narrowMm = kind.narrow().in(Unit.MILLIMETRE) * scale;
        this.wideMm = kind.wide().in(Unit.MILLIMETRE) * scale;
        this.bandMm = kind.band().in(Unit.MILLIMETRE) * scale;
    }

    private static String name(Step step, Half half, Voice voice) {
        return step.patches(half).size() == 1
                ? PatchName.of(step.patches(half).get(0), voice)
                : voice.sewing().nameWork();
    }

    /** The same with its three states one below the other. */
    public static Optional<Picture> upright(Plan plan, Voice voice) {
        return drawn(plan, voice, true);
    }

    /** The picture; empty for seams that are built in another way, and for a cloth without seams. */
    public static Optional<Picture> of(Plan plan, Voice voice) {
        return drawn(plan, voice, false);
    }

    private static Optional<Picture> drawn(Plan plan, Voice voice, boolean upright) {
        List<Step> steps = plan.cloth().steps();
        if (steps.isEmpty() || plan.cloth().making().seam().build() != SeamKind.Build.FELLED) {
            return Optional.empty();
        }
        return Optional.of(new SeamPicture(plan, steps.get(0), voice).drawn(upright));
    }

    private Picture drawn(boolean upright) {
        double across = upright ? 0 : CELL;
        double down = upright ? HEIGHT + 12 : 0;
        stitched(new Point(BODY + 4, 9));
        opened(new Point(across + WIDE + 8, down + 7));
        felled(new Point(2 * across + WIDE + 8, 2 * down + 7));
        caption("1  " + voice.printing().sectionStitch(), new Point(CELL / 2, HEIGHT + 4));
        caption("2  " + voice.printing().sectionOpen(), new Point(across + CELL / 2, down + HEIGHT + 4));
        caption("3  " + voice.printing().sectionFold(), new Point(2 * across + CELL / 2, 2 * down + HEIGHT + 4));
        double y = HEIGHT + 12 + 2 * down;
        key(wrapping, voice.printing().sectionWraps(names.get(0)), new Point(0, y));
        key(wrapped, voice.printing().sectionWrapped(names.get(1)), upright ? new Point(0, y + 7) : new Point(CELL, y));
        return sketch.part(CELL + 2 * across, y + (upright ? 13 : 6));
    }

    /** Says which layer is which. */
    private void key(Colour colour, String words, Point at) {
        Legend.swatch(sketch, new Bounds(at.x(), at.y(), 5, 3.4), colour);
        sketch.words(words, at.plus(7, 3), CAPTION.at(Type.Anchor.START));
    }

    private void caption(String words, Point at) {
        sketch.words(words, at, CAPTION);
    }

    /** The halves face to face; the edge that will wrap reaches out. */
    private void stitched(Point at) {
        layer(wrapped, at, new double[][] {{-BODY, APART}, {narrowMm, APART}});
        layer(wrapping, at, new double[][] {{-BODY, 0}, {wideMm, 0}});
        stitch(at, 0, -2.5, APART + 2.5);
        measure(at, wideMm, -5, voice.write(kind.wide(), Rounding.NEAREST));
        measure(at, narrowMm, APART + 8.5, voice.write(kind.narrow(), Rounding.NEAREST));
    }

    private void measure(Point at, double extent, double y, String words) {
        sketch.line(at.plus(0, y), at.plus(extent, y), Stroke.solid(0.18, Palette.INK));
        for (double x : new double[] {0, extent}) {
            sketch.line(at.plus(x, y - 1), at.plus(x, y + 1), Stroke.solid(0.25, Palette.INK));
        }
        Type type = Dimensions.TYPE.at(Type.Anchor.START);
        sketch.words(words, at.plus(extent + 1.5, y + Dimensions.halfCaps(type)), type);
    }

    /** Both allowances lie over the wrapped half, the wide one on top. */
    private void opened(Point at) {
        layer(wrapped, at, new double[][] {{-WIDE - 4, 2 * APART}, {0, 2 * APART}, {0, APART}, {-narrowMm, APART}});
        layer(wrapping, at, new double[][] {{BODY, 2 * APART}, {LAYER, 2 * APART}, {LAYER, 0}, {-wideMm, 0}});
        stitch(at, LAYER / 2, -2, 2 * APART + 2);
    }

    /** The wide allowance round the raw edge of the narrow one, sewn down. */
    private void felled(Point at) {
        double under = Math.max(0, wideMm - bandMm);
        double fold = -bandMm - LAYER / 2;
        layer(wrapped, at, new double[][] {
            {-WIDE - 4, 3 * APART}, {0, 3 * APART}, {0, APART}, {-Math.min(narrowMm, bandMm - LAYER), APART}
        });
        layer(wrapping, at, new double[][] {
            {BODY, 3 * APART},
            {LAYER, 3 * APART},
            {LAYER, 0},
            {fold, 0},
            {fold, 2 * APART},
            {Math.min(fold + under, -LAYER), 2 * APART}
        });
        stitch(at, LAYER / 2, -2, 3 * APART + 2);
        stitch(at, fold + LAYER, -2, 3 * APART + 2);
    }

    private void layer(Colour colour, Point at, double[][] path) {
        List<Point> points = new ArrayList<>();
        for (double[] corner : path) {
            points.add(at.plus(corner[0], corner[1]));
        }
        sketch.add(new Mark.Line(points, Stroke.solid(LAYER + 0.4, Palette.INK)));
        sketch.add(new Mark.Line(points, Stroke.solid(LAYER, colour)));
    }

    private void stitch(Point at, double x, double from, double to) {
        Bounds line = new Bounds(at.x() + x, at.y() + from, 0, to - from);
        sketch.line(
                new Point(line.x(), line.y()), new Point(line.x(), line.bottom()), Stroke.solid(0.9, Palette.SHEET));
        sketch.line(
                new Point(line.x(), line.y()), new Point(line.x(), line.bottom()), Stroke.stitches(0.45, Palette.INK));
    }
}
