package hearthcloth.web.tie;

import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.tied.Sample;
import hearthcloth.draw.tied.TiedGift;
import hearthcloth.measure.MeasureException;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.wrapping.WrappingWords;
import hearthcloth.work.Purpose;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.tie.Wrapped;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Optional;

/** How a tie is done, step by step, round the gift at hand: with her own cloth where one is named, else with a plain one. */
public final class TiePage {

    /** The page. */
    @PageView.Template("tie.jte")
    public record View(PageFrame frame, TieView tie) implements PageView {

        /** What is said on it. */
        public WrappingWords words() {
            return WrappingWords.in(frame.language());
        }
    }

    private final PageContext room;

    private TiePage(PageContext room) {
        this.room = room;
    }

    public static void add(PageRoutes routes) {
        routes.of(TiePage::new).get("/tie/{tie}", TiePage::show);
    }

    private void show(Context context) {
        Tie tie = Tie.named(context.pathParam("tie").replace('-', ' '))
                .orElseThrow(() -> new NotFoundResponse(words().tieNone()));
        Settings settings = room.settings();
        String written = PageContext.text(context, "gift");
        Gift gift = written.isEmpty() ? usual(tie) : Gift.parse(written, settings.bare());
        if (!tie.suits(gift)) {
            Voice voice = settings.voice();
            throw new MeasureException(words().tieUnsuited(
                            gift.describe(voice),
                            voice.tying().tieSuited(tie.name()),
                            voice.tying().tieName(tie.name())));
        }
        Tail tail = Purpose.tail(settings.ruler());
        Optional<TiedGift> own = own(PageContext.text(context, "cloth"), Wrapped.of(gift, tie, tail));
        TiedGift drawn = own.orElseGet(() -> Sample.of(tie, gift, tail.usual()));
        room.show(
                context,
                new View(
                        room.frame(context, title(tie), "Gift"),
                        TieView.of(tie, gift, drawn, settings.voice(), own.isPresent())));
    }

    private WrappingWords words() {
        return WrappingWords.in(room.language());
    }

    private String title(Tie tie) {
        String name = room.settings().voice().tying().tieName(tie.name());
        return tie.trade().isEmpty() ? words().tieTitle(name) : words().tieTitleNamed(name, tie.trade());
    }

    /** Something of a usual size, to show the tie on: common practice, no source. */
    private static Gift usual(Tie tie) {
        String written = switch (tie) {
            case FOUR_CORNER, ERRAND -> "box 30 x 20 x 8 cm";
            case EDGE_ALONG_EDGE -> "box 20 x 14 x 10 cm";
            case FLAT -> "box 30 x 20 x 3 cm";
            case TWO_KNOT -> "box 50 x 10 x 10 cm";
            case ONE_BOTTLE -> "bottle 7.5 x 30 cm";
            case TWO_BOTTLES -> "two bottles 7.5 x 30 cm";
            case ROUND -> "ball 22 cm";
            case BOOKS -> "books 21 x 15 x 2 cm";
            case ROLL -> "roll 6 x 38 cm";
        };
        return Gift.parse(written, null);
    }

    private Optional<TiedGift> own(String cloth, Wrapped wrapped) {
        Settings settings = room.settings();
        return Optional.of(cloth)
                .filter(id -> !id.isEmpty())
                .flatMap(id -> room.store().cloths().find(id))
                .flatMap(saved -> saved.document().plan())
                .flatMap(plan -> new PlanFolder(plan, settings.ruler(), settings.paper(), Optional.of(wrapped)).tied());
    }
}
