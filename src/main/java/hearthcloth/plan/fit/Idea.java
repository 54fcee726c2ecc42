package hearthcloth.plan.fit;

import hearthcloth.measure.Length;
import hearthcloth.plan.model.Scheme;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What a wish is held to beyond its own words: rules that leave room, such as a hearth of a third of the cloth.
 *
 * @param layouts those that may be tried
 * @param widths cut widths of bars tried before the usual ones
 * @param colours the plans of colour that may be offered; empty where any may
 * @param sides the sides a square cloth may have, where no size is wished
 */
public record Idea(
        Predicate<LayoutCandidate> layouts, List<Length> widths, Set<Scheme.Kind> colours, Optional<Sides> sides) {

    /** The least and the greatest side of a square cloth. */
    public record Sides(Length least, Length most) {}

    public Idea {
        widths = List.copyOf(widths);
        colours = Set.copyOf(colours);
    }

    /** No rule beyond the wish. */
    public static Idea none() {
        return new Idea(layout -> true, List.of(), Set.of(), Optional.empty());
    }

    /** Whether this plan of colour may be offered. */
    public boolean allows(Scheme.Kind kind) {
        return colours.isEmpty() || colours.contains(kind);
    }
}
