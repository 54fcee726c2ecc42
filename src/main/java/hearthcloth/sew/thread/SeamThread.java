package hearthcloth.sew.thread;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Step;
import hearthcloth.colour.Colour;
import hearthcloth.colour.ThreadChoice;
import hearthcloth.stash.Fabric;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * The thread for one seam: of some threads the one that shows least and the one that shows most on every fabric that the
 * seam crosses, on both faces.
 *
 * @param step the seam
 */
public record SeamThread<T>(Step step, T least, T most) {

    /**
     * Chooses for a seam of a cloth.
     *
     * @param fabrics of the cloth
     * @param threads to choose from, at least one; the earlier of equals is taken
     */
    public static <T> SeamThread<T> of(
            Cloth cloth, Step step, List<Fabric> fabrics, List<T> threads, Function<? super T, Colour> colour) {
        Set<Colour> crossed = crossed(cloth, step, fabrics);
        return new SeamThread<>(
                step,
                ThreadChoice.showingLeast(threads, colour, crossed).thread(),
                ThreadChoice.showingMost(threads, colour, crossed).thread());
    }

    /** The colours of every patch along the seam, of both its sides. */
    private static Set<Colour> crossed(Cloth cloth, Step step, List<Fabric> fabrics) {
        Set<String> names = new LinkedHashSet<>();
        for (Laid laid : cloth.laid()) {
            if (lies(laid.at(), step.line())) {
                names.add(laid.patch().fabric());
            }
        }
        Set<Colour> colours = new LinkedHashSet<>();
        for (Fabric fabric : fabrics) {
            if (names.contains(fabric.name())) {
                colours.add(fabric.colour());
                colours.add(fabric.wrongSide());
            }
        }
        return colours;
    }

    /** Whether a patch lies along a line, and not only with a corner. */
    private static boolean lies(Rect patch, Rect line) {
        boolean isUpright = line.width().nm() == 0;
        long from = isUpright
                ? patch.y().max(line.y()).nm()
                : patch.x().max(line.x()).nm();
        long to = isUpright
                ? patch.bottom().min(line.bottom()).nm()
                : patch.right().min(line.right()).nm();
        long at = isUpright ? line.x().nm() : line.y().nm();
        long start = isUpright ? patch.x().nm() : patch.y().nm();
        long end = isUpright ? patch.right().nm() : patch.bottom().nm();
        return from < to && (at == start || at == end);
    }
}
