package hearthcloth.web.cloth;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.making.Face;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Unit;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.gift.GiftDrawing;
import hearthcloth.web.gift.GiftShape;
import hearthcloth.web.gift.TiedAsked;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.Language;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Purpose;
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

    /**
     * A cloth that may be tied.
     *
     * @param cloth what is tied
     * @param wished what the cloth is for, where nothing else is asked
     */
    public record Tied(SavedCloth saved, Cloth cloth, Settings settings, Purpose wished) {

        private Purpose shown() {
            return wished.orShown(cloth.finished(), settings.ruler());
        }

        /** What is said where she has said no gift herself; empty where she has. */
        private String unsaid(TiedAsked asked, Wrapped round) {
            return wished.gift().isEmpty() && asked.gift().equals(shown().gift())
                    ? DesigningWords.in(settings.pages())
                            .tiedUnsaid(round.gift().describe(settings.voice()))
                    : "";
        }

        private boolean does(Wrapped round) {
            return round.fold(cloth).isPresent();
        }
    }

    /** What is asked; nothing is worked out unless the tied gift is what is looked at. */
    static TiedStage of(ClothView view, ClothBench.Look look, UnaryOperator<@Nullable String> field) {
        Tied cloth = new Tied(view.saved(), view.cloth(), view.settings(), view.wished());
        if (look == ClothBench.Look.TIED && view.made()) {
            return of(cloth, field);
        }
        boolean grey = isGrey(field);
        TiedAsked asked = TiedAsked.read(field, view.wished());
        return untied(
                asked, "", grey, gifts(asked, cloth, grey), view.settings().pages());
    }

    private static boolean isGrey(UnaryOperator<@Nullable String> field) {
        return "yes".equals(field.apply("grey"));
    }

    /** The same for a cloth that can be made. */
    public static TiedStage of(Tied cloth, UnaryOperator<@Nullable String> field) {
        Settings settings = cloth.settings();
        TiedAsked asked = TiedAsked.read(field, cloth.shown());
        boolean grey = isGrey(field);
        List<Choice> gifts = gifts(asked, cloth, grey);
        try {
            Optional<Wrapped> wrapped = asked.wrapped(settings);
            if (wrapped.isEmpty()) {
                String say = DesigningWords.in(settings.pages()).tiedSay();
                return untied(asked, say, grey, gifts, settings.pages());
            }
            Wrapped round = wrapped.get();
            TiedAsked now = asked.in(round.tie().words());
            return new TiedStage(
                    now,
                    settings.voice()
                            .sentences(List.of(
                                    cloth.unsaid(asked, round),
                                    round.sentence(cloth.cloth().finished(), settings.voice()))),
                    cloth.does(round),
                    grey,
                    new Choices(gifts, ties(cloth, now, grey)),
                    settings.pages());
        } catch (MeasureException e) {
            return untied(asked, Refusal.of(e).in(settings.voice()), grey, gifts, settings.pages());
        }
    }

    /** A cloth that cannot be made yet, with what is to be said of that. */
    public static TiedStage lacking(TiedAsked asked, String said, Language language) {
        return untied(asked, said, false, List.of(), language);
    }

    private static TiedStage untied(TiedAsked asked, String said, boolean grey, List<Choice> gifts, Language language) {
        return new TiedStage(asked, said, false, grey, new Choices(gifts, List.of()), language);
    }

    private static List<Choice> ties(Tied cloth, TiedAsked now, boolean grey) {
        List<Choice> ties = new ArrayList<>();
        Voice voice = cloth.settings().voice();
        for (Tie tie : now.ties(cloth.settings().bare())) {
            TiedAsked so = now.in(tie.words());
            boolean does = so.wrapped(cloth.settings()).filter(cloth::does).isPresent();
            String picture = "/tied/" + cloth.saved().id() + "/small.svg" + so.query() + "&v="
                    + cloth.saved().version();
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

    /**
     * The tied gift as it fills the stage: to turn, or where it cannot be turned as a still picture.
     *
     * @param cloth its id, {@code name} what it is called
     * @param first the side from which it is seen first, as the script knows it
     * @param picture the address of the still picture
     */
    public record Large(TiedStage tied, String cloth, String name, String first, String picture) {

        /** What is said on it. */
        public DesigningWords words() {
            return DesigningWords.in(tied.language());
        }
    }

    /** The tied gift from the side that says most. */
    public Large large(SavedCloth saved) {
        String still = "/tied/" + saved.id() + "/large.svg" + query() + "&v=" + saved.version();
        return new Large(this, saved.id(), saved.name(), first(), still);
    }

    /** Closed books show their knot at the spine. */
    private String first() {
        return Tie.named(asked.tie()).filter(tie -> tie == Tie.BOOKS).isPresent() ? "behind" : "corner";
    }

    /**
     * The small pictures to choose by, and where they lead.
     *
     * @param act the page's address
     * @param part by which the page knows what a choice changes
     * @param version of the cloth, so that its pictures are asked for once
     */
    public record Picks(TiedStage tied, String act, String part, String cloth, String version) {

        /** What is said on it. */
        public DesigningWords words() {
            return DesigningWords.in(tied.language());
        }
    }

    /** The end of the address of this picture. */
    public String query() {
        return asked.query();
    }

    /** Shown the other way: as light and dark, or in its colours. */
    public String otherLight() {
        return address(asked, !isGrey);
    }

    private static List<Choice> gifts(TiedAsked asked, Tied cloth, boolean grey) {
        String hers = cloth.wished().gift();
        Language language = cloth.settings().pages();
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
