package hearthcloth.plan.propose;

import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.colour.Harmony;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;

/**
 * The plans of colour worth trying for a layout: the fabrics are divided by lightness and by how much there is of each.
 * Named fabrics are kept in the order named, the first for the hearth.
 */
public final class Schemes {

    /** Fabrics tried for the hearth. */
    private static final int MOST_HEARTHS = 3;

    /** The most fabrics that are compared with each other, those of which there is most. */
    private static final int MOST_COMPARED = 16;

    private final Supply supply;
    private final List<Fabric> byAmount;
    private final List<Fabric> named;

    public Schemes(Supply supply, List<Fabric> named) {
        this.supply = supply;
        this.byAmount = supply.fabrics().stream()
                .sorted(Comparator.comparingDouble((Fabric fabric) -> supply.area(fabric))
                        .reversed()
                        .thenComparing(Fabric::name))
                .toList();
        this.named = List.copyOf(named);
    }

    public List<Scheme> forLayout(Layout layout) {
        List<Layout.Slot> slots = layout.slots();
        Set<Scheme> schemes = new LinkedHashSet<>();
        List<Fabric> all = named.isEmpty() ? byAmount : named;
        for (Fabric hearth : hearths(all, layout)) {
            List<Fabric> rest = without(all, hearth);
            if (rest.isEmpty()) {
                schemes.add(scheme(Scheme.Kind.FIELD, List.of(hearth), slots, (slot, i) -> all));
                continue;
            }
            fields(schemes, hearth, rest, slots);
            if (rest.size() > 1) {
                halves(schemes, hearth, rest, slots);
                turns(schemes, hearth, rest, slots);
                rounds(schemes, hearth, rest, slots);
                schemes.add(scheme(Scheme.Kind.ALL, List.of(hearth), slots, (slot, i) -> rest));
            } else {
                List<Fabric> both = List.of(hearth, rest.get(0));
                halves(schemes, hearth, both, slots);
                turns(schemes, hearth, both, slots);
                rounds(schemes, hearth, List.of(rest.get(0), hearth), slots);
            }
        }
        if (all.size() > 1 && named.isEmpty()) {
            schemes.add(scheme(Scheme.Kind.ALL, all, slots, (slot, i) -> all));
        }
        return List.copyOf(schemes);
    }

    /**
     * Fabrics for the hearth, which should stand out: of those with a piece that holds it, the ones most unlike the
     * others.
     */
    private List<Fabric> hearths(List<Fabric> all, Layout layout) {
        if (!named.isEmpty()) {
            return List.of(named.get(0));
        }
        List<Fabric> able = new ArrayList<>(all.stream()
                .filter(fabric -> supply.holds(fabric, layout.hearth()))
                .limit(MOST_COMPARED)
                .toList());
        List<Fabric> chosen = new ArrayList<>();
        while (!able.isEmpty() && chosen.size() < MOST_HEARTHS) {
            Fabric next = Harmony.standingOut(able, Fabric::colour);
            chosen.add(next);
            able.remove(next);
        }
        return chosen;
    }

    private void fields(Set<Scheme> schemes, Fabric hearth, List<Fabric> rest, List<Layout.Slot> slots) {
        for (Fabric field : rest.subList(0, Math.min(2, rest.size()))) {
            schemes.add(scheme(Scheme.Kind.FIELD, List.of(hearth), slots, (slot, i) -> List.of(field)));
        }
    }

    /** The right and bottom sides light, the left and top dark; with many fabrics each half may mix its own. */
    private void halves(Set<Scheme> schemes, Fabric hearth, List<Fabric> rest, List<Layout.Slot> slots) {
        List<Fabric> two = rest.subList(0, 2);
        List<Fabric> pair = Harmony.lightToDark(two, Fabric::colour);
        schemes.add(scheme(
                Scheme.Kind.HALVES, List.of(hearth), slots, (slot, i) -> List.of(pair.get(isLightSide(slot) ? 0 : 1))));
        if (rest.size() > 2) {
            List<List<Fabric>> groups = split(rest);
            schemes.add(scheme(
                    Scheme.Kind.HALVES, List.of(hearth), slots, (slot, i) -> groups.get(isLightSide(slot) ? 0 : 1)));
        }
    }

    private static boolean isLightSide(Layout.Slot slot) {
        return slot.place().side() == Side.RIGHT || slot.place().side() == Side.BOTTOM;
    }

    private void turns(Set<Scheme> schemes, Fabric hearth, List<Fabric> rest, List<Layout.Slot> slots) {
        List<Fabric> pair = Harmony.lightToDark(rest.subList(0, 2), Fabric::colour);
        schemes.add(scheme(
                Scheme.Kind.TURNS,
                List.of(hearth),
                slots,
                (slot, i) ->
                        List.of(pair.get((slot.place().order() + slot.place().round()) % 2))));
        if (rest.size() > 2) {
            List<List<Fabric>> groups = split(rest);
            schemes.add(scheme(
                    Scheme.Kind.TURNS,
                    List.of(hearth),
                    slots,
                    (slot, i) -> groups.get((slot.place().order() + slot.place().round()) % 2)));
        }
    }

    /** One fabric a round. The outer rounds take most, so they get the fabrics of which there is most. */
    private void rounds(Set<Scheme> schemes, Fabric hearth, List<Fabric> rest, List<Layout.Slot> slots) {
        int rounds = slots.stream().mapToInt(slot -> slot.place().round()).max().orElse(1);
        List<Fabric> rings = new ArrayList<>();
        for (int i = 0; i < rounds; i++) {
            rings.add(rest.get(i % Math.min(rest.size(), rounds)));
        }
        List<Fabric> inward = named.isEmpty() ? new ArrayList<>(rings) : rings;
        if (named.isEmpty()) {
            java.util.Collections.reverse(inward);
        }
        schemes.add(scheme(
                Scheme.Kind.ROUNDS,
                List.of(hearth),
                slots,
                (slot, i) -> List.of(inward.get(slot.place().round() - 1))));
    }

    private static Scheme scheme(
            Scheme.Kind kind,
            List<Fabric> hearth,
            List<Layout.Slot> slots,
            BiFunction<Layout.Slot, Integer, List<Fabric>> fabrics) {
        List<List<Fabric>> bars = new ArrayList<>();
        for (int i = 0; i < slots.size(); i++) {
            bars.add(fabrics.apply(slots.get(i), i));
        }
        return new Scheme(kind, hearth, bars);
    }

    /** The fabrics as a light and a dark group of about the same amount. */
    private List<List<Fabric>> split(List<Fabric> fabrics) {
        List<Fabric> light = Harmony.lightToDark(fabrics, Fabric::colour);
        double total = fabrics.stream().mapToDouble(supply::area).sum();
        double sum = 0;
        int cut = 0;
        while (cut < light.size() - 1 && (cut == 0 || sum + supply.area(light.get(cut)) / 2 < total / 2)) {
            sum += supply.area(light.get(cut));
            cut++;
        }
        return List.of(List.copyOf(light.subList(0, cut)), List.copyOf(light.subList(cut, light.size())));
    }

    private static List<Fabric> without(List<Fabric> fabrics, Fabric one) {
        return fabrics.stream().filter(fabric -> !fabric.equals(one)).toList();
    }
}
