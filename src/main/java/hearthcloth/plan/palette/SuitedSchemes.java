package hearthcloth.plan.palette;

import hearthcloth.plan.colour.ColourFigures;
import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The plans of colour that a heap is good for, the best first: a wide gap in lightness makes halves, even steps from light to
 * dark a graded cloth, one bright scrap an accent, many small prints a scattered cloth, much of one fabric a field. Whether a
 * cloth of that name can be cut is for the planner to find out. The weights are ours:
 * docs/sources.md#heap-colours.
 */
public final class SuitedSchemes {

    /** Below this worth a heap is not called good for it. */
    private static final double GOOD = 0.35;

    private final HeapColours heap;

    /**
     * One of them.
     *
     * @param worth from 0 to 1, how good the heap is for it
     * @param fabric the one that makes it so; empty where no single one does
     */
    public record Suited(Scheme.Kind kind, double worth, Optional<Fabric> fabric) {}

    private SuitedSchemes(HeapColours heap) {
        this.heap = heap;
    }

    /**
     * Those the heap is good for, where so much contrast is wished; none of a heap of one fabric.
     *
     * @param wanted where light and dark are to melt into each other, plans that set them against each other count less
     */
    public static List<Suited> of(Stash stash, Contrast wanted) {
        SuitedSchemes schemes = new SuitedSchemes(HeapColours.of(stash));
        List<Suited> all = new ArrayList<>();
        if (schemes.heap.fabrics() > 1) {
            schemes.lightAndDark(all);
            schemes.graded().ifPresent(all::add);
            schemes.accent().ifPresent(all::add);
            schemes.scattered().ifPresent(all::add);
            schemes.field().ifPresent(all::add);
            schemes.frames().ifPresent(all::add);
            schemes.rounds().ifPresent(all::add);
        }
        return all.stream()
                .map(one -> new Suited(one.kind, Math.min(1, one.worth * fits(one.kind, wanted)), one.fabric))
                .filter(one -> one.worth >= GOOD)
                .sorted(Comparator.comparingDouble(Suited::worth).reversed())
                .toList();
    }

    /** How good a heap is for a plan of colour, from 0 to 1; 0 for one it is not good for. */
    public static ToDoubleFunction<Scheme.Kind> worth(Stash stash, Contrast wanted) {
        Map<Scheme.Kind, Double> worths = new EnumMap<>(Scheme.Kind.class);
        of(stash, wanted).forEach(one -> worths.put(one.kind, one.worth));
        return kind -> worths.getOrDefault(kind, 0.0);
    }

    /** Halves need two lights and two darks to be told apart from the rest at once; an arm and a turn are read less easily. */
    private void lightAndDark(List<Suited> all) {
        double gap = heap.widestGap();
        if (gap >= SchemeRule.LIGHT_AND_DARK && heap.fabrics() > 2) {
            double worth = Math.min(1, gap / 40);
            all.add(new Suited(Scheme.Kind.HALVES, worth, Optional.empty()));
            all.add(new Suited(Scheme.Kind.SPIRAL, 0.9 * worth, Optional.empty()));
            all.add(new Suited(Scheme.Kind.TURNS, 0.8 * worth, Optional.empty()));
        }
    }

    /** At least three fabrics over 25 points of L*, none of whose steps is more than half of the way. */
    private Optional<Suited> graded() {
        boolean is = heap.fabrics() > 2 && heap.range() >= 25 && heap.unevenness() <= 0.5;
        double worth = Math.min(1, heap.range() / 60) * Math.min(1, 1.2 - heap.unevenness());
        return is ? Optional.of(new Suited(Scheme.Kind.GRADED, worth, Optional.empty())) : Optional.empty();
    }

    /** One fabric brighter than the next by 10 points of C* and more, and no more of it than a quarter of the heap. */
    private Optional<Suited> accent() {
        List<Fabric> bright = heap.byChroma();
        double first = HeapColours.lab(bright.get(0)).chroma();
        double lead = first - HeapColours.lab(bright.get(1)).chroma();
        boolean is =
                heap.fabrics() > 2 && first >= SchemeRule.BRIGHT && lead >= 10 && heap.share(bright.get(0)) <= 0.25;
        return is
                ? Optional.of(new Suited(Scheme.Kind.ACCENT, Math.min(1, 0.3 + lead / 50), Optional.of(bright.get(0))))
                : Optional.empty();
    }

    /** Four fabrics and more, none of which is more than two fifths. */
    private Optional<Suited> scattered() {
        double most = heap.share(heap.byAmount().get(0));
        double worth = Math.min(1, heap.fabrics() / 8.0) * (1.1 - most);
        return heap.fabrics() > 3 && most <= 0.4
                ? Optional.of(new Suited(Scheme.Kind.SCATTERED, worth, Optional.empty()))
                : Optional.empty();
    }

    /** Half of the heap is one fabric, and another stands out from it. */
    private Optional<Suited> field() {
        Fabric most = heap.byAmount().get(0);
        double share = heap.share(most);
        boolean stands = heap.byAmount().stream().anyMatch(other -> ColourFigures.standsOut(most, other));
        return share >= 0.5 && stands
                ? Optional.of(new Suited(Scheme.Kind.FIELD, Math.min(1, share), Optional.of(most)))
                : Optional.empty();
    }

    /** Two fabrics, light and dark, are two thirds of the heap. */
    private Optional<Suited> frames() {
        List<Fabric> most = heap.byAmount();
        double together = heap.share(most.get(0)) + heap.share(most.get(1));
        double gap = Math.abs(HeapColours.lab(most.get(0)).lightness()
                - HeapColours.lab(most.get(1)).lightness());
        return together >= 2.0 / 3 && gap >= SchemeRule.LIGHT_AND_DARK
                ? Optional.of(new Suited(Scheme.Kind.FRAMES, 0.3 + 0.4 * Math.min(1, gap / 40), Optional.empty()))
                : Optional.empty();
    }

    /** At least three fabrics of an eighth of the heap and more, but few enough to give each a round. */
    private Optional<Suited> rounds() {
        long enough = heap.byAmount().stream()
                .filter(fabric -> heap.share(fabric) >= 0.125)
                .count();
        return enough > 2 ? Optional.of(new Suited(Scheme.Kind.ROUNDS, 0.5, Optional.empty())) : Optional.empty();
    }

    /** How far a plan of colour goes with the contrast that is wished. */
    private static double fits(Scheme.Kind kind, Contrast wanted) {
        boolean isAgainst = switch (kind) {
            case HALVES, SPIRAL, TURNS, FRAMES, ACCENT -> true;
            case ROUNDS, FIELD, SCATTERED, GRADED, ALL, FALLS, OUTWARDS, OWN -> false;
        };
        return switch (wanted) {
            case MOST -> isAgainst ? 1.2 : 0.9;
            case READS, EASY -> 1;
            case QUIET -> isAgainst ? 0.5 : 1.1;
            case MELTS -> isAgainst ? 0.3 : 1.2;
        };
    }
}
