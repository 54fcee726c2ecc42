package hearthcloth.draw.cloth;

import hearthcloth.cloth.Half;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.Step;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.colour.Colour;
import hearthcloth.draw.letters.Weight;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.draw.picture.Type;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The two halves of the first seam pinned face to face, as they lie on the table: the new half on top, its back to the
 * eye, one edge sticking out beyond the other. The seam is drawn life size where it has room, the rest is cut off.
 */
public final class PinnedPicture {

    private static final double DEEP = 46;
    private static final double WIDE = 62;
    private static final double SEEN = 22;
    private static final Type NAME = Type.of(11 * Type.POINT, Weight.SEMIBOLD, Palette.INK);
    private static final Type WORDS = PrintSizes.BODY;

    private final Sketch sketch = new Sketch();
    private final Plan plan;
    private final Step step;
    private final SeamKind kind;
    private final Voice voice;
    private final Dyes dyes;

    private PinnedPicture(Plan plan, Step step, Voice voice) {
        this.plan = plan;
        this.step = step;
        this.kind = plan.cloth().making().seam();
        this.voice = voice;
        this.dyes = Dyes.of(plan);
    }

    /** The picture with its words, {@code width} millimetres wide; the cloth must have a seam. */
    public static Picture of(Plan plan, Voice voice, double width) {
        return new PinnedPicture(plan, plan.cloth().steps().get(0), voice).drawn(width);
    }

    private Picture drawn(double width) {
        double narrow = Math.max(4, kind.narrow().in(Unit.MILLIMETRE));
        double offset = kind.wide().minus(kind.narrow()).in(Unit.MILLIMETRE);
        boolean addedWraps = step.seam().wraps() == step.added();
        Bounds top = new Bounds(SEEN, 4, WIDE - SEEN, DEEP);
        double edge = top.right();
        double under = addedWraps ? edge - offset : edge + offset;
        double stitches = (addedWraps ? under : edge) - narrow;
        Bounds below = new Bounds(0, 4, under, DEEP - 4);
        Face up = facing().other();
        half(step.added().other(), below, up.other());
        half(step.added(), top, up);
        seam(top, stitches);
        for (double y : new double[] {top.y() + 7, top.bottom() - 10}) {
            pin(stitches, y);
        }
        measured(offset, Math.min(edge, under), Math.max(edge, under));
        TextColumn words = new TextColumn(width - WIDE - 16);
        words.words(voice.printing().pinTitle(), PrintSizes.STEP).gap(1);
        lines(addedWraps, up).forEach(line -> words.words(line, WORDS).gap(0.6));
        Picture told = words.part();
        sketch.place(told, new Point(WIDE + 16, 0));
        return sketch.part(width, Math.max(DEEP + 9, told.height()));
    }

    /** The face that lies inside while the joining row is sewn. */
    private Face facing() {
        Face fell = plan.cloth().making().fell();
        return kind.build() == SeamKind.Build.FRENCH ? fell : fell.other();
    }

    private void half(Half half, Bounds at, Face seen) {
        Patch patch = step.patches(half).get(0);
        Colour ground = dyes.colour(patch.fabric(), patch.showing().on(seen));
        sketch.fill(at, ground);
        if (patch.showing().on(seen) == Showing.WRONG) {
            sketch.hatch(at, Dyes.HATCH, Dyes.hatch(ground));
        }
        sketch.outline(at, Stroke.solid(0.3, Palette.INK));
        Type type = NAME.in(ground.inkOn()).at(Type.Anchor.MIDDLE);
        double x = half == step.added() ? at.middle().x() - 4 : SEEN / 2;
        double wide = type.width(label(half)) + 2;
        sketch.fill(new Bounds(x - wide / 2, at.middle().y() - 4.5, wide, 6.5), ground);
        sketch.words(label(half), new Point(x, at.middle().y()), type);
    }

    private String label(Half half) {
        List<Patch> patches = step.patches(half);
        return patches.size() == 1
                ? PatchName.of(patches.get(0), voice)
                : voice.sewing().nameWork();
    }

    private String named(Half half) {
        List<Patch> patches = step.patches(half);
        boolean hearth = patches.size() == 1 && patches.get(0).place() instanceof Place.Hearth;
        return hearth ? voice.sewing().nameHearth() : label(half);
    }

    private void seam(Bounds top, double x) {
        sketch.line(new Point(x, top.y()), new Point(x, top.bottom()), Stroke.solid(1.1, Palette.SHEET));
        sketch.line(new Point(x, top.y()), new Point(x, top.bottom()), Stroke.stitches(0.6, Palette.INK));
    }

    private void pin(double x, double y) {
        sketch.line(new Point(x - 6, y), new Point(x + 3, y), Stroke.solid(1.1, Palette.SHEET));
        sketch.line(new Point(x - 6, y), new Point(x + 3, y), Stroke.solid(0.5, Palette.INK));
        sketch.outline(new Bounds(x - 7.2, y - 0.6, 1.2, 1.2), Stroke.solid(1.2, Palette.MADDER));
    }

    private void measured(double offset, double from, double to) {
        if (offset <= 0) {
            return;
        }
        Length sticksOut = kind.wide().minus(kind.narrow());
        double y = DEEP + 6;
        for (double x : new double[] {from, to}) {
            sketch.line(new Point(x, 2), new Point(x, y + 1.5), Stroke.dots(0.3, Palette.MADDER));
        }
        sketch.words(exact(sticksOut), new Point(to + 2, y + 1), NAME);
    }

    private List<String> lines(boolean addedWraps, Face up) {
        String added = named(step.added());
        String work = named(step.added().other());
        List<String> lines = new ArrayList<>();
        lines.add(capital(voice.printing().pinLies(added, FaceSheet.key(up), work)));
        if (kind.wide().isMoreThan(kind.narrow())) {
            String out = exact(kind.wide().minus(kind.narrow()));
            lines.add(capital(voice.printing().pinSticksOut(out, addedWraps ? added : work)));
        }
        lines.add(voice.printing().pinStitching());
        if (hatched()) {
            lines.add(voice.printing().pinHatched());
        }
        return lines;
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private boolean hatched() {
        return plan.cloth().laid().stream().map(Laid::patch).anyMatch(patch -> patch.showing() != Showing.SAME);
    }

    private String exact(Length length) {
        boolean on = voice.ruler().mark(length, Rounding.NEAREST).equals(length);
        Voice finer = on || voice.ruler().isMetric() ? voice : voice.by(Ruler.SIXTEENTHS);
        return finer.write(length, Rounding.NEAREST);
    }
}
