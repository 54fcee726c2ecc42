package hearthcloth.guideline;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Order;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a finished cloth is, read off the cloth itself, to hold it to rules or to take rules from it.
 *
 * @param finished the whole
 * @param hearth the piece in the middle
 * @param bars every bar once, in sewing order
 * @param order in which they were laid; empty where it is none of the usual ones
 */
record ClothFacts(Size finished, Measured<Size> hearth, List<Bar> bars, Optional<Order> order) {

    /** A measure as it finishes and as it is cut before leeway and the ruler's marks. */
    public record Measured<T>(T finished, T cut) {

        /** The one meant. */
        T meant(boolean asFinished) {
            return asFinished ? finished : cut;
        }
    }

    /**
     * A bar.
     *
     * @param joins within it
     */
    public record Bar(int round, Measured<Length> width, int joins) {}

    public ClothFacts {
        bars = List.copyOf(bars);
    }

    /**
     * The facts of a cloth with a hearth.
     *
     * @throws IllegalArgumentException for a cloth of scraps or blocks, which has none
     */
    public static ClothFacts of(Cloth cloth) {
        Map<String, List<Laid>> bars = new TreeMap<>(ClothFacts::inOrder);
        Optional<Laid> hearth = Optional.empty();
        for (Laid laid : cloth.laid()) {
            if (laid.patch().place() instanceof Place.Bar bar) {
                bars.computeIfAbsent(bar.bar(), name -> new ArrayList<>()).add(laid);
            } else if (laid.patch().place() instanceof Place.Hearth) {
                hearth = Optional.of(laid);
            }
        }
        Laid middle = hearth.orElseThrow(() -> new IllegalArgumentException("this cloth has no hearth"));
        return new ClothFacts(
                cloth.finished(),
                new Measured<>(middle.at().size(), middle.exact()),
                bars.values().stream()
                        .map(parts -> bar(parts, cloth.making().trim()))
                        .toList(),
                order(bars));
    }

    /** 2B before 10A, and A to Z before AA. */
    private static int inOrder(String one, String other) {
        int digits = Integer.compare(round(one), round(other));
        if (digits != 0) {
            return digits;
        }
        int length = Integer.compare(one.length(), other.length());
        return length != 0 ? length : one.compareTo(other);
    }

    private static int round(String bar) {
        return Integer.parseInt(bar.replaceAll("\\D", ""));
    }

    private static Bar bar(List<Laid> parts, Length trim) {
        Laid first = parts.get(0);
        Place.Bar place = (Place.Bar) first.patch().place();
        Size finished = first.at().size();
        Size exact = first.exact();
        boolean upright = place.side().isUpright();
        Length cut = (upright ? exact.width() : exact.height()).plus(trim);
        return new Bar(
                place.round(), new Measured<>(upright ? finished.width() : finished.height(), cut), parts.size() - 1);
    }

    private static Optional<Order> order(Map<String, List<Laid>> bars) {
        Map<Integer, List<Side>> rounds = new LinkedHashMap<>();
        for (List<Laid> parts : bars.values()) {
            Place.Bar bar = (Place.Bar) parts.get(0).patch().place();
            rounds.computeIfAbsent(bar.round(), round -> new ArrayList<>()).add(bar.side());
        }
        for (Order order : Order.values()) {
            if (!rounds.isEmpty() && rounds.values().stream().allMatch(order.sides()::equals)) {
                return Optional.of(order);
            }
        }
        return Optional.empty();
    }

    public int rounds() {
        return bars.stream().mapToInt(Bar::round).max().orElse(0);
    }

    /** The most joins in one bar. */
    public int mostJoins() {
        return bars.stream().mapToInt(Bar::joins).max().orElse(0);
    }

    /** The ways of colour, among those that can be an idea, that are true of a cloth. */
    public static List<Scheme.Kind> ways(Cloth cloth, List<Fabric> fabrics) {
        return ColourRule.WAYS.stream()
                .filter(kind -> SchemeRule.holds(kind, cloth, fabrics))
                .toList();
    }
}
