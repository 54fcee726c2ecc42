package hearthcloth.plan.model;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import java.util.List;
import java.util.Optional;

/**
 * What the maker asks for. Whatever is empty, the planner chooses, and says so.
 *
 * @param target the finished size wanted, with how it is meant
 * @param shape hearth, bars, rounds, order
 */
public record Wish(Target target, Shape shape, Making making, PiecingRules rules, Preferences preferences) {

    /** Whether hearth, widths and rounds are all wished, so that they decide how large the cloth is. */
    public boolean isSizedByShape() {
        return shape.hearth().isPresent()
                && !shape.bars().isEmpty()
                && shape.rounds().isPresent();
    }

    /** The same wish with the rounds left to the planner. */
    public Wish withRoundsOpen() {
        return new Wish(
                target, new Shape(shape.hearth, shape.bars, Optional.empty(), shape.order), making, rules, preferences);
    }

    /** The same wish with hearth, bars and rounds left to the planner. */
    public Wish withShapeOpen() {
        return new Wish(
                target,
                new Shape(Optional.empty(), List.of(), Optional.empty(), shape.order),
                making,
                rules,
                preferences);
    }

    /** The same wish of any fabrics. */
    public Wish withFabricsOpen() {
        Preferences was = preferences;
        return new Wish(
                target,
                shape,
                making,
                rules,
                new Preferences(List.of(), was.proposals, was.seed, was.ruler, was.looks));
    }

    /** The same wish with its colours wished otherwise. */
    public Wish coloured(Optional<Scheme.Kind> scheme, Contrast contrast) {
        Preferences was = preferences;
        Looks looks =
                new Looks(was.looks.outside, scheme, contrast, was.looks.tied, scheme.flatMap(kind -> was.looks.with));
        return new Wish(
                target, shape, making, rules, new Preferences(was.fabrics, was.proposals, was.seed, was.ruler, looks));
    }

    /** The same wish with a second plan of colour in its first; nothing where no first is wished. */
    public Wish mixed(Optional<Scheme.Kind> with) {
        return new Wish(target, shape, making, rules, preferences.mixed(with));
    }

    /**
     * How large the cloth should be.
     *
     * @param size finished; empty where the layout or the stash decides
     * @param atLeast true where a gift asks for at least this much, false where this size itself is wished
     */
    public record Target(Optional<Size> size, boolean atLeast) {
        public static Target none() {
            return new Target(Optional.empty(), true);
        }
    }

    /**
     * The layout asked for.
     *
     * @param hearth cut or finished size
     * @param bars one width for all rounds or one a round; empty where the stash decides
     * @param rounds empty where the size or the stash decides
     */
    public record Shape(
            Optional<Cut<Size>> hearth, List<Cut<Length>> bars, Optional<Integer> rounds, Optional<Order> order) {
        public Shape {
            bars = List.copyOf(bars);
        }
    }

    /** A measure given as it is cut, or as it finishes. */
    public record Cut<T>(T measure, boolean finished) {}

    /**
     * The remaining wishes.
     *
     * @param fabrics names of fabrics to use, in order (first for the hearth); empty means any
     * @param proposals how many to offer
     * @param seed of every random choice
     * @param ruler the ruler the maker cuts with; cut sizes are rounded up to its marks
     */
    public record Preferences(List<String> fabrics, int proposals, long seed, Ruler ruler, Looks looks) {
        public Preferences {
            fabrics = List.copyOf(fabrics);
        }

        /** Preferences that leave the colours to the planner. */
        public Preferences(List<String> fabrics, int proposals, long seed, Ruler ruler) {
            this(fabrics, proposals, seed, ruler, new Looks(Optional.empty(), Optional.empty(), Contrast.READS));
        }

        /** The same with a second plan of colour in the first; nothing where no first is wished. */
        public Preferences mixed(Optional<Scheme.Kind> with) {
            return new Preferences(fabrics, proposals, seed, ruler, looks.mixed(with));
        }

        /** A fabric to be seen on the tied gift. */
        public Optional<Outside> outside() {
            return looks.outside;
        }
    }

    /**
     * How the colours are to look.
     *
     * @param outside a fabric to be seen on the tied gift
     * @param scheme the plan of colour wished; empty where any may be
     * @param tied the gift round which the cloth will be seen, if there is one
     * @param with a second plan of colour whose name is to be true as well
     */
    public record Looks(
            Optional<Outside> outside,
            Optional<Scheme.Kind> scheme,
            Contrast contrast,
            Optional<Tied> tied,
            Optional<Scheme.Kind> with) {

        /** Looks of one plan of colour. */
        public Looks(Optional<Outside> outside, Optional<Scheme.Kind> scheme, Contrast contrast, Optional<Tied> tied) {
            this(outside, scheme, contrast, tied, Optional.empty());
        }

        /** The same with another plan of colour in the first. Of two that choose a fabric for each bar the accent leads. */
        Looks mixed(Optional<Scheme.Kind> other) {
            boolean isTurned =
                    other.equals(Optional.of(Scheme.Kind.ACCENT)) && scheme.equals(Optional.of(Scheme.Kind.SCATTERED));
            return isTurned
                    ? new Looks(outside, other, contrast, tied, scheme)
                    : new Looks(outside, scheme, contrast, tied, scheme.flatMap(kind -> other));
        }

        /** Looks of a cloth that is seen flat, or round the gift of the fabric that is to be outside. */
        public Looks(Optional<Outside> outside, Optional<Scheme.Kind> scheme, Contrast contrast) {
            this(outside, scheme, contrast, outside.map(Outside::tied));
        }
    }

    /** A gift, and how the cloth is tied round it. */
    public record Tied(Gift gift, Tie tie, Tail tail, Placing placing) {}

    /** A fabric that is to be visible once the cloth is tied round a gift. */
    public record Outside(String fabric, Gift gift, Tie tie, Tail tail, Placing placing) {

        Tied tied() {
            return new Tied(gift, tie, tail, placing);
        }
    }
}
