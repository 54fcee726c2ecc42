package hearthcloth.plan.ready;

import hearthcloth.cloth.Edges;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.LayoutCandidate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Cloths of a given size whose bars are as wide as strips the stash already has. A cloth is built from its rim inwards,
 * since there the length of each bar is known; of all partial cloths only the easiest few are continued (a beam
 * search). What remains in the middle must be a hearth that some piece holds. Widths change from round to round, from
 * pair to pair or from bar to bar.
 */
final class ReadyWidths {

    /** Partial cloths kept at each bar. */
    private static final int KEPT = 16;

    /** Cloths returned for each order. */
    private static final int MOST_FOUND = 12;

    /** A price for each bar, in joins, so that of two cloths without joins the one with fewer bars comes first. */
    private static final double BAR = 0.01;

    private final ReadyStrips strips;
    private final Making making;
    private final Predicate<Size> held;
    private final Length leastBar;

    /** How many bars of a round share one width. */
    private enum Grain {
        ROUND,
        PAIR,
        BAR
    }

    /**
     * A cloth that was found.
     *
     * @param cut widths of the bars as cut, in sewing order
     * @param ease about how many joins it takes, with cuts as fractions of one; less is easier
     */
    record Found(int rounds, Layout layout, List<Length> cut, double ease) {}

    /**
     * A cloth begun at the rim, its bars from the last sewn to the first.
     *
     * @param inside what is left to fill, finished
     * @param edges the allowance on each side of it
     * @param used strips used up, as bits, for each width
     */
    private record Begun(
            Size inside,
            Edges edges,
            List<Layout.Course> courses,
            List<Integer> kinds,
            List<Long> used,
            double price) {}

    /**
     * Prepares the search.
     *
     * @param held whether a piece holds a hearth of this cut size
     * @param leastBar the narrowest bar, finished
     */
    ReadyWidths(ReadyStrips strips, Making making, Predicate<Size> held, Length leastBar) {
        this.strips = strips;
        this.making = making;
        this.held = held;
        this.leastBar = leastBar;
    }

    /** The easiest cloths of this size in this order, easiest first; none for a stash without strips. */
    List<Found> of(Size size, Order order, List<Integer> rounds) {
        Map<List<Layout.Course>, Found> found = new LinkedHashMap<>();
        for (Grain grain : Grain.values()) {
            for (Found one : of(size, order, rounds, grain)) {
                found.putIfAbsent(one.layout().courses(), one);
            }
        }
        return found.values().stream()
                .sorted(Comparator.comparingDouble(Found::ease))
                .limit(MOST_FOUND)
                .toList();
    }

    private List<Found> of(Size size, Order order, List<Integer> rounds, Grain grain) {
        List<Side> inwards = new ArrayList<>(order.sides());
        Collections.reverse(inwards);
        List<Long> unused = Collections.nCopies(strips.widths().size(), 0L);
        List<Begun> begun =
                List.of(new Begun(size, Edges.all(making.hem().allowance()), List.of(), List.of(), unused, 0));
        List<Found> found = new ArrayList<>();
        int most = rounds.stream().mapToInt(Integer::intValue).max().orElse(0);
        for (int round = 1; round <= most && !begun.isEmpty(); round++) {
            for (int i = 0; i < inwards.size(); i++) {
                begun = easiest(grown(begun, inwards, i, grain), size);
            }
            if (rounds.contains(round)) {
                for (Begun one : begun) {
                    finished(one, size, round, found);
                }
            }
        }
        return found;
    }

    private List<Begun> grown(List<Begun> begun, List<Side> inwards, int i, Grain grain) {
        List<Begun> grown = new ArrayList<>();
        for (Begun one : begun) {
            int before = sameAs(inwards, i, grain);
            for (int kind = 0; kind < strips.widths().size(); kind++) {
                boolean free = before == 0 || one.kinds().get(one.kinds().size() - before) == kind;
                if (free) {
                    grow(one, inwards.get(i), kind, grown);
                }
            }
        }
        return grown;
    }

    /** How many bars back the bar lies whose width bar {@code i} of a round must have; 0 where it is free. */
    private static int sameAs(List<Side> inwards, int i, Grain grain) {
        if (i == 0 || grain == Grain.BAR) {
            return 0;
        }
        if (grain == Grain.ROUND) {
            return 1;
        }
        int partner = inwards.indexOf(inwards.get(i).opposite());
        return partner >= 0 && partner < i ? i - partner : 0;
    }

    private void grow(Begun one, Side side, int kind, List<Begun> grown) {
        Length width = strips.widths().get(kind);
        Length finished =
                width.minus(making.seam().wide()).minus(one.edges().on(side)).minus(making.trim());
        Size inside = side.isUpright()
                ? new Size(one.inside().width().minus(finished), one.inside().height())
                : new Size(one.inside().width(), one.inside().height().minus(finished));
        if (finished.isLessThan(leastBar)
                || !inside.width().isPositive()
                || !inside.height().isPositive()) {
            return;
        }
        Length length = side.isUpright() ? one.inside().height() : one.inside().width();
        Length ends = side.isUpright()
                ? one.edges().top().plus(one.edges().bottom())
                : one.edges().left().plus(one.edges().right());
        Length cut = length.plus(ends)
                .plus(making.leeway())
                .roundedTo(making.margins().mark(), Rounding.UP);
        ReadyStrips.Taken taken = strips.take(kind, one.used().get(kind), cut.nm());
        if (taken.price() == Double.POSITIVE_INFINITY) {
            return;
        }
        List<Long> used = new ArrayList<>(one.used());
        used.set(kind, taken.used());
        grown.add(new Begun(
                inside,
                one.edges().with(side, making.seam().narrow()),
                with(one.courses(), new Layout.Course(side, finished)),
                with(one.kinds(), kind),
                used,
                one.price() + taken.price() + BAR));
    }

    private static <T> List<T> with(List<T> list, T more) {
        List<T> longer = new ArrayList<>(list);
        longer.add(more);
        return longer;
    }

    /** The easiest partial cloths that still leave room for a hearth, with each remaining hole only once. */
    private static List<Begun> easiest(List<Begun> grown, Size whole) {
        grown.sort(Comparator.comparingDouble(Begun::price));
        Set<List<Object>> seen = new LinkedHashSet<>();
        List<Begun> kept = new ArrayList<>();
        for (Begun one : grown) {
            boolean room = LayoutCandidate.isFifth(one.inside(), whole);
            if (kept.size() < KEPT && room && seen.add(List.of(one.inside(), one.used()))) {
                kept.add(one);
            }
        }
        return kept;
    }

    private void finished(Begun one, Size whole, int rounds, List<Found> found) {
        Size hearth = one.inside();
        if (LayoutCandidate.isWell(hearth, whole) && held.test(one.edges().around(hearth))) {
            List<Layout.Course> courses = new ArrayList<>(one.courses());
            Collections.reverse(courses);
            List<Length> cut = new ArrayList<>();
            one.kinds().forEach(kind -> cut.add(strips.widths().get(kind)));
            Collections.reverse(cut);
            found.add(new Found(rounds, new Layout(hearth, courses), List.copyOf(cut), one.price()));
        }
    }
}
