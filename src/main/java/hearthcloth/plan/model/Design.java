package hearthcloth.plan.model;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Edges;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A cloth that is decided except for the cutting: sizes of hearth and bars, which fabrics may go where, how it is made
 * up. What remains to be found is which pieces give what, and where bars are joined.
 *
 * @param order in which the bars were laid out; a layout changed by hand keeps the order it came from
 */
public record Design(Order order, Layout layout, Scheme scheme, Making making, PiecingRules rules) {

    /**
     * What is decided of a cloth that has no hearth and bars: its size, its fabrics, how it is made up. How it is divided is
     * in its plan alone, so such a cloth is not changed bar by bar.
     */
    public static Design undivided(Plan plan) {
        Layout whole = new Layout(plan.cloth().finished(), List.of());
        Scheme scheme = new Scheme(Scheme.Kind.OWN, plan.fabrics(), List.of());
        return new Design(Order.ROUND, whole, scheme, plan.cloth().making(), plan.rules());
    }

    /** Every fabric that is allowed somewhere. */
    public List<Fabric> fabrics() {
        Set<Fabric> wanted = new LinkedHashSet<>(scheme.hearth());
        scheme.bars().forEach(wanted::addAll);
        return List.copyOf(wanted);
    }

    /** The cloth with each bar in one piece: the size of every bar, allowances and leeway included. */
    public Cloth whole() {
        List<List<Layout.Part>> bars = new ArrayList<>();
        List<Layout.Slot> slots = layout.slots();
        for (int i = 0; i < slots.size(); i++) {
            Fabric fabric = scheme.bars().get(i).get(0);
            bars.add(List.of(
                    new Layout.Part(fabric.name(), showing(fabric), slots.get(i).length())));
        }
        return sewn(scheme.hearth().get(0), bars);
    }

    public Cloth sewn(Fabric hearth, List<List<Layout.Part>> bars) {
        return new Cloth(layout.sewn(hearth.name(), showing(hearth), bars), making);
    }

    /** A fabric's right side shows on the front; of two faces without a right one, that whose colour is said first. */
    public static Showing showing(Fabric fabric) {
        return fabric.isSided() ? Showing.RIGHT : Showing.SAME;
    }

    /**
     * The finished parts of bar {@code i} for parts cut to {@code cut} lengths in joining order: every part but the
     * last loses its own allowances, and the last takes what is left of the bar.
     */
    public List<Length> finishedParts(Laid whole, Layout.Slot slot, List<Length> cut) {
        List<Length> finished = new ArrayList<>();
        Length left = slot.length();
        for (int part = 0; part + 1 < cut.size(); part++) {
            Length before = part == 0 ? firstEnd(whole, slot) : making.seam().narrow();
            Length length = cut.get(part).minus(before).minus(making.seam().wide());
            finished.add(length);
            left = left.minus(length);
        }
        finished.add(left);
        return finished;
    }

    /** The allowance at a bar's left or top end. */
    public static Length firstEnd(Laid whole, Layout.Slot slot) {
        Edges edges = whole.allowances();
        return slot.place().side().isUpright() ? edges.top() : edges.left();
    }

    /** The allowance at a bar's right or bottom end. */
    public static Length lastEnd(Laid whole, Layout.Slot slot) {
        Edges edges = whole.allowances();
        return slot.place().side().isUpright() ? edges.on(Side.BOTTOM) : edges.on(Side.RIGHT);
    }
}
