package hearthcloth.draw.cloth;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.making.Hem;
import hearthcloth.colour.Colour;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;

/** One raw corner before it is hemmed, in its real size: the creases, and the mitre or the tip that is cut off. */
public final class HemPicture {

    private static final double LARGEST = 78;

    private static final Stroke OUTER = Stroke.dots(0.4, Palette.INK);
    private static final Stroke INNER = Stroke.solid(0.4, Palette.INK);
    private static final Stroke SEWN = Stroke.stitches(0.6, Palette.INK);
    private static final Stroke OFF = Stroke.solid(0.5, Palette.MADDER);

    private final Hem hem;
    private final Voice voice;
    private final Colour ground;
    private final double firstMm;
    private final double bothMm;
    private final double extent;

    public HemPicture(Plan plan, Voice voice) {
        List<Patch> patches = plan.cloth().patches();
        this.hem = plan.cloth().making().hem();
        this.voice = voice;
        this.ground = Dyes.of(plan).colour(patches.get(patches.size() - 1).fabric());
        this.firstMm = hem.first().in(Unit.MILLIMETRE);
        this.bothMm = hem.allowance().in(Unit.MILLIMETRE);
        this.extent = Math.max(36, bothMm * 2.6);
    }

    /**
     * The corner and what its lines mean, {@code width} millimetres wide; only the words where the hem is too deep for
     * the page.
     */
    public Picture block(double width) {
        return block(
                width,
                extent <= LARGEST
                        ? voice.printing().cornerLife()
                        : voice.printing().corner());
    }

    /** The same for a screen, on which nobody knows how large a millimetre is. */
    public Picture onScreen(double width) {
        return block(width, voice.printing().corner());
    }

    private Picture block(double width, String title) {
        TextColumn block = new TextColumn(width);
        boolean drawn = extent <= LARGEST;
        block.words(title, PrintSizes.STEP).gap(2);
        double from = drawn ? extent + 8 : 0;
        Picture key = key(width - from);
        block.draw(Math.max(drawn ? extent : 0, key.height()), (sketch, y) -> {
            if (drawn) {
                sketch.place(corner(), new Point(0, y));
            }
            sketch.place(key, new Point(from, y));
        });
        return block.gap(1).part();
    }

    private boolean isMitred() {
        return hem.corner() == Hem.Corner.MITRED;
    }

    private Picture corner() {
        Sketch sketch = new Sketch();
        sketch.fill(new Bounds(0, 0, extent, extent), ground);
        sketch.outline(new Bounds(0, 0, extent, extent), Stroke.solid(0.25, Palette.INK));
        for (Row row : rows()) {
            sketch.add(new Mark.Line(row.points(), Stroke.solid(1.1, Palette.SHEET)));
            sketch.add(new Mark.Line(row.points(), row.stroke()));
        }
        return sketch.part(extent, extent);
    }

    private record Row(List<Point> points, Stroke stroke, String words) {}

    /** The lines in the corner, each with its meaning. */
    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        if (hem.first().isPositive() && hem.second().isPositive()) {
            rows.add(crease(firstMm, OUTER, voice.printing().cornerFirst(measure(hem.first()))));
        }
        rows.add(crease(bothMm, INNER, voice.printing().cornerLast(measure(hem.allowance()))));
        if (isMitred()) {
            double reach = hem.second().in(Unit.MILLIMETRE);
            List<Point> mitre =
                    List.of(new Point(bothMm + reach, bothMm - reach), new Point(bothMm - reach, bothMm + reach));
            rows.add(new Row(mitre, SEWN, voice.printing().cornerMitre()));
        } else if (hem.first().isPositive() && hem.second().isPositive()) {
            List<Point> tip = List.of(new Point(firstMm, 0), new Point(0, firstMm));
            rows.add(new Row(tip, OFF, voice.printing().cornerOff()));
        }
        return rows;
    }

    private Row crease(double at, Stroke stroke, String words) {
        List<Point> points = List.of(new Point(extent, at), new Point(at, at), new Point(at, extent));
        return new Row(points, stroke, words);
    }

    private String measure(Length length) {
        boolean on = voice.ruler().mark(length, Rounding.NEAREST).equals(length);
        Voice finer = on || voice.ruler().isMetric() ? voice : voice.by(Ruler.SIXTEENTHS);
        return finer.write(length, Rounding.NEAREST);
    }

    private Picture key(double width) {
        TextColumn key = new TextColumn(width);
        for (Row row : rows()) {
            double y = key.height() + TextColumn.baseline(PrintSizes.BODY) - Dimensions.halfCaps(PrintSizes.BODY);
            key.draw(0, (sketch, top) -> sketch.line(new Point(0, y), new Point(9, y), row.stroke()));
            key.words(row.words(), 12, PrintSizes.BODY, 3).gap(1.5);
        }
        return key.part();
    }
}
