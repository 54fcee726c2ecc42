package hearthcloth.web.tie;

import hearthcloth.draw.picture.LeanSvg;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.tied.TiedGift;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.colour.TiedColours;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.web.gift.TiedAsked;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.wrapping.WrappingWords;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.tie.Wrapped;
import hearthcloth.wrap.tying.WhatShows;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A cloth tied, as its page shows it.
 *
 * @param choice of ties
 * @param fit how the cloth does round the gift, in a sentence
 * @param stills from three sides; none where the cloth is too small
 * @param links where the model to turn and more is found
 * @param trouble what cannot be read; empty else
 */
@PageView.Template("part/tied-changed.jte")
public record TiedView(
        Language language,
        TiedAsked asked,
        Ties choice,
        String fit,
        List<Still> stills,
        Shows shows,
        Links links,
        String trouble)
        implements PageView {

    /**
     * Where each fabric or each patch went, as a table.
     *
     * @param isByPatch true for patches, false for fabrics
     */
    public record Table(Language language, List<Row> rows, boolean isByPatch) {

        /** What is said in it. */
        public WrappingWords words() {
            return WrappingWords.in(language);
        }

        /** As a catalogue calls what its rows are. */
        public String what() {
            return isByPatch ? "patch" : "fabric";
        }
    }

    /**
     * The ties that suit.
     *
     * @param chosen by its English words, as addresses and forms know it; empty where none is
     */
    public record Ties(List<Tie> all, String chosen) {}

    /**
     * One picture with its caption.
     *
     * @param svg the picture itself; empty where it lies at {@code address}, so that the page is light
     * @param width in dots of the screen, as {@code height} is; so its place is kept until it comes
     */
    public record Still(String words, String svg, String address, long width, long height) {}

    /** What can be seen of it. */
    public record Shows(List<String> sentences, List<Row> fabrics, List<Row> patches) {
        static final Shows NOTHING = new Shows(List.of(), List.of(), List.of());
    }

    /**
     * Where a fabric or a patch went, in whole per cent of it.
     *
     * @param of of all that is seen, the share that is this
     * @param from the sides it is seen from
     */
    public record Row(
            String name,
            String fabric,
            String colour,
            long of,
            long top,
            long sides,
            long under,
            long ends,
            long hidden,
            String from) {}

    /** Where the model, how the tie is done, and the folds on paper are found. */
    public record Links(String model, String tie, String net) {
        static final Links NONE = new Links("", "", "");
    }

    /** Each still picture's room, in millimetres; shown about four pixels to one. */
    private static final double STILL = 90;

    private static final double DOTS = 4;

    private static final String NO_COLOUR = "#8a8f98";

    static TiedView of(Language language, TiedAsked asked, List<Tie> ties, String trouble) {
        return new TiedView(
                language, asked, new Ties(ties, asked.tie()), "", List.of(), Shows.NOTHING, Links.NONE, trouble);
    }

    /** With what {@code tied} shows; empty where the cloth is too small. */
    static TiedView of(
            TiedAsked asked, Wrapped wrapped, Plan plan, Settings settings, Optional<TiedGift> tied, String cloth) {
        Voice voice = settings.voice();
        String how = "/tie/" + word(wrapped.tie()) + "?gift=" + TiedAsked.encoded(asked.gift()) + "&cloth="
                + TiedAsked.encoded(cloth);
        String own = "/tied/" + cloth;
        Links links = tied.isEmpty()
                ? new Links("", how, "")
                : new Links(own + "/model" + asked.query(), how, own + "/net.pdf" + asked.query());
        return new TiedView(
                voice.language(),
                asked,
                new Ties(Tie.suiting(wrapped.gift()), wrapped.tie().words()),
                wrapped.sentence(plan.cloth().finished(), voice),
                tied.map(gift -> stills(gift, own + "/still.svg" + asked.query(), voice))
                        .orElse(List.of()),
                tied.map(gift -> shows(gift, plan, voice)).orElse(Shows.NOTHING),
                links,
                "");
    }

    /** What is said on it. */
    public WrappingWords words() {
        return WrappingWords.in(language);
    }

    /** The chosen tie in the page's language. */
    public String named() {
        return Tie.named(choice.chosen()).map(this::named).orElse(choice.chosen());
    }

    /** A tie to choose, in the page's language. */
    public String named(Tie tie) {
        return Voice.of(language, Ruler.MILLIMETRES).tying().tieName(tie.name());
    }

    /** A tie in an address: {@code four-corner-tie}. */
    static String word(Tie tie) {
        return tie.words().replace(' ', '-');
    }

    /** The last, from a corner, lies in the page. */
    private static List<Still> stills(TiedGift gift, String address, Voice voice) {
        List<Still> stills = new ArrayList<>();
        List<Picture> all = pictures(gift, voice);
        for (int i = 0; i < all.size(); i++) {
            Picture picture = all.get(i);
            stills.add(new Still(
                    picture.title(),
                    i == all.size() - 1 ? svg(picture) : "",
                    address + "&from=" + i,
                    Math.round(picture.width() * DOTS),
                    Math.round(picture.height() * DOTS)));
        }
        return stills;
    }

    /** From all sides, to one scale. */
    static List<Picture> pictures(TiedGift gift, Voice voice) {
        return gift.stills(STILL, STILL, voice.printing());
    }

    static String svg(Picture picture) {
        return LeanSvg.write(picture);
    }

    private static Shows shows(TiedGift gift, Plan plan, Voice voice) {
        WhatShows shows = gift.whatShows();
        Map<String, String> colours = new LinkedHashMap<>();
        for (Fabric fabric : plan.fabrics()) {
            colours.put(fabric.name(), fabric.colour().hex());
        }
        double seen = shows.seenMm2();
        List<String> sentences = new ArrayList<>(shows.sentences(voice));
        if (!plan.cloth().isFree()) {
            Stream.of(TiedColours.sentence(plan.cloth(), plan.fabrics(), gift.visible()))
                    .filter(words -> !words.isEmpty())
                    .forEach(words -> sentences.add(words.in(voice)));
        }
        return new Shows(
                sentences,
                shows.fabrics().stream()
                        .map(row -> row(row, colours, seen, voice))
                        .toList(),
                shows.patches().stream()
                        .map(row -> row(row, colours, seen, voice))
                        .toList());
    }

    private static Row row(WhatShows.Seen seen, Map<String, String> colours, double all, Voice voice) {
        Visible.Shares shares = seen.shares();
        double whole = shares.total();
        WrappingWords words = WrappingWords.in(voice.language());
        String from =
                seen.from().stream().map(view -> words.showsView(view.name())).collect(Collectors.joining(", "));
        return new Row(
                seen.name(),
                seen.fabric(),
                colours.getOrDefault(seen.fabric(), NO_COLOUR),
                percent(shares.sides() + shares.top(), all),
                percent(shares.top(), whole),
                percent(shares.sides(), whole),
                percent(shares.underneath(), whole),
                percent(shares.loose(), whole),
                percent(shares.hidden(), whole),
                from.isEmpty() ? words.showsView("NONE") : from);
    }

    private static long percent(double part, double whole) {
        return whole == 0 ? 0 : Math.round(100 * part / whole);
    }
}
