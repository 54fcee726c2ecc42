package hearthcloth.draw.guide;

import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.face.Layers;
import hearthcloth.draw.cloth.Dyes;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.Plan;
import java.util.List;

/** A cloth drawn small, patches in their colours, and on request a dot where it is thickest. */
final class SmallCloth {

    private final double scale;

    private SmallCloth(double scale) {
        this.scale = scale;
    }

    /** The front, its longer side {@code side} millimetres. */
    static Picture of(Plan plan, double side) {
        return drawn(plan, side, List.of());
    }

    /** The same with a dot at each of the places where most layers meet. */
    static Picture withThickest(Plan plan, double side) {
        return drawn(plan, side, thickest(plan));
    }

    /** The places where most layers meet, without those at the hem; in sewing order. */
    static List<Layers.Spot> thickest(Plan plan) {
        List<Layers.Spot> crossings = Layers.spots(plan.cloth()).stream()
                .filter(spot -> spot.kind() == Layers.Kind.CROSSING)
                .toList();
        int most = crossings.stream().mapToInt(Layers.Spot::plies).max().orElse(0);
        return crossings.stream().filter(spot -> spot.plies() == most).toList();
    }

    private static Picture drawn(Plan plan, double side, List<Layers.Spot> dots) {
        var finished = plan.cloth().finished();
        double longer = finished.width().max(finished.height()).in(Unit.MILLIMETRE);
        SmallCloth small = new SmallCloth(side / longer);
        Dyes dyes = Dyes.of(plan);
        Sketch sketch = new Sketch();
        for (Laid laid : plan.cloth().laid()) {
            Bounds at = small.bounds(laid.at());
            sketch.fill(at, dyes.colour(laid.patch().fabric()));
            sketch.outline(at, Stroke.solid(0.2, Palette.INK));
        }
        for (Layers.Spot dot : dots) {
            sketch.add(new Mark.Disc(small.bounds(dot.at()).middle(), 1.0, Palette.SHEET));
            sketch.add(new Mark.Disc(small.bounds(dot.at()).middle(), 0.7, Palette.MADDER));
        }
        double width = finished.width().in(Unit.MILLIMETRE) * small.scale;
        double height = finished.height().in(Unit.MILLIMETRE) * small.scale;
        sketch.outline(new Bounds(0, 0, width, height), Stroke.solid(0.35, Palette.INK));
        return sketch.part(width, height);
    }

    private Bounds bounds(Rect at) {
        return new Bounds(
                scale * at.x().in(Unit.MILLIMETRE),
                scale * at.y().in(Unit.MILLIMETRE),
                scale * at.width().in(Unit.MILLIMETRE),
                scale * at.height().in(Unit.MILLIMETRE));
    }
}
