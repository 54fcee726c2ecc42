package hearthcloth.web.cloth;

import hearthcloth.cloth.making.Face;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Unit;
import hearthcloth.web.gift.GiftDrawing;
import hearthcloth.web.gift.GiftShape;
import hearthcloth.web.gift.TiedAsked;
import hearthcloth.words.Language;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.tie.Wrapped;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A cloth tied, large on the bench: round what, in which tie, with which face outside, and how many quarters the cloth is
 * turned under the gift, each a small picture to choose.
 *
 * @param fit how the cloth does round the gift, or what cannot be read, in a sentence
 * @param isTied whether there is a picture of it
 * @param isGrey whether it is shown as light and dark
 */
public record TiedStage(
        TiedAsked asked, String fit, boolean isTied, boolean isGrey, Choices choices, Language language) {

    /**
     * Round what, and how.
     *
     * @param gifts her gift, and one common thing of each other shape
     * @param ties that suit the gift
     */
    public record Choices(List<Choice> gifts, List<Choice> ties) {}

    /**
     * A small picture to choose by.
     *
     * @param id by which it is known among its like
     * @param words under it
     * @param query the end of the address that shows it so
     * @param picture SVG, or the address of one; empty where the cloth does not tie it so
     * @param now whether it is chosen
     */
    public record Choice(String id, String words, String query, String picture, boolean now) {}

    private static final int QUARTERS = 4;

    /** What is asked; nothing is worked out unless the tied gift is what is looked at. */
    static TiedStage of(ClothView view, ClothBench.Look look, UnaryOperator<@Nullable String> field) {
        TiedAsked asked = TiedAsked.read(field, view.wished());
        boolean grey = "yes".equals(field.apply("grey"));
        Choices none = new Choices(
                gifts(asked, view.wished().gift(), grey, view.settings().pages()), List.of());
        if (look != ClothBench.Look.TIED || !view.made()) {
            return new TiedStage(asked, "", false, grey, none, view.settings().pages());
        }
        try {
            Optional<Wrapped> wrapped = asked.wrapped(view.settings());
            if (wrapped.isEmpty()) {
                return new TiedStage(
                        asked,
                        DesigningWords.in(view.settings().pages()).tiedSay(),
                        false,
                        grey,
                        none,
                        view.settings().pages());
            }
            Wrapped round = wrapped.get();
            TiedAsked now = asked.in(round.tie().words());
            return new TiedStage(
                    now,
                    round.sentence(view.cloth().finished(), view.settings().voice()),
                    isTied(view, round),
                    grey,
                    new Choices(none.gifts(), ties(view, now, grey)),
                    view.settings().pages());
        } catch (MeasureException e) {
            return new TiedStage(
                    asked,
                    Refusal.of(e).in(view.settings().voice()),
                    false,
                    grey,
                    none,
                    view.settings().pages());
        }
    }

    private static boolean isTied(ClothView view, Wrapped round) {
        return round.fold(view.cloth()).isPresent();
    }

    private static List<Choice> ties(ClothView view, TiedAsked now, boolean grey) {
        List<Choice> ties = new ArrayList<>();
        Voice voice = view.settings().voice();
        for (Tie tie : now.ties(view.settings().bare())) {
            TiedAsked so = now.in(tie.words());
            boolean does = so.wrapped(view.settings())
                    .filter(round -> isTied(view, round))
                    .isPresent();
            String picture = "/tied/" + view.saved().id() + "/small.svg" + so.query() + "&v="
                    + view.saved().version();
            ties.add(new Choice(
                    tie.words().replace(' ', '-'),
                    voice.tying().tieName(tie.name()),
                    address(so, grey),
                    does ? picture : "",
                    tie.words().equals(now.tie())));
        }
        return List.copyOf(ties);
    }

    private static String address(TiedAsked asked, boolean grey) {
        return asked.query() + (grey ? "&grey=yes" : "") + "&look=tied";
    }

    /** The end of the address of this picture. */
    public String query() {
        return asked.query();
    }

    /** Shown the other way: as light and dark, or in its colours. */
    public String otherLight() {
        return address(asked, !isGrey);
    }

    private static List<Choice> gifts(TiedAsked asked, String hers, boolean grey, Language language) {
        return Arrays.stream(GiftShape.values())
                .map(shape -> {
                    Optional<Class<?>> kind = kind(shape.example());
                    String gift = kind(hers).equals(kind) ? hers : shape.example();
                    return new Choice(
                            shape.word(),
                            shape.words(language),
                            address(asked.round(gift), grey),
                            GiftDrawing.tile(shape),
                            kind(asked.gift()).equals(kind));
                })
                .toList();
    }

    /** What sort of gift it is, whatever its sizes; empty where it cannot be read. */
    private static Optional<Class<?>> kind(String gift) {
        try {
            return gift.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Gift.parse(gift, Unit.INCH).getClass());
        } catch (MeasureException e) {
            return Optional.empty();
        }
    }

    public List<Choice> faces() {
        DesigningWords words = DesigningWords.in(language);
        return List.of(
                new Choice(
                        "front",
                        words.face("front"),
                        address(asked.with(Face.FRONT), isGrey),
                        "flat",
                        !asked.isBackOut()),
                new Choice(
                        "back",
                        words.face("back"),
                        address(asked.with(Face.BACK), isGrey),
                        "reverse",
                        asked.isBackOut()));
    }

    /** As the cloth lies under the gift; anticlockwise. */
    public List<Choice> quarters() {
        DesigningWords words = DesigningWords.in(language);
        List<Choice> all = new ArrayList<>();
        for (int i = 0; i < QUARTERS; i++) {
            all.add(new Choice(
                    String.valueOf(i),
                    words.tiedQuarter(String.valueOf(i)),
                    address(asked.turned(i), isGrey),
                    asked.isBackOut() ? "reverse" : "flat",
                    asked.turns() == i));
        }
        return List.copyOf(all);
    }
}
