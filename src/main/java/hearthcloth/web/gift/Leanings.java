package hearthcloth.web.gift;

import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.store.Store;
import hearthcloth.words.Language;
import hearthcloth.words.choosing.ChoosingWords;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What she would like of a cloth, each set and taken back by one press; whatever is empty the stash decides.
 *
 * @param hearth the fabric of the hearth
 * @param without fabrics that are left out
 * @param colours how they are to lie
 * @param bars {@code narrow} or {@code wide}
 * @param isQuick true where the fewest seams come first
 */
public record Leanings(String hearth, List<String> without, Colours colours, String bars, boolean isQuick) {

    public static final Leanings NONE = new Leanings("", List.of(), new Colours("", ""), "", false);

    private static final String KEPT = "lean.";
    private static final String BEFORE = "lean.before";

    /**
     * How the colours are to lie.
     *
     * @param scheme word of the plan of colour she likes best; after a + the one that is mixed in
     * @param contrast word of how much light and dark she wants beside each other
     */
    public record Colours(String scheme, String contrast) {}

    public Leanings {
        without = List.copyOf(without);
    }

    public static Leanings of(Store store) {
        Function<String, String> kept = name -> store.setting(KEPT + name).orElse("");
        String without = kept.apply("without");
        return new Leanings(
                kept.apply("hearth"),
                without.isEmpty() ? List.of() : Arrays.asList(without.split("\n")),
                new Colours(kept.apply("scheme"), kept.apply("contrast")),
                kept.apply("bars"),
                !kept.apply("quick").isEmpty());
    }

    public void keep(Store store) {
        store.set(KEPT + "hearth", hearth);
        store.set(KEPT + "without", String.join("\n", without));
        store.set(KEPT + "scheme", colours.scheme);
        store.set(KEPT + "contrast", colours.contrast);
        store.set(KEPT + "bars", bars);
        store.set(KEPT + "quick", isQuick ? "yes" : "");
    }

    public boolean isOpen() {
        return equals(NONE);
    }

    /** The same with one thing wished; what does not belong to it stays. */
    public Leanings with(String what, String value) {
        return switch (what) {
            case "hearth" -> new Leanings(value, without, colours, bars, isQuick);
            case "without" -> new Leanings(hearth, with(without, value), colours, bars, isQuick);
            case "scheme" -> new Leanings(hearth, without, new Colours(value, colours.contrast), bars, isQuick);
            case "with" ->
                new Leanings(
                        hearth,
                        without,
                        new Colours(base() + (value.isEmpty() ? "" : "+" + value), colours.contrast),
                        bars,
                        isQuick);
            case "contrast" -> new Leanings(hearth, without, new Colours(colours.scheme, value), bars, isQuick);
            case "bars" -> new Leanings(hearth, without, colours, value, isQuick);
            case "quick" -> new Leanings(hearth, without, colours, bars, !value.isEmpty());
            default -> this;
        };
    }

    /** The same without one thing. */
    public Leanings less(String what, String value) {
        return what.equals("without")
                ? new Leanings(
                        hearth,
                        without.stream().filter(one -> !one.equals(value)).toList(),
                        colours,
                        bars,
                        isQuick)
                : with(what, "");
    }

    private static List<String> with(List<String> some, String one) {
        return Stream.concat(some.stream(), Stream.of(one)).distinct().toList();
    }

    /** The plan of colour she likes best. */
    public Optional<Scheme.Kind> kind() {
        return Stream.of(Scheme.Kind.values())
                .filter(kind -> kind.name().equalsIgnoreCase(base()))
                .findFirst();
    }

    /** The plan of colour that is to be true of the same cloth. */
    public Optional<Scheme.Kind> mixed() {
        return Scheme.MIXED.stream()
                .filter(kind -> colours.scheme.endsWith("+" + kind.name()))
                .findFirst();
    }

    private String base() {
        int at = colours.scheme.indexOf('+');
        return at < 0 ? colours.scheme : colours.scheme.substring(0, at);
    }

    /** How much light and dark she wants beside each other. */
    public Contrast contrast() {
        return Contrast.named(colours.contrast).orElse(Contrast.READS);
    }

    /** What is left of a stash without the fabrics that are left out. */
    public Stash from(Stash stash) {
        return new Stash(stash.pieces().stream()
                .filter(piece -> !without.contains(piece.fabric().name()))
                .toList());
    }

    /** The form with what she would like: a fabric for the hearth comes before all others, of which none is left out. */
    public WishForm in(WishForm form, Stash stash, boolean isMetric) {
        List<String> fabrics = new ArrayList<>(form.fabrics());
        if (!hearth.isEmpty() && stash.fabric(hearth).isPresent()) {
            if (fabrics.isEmpty()) {
                stash.fabrics().stream()
                        .sorted(Comparator.comparingDouble((Fabric fabric) -> area(stash, fabric))
                                .reversed()
                                .thenComparing(Fabric::name))
                        .map(Fabric::name)
                        .forEach(fabrics::add);
            }
            fabrics.remove(hearth);
            fabrics.add(0, hearth);
        }
        String widths = form.bars().isEmpty() ? width(isMetric) : form.bars();
        return new WishForm(form.hearth(), widths, form.rounds(), form.order(), fabrics, form.show(), form.slack());
    }

    private static double area(Stash stash, Fabric fabric) {
        return stash.of(fabric).stream().mapToDouble(piece -> piece.areaMm2()).sum();
    }

    /** How wide bars are cut, in her unit (ours): narrow ones finish near 1¾ in, wide ones near 4¼ in. */
    public String width(boolean isMetric) {
        return switch (bars) {
            case "narrow" -> isMetric ? "6" : "2 1/2";
            case "wide" -> isMetric ? "12.5" : "5";
            default -> "";
        };
    }

    /** Called when a new gift is planned for: wishes of the one before wait until she says whether they still hold. */
    static void ofBefore(Store store, String before, Language language) {
        if (!of(store).isOpen()) {
            store.set(BEFORE, before.isEmpty() ? ChoosingWords.in(language).wishBefore() : before);
        }
    }

    /** What the wishes that wait were for; empty where none do. */
    public static Optional<String> waiting(Store store) {
        return store.setting(BEFORE);
    }

    /** Still wished, or not. */
    public static void settle(Store store, boolean isKept) {
        store.unset(BEFORE);
        if (!isKept) {
            NONE.keep(store);
            FirstUse.clear(store);
        }
    }
}
