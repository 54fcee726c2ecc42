package hearthcloth.web.gift;

import hearthcloth.cloth.layout.Order;
import hearthcloth.measure.MeasureException;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Stash;
import hearthcloth.store.Store;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.Door;
import hearthcloth.wish.GiftWish;
import hearthcloth.wish.Usual;
import hearthcloth.wish.WishField;
import hearthcloth.wish.WishReader;
import hearthcloth.wish.WishWords;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.Purpose;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Slack;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What she wishes of the cloth itself, in her own words; whatever is empty the stash decides. Sizes are as cut.
 *
 * @param hearth a size
 * @param bars one width, or one a round
 * @param rounds a whole number
 * @param order word of an {@link Order}
 * @param fabrics names, the first for the hearth; empty for any
 * @param show a fabric that is to show once tied; empty for none
 * @param slack how much larger than the least a cloth for a gift is planned; or none
 */
public record WishForm(
        String hearth, String bars, String rounds, String order, List<String> fabrics, String show, String slack) {

    /** The stash decides everything. */
    public static final WishForm OPEN = new WishForm("", "", "", "", List.of(), "", "");

    public WishForm {
        fabrics = List.copyOf(fabrics);
    }

    public static WishForm of(Store store) {
        Function<String, String> kept = name -> store.setting("wish." + name).orElse("");
        String fabrics = kept.apply("fabrics");
        return new WishForm(
                kept.apply("hearth"),
                kept.apply("bars"),
                kept.apply("rounds"),
                kept.apply("order"),
                fabrics.isEmpty() ? List.of() : Arrays.asList(fabrics.split("\n")),
                kept.apply("show"),
                kept.apply("slack"));
    }

    public static WishForm read(Function<String, String> field, List<String> fabrics) {
        return new WishForm(
                field.apply("hearth"),
                field.apply("bars"),
                field.apply("rounds"),
                field.apply("order"),
                fabrics.stream().filter(name -> !name.isBlank()).toList(),
                field.apply("show"),
                field.apply("slack"));
    }

    public void keep(Store store) {
        store.set("wish.hearth", hearth);
        store.set("wish.bars", bars);
        store.set("wish.rounds", rounds);
        store.set("wish.order", order);
        store.set("wish.fabrics", String.join("\n", fabrics));
        store.set("wish.show", show);
        store.set("wish.slack", slack);
    }

    /** The same with another fabric to show once tied. */
    public WishForm showing(String fabric) {
        return new WishForm(hearth, bars, rounds, order, fabrics, fabric, slack);
    }

    /** The same of these fabrics alone, the first for the hearth; of any where there are none. */
    public WishForm only(List<String> names) {
        return new WishForm(hearth, bars, rounds, order, names, show, slack);
    }

    /** The same of any fabrics. */
    public WishForm ofAny() {
        return new WishForm(hearth, bars, rounds, order, List.of(), show, slack);
    }

    /**
     * The wish to plan.
     *
     * @throws MeasureException naming each field that cannot be used, and the mend
     */
    public Wish wish(Purpose wished, Usual usual, Stash stash, int proposals) {
        WishWords words = words(wished, stash).with(WishField.PROPOSALS, String.valueOf(proposals));
        return said(words, told -> new WishReader(told, stash, usual, Door.PAGE).wish(gift(wished)));
    }

    /** How much larger than the least a cloth for a gift is planned. */
    public Slack slack(Usual usual) {
        WishWords words = WishWords.NOTHING.with(WishField.SLACK, given(slack));
        return said(words, told -> new WishReader(told, new Stash(List.of()), usual, Door.PAGE).slack());
    }

    /** What a reader makes of words, its reasons why not told as a page tells them. */
    static <T> T said(WishWords words, Function<WishWords, T> reader) {
        try {
            return reader.apply(words);
        } catch (BadInputException e) {
            throw new RefusedException(Sentence.row(e.said()));
        }
    }

    private static Optional<GiftWish> gift(Purpose wished) {
        return wished.thing().flatMap(thing -> wished.tied().map(tie -> new GiftWish(thing, tie, Placing.CENTRED)));
    }

    /** As the shell has them. A fabric that has left the stash since is wished no more. */
    private WishWords words(Purpose wished, Stash stash) {
        boolean isTied = wished.thing().isPresent();
        String known =
                fabrics.stream().filter(name -> stash.fabric(name).isPresent()).collect(Collectors.joining("\n"));
        return WishWords.NOTHING
                .with(WishField.HEARTH, given(hearth))
                .with(WishField.BARS, given(bars))
                .with(WishField.ROUNDS, given(rounds))
                .with(WishField.ORDER, given(order))
                .with(WishField.FABRICS, given(known))
                .with(WishField.SLACK, given(slack))
                .with(WishField.SIZE, given(wished.size()))
                .with(WishField.SHOW, isTied && stash.fabric(show).isPresent() ? show : null);
    }

    private static @Nullable String given(String text) {
        return text.isBlank() ? null : text;
    }
}
