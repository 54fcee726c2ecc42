package hearthcloth.web.gift;

import hearthcloth.cloth.Place;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Order;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Stash;
import hearthcloth.store.Store;
import hearthcloth.web.kit.Settings;
import hearthcloth.work.Purpose;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * What she wishes of the cloth itself, in her own words; whatever is empty the stash decides. Sizes are as cut.
 *
 * @param hearth a size
 * @param bars one width, or one a round
 * @param rounds a whole number
 * @param order word of an {@link Order}
 * @param fabrics names, the first for the hearth; empty for any; not kept, but read off her {@link Leanings}
 * @param show a fabric that is to show once tied; empty for none
 */
public record WishForm(String hearth, String bars, String rounds, String order, List<String> fabrics, String show) {

    /** The stash decides everything. */
    public static final WishForm OPEN = new WishForm("", "", "", "", List.of(), "");

    private static final int MOST_ROUNDS = 40;

    public WishForm {
        fabrics = List.copyOf(fabrics);
    }

    public static WishForm of(Store store) {
        Function<String, String> kept = name -> store.setting("wish." + name).orElse("");
        return new WishForm(
                kept.apply("hearth"),
                kept.apply("bars"),
                kept.apply("rounds"),
                kept.apply("order"),
                List.of(),
                kept.apply("show"));
    }

    public static WishForm read(Function<String, String> field) {
        return new WishForm(
                field.apply("hearth"),
                field.apply("bars"),
                field.apply("rounds"),
                field.apply("order"),
                List.of(),
                field.apply("show"));
    }

    public void keep(Store store) {
        store.set("wish.hearth", hearth);
        store.set("wish.bars", bars);
        store.set("wish.rounds", rounds);
        store.set("wish.order", order);
        store.set("wish.show", show);
    }

    /**
     * The wish to plan.
     *
     * @throws MeasureException naming the field and the mend
     */
    public Wish wish(Purpose wished, Settings settings, Stash stash, int proposals) {
        Optional<Wish.Cut<Size>> middle = hearth.isEmpty()
                ? Optional.empty()
                : Optional.of(new Wish.Cut<>(Measures.size(hearth, settings.bare()), false));
        List<Wish.Cut<Length>> widths = bars.isEmpty()
                ? List.of()
                : Measures.lengths(bars.replace(",", " x "), settings.bare()).stream()
                        .map(width -> new Wish.Cut<>(width, false))
                        .toList();
        Optional<Integer> count = rounds.isEmpty() ? Optional.empty() : Optional.of(count());
        if (count.isPresent() && widths.size() > count.get()) {
            throw new MeasureException("there are more bar widths than rounds; write one width a round");
        }
        List<String> known =
                fabrics.stream().filter(name -> stash.fabric(name).isPresent()).toList();
        return new Wish(
                wished.target(settings.ruler()),
                new Wish.Shape(middle, widths, count, Order.named(order)),
                settings.making(),
                settings.rules(),
                new Wish.Preferences(known, proposals, 1, settings.ruler(), outside(wished, settings, stash)));
    }

    /** Only where there is a gift to be tied, and the fabric is still in the stash. */
    private Optional<Wish.Outside> outside(Purpose wished, Settings settings, Stash stash) {
        return wished.wrapped(settings.ruler())
                .filter(wrapped -> stash.fabric(show).isPresent())
                .map(wrapped ->
                        new Wish.Outside(show, wrapped.gift(), wrapped.tie(), wrapped.tail(), wrapped.placing()));
    }

    private int count() {
        if (!rounds.matches("\\d{1,2}") || Integer.parseInt(rounds) < 1 || Integer.parseInt(rounds) > MOST_ROUNDS) {
            throw new MeasureException(
                    "\"" + rounds + "\" rounds will not do; write a number from 1 to " + MOST_ROUNDS);
        }
        return Integer.parseInt(rounds);
    }

    /** The order a plan's bars were laid in; round the square where it is none of the usual ones. */
    public static Order order(Plan plan) {
        List<Side> sides = new ArrayList<>();
        plan.cloth().laid().stream()
                .map(laid -> laid.patch().place())
                .map(place -> place instanceof Place.Bar bar && bar.round() == 1 && bar.part() <= 1 ? bar : null)
                .filter(Objects::nonNull)
                .sorted(java.util.Comparator.comparingInt(Place.Bar::order))
                .forEach(bar -> sides.add(bar.side()));
        for (Order order : Order.values()) {
            if (order.sides().equals(sides)) {
                return order;
            }
        }
        return Order.ROUND;
    }
}
