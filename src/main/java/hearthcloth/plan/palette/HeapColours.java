package hearthcloth.plan.palette;

import hearthcloth.colour.Harmony;
import hearthcloth.colour.Lab;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The colours of a heap in figures: how far its lights lie from its darks, how evenly it runs from one to the other, how much
 * brighter one fabric is than the rest, and how much of it each fabric is. Lightness is L*, brightness C* of CIELAB:
 * docs/sources.md#heap-colours.
 */
final class HeapColours {

    /** The share of the heap that lights and darks each are at least, so that a half can be cut of them (ours). */
    private static final double HALF = 0.2;

    private final List<Fabric> lightToDark;
    private final Map<String, Double> areas = new LinkedHashMap<>();
    private final double whole;

    private HeapColours(Stash stash) {
        this.lightToDark = Harmony.lightToDark(stash.fabrics(), Fabric::colour);
        for (Piece piece : stash.pieces()) {
            areas.merge(piece.fabric().name(), piece.areaMm2(), Double::sum);
        }
        this.whole = stash.areaMm2();
    }

    static HeapColours of(Stash stash) {
        return new HeapColours(stash);
    }

    int fabrics() {
        return lightToDark.size();
    }

    /** How much of the heap a fabric is, from 0 to 1. */
    double share(Fabric fabric) {
        return whole == 0 ? 0 : areas.getOrDefault(fabric.name(), 0.0) / whole;
    }

    /** The fabrics of which there is most first. */
    List<Fabric> byAmount() {
        return lightToDark.stream()
                .sorted(Comparator.comparingDouble(this::share).reversed().thenComparing(Fabric::name))
                .toList();
    }

    /** The widest gap in lightness with enough of the heap on either side, in points of L*; 0 where there is none. */
    double widestGap() {
        double above = 0;
        double widest = 0;
        for (int i = 1; i < lightToDark.size(); i++) {
            above += share(lightToDark.get(i - 1));
            if (above >= HALF && 1 - above >= HALF) {
                widest = Math.max(widest, step(i));
            }
        }
        return widest;
    }

    /** From the lightest to the darkest, in points of L*. */
    double range() {
        return fabrics() == 0
                ? 0
                : lab(lightToDark.get(0)).lightness()
                        - lab(lightToDark.get(fabrics() - 1)).lightness();
    }

    /** The greatest step of the way from light to dark, as a share of all of it: small where the steps are many and even. */
    double unevenness() {
        double greatest = 0;
        for (int i = 1; i < lightToDark.size(); i++) {
            greatest = Math.max(greatest, step(i));
        }
        return range() == 0 ? 1 : greatest / range();
    }

    private double step(int i) {
        return lab(lightToDark.get(i - 1)).lightness() - lab(lightToDark.get(i)).lightness();
    }

    /** The brightest fabrics first. */
    List<Fabric> byChroma() {
        return lightToDark.stream()
                .sorted(Comparator.comparingDouble(
                                (Fabric fabric) -> lab(fabric).chroma())
                        .reversed())
                .toList();
    }

    static Lab lab(Fabric fabric) {
        return fabric.mean();
    }
}
