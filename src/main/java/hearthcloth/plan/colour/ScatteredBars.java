package hearthcloth.plan.colour;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.measure.Length;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.parameter.ColourParameters;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * One fabric for each bar, scattered so that the colours lie as is wished, as far as there is enough of each and no bar
 * needs more joins for it than it must. What is best is searched by {@link BarColours}; deterministic.
 */
public final class ScatteredBars {

    private static final long SEED = 1;

    private final ColourParameters.Choosing choosing;
    private final Design design;
    private final Supply supply;
    private final List<List<Fabric>> allowed;
    private final List<Fabric> fabrics;
    private final Fabric centre;

    private ScatteredBars(
            ColourParameters.Choosing choosing, Design design, Supply supply, List<List<Fabric>> allowed) {
        this.choosing = choosing;
        this.design = design;
        this.supply = supply;
        this.allowed = allowed;
        this.centre = design.scheme().hearth().get(0);
        Set<Fabric> all = new LinkedHashSet<>();
        allowed.forEach(all::addAll);
        this.fabrics = all.stream().limit(choosing.mostFabrics()).toList();
    }

    /** Any of these fabrics for any bar; empty where some bar can be of none or there is not enough for all. */
    public static Optional<Scheme> of(Design design, Supply supply, List<Fabric> rest, ColourGoal goal) {
        List<List<Fabric>> allowed = Collections.nCopies(design.layout().slots().size(), rest);
        return of(design, supply, Scheme.Kind.SCATTERED, allowed, goal);
    }

    /**
     * The scheme of this kind.
     *
     * @param allowed for each bar the fabrics it may be of
     */
    public static Optional<Scheme> of(
            Design design, Supply supply, Scheme.Kind kind, List<List<Fabric>> allowed, ColourGoal goal) {
        ScatteredBars bars = new ScatteredBars(goal.parameters().choosing(), design, supply, allowed);
        BarColours.Found found =
                BarColours.of(bars.problem(goal), goal.parameters().search().chosen(), SEED);
        if (!found.isFound()) {
            return Optional.empty();
        }
        List<List<Fabric>> each = new ArrayList<>();
        for (int bar = 0; bar < allowed.size(); bar++) {
            each.add(List.of(bars.fabrics.get(found.chosen(bar))));
        }
        return Optional.of(new Scheme(kind, design.scheme().hearth().subList(0, 1), each));
    }

    private BarColouring problem(ColourGoal goal) {
        List<Fabric> all = new ArrayList<>(fabrics);
        all.remove(centre);
        all.add(centre);
        FabricDifferences differences = new FabricDifferences(all);
        Map<String, Laid> laid = laid(design.whole());
        Tile hearth = ColourFigures.tile(
                0, differences.number(centre.name()), found(laid, "hearth").at());
        List<Layout.Slot> slots = design.layout().slots();
        List<Tile> bars = new ArrayList<>();
        double[][] joins = new double[slots.size()][fabrics.size()];
        for (int bar = 0; bar < slots.size(); bar++) {
            Laid at = found(laid, slots.get(bar).place().id());
            bars.add(ColourFigures.tile(bar + 1, 0, at.at()));
            for (int fabric = 0; fabric < fabrics.size(); fabric++) {
                joins[bar][fabric] = choosing.join() * joins(at, slots.get(bar), bar, fabrics.get(fabric));
            }
        }
        int[] numbers = fabrics.stream()
                .mapToInt(fabric -> differences.number(fabric.name()))
                .toArray();
        double[] room = fabrics.stream()
                .mapToDouble(fabric ->
                        choosing.usable() * supply.area(fabric) - (fabric.equals(centre) ? hearth.areaMm2() : 0))
                .toArray();
        EdgeBill bill = goal.bill(differences, design.layout().finished());
        return new BarColouring(hearth, bars, bill, numbers, joins, room);
    }

    private static Map<String, Laid> laid(Cloth whole) {
        Map<String, Laid> laid = new LinkedHashMap<>();
        whole.laid().forEach(one -> laid.put(one.patch().place().id(), one));
        return laid;
    }

    private static Laid found(Map<String, Laid> laid, String id) {
        return Objects.requireNonNull(laid.get(id), id);
    }

    private double joins(Laid laid, Layout.Slot slot, int bar, Fabric fabric) {
        boolean isUpright = slot.place().side().isUpright();
        Length width = isUpright ? laid.cut().width() : laid.cut().height();
        Length length = isUpright ? laid.cut().height() : laid.cut().width();
        Length loss = design.making().seam().loss();
        Length gain = supply.longest(List.of(fabric), width).minus(loss);
        if (!allowed.get(bar).contains(fabric) || !gain.isPositive()) {
            return Double.POSITIVE_INFINITY;
        }
        return Math.max(0, Math.ceil((double) length.minus(loss).nm() / gain.nm()) - 1);
    }
}
