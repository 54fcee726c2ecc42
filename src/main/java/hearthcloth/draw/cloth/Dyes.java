package hearthcloth.draw.cloth;

import hearthcloth.cloth.Showing;
import hearthcloth.cloth.face.Shown;
import hearthcloth.colour.Colour;
import hearthcloth.draw.fabric.FabricLook;
import hearthcloth.draw.picture.Affine;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.geometry.Point;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The colours of a plan's fabrics by name, and the thread drawn on them. */
public record Dyes(List<Fabric> fabrics) {

    /**
     * Colours of thread from dark to light; the one that shows best on all fabrics is drawn. It is no advice which
     * thread to buy. None is an ink of the page, which is another in a dark room.
     */
    private static final List<Colour> THREADS = List.of(
            Colour.of(0x1e2229), Colour.of(0x595f69), Colour.of(0x8a8f98), Colour.of(0xc4c7cc), Colour.of(0xfdfdfb));

    public Dyes {
        fabrics = List.copyOf(fabrics);
    }

    public static Dyes of(Plan plan) {
        return new Dyes(plan.fabrics());
    }

    Fabric fabric(String name) {
        return fabrics.stream()
                .filter(fabric -> fabric.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no piece of the plan is of \"" + name + "\""));
    }

    /** How the fabric with this name is drawn. */
    FabricLook look(String name) {
        return FabricLook.of(fabric(name));
    }

    /** The colour of the fabric with this name. */
    public Colour colour(String name) {
        return fabric(name).colour();
    }

    /** The colour that shows on this side of the fabric with this name. */
    public Colour colour(String name, Showing showing) {
        return showing == Showing.WRONG ? fabric(name).wrongSide() : colour(name);
    }

    /** The colour for rows of stitches: the one whose least contrast to any fabric or fell is greatest. */
    public Colour thread() {
        List<Colour> grounds = fabrics.stream()
                .flatMap(fabric -> Stream.of(fabric.colour(), fabric.colour().shade()))
                .toList();
        Comparator<Colour> byContrast = Comparator.comparingDouble(thread ->
                grounds.stream().mapToDouble(thread::contrastWith).min().orElse(1));
        return THREADS.stream().max(byContrast).orElseThrow();
    }

    /**
     * Draws a part of a face: the fabric's right or wrong side, a shade darker where it is a fell.
     *
     * @param at where it lies in the picture; it reaches a little under its neighbours
     * @param hatched the part of it that is hatched where the wrong side shows
     * @param laid where the cloth's millimetres lie in the picture
     */
    void field(Sketch sketch, Shown.Field field, Bounds at, Bounds hatched, Affine laid) {
        FabricLook look = look(field.patch().fabric());
        List<Point> outline = at.grown(FacePicture.BLEED).outline();
        if (field.patch().showing() == Showing.WRONG) {
            look.fillWrong(sketch, outline, laid);
            sketch.hatch(hatched, HATCH, hatch(look.wrongSide()));
        } else {
            look.fill(sketch, outline, laid, 0);
        }
        if (field.fell()) {
            sketch.add(new Mark.Tint(outline, shade(look.ground()), FELL));
        }
    }

    /** How much of a fell's shade covers it. */
    private static final double FELL = 0.16;

    /** Dark fabrics are shaded lighter, so that a fell is seen on any. */
    private static Colour shade(Colour ground) {
        return ground.lab().lightness() < 25 ? Palette.SHEET : SHADE;
    }

    /** Of what lies in the shade. */
    static final Colour SHADE = Colour.of(0x000000);

    Stroke stitches() {
        return Stroke.stitches(0.25, thread());
    }

    /** The hatch for a wrong side or a leftover: three shades off its own fabric, so that it does not stand out. */
    static Stroke hatch(Colour ground) {
        boolean dark = ground.lab().lightness() < 60;
        Colour line = ground;
        for (int shade = 0; shade < 3; shade++) {
            line = dark ? line.lighter() : line.darker();
        }
        return Stroke.solid(0.25, line);
    }

    /** The distance of the hatch's lines, in millimetres. */
    static final double HATCH = 2.2;
}
