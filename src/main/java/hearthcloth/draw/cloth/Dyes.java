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

    /** From dark to light; the one that shows best on all fabrics is drawn. Not a thread to buy. */
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

    /** The colour of the fabric called so. */
    public Colour colour(String name) {
        return fabric(name).colour();
    }

    /** The ink for rows of stitches: whichever stands out most where it stands out least, fells included. */
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

    /** The hatch that tells a wrong side or what is left over: three shades off its own fabric, so that it stays quiet. */
    static Stroke hatch(Colour ground) {
        boolean dark = ground.lab().lightness() < 60;
        Colour line = ground;
        for (int shade = 0; shade < 3; shade++) {
            line = dark ? line.lighter() : line.darker();
        }
        return Stroke.solid(0.25, line);
    }

    /** Between two lines of the hatch, in millimetres. */
    static final double HATCH = 2.2;
}
