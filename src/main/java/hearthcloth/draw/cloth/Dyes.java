package hearthcloth.draw.cloth;

import hearthcloth.colour.Colour;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The colours of a plan's fabrics by name, and the thread drawn on them. */
public record Dyes(List<Fabric> fabrics) {

    /**
     * Colours of thread from dark to light; the one that shows best on all fabrics is drawn. It is no advice which
     * thread to buy.
     */
    private static final List<Colour> THREADS = List.of(
            Colour.of(0x20242b), Colour.of(0x5b616b), Colour.of(0x8a8f98), Colour.of(0xc4c7cc), Colour.of(0xffffff));

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

    /** The colour of the fabric with this name. */
    public Colour colour(String name) {
        return fabric(name).colour();
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
