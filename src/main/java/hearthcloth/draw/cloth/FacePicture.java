package hearthcloth.draw.cloth;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.face.Shown;
import hearthcloth.cloth.making.Face;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Label;
import hearthcloth.draw.picture.Labels;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * One face of a finished cloth, to scale: fabrics, fells, every row of stitches, the name of every patch, its size, and
 * the widths on the way through the hearth.
 */
public final class FacePicture {

    private static final double WANTED = 4.4;
    private static final double LEAST = 2.8;

    /** Colours reach under their neighbours by this many millimetres, so that no paper shows between them. */
    static final double BLEED = 0.05;

    private final Plan plan;
    private final Voice voice;
    private final Shown shown;
    private final Dyes dyes;

    public FacePicture(Plan plan, Face face, Voice voice) {
        this.plan = plan;
        this.voice = voice;
        this.shown = Shown.of(plan.cloth(), face);
        this.dyes = Dyes.of(plan);
    }

    /**
     * The largest drawing of the face that fits into {@code width} by {@code height} millimetres, with dimensions and
     * leaders.
     */
    public ScaledPicture within(double width, double height) {
        Size finished = plan.cloth().finished();
        DrawingScale scale = DrawingScale.fitting(finished, width, height);
        return ScaledPicture.within(width, height, scale, this::at);
    }

    /** The face alone, without a word, as large as fits into a square of {@code side} millimetres. */
    public Picture plain(double side) {
        return plain(DrawingScale.fitting(plan.cloth().finished(), side, side)).trimmed(title(), 0.3);
    }

    private Sketch plain(DrawingScale scale) {
        Sketch sketch = new Sketch();
        for (Shown.Field field : shown.fields()) {
            field(sketch, field, scale);
        }
        for (Shown.Row row : shown.rows()) {
            Bounds line = scale.bounds(row.at(), 0, 0);
            sketch.line(new Point(line.x(), line.y()), new Point(line.right(), line.bottom()), dyes.stitches());
        }
        sketch.outline(
                scale.bounds(Rect.at(Length.ZERO, Length.ZERO, plan.cloth().finished()), 0, 0),
                Stroke.solid(0.3, Palette.INK));
        return sketch;
    }

    /** The face at a given scale, just large enough for its dimensions. */
    public Picture at(DrawingScale scale) {
        Bounds frame =
                scale.bounds(Rect.at(Length.ZERO, Length.ZERO, plan.cloth().finished()), 0, 0);
        Sketch sketch = plain(scale);
        Labels labels = new Labels(frame, WANTED, LEAST, labels(scale));
        labels.draw(sketch);
        dimensions(sketch, frame, labels, scale);
        return sketch.trimmed(title(), 1);
    }

    private String title() {
        return voice.printing()
                .altFace(
                        FaceSheet.key(shown.face()),
                        voice.write(plan.cloth().finished(), Rounding.NEAREST),
                        plan.story().title().in(voice));
    }

    private void field(Sketch sketch, Shown.Field field, DrawingScale scale) {
        Bounds bounds = scale.bounds(field.at(), 0, 0);
        dyes.field(sketch, field, bounds, bounds, scale.laid(0, 0));
    }

    private List<Label> labels(DrawingScale scale) {
        List<Label> labels = new ArrayList<>();
        for (Shown.Field field : shown.fields()) {
            if (!field.fell()) {
                Patch patch = field.patch();
                labels.add(Label.of(free(field, scale), dyes.colour(patch.fabric()), PatchName.of(patch, voice)));
            }
        }
        return labels;
    }

    /** The part of a patch that is free of the fells lying over it and of the hem's row. */
    private Bounds free(Shown.Field field, DrawingScale scale) {
        Bounds room = scale.bounds(field.at(), 0, 0).inset(0.5);
        for (Shown.Field other : shown.fields()) {
            if (other.fell()) {
                room = room.without(scale.bounds(other.at(), 0, 0));
            }
        }
        for (Shown.Row row : shown.rows()) {
            room = room.without(thick(scale.bounds(row.at(), 0, 0)));
        }
        return room;
    }

    private static Bounds thick(Bounds line) {
        return new Bounds(line.x() - 0.4, line.y() - 0.4, line.width() + 0.8, line.height() + 0.8);
    }

    /** Draws dimensions: the whole on two sides, the way through the hearth on the other two. */
    private void dimensions(Sketch sketch, Bounds frame, Labels labels, DrawingScale scale) {
        Size finished = plan.cloth().finished();
        double top = frame.y() - labels.gutter(Labels.Edge.TOP) - 2;
        double left = frame.x() - labels.gutter(Labels.Edge.LEFT) - 2;
        double bottom = frame.bottom() + labels.gutter(Labels.Edge.BOTTOM) + 1 + Dimensions.ROOM;
        double right = frame.right() + labels.gutter(Labels.Edge.RIGHT) + 1 + Dimensions.ROOM;
        List<Length> across = stops(true);
        for (int i = 1; i < across.size(); i++) {
            Length from = across.get(i - 1);
            String measure = voice.number(across.get(i).minus(from), Rounding.NEAREST);
            Dimensions.across(sketch, scale.mm(from), scale.mm(across.get(i)), top, measure);
        }
        List<Length> down = stops(false);
        for (int i = 1; i < down.size(); i++) {
            Length from = down.get(i - 1);
            String measure = voice.number(down.get(i).minus(from), Rounding.NEAREST);
            Dimensions.down(sketch, scale.mm(from), scale.mm(down.get(i)), left, measure);
        }
        Dimensions.across(sketch, frame.x(), frame.right(), bottom, voice.write(finished.width(), Rounding.NEAREST));
        Dimensions.down(sketch, frame.y(), frame.bottom(), right, voice.write(finished.height(), Rounding.NEAREST));
    }

    /** The widths of the patches on a line through the middle of the hearth, or of the cloth. */
    private List<Length> stops(boolean across) {
        Rect middle = hearth();
        Length at = across
                ? middle.y().plus(new Length(middle.height().nm() / 2))
                : middle.x().plus(new Length(middle.width().nm() / 2));
        TreeSet<Length> stops = new TreeSet<>();
        for (Shown.Field field : shown.fields()) {
            Rect rect = field.at();
            Length from = across ? rect.y() : rect.x();
            Length to = across ? rect.bottom() : rect.right();
            if (!field.fell() && !at.isLessThan(from) && at.isLessThan(to)) {
                stops.add(across ? rect.x() : rect.y());
                stops.add(across ? rect.right() : rect.bottom());
            }
        }
        return List.copyOf(stops);
    }

    private Rect hearth() {
        return shown.fields().stream()
                .filter(field -> !field.fell() && field.patch().place() instanceof Place.Hearth)
                .map(Shown.Field::at)
                .findFirst()
                .orElse(Rect.at(Length.ZERO, Length.ZERO, plan.cloth().finished()));
    }

    Shown shown() {
        return shown;
    }
}
