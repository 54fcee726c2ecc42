package hearthcloth.plan.propose;

import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.colour.Harmony;
import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.parameter.ProposalParameters;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Predicate;

/**
 * The plans of colour worth trying for a layout: the fabrics are divided by lightness and by how much there is of each.
 * Named fabrics are kept in the order named, the first for the hearth.
 */
public final class Schemes {

    private static final ProposalParameters.Colours COLOURS =
            ProposalParameters.standard().drafting().colours();

    private final Supply supply;
    private final List<Fabric> byAmount;
    private final List<Fabric> named;
    private final Contrast contrast;
    /** What was chosen for the hearth among these fabrics; layouts by the hundred have the same. */
    private final Map<List<Fabric>, List<Fabric>> hearths = new LinkedHashMap<>();

    private final Map<List<Fabric>, List<List<List<Fabric>>>> halves = new LinkedHashMap<>();

    public Schemes(Supply supply, List<Fabric> named, Contrast contrast) {
        this.supply = supply;
        this.contrast = contrast;
        this.byAmount = supply.fabrics().stream()
                .sorted(Comparator.comparingDouble((Fabric fabric) -> supply.area(fabric))
                        .reversed()
                        .thenComparing(Fabric::name))
                .toList();
        this.named = List.copyOf(named);
    }

    public List<Scheme> forLayout(Layout layout) {
        return forLayout(layout, kind -> true);
    }

    /** Those of some kinds. */
    List<Scheme> forLayout(Layout layout, Predicate<Scheme.Kind> kinds) {
        List<Layout.Slot> slots = layout.slots();
        Set<Scheme> schemes = new LinkedHashSet<>();
        List<Fabric> all = named.isEmpty() ? byAmount : named;
        for (Fabric hearth : hearths(all, layout)) {
            List<Fabric> rest = without(all, hearth);
            if (rest.isEmpty()) {
                schemes.add(scheme(Scheme.Kind.FIELD, List.of(hearth), slots, (slot, i) -> all));
                continue;
            }
            boolean several = rest.size() > 1;
            List<Fabric> some = several ? rest : List.of(hearth, rest.get(0));
            where(kinds, Scheme.Kind.FIELD, () -> fields(schemes, hearth, rest, slots));
            where(kinds, Scheme.Kind.HALVES, () -> halves(schemes, hearth, some, slots));
            where(kinds, Scheme.Kind.TURNS, () -> turns(schemes, hearth, some, slots));
            if (several) {
                where(kinds, Scheme.Kind.SPIRAL, () -> spiral(schemes, hearth, rest, layout));
                where(kinds, Scheme.Kind.ROUNDS, () -> rounds(schemes, hearth, rest, slots));
                where(kinds, Scheme.Kind.GRADED, () -> graded(schemes, hearth, rest, slots));
            }
            where(kinds, Scheme.Kind.FRAMES, () -> frames(schemes, hearth, some, slots));
            if (several) {
                schemes.add(scheme(Scheme.Kind.ALL, List.of(hearth), slots, (slot, i) -> rest));
            }
        }
        if (all.size() > 1 && named.isEmpty()) {
            schemes.add(scheme(Scheme.Kind.ALL, all, slots, (slot, i) -> all));
        }
        return schemes.stream().filter(scheme -> kinds.test(scheme.kind())).toList();
    }

    private static void where(Predicate<Scheme.Kind> kinds, Scheme.Kind kind, Runnable made) {
        if (kinds.test(kind)) {
            made.run();
        }
    }

    /**
     * Fabrics for the hearth: of those with a piece that holds it, the ones most unlike the others where it is to stand
     * out, else those most like them.
     */
    private List<Fabric> hearths(List<Fabric> all, Layout layout) {
        if (!named.isEmpty()) {
            return List.of(named.get(0));
        }
        List<Fabric> able = new ArrayList<>(all.stream()
                .filter(fabric -> supply.holds(fabric, layout.hearth()))
                .limit(COLOURS.compared())
                .toList());
        return hearths.computeIfAbsent(List.copyOf(able), same -> chosen(able, all));
    }

    private List<Fabric> chosen(List<Fabric> able, List<Fabric> all) {
        List<Fabric> chosen = new ArrayList<>();
        while (!able.isEmpty() && chosen.size() < COLOURS.hearths()) {
            Fabric next = contrast.isSeen()
                    ? Harmony.standingOut(able, Fabric::colour)
                    : Harmony.fittingIn(able, all, Fabric::colour);
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

    /**
     * The right and bottom sides light, the left and top dark; with many fabrics each half may mix its own. None where
     * light and dark are too near each other to be called so.
     */
    private void halves(Set<Scheme> schemes, Fabric hearth, List<Fabric> rest, List<Layout.Slot> slots) {
        for (List<List<Fabric>> groups : lightAndDark(rest)) {
            schemes.add(scheme(
                    Scheme.Kind.HALVES,
                    List.of(hearth),
                    slots,
                    (slot, i) -> groups.get(SchemeRule.isLightSide(slot.place()) ? 0 : 1)));
        }
    }

    private void turns(Set<Scheme> schemes, Fabric hearth, List<Fabric> rest, List<Layout.Slot> slots) {
        for (List<List<Fabric>> groups : lightAndDark(rest)) {
            schemes.add(scheme(
                    Scheme.Kind.TURNS,
                    List.of(hearth),
                    slots,
                    (slot, i) -> groups.get((slot.place().order() + slot.place().round()) % 2)));
        }
    }

    /** Two arms, light and dark, that wind outwards; of a log cabin whose bars go round, more than once. */
    private void spiral(Set<Scheme> schemes, Fabric hearth, List<Fabric> rest, Layout layout) {
        List<Layout.Slot> slots = layout.slots();
        if (slots.size() <= Order.ROUND.sides().size() + 1 || !isRound(slots)) {
            return;
        }
        for (List<List<Fabric>> groups : lightAndDark(rest)) {
            schemes.add(scheme(
                    Scheme.Kind.SPIRAL,
                    List.of(hearth),
                    slots,
                    (slot, i) -> groups.get(SchemeRule.isLightArm(slot.place()) ? 0 : 1)));
        }
    }

    private static boolean isRound(List<Layout.Slot> slots) {
        List<Side> sides = Order.ROUND.sides();
        return slots.size() >= sides.size()
                && slots.get(sides.size() - 1).place().round() == 1
                && slots.stream()
                        .map(Layout.Slot::place)
                        .allMatch(bar -> bar.order() < sides.size() && bar.side() == sides.get(bar.order()));
    }

    /** Each round darker than the one inside it, of as many fabrics as there are rounds, those of which there is most. */
    private void graded(Set<Scheme> schemes, Fabric hearth, List<Fabric> rest, List<Layout.Slot> slots) {
        int rounds = slots.stream().mapToInt(slot -> slot.place().round()).max().orElse(1);
        if (rounds > 1 && rest.size() >= rounds) {
            List<Fabric> rings = Harmony.lightToDark(rest.subList(0, rounds), Fabric::colour);
            schemes.add(ringed(Scheme.Kind.GRADED, hearth, slots, rings));
        }
    }

    /** Two fabrics in turn, round by round; the outermost is the one of which there is most. */
    private void frames(Set<Scheme> schemes, Fabric hearth, List<Fabric> rest, List<Layout.Slot> slots) {
        int rounds = slots.stream().mapToInt(slot -> slot.place().round()).max().orElse(1);
        List<Fabric> two = rest.subList(0, 2);
        if (rounds > 1 && gap(two.get(0), two.get(1)) >= SchemeRule.LIGHT_AND_DARK) {
            // two fabrics alone: the round about the hearth is not of the hearth's own
            int first = two.contains(hearth) ? 1 - two.indexOf(hearth) : (rounds - 1) % 2;
            List<Fabric> rings = new ArrayList<>();
            for (int round = 1; round <= rounds; round++) {
                rings.add(two.get((first + round - 1) % 2));
            }
            schemes.add(ringed(Scheme.Kind.FRAMES, hearth, slots, rings));
        }
    }

    private static Scheme ringed(Scheme.Kind kind, Fabric hearth, List<Layout.Slot> slots, List<Fabric> rings) {
        return scheme(
                kind,
                List.of(hearth),
                slots,
                (slot, i) -> List.of(rings.get(slot.place().round() - 1)));
    }

    private static double gap(Fabric one, Fabric other) {
        return Math.abs(one.mean().lightness() - other.mean().lightness());
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

    /**
     * The ways to call some of the fabrics light and the others dark: the two of which there is most, and all of them,
     * split at the widest gap in lightness that leaves a fifth of the area on either side.
     */
    private List<List<List<Fabric>>> lightAndDark(List<Fabric> fabrics) {
        return halves.computeIfAbsent(fabrics, this::parted);
    }

    private List<List<List<Fabric>>> parted(List<Fabric> fabrics) {
        List<List<List<Fabric>>> ways = new ArrayList<>();
        List<Fabric> pair = Harmony.lightToDark(fabrics.subList(0, 2), Fabric::colour);
        if (gap(pair.get(0), pair.get(1)) >= SchemeRule.LIGHT_AND_DARK) {
            ways.add(List.of(List.of(pair.get(0)), List.of(pair.get(1))));
        }
        List<Fabric> row = Harmony.lightToDark(fabrics, Fabric::colour);
        int cut = widestGap(row);
        if (fabrics.size() > 2 && cut > 0 && gap(row.get(cut - 1), row.get(cut)) >= SchemeRule.LIGHT_AND_DARK) {
            ways.add(List.of(List.copyOf(row.subList(0, cut)), List.copyOf(row.subList(cut, row.size()))));
        }
        return ways;
    }

    private int widestGap(List<Fabric> row) {
        double total = supply.area(row);
        double sum = 0;
        int best = 0;
        for (int cut = 1; cut < row.size(); cut++) {
            sum += supply.area(row.get(cut - 1));
            boolean even = sum >= total / 5 && total - sum >= total / 5;
            if (even && (best == 0 || gap(row.get(cut - 1), row.get(cut)) > gap(row.get(best - 1), row.get(best)))) {
                best = cut;
            }
        }
        return best;
    }

    private static List<Fabric> without(List<Fabric> fabrics, Fabric one) {
        return fabrics.stream().filter(fabric -> !fabric.equals(one)).toList();
    }
}
