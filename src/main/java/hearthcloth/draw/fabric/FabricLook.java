package hearthcloth.draw.fabric;

import hearthcloth.colour.Colour;
import hearthcloth.draw.picture.Affine;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.geometry.Point;
import hearthcloth.stash.Fabric;
import java.util.List;
import java.util.Optional;

/**
 * How a fabric is drawn wherever it lies flat or folded: its colour, what is printed or woven into it, to scale, and its
 * threads, to the eye.
 *
 * @param wrongSide the colour of its wrong side; {@code ground} where none is known
 * @param print one repeat in millimetres of cloth; empty for plain cloth
 */
public record FabricLook(Colour ground, Colour wrongSide, Optional<Picture> print, Weave weave) {

    /** Millimetres of the picture for one of cloth below which a print's parts are under three dots of a screen wide. */
    private static final double SMALLEST = 0.06;

    private static final Colour SHADE = Colour.of(0x0b1020);

    /** How much of a print its wrong side hides. */
    private static final double HIDDEN = 0.65;

    public static FabricLook of(Fabric fabric) {
        return new FabricLook(fabric.colour(), fabric.wrongSide(), FabricTile.of(fabric), Weave.named(fabric.name()));
    }

    /** Cloth of a colour, without print. */
    public static FabricLook plain(Colour colour) {
        return new FabricLook(colour, colour, Optional.empty(), Weave.PLAIN);
    }

    /** How its wrong side is drawn in a small picture: plain, where it has a colour of its own; else as its right side. */
    public FabricLook turnedOver() {
        return wrongSide.equals(ground)
                ? this
                : new FabricLook(/* ground= */ wrongSide, /* wrongSide= */ ground, Optional.empty(), weave);
    }

    /** Whether it is more than one colour where it is drawn at this scale. */
    public boolean isFigured(double scale) {
        return print.isPresent() && scale >= SMALLEST;
    }

    /**
     * Fills a shape with the fabric's right side.
     *
     * @param laid where the cloth's millimetres lie in the picture
     * @param shade how much darker than in full light, from 0 to 1
     */
    public void fill(Sketch sketch, List<Point> outline, Affine laid, double shade) {
        print(sketch, outline, laid, shade);
        threads(sketch, outline, laid.scale());
    }

    /** The same for a small part of many, whose threads are seen only where it is drawn large. */
    public void fillPart(Sketch sketch, List<Point> outline, Affine laid, double shade) {
        print(sketch, outline, laid, shade);
        if (laid.scale() > LARGE) {
            threads(sketch, outline, laid.scale());
        }
    }

    /** Millimetres of the picture for one of cloth above which the threads of small parts are drawn. */
    private static final double LARGE = 0.3;

    private void print(Sketch sketch, List<Point> outline, Affine laid, double shade) {
        sketch.add(new Mark.Area(outline, shaded(shade)));
        if (isFigured(laid.scale())) {
            sketch.add(new Mark.Figured(outline, print.orElseThrow(), laid));
            if (shade > 0) {
                sketch.add(new Mark.Tint(outline, SHADE, shade));
            }
        }
    }

    private Colour shaded(double shade) {
        return Colour.of(part(ground.red(), shade), part(ground.green(), shade), part(ground.blue(), shade));
    }

    private static int part(int part, double shade) {
        return (int) Math.round(part * (1 - shade));
    }

    /** Fills a shape with the wrong side: its own colour where one is known, else the same, paler. */
    public void fillWrong(Sketch sketch, List<Point> outline, Affine laid) {
        sketch.add(new Mark.Area(outline, wrongSide));
        if (isFigured(laid.scale()) && wrongSide.equals(ground)) {
            sketch.add(new Mark.Figured(outline, print.orElseThrow(), laid));
            sketch.add(new Mark.Tint(outline, ground, HIDDEN));
        }
        threads(sketch, outline, laid.scale());
    }

    /** Millimetres of the picture for one of cloth below which a picture is too small for threads. */
    private static final double THREADLESS = 0.04;

    private void threads(Sketch sketch, List<Point> outline, double scale) {
        if (scale < THREADLESS) {
            return;
        }
        for (Picture tile : weave.tiles()) {
            sketch.add(new Mark.Figured(outline, tile, Affine.scaled(1 / Weave.DOT, 0, 0)));
        }
    }
}
