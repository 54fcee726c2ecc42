package hearthcloth.plan.together;

import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How fair a division of a heap is; less is better, in this order: cloths that lack; the joins of the worst; then joins
 * altogether, hearths alike, lights and darks unevenly shared and pieces that two cloths share, weighed against each other.
 *
 * @param lacking cloths without a plan
 * @param worst the joins of the cloth that has most
 * @param joins of all cloths
 * @param alike pairs of cloths whose hearths are of one fabric
 * @param shades in how the cloths share lights and darks
 */
public record Fairness(int lacking, int worst, int joins, int alike, Shades shades) implements Comparable<Fairness> {

    /** What a pair of like hearths counts, in joins; ours, like the others. */
    private static final double ALIKE = 1;
    /** What it counts that one cloth is all dark while another has none. */
    private static final double DARK = 4;
    /** What it counts that a cloth has to wait for another one's leftover. */
    private static final double WAITS = 0.5;

    /**
     * Lights and darks, and waiting.
     *
     * @param spread how much more of the darkest cloth is dark than of the lightest, from 0 to 1; dark is what lies below
     *     the lightness in the middle of the heap
     * @param waits how many leftovers are handed on from one cloth to another
     */
    public record Shades(double spread, int waits) {}

    static Fairness of(Allotment allotment, int asked) {
        List<Made> made = List.copyOf(allotment.made().values());
        int worst = made.stream().mapToInt(Made::joins).max().orElse(0);
        int joins = made.stream().mapToInt(Made::joins).sum();
        double middle = middle(allotment.heap());
        double most = made.stream().mapToDouble(one -> one.dark(middle)).max().orElse(0);
        double least = made.stream().mapToDouble(one -> one.dark(middle)).min().orElse(0);
        return new Fairness(
                asked - made.size(),
                worst,
                joins,
                alike(made),
                new Shades(most - least, allotment.handedOn().size()));
    }

    private static int alike(List<Made> made) {
        Map<String, Integer> hearths = new LinkedHashMap<>();
        made.stream()
                .map(Made::hearth)
                .filter(name -> !name.isEmpty())
                .forEach(name -> hearths.merge(name, 1, Integer::sum));
        return hearths.values().stream()
                .mapToInt(count -> count * (count - 1) / 2)
                .sum();
    }

    /** The lightness below which half of the heap's area lies, in L*. */
    static double middle(Stash heap) {
        List<Piece> sorted = new ArrayList<>(heap.pieces());
        sorted.sort(Comparator.comparingDouble(Fairness::lightness));
        double half = heap.areaMm2() / 2;
        for (Piece piece : sorted) {
            half -= piece.areaMm2();
            if (half < 0) {
                return lightness(piece);
            }
        }
        return 0;
    }

    private static double lightness(Piece piece) {
        Fabric fabric = piece.fabric();
        return fabric.colour().lab().lightness();
    }

    /** What is weighed against each other, in joins. */
    private double cost() {
        return joins + ALIKE * alike + DARK * shades.spread() + WAITS * shades.waits();
    }

    @Override
    public int compareTo(Fairness other) {
        int byLacking = Integer.compare(lacking, other.lacking);
        int byWorst = byLacking != 0 ? byLacking : Integer.compare(worst, other.worst);
        return byWorst != 0 ? byWorst : Double.compare(cost(), other.cost());
    }
}
