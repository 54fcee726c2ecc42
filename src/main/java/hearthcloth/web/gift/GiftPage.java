package hearthcloth.web.gift;

import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.Language;
import hearthcloth.words.framing.FramingWords;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Purpose;
import hearthcloth.wrap.Capacity;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** "What will it wrap?": the gift drawn in its sizes, every tie that suits it with the cloth it takes, tied. */
public final class GiftPage {

    /** What she typed: the kind of gift, its measures as they stand in the fields, her tie; or the size of a cloth. */
    public record Asked(GiftShape shape, List<String> measures, String tie, String cloth) {

        /** The address of the same with another tie. */
        String with(String other) {
            StringBuilder out = new StringBuilder("/gift?kind=" + shape.word());
            for (int i = 0; i < shape.measures().size(); i++) {
                out.append('&').append((char) ('a' + i)).append('=').append(encoded(measures.get(i)));
            }
            return out + "&tie=" + encoded(other);
        }

        private static String encoded(String text) {
            return URLEncoder.encode(text, StandardCharsets.UTF_8);
        }
    }

    /** Her gift drawn, and where on the drawing each measure is typed. */
    public record Drawing(String svg, List<GiftDrawing.Place> places) {}

    /**
     * Each tie with the cloth it takes, to be chosen.
     *
     * @param isAnswer true where it comes alone, so that the drawing above it must be told too
     */
    @PageView.Template("part/ties.jte")
    public record Ties(Language language, GiftTies ties, Drawing drawing, String token, boolean isAnswer)
            implements PageView {}

    /** What a cloth of hers ties. */
    @PageView.Template("part/holds.jte")
    public record Held(Language language, List<HeldGift> holds, String trouble) implements PageView {}

    /**
     * The page.
     *
     * @param wished what is planned for now, in a sentence; empty where nothing is wished
     */
    @PageView.Template("gift.jte")
    public record View(PageFrame frame, Asked asked, Ties ties, Held held, String wished) implements PageView {}

    private final PageContext room;
    private final TiePictures pictures;
    private final Foresight foresight;

    private GiftPage(PageContext room, TiePictures pictures, Foresight foresight) {
        this.room = room;
        this.pictures = pictures;
        this.foresight = foresight;
    }

    public static void add(PageRoutes routes, Foresight foresight) {
        TiePictures pictures = new TiePictures();
        routes.of(room -> new GiftPage(room, pictures, foresight))
                .get("/gift", GiftPage::show)
                .post("/gift", GiftPage::choose);
    }

    private void show(Context context) {
        Settings settings = room.settings();
        Asked asked = new Asked(
                GiftShape.named(PageContext.text(context, "kind")),
                List.of(PageContext.text(context, "a"), PageContext.text(context, "b"), PageContext.text(context, "c")),
                PageContext.text(context, "tie"),
                PageContext.text(context, "size"));
        String target = PageContext.isPart(context)
                ? Optional.ofNullable(context.header("HX-Target")).orElse("")
                : "";
        if (target.equals("holds")) {
            room.show(context, held(asked, settings.voice()));
            return;
        }
        Ties ties = ties(asked, settings, target.equals("ties"));
        if (!ties.ties().gift().isEmpty()) {
            foresight.of(room, Purpose.of(ties.ties().gift(), asked.tie(), settings.bare()));
        }
        if (ties.isAnswer()) {
            room.show(context, ties);
            return;
        }
        room.show(
                context,
                new View(
                        room.frame(context, FramingWords.in(settings.pages()).homeTitle(), "Gift"),
                        asked,
                        ties,
                        held(asked, settings.voice()),
                        Wished.of(room.store()).words(settings.voice())));
    }

    private void choose(Context context) {
        Settings settings = room.settings();
        String gift = PageContext.field(context, "gift");
        String size = PageContext.field(context, "size");
        Purpose before = Wished.of(room.store());
        if (!gift.isEmpty()) {
            Wished.keep(room.store(), Purpose.of(gift, PageContext.field(context, "tie"), settings.bare()));
        } else if (!size.isEmpty()) {
            Size read = Purpose.size(size, settings.bare());
            Wished.keep(room.store(), new Purpose("", "", settings.ruler().write(read, Rounding.NEAREST)));
        } else {
            Wished.keep(room.store(), Purpose.NOTHING);
        }
        if (!Wished.of(room.store()).equals(before)) {
            Leanings.ofBefore(room.store(), before.words(settings.voice()), settings.pages());
        }
        boolean bare = room.store().stash().isEmpty();
        PageContext.go(context, bare ? "/stash" : "/cloth", "");
    }

    private Ties ties(Asked asked, Settings settings, boolean isAnswer) {
        GiftDrawing.Sized drawn =
                GiftDrawing.sized(asked.shape(), asked.shape().proportions(asked.measures(), settings));
        GiftTies ties = GiftTies.of(asked, settings, room.store().atHand().free(Set.of()), pictures);
        return new Ties(settings.pages(), ties, new Drawing(drawn.svg(), drawn.places()), room.token(), isAnswer);
    }

    private Held held(Asked asked, Voice voice) {
        if (asked.cloth().isEmpty()) {
            return new Held(voice.language(), List.of(), "");
        }
        try {
            Size cloth = Purpose.size(asked.cloth(), voice.ruler().unit());
            return new Held(
                    voice.language(),
                    Capacity.of(cloth, Purpose.tail(voice.ruler()).usual()).stream()
                            .map(capacity -> HeldGift.of(capacity, voice))
                            .toList(),
                    "");
        } catch (MeasureException e) {
            return new Held(voice.language(), List.of(), Refusal.of(e).in(voice));
        }
    }
}
