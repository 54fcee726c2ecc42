package hearthcloth.web.tie;

import hearthcloth.draw.picture.LeanSvg;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.tied.TiedGift;
import hearthcloth.plan.colour.TiedColours;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.web.cloth.TiedStage;
import hearthcloth.web.gift.TiedAsked;
import hearthcloth.web.kit.PageView;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.wrapping.WrappingWords;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.tying.Between;
import hearthcloth.wrap.tying.WhatShows;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A cloth tied, as its page shows it.
 *
 * @param stage what is asked, and the small pictures to choose by
 * @param sides from which it can be looked at; none where it is not tied
 * @param links where the model to turn and more is found
 */
@PageView.Template("part/tied-bench.jte")
public record TiedView(On on, TiedStage stage, List<Side> sides, Shows shows, Links links) implements PageView {

    /**
     * Which cloth it is.
     *
     * @param unit of a number without one, in the page's language
     * @param token proves that a form came from one of our own pages
     */
    public record On(String id, String name, String version, String unit, String token) {}

    /**
     * A side to look at it from.
     *
     * @param look by which the script knows it
     * @param picture the address of a still picture, {@code href} that of the page with it large
     */
    public record Side(String look, String words, String picture, String href, boolean now) {}

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

    /** What can be seen of it. */
    public record Shows(List<String> sentences, List<Row> fabrics, List<Row> patches) {
        static final Shows NOTHING = new Shows(List.of(), List.of(), List.of());
    }

    /**
     * Where a fabric or a patch went, in whole per cent of it.
     *
     * @param of of all that is seen, the share that is this, or between what it lies: {@code 70–89}
     * @param from the sides it is seen from
     */
    public record Row(
            String name,
            String fabric,
            String colour,
            String of,
            long top,
            long sides,
            long under,
            long ends,
            long hidden,
            String from) {}

    /**
     * Where the still picture, how the tie is done, and the folds on paper are found.
     *
     * @param named the tie in the page's language
     */
    public record Links(String picture, String tie, String named, String net) {
        static final Links NONE = new Links("", "", "", "");
    }

    /** Each still picture's room, in millimetres; shown about four pixels to one. */
    private static final double STILL = 90;

    private static final String NO_COLOUR = "#8a8f98";

    public TiedView {
        sides = List.copyOf(sides);
    }

    /** A cloth that is not tied so. */
    static TiedView untied(On on, TiedStage stage) {
        return new TiedView(on, stage, List.of(), Shows.NOTHING, Links.NONE);
    }

    /** A cloth that is tied, with what shows of it; {@code from} which side it is looked at. */
    static TiedView of(On on, TiedStage stage, Plan plan, TiedGift tied, Voice voice, String from) {
        TiedAsked asked = stage.asked();
        List<Side> sides = sides(on, asked, tied, voice, from);
        Tie tie = tied.fold().fit().tie();
        String still = sides.stream()
                .filter(Side::now)
                .map(Side::picture)
                .findFirst()
                .orElse("/tied/" + on.id() + "/large.svg" + asked.query() + "&v=" + on.version());
        Links links = new Links(
                still,
                "/tie/" + word(tie) + "?gift=" + TiedAsked.encoded(asked.gift()) + "&cloth="
                        + TiedAsked.encoded(on.id()),
                voice.tying().tieName(tie.name()),
                "/tied/" + on.id() + "/net.pdf" + asked.query());
        return new TiedView(on, stage, sides, shows(tied, plan, voice), links);
    }

    private static List<Side> sides(On on, TiedAsked asked, TiedGift tied, Voice voice, String from) {
        List<Side> sides = new ArrayList<>();
        List<String> keys = tied.sides();
        for (int i = keys.size() - 1; i >= 0; i--) {
            boolean behind = i == 2 && keys.contains("spine");
            String number = String.valueOf(i);
            sides.add(new Side(
                    behind ? "behind" : keys.get(i),
                    voice.printing().view(keys.get(i)),
                    "/tied/" + on.id() + "/still.svg" + asked.query() + "&from=" + number + "&v=" + on.version(),
                    "/tied/" + on.id() + asked.query() + "&from=" + number,
                    from.equals(number)));
        }
        return sides;
    }

    /** The cloth on the stage. */
    public TiedStage.Large large() {
        String first = sides.stream()
                .filter(Side::now)
                .findFirst()
                .orElse(sides.get(0))
                .look();
        return new TiedStage.Large(stage, on.id(), on.name(), first, links.picture());
    }

    /** The small pictures to choose by. */
    public TiedStage.Picks picks() {
        return new TiedStage.Picks(stage, "/tied/" + on.id(), "tied", on.id(), on.version());
    }

    /** What shows most, for the strip under the picture. */
    public List<Row> most() {
        return shows.fabrics().stream().limit(MOST).toList();
    }

    private static final int MOST = 4;

    /** The unit of a number without one, in the page's language. */
    public String unit() {
        return on.unit();
    }

    public Language language() {
        return stage.language();
    }

    /** What is said on it. */
    public WrappingWords words() {
        return WrappingWords.in(stage.language());
    }

    /** A tie in an address: {@code four-corner-tie}. */
    static String word(Tie tie) {
        return tie.words().replace(' ', '-');
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
        List<String> sentences = new ArrayList<>(shows.sentences(voice));
        if (!plan.cloth().isFree()) {
            Stream.of(TiedColours.sentence(plan.cloth(), plan.fabrics(), gift.visible()))
                    .filter(words -> !words.isEmpty())
                    .forEach(words -> sentences.add(words.in(voice)));
        }
        return new Shows(
                sentences,
                shows.fabrics().stream()
                        .map(row -> row(row, shows.between(row.fabric()), colours, voice))
                        .toList(),
                shows.patches().stream()
                        .map(row -> row(row, shows.betweenOfPatch(row.name()), colours, voice))
                        .toList());
    }

    private static Row row(WhatShows.Seen seen, Between of, Map<String, String> colours, Voice voice) {
        Visible.Shares shares = seen.shares();
        double whole = shares.total();
        WrappingWords words = WrappingWords.in(voice.language());
        String from =
                seen.from().stream().map(view -> words.showsView(view.name())).collect(Collectors.joining(", "));
        return new Row(
                seen.name(),
                seen.fabric(),
                colours.getOrDefault(seen.fabric(), NO_COLOUR),
                of.words(),
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
