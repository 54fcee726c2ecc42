package hearthcloth.plan.rework;

import hearthcloth.cloth.Edges;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * Changes of a design by hand, each giving a new design: sizes as they are cut, fabrics bar by bar. What is not changed
 * stays; an added bar takes the fabrics of the bar on the same side one round further in.
 */
public record DesignEdits(Design design) {

    /** The most rounds that are accepted; nobody sews more round one hearth (docs/sources.md#input-limits). */
    public static final int MOST_ROUNDS = 30;

    /** The design a plan was made from, with each bar restricted to the fabrics it is cut from. */
    public static Design settled(Plan plan, Order order) {
        Map<String, Fabric> fabrics = new TreeMap<>();
        plan.fabrics().forEach(fabric -> fabrics.put(fabric.name(), fabric));
        Map<Key, List<Fabric>> bars = new TreeMap<>();
        Map<Key, Layout.Course> courses = new TreeMap<>();
        List<Fabric> hearth = new ArrayList<>();
        Size middle = plan.cloth().finished();
        for (var laid : plan.cloth().laid()) {
            Fabric fabric = fabrics.get(laid.patch().fabric());
            if (laid.patch().place() instanceof Place.Bar bar) {
                Key key = new Key(bar.round(), bar.order());
                Size size = laid.patch().size();
                courses.put(key, new Layout.Course(bar.side(), bar.side().isUpright() ? size.width() : size.height()));
                List<Fabric> used = bars.computeIfAbsent(key, none -> new ArrayList<>());
                if (!used.contains(fabric)) {
                    used.add(fabric);
                }
            } else {
                hearth.add(fabric);
                middle = laid.patch().size();
            }
        }
        return new Design(
                order,
                new Layout(middle, List.copyOf(courses.values())),
                new Scheme(Scheme.Kind.OWN, hearth, List.copyOf(bars.values())),
                plan.cloth().making(),
                plan.rules());
    }

    /** No bar is planned again to show less than this: 12 mm, about half an inch (ours). */
    public static final Length LEAST_SHOWN = Length.mm(12);

    private record Key(int round, int order) implements Comparable<Key> {
        @Override
        public int compareTo(Key other) {
            return round == other.round ? Integer.compare(order, other.order) : Integer.compare(round, other.round);
        }
    }

    /** The cut size of the hearth. */
    public Size hearthCut() {
        return edges().around(design.layout().hearth());
    }

    private Edges edges() {
        return Layout.hearthEdges(design.layout().courses(), design.making());
    }

    /** The cut width of bar {@code i}. */
    public Length barCut(int i) {
        return design.layout()
                .courses()
                .get(i)
                .width()
                .plus(lost(design.layout().courses(), i, design.making()));
    }

    /** What a bar's two long edges and its trimming take from its width. */
    private static Length lost(List<Layout.Course> courses, int i, Making making) {
        return courses.get(i)
                .width()
                .minus(Layout.finishedOfCut(courses, making).get(i).width());
    }

    /** The number of rounds of bars; a round ends when a side comes again. */
    public int rounds() {
        List<Layout.Slot> slots = design.layout().slots();
        return slots.isEmpty() ? 0 : slots.get(slots.size() - 1).place().round();
    }

    /** The bars of a round, by their number in sewing order. */
    public List<Integer> barsOf(int round) {
        List<Integer> bars = new ArrayList<>();
        List<Layout.Slot> slots = design.layout().slots();
        for (int i = 0; i < slots.size(); i++) {
            if (slots.get(i).place().round() == round) {
                bars.add(i);
            }
        }
        return bars;
    }

    public Design hearth(Size cut) {
        Size finished = Layout.hearthOfCut(cut, design.layout().courses(), design.making());
        return with(new Layout(finished, design.layout().courses()));
    }

    /** The design with the given bars cut {@code cut} wide. */
    public Design bars(List<Integer> which, Length cut) {
        List<Layout.Course> courses = new ArrayList<>(design.layout().courses());
        for (int i : which) {
            Length width = cut.minus(lost(design.layout().courses(), i, design.making()));
            courses.set(i, new Layout.Course(courses.get(i).side(), width));
        }
        return with(new Layout(design.layout().hearth(), courses));
    }

    /**
     * The design with {@code missing} divided among the given bars, each cut to a mark of the ruler. Empty where there
     * is no bar to take it, or one would show too little.
     */
    Optional<Design> widened(List<Integer> which, Length missing) {
        Length mark = design.making().margins().mark();
        if (missing.times(2).plus(mark).isPositive()
                && missing.times(2).minus(mark).isNegative()) {
            return Optional.of(design);
        }
        DesignEdits shared = this;
        Length left = missing;
        for (int n = 0; n < which.size(); n++) {
            int bar = which.get(n);
            Length share = left.dividedBy(which.size() - n, Rounding.NEAREST).roundedTo(mark, Rounding.NEAREST);
            Length shown = shared.design.layout().courses().get(bar).width().plus(share);
            if (shown.isLessThan(LEAST_SHOWN)) {
                return Optional.empty();
            }
            Length cut = shared.barCut(bar).plus(share);
            shared = new DesignEdits(shared.bars(List.of(bar), cut));
            left = left.minus(share);
        }
        return which.isEmpty() ? Optional.empty() : Optional.of(shared.design);
    }

    /** The design with as many rounds as wished: outer ones removed, or added with the cut width of the outermost. */
    public Design rounds(int wished) {
        Design was = design;
        while (new DesignEdits(was).rounds() > wished) {
            was = new DesignEdits(was).withoutOuterRound();
        }
        while (new DesignEdits(was).rounds() < Math.min(wished, MOST_ROUNDS)) {
            was = new DesignEdits(was).withAnotherRound(Optional.empty());
        }
        return was;
    }

    private Design withoutOuterRound() {
        int keep = design.layout().slots().size() - barsOf(rounds()).size();
        return recut(
                widths().subList(0, keep), sides().subList(0, keep), fabrics().subList(0, keep), design.order());
    }

    /** The design with one more round outside, its bars cut {@code width} wide. */
    Design anotherRound(Length width) {
        return withAnotherRound(Optional.of(width));
    }

    private Design withAnotherRound(Optional<Length> width) {
        List<Integer> outer = barsOf(rounds());
        List<Side> sides = new ArrayList<>(sides());
        List<Length> widths = new ArrayList<>(widths());
        List<List<Fabric>> fabrics = new ArrayList<>(fabrics());
        if (outer.isEmpty()) {
            for (Side side : design.order().sides()) {
                sides.add(side);
                widths.add(width.orElse(design.making()
                        .seam()
                        .wide()
                        .plus(design.making().hem().allowance())
                        .times(4)));
                fabrics.add(design.scheme().hearth());
            }
        }
        for (int i : outer) {
            sides.add(sides.get(i));
            widths.add(width.orElse(widths.get(i)));
            fabrics.add(fabrics.get(i));
        }
        return recut(widths, sides, fabrics, design.order());
    }

    /** The same rounds in another order; each bar takes its width and fabrics from the round's bar on that side. */
    public Design order(Order order) {
        List<Side> sides = new ArrayList<>();
        List<Length> widths = new ArrayList<>();
        List<List<Fabric>> fabrics = new ArrayList<>();
        for (int round = 1; round <= rounds(); round++) {
            List<Integer> bars = barsOf(round);
            for (Side side : order.sides()) {
                int like = bars.stream()
                        .filter(i -> sides().get(i) == side)
                        .findFirst()
                        .orElse(bars.get(0));
                sides.add(side);
                widths.add(widths().get(like));
                fabrics.add(fabrics().get(like));
            }
        }
        return recut(widths, sides, fabrics, order);
    }

    /** The same cut pieces made up in another way, so that the finished size changes and not what is cut. */
    public Design making(Making making) {
        Size cut = hearthCut();
        Design same = new Design(design.order(), design.layout(), design.scheme(), making, design.rules());
        return new DesignEdits(same).recut(cut, widths(), sides(), fabrics(), design.order());
    }

    public Design rules(PiecingRules rules) {
        return new Design(design.order(), design.layout(), design.scheme(), design.making(), rules);
    }

    /** The design in which bar {@code i} may be cut from these fabrics. */
    public Design fabrics(int i, List<Fabric> allowed) {
        List<List<Fabric>> fabrics = new ArrayList<>(fabrics());
        fabrics.set(i, allowed);
        return with(new Scheme(design.scheme().kind(), design.scheme().hearth(), fabrics));
    }

    public Design hearthFabrics(List<Fabric> allowed) {
        return with(new Scheme(design.scheme().kind(), allowed, fabrics()));
    }

    /** The design with two fabrics exchanged everywhere. */
    public Design swapped(Fabric one, Fabric other) {
        UnaryOperator<Fabric> swap = fabric -> fabric.equals(one) ? other : fabric.equals(other) ? one : fabric;
        return with(new Scheme(
                design.scheme().kind(),
                design.scheme().hearth().stream().map(swap).toList(),
                fabrics().stream().map(bar -> bar.stream().map(swap).toList()).toList()));
    }

    private List<Length> widths() {
        List<Length> widths = new ArrayList<>();
        for (int i = 0; i < design.layout().courses().size(); i++) {
            widths.add(barCut(i));
        }
        return widths;
    }

    private List<Side> sides() {
        return design.layout().courses().stream().map(Layout.Course::side).toList();
    }

    private List<List<Fabric>> fabrics() {
        return design.scheme().bars();
    }

    private Design recut(List<Length> widths, List<Side> sides, List<List<Fabric>> fabrics, Order order) {
        return recut(hearthCut(), widths, sides, fabrics, order);
    }

    private Design recut(Size hearth, List<Length> widths, List<Side> sides, List<List<Fabric>> fabrics, Order order) {
        List<Layout.Course> cut = new ArrayList<>();
        for (int i = 0; i < widths.size(); i++) {
            cut.add(new Layout.Course(sides.get(i), widths.get(i)));
        }
        Making making = design.making();
        List<Layout.Course> finished = Layout.finishedOfCut(cut, making);
        return new Design(
                order,
                new Layout(Layout.hearthOfCut(hearth, finished, making), finished),
                new Scheme(design.scheme().kind(), design.scheme().hearth(), fabrics),
                making,
                design.rules());
    }

    private Design with(Layout layout) {
        return new Design(design.order(), layout, design.scheme(), design.making(), design.rules());
    }

    private Design with(Scheme scheme) {
        return new Design(design.order(), design.layout(), scheme, design.making(), design.rules());
    }
}
