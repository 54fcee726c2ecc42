package hearthcloth.plan.colour;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.measure.Length;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One fabric for each bar, scattered so that none lies beside itself and the hearth stands out, as far as there is
 * enough of each and no bar needs more joins for it than it must. A greedy choice, the longest bar first, then changes
 * of one bar and exchanges of two until none helps; deterministic.
 */
public final class ScatteredBars {

    /** The share of a fabric's area that may be used: seams, joins and odd shapes take the rest (ours). */
    private static final double USABLE = 0.7;
    /** What a join costs beside colour, in millimetres of edge: more than any bar's colour is worth. */
    private static final double JOIN = 2000;
    /** The most fabrics that are scattered. */
    private static final int MOST_FABRICS = 12;

    private final Design design;
    private final List<Fabric> fabrics;
    private final FabricDifferences differences;
    private final Tile hearth;
    private final List<Tile> bars = new ArrayList<>();
    private final double[] room;
    private final double[][] joins;
    private final int[] chosen;

    private ScatteredBars(Design design, Supply supply, List<Fabric> rest) {
        this.design = design;
        Fabric centre = design.scheme().hearth().get(0);
        this.fabrics = rest.subList(0, Math.min(MOST_FABRICS, rest.size()));
        List<Fabric> all = new ArrayList<>(fabrics);
        all.remove(centre);
        all.add(centre);
        this.differences = new FabricDifferences(all);
        Map<String, Laid> laid = laid(design.whole());
        this.hearth = ColourFigures.tile(
                0, differences.number(centre.name()), found(laid, "hearth").at());
        List<Layout.Slot> slots = design.layout().slots();
        this.room = fabrics.stream()
                .mapToDouble(fabric -> USABLE * supply.area(fabric) - (fabric.equals(centre) ? hearth.areaMm2() : 0))
                .toArray();
        this.joins = new double[slots.size()][fabrics.size()];
        this.chosen = new int[slots.size()];
        for (int bar = 0; bar < slots.size(); bar++) {
            Laid at = found(laid, slots.get(bar).place().id());
            bars.add(ColourFigures.tile(bar + 1, 0, at.at()));
            for (int fabric = 0; fabric < fabrics.size(); fabric++) {
                joins[bar][fabric] = joins(
                        at, slots.get(bar), supply.longest(List.of(fabrics.get(fabric)), width(at, slots.get(bar))));
            }
        }
    }

    private static Map<String, Laid> laid(Cloth whole) {
        Map<String, Laid> laid = new HashMap<>();
        whole.laid().forEach(one -> laid.put(one.patch().place().id(), one));
        return laid;
    }

    private static Laid found(Map<String, Laid> laid, String id) {
        return java.util.Objects.requireNonNull(laid.get(id), id);
    }

    private static Length width(Laid laid, Layout.Slot slot) {
        return slot.place().side().isUpright() ? laid.cut().width() : laid.cut().height();
    }

    private double joins(Laid laid, Layout.Slot slot, Length longest) {
        Length length = slot.place().side().isUpright()
                ? laid.cut().height()
                : laid.cut().width();
        Length loss = design.making().seam().loss();
        Length gain = longest.minus(loss);
        if (!gain.isPositive()) {
            return Double.POSITIVE_INFINITY;
        }
        return Math.max(0, Math.ceil((double) length.minus(loss).nm() / gain.nm()) - 1);
    }

    /** The scheme; empty where some bar can be of none of the fabrics or there is not enough for all. */
    public static Optional<Scheme> of(Design design, Supply supply, List<Fabric> rest) {
        return new ScatteredBars(design, supply, rest).scheme();
    }

    private Optional<Scheme> scheme() {
        if (fabrics.isEmpty() || !begin()) {
            return Optional.empty();
        }
        double now = cost();
        boolean better = true;
        while (better) {
            double before = now;
            for (int bar = 0; bar < chosen.length; bar++) {
                now = changed(bar, now);
                now = exchanged(bar, now);
            }
            better = now < before - 1e-9;
        }
        List<List<Fabric>> each = new ArrayList<>();
        for (int fabric : chosen) {
            each.add(List.of(fabrics.get(fabric)));
        }
        return Double.isInfinite(now)
                ? Optional.empty()
                : Optional.of(new Scheme(
                        Scheme.Kind.SCATTERED, design.scheme().hearth().subList(0, 1), each));
    }

    /** Gives each bar, the largest first, the fabric that fits with the fewest joins and of which most is left. */
    private boolean begin() {
        double[] left = room.clone();
        for (int bar = chosen.length - 1; bar >= 0; bar--) {
            int best = -1;
            for (int fabric = 0; fabric < fabrics.size(); fabric++) {
                boolean fits = joins[bar][fabric] < Double.POSITIVE_INFINITY
                        && left[fabric] >= bars.get(bar).areaMm2();
                if (fits
                        && (best < 0
                                || joins[bar][fabric] < joins[bar][best]
                                || (joins[bar][fabric] == joins[bar][best] && left[fabric] > left[best]))) {
                    best = fabric;
                }
            }
            if (best < 0) {
                return false;
            }
            chosen[bar] = best;
            left[best] -= bars.get(bar).areaMm2();
        }
        return true;
    }

    private double changed(int bar, double from) {
        double now = from;
        for (int fabric = 0; fabric < fabrics.size(); fabric++) {
            int was = chosen[bar];
            chosen[bar] = fabric;
            double then = cost();
            if (then < now - 1e-9) {
                now = then;
            } else {
                chosen[bar] = was;
            }
        }
        return now;
    }

    private double exchanged(int bar, double from) {
        double now = from;
        for (int other = 0; other < bar; other++) {
            swap(bar, other);
            double then = cost();
            if (then < now - 1e-9) {
                now = then;
            } else {
                swap(bar, other);
            }
        }
        return now;
    }

    private void swap(int bar, int other) {
        int was = chosen[bar];
        chosen[bar] = chosen[other];
        chosen[other] = was;
    }

    private double cost() {
        double[] left = room.clone();
        double cost = 0;
        List<Tile> tiles = new ArrayList<>(List.of(hearth));
        for (int bar = 0; bar < chosen.length; bar++) {
            Tile at = bars.get(bar);
            left[chosen[bar]] -= at.areaMm2();
            if (left[chosen[bar]] < 0) {
                return Double.POSITIVE_INFINITY;
            }
            cost += JOIN * joins[bar][chosen[bar]];
            int fabric = differences.number(fabrics.get(chosen[bar]).name());
            tiles.add(new Tile(bar + 1, fabric, at.x(), at.y(), at.right(), at.bottom()));
        }
        return cost + ColourFigures.of(tiles, differences).amissMm();
    }
}
