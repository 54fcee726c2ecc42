package hearthcloth.web.tie;

import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.picture.LeanSvg;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.tied.Thumbnail;
import hearthcloth.draw.tied.TiedGift;
import hearthcloth.plan.model.Plan;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.cloth.ClothAsked;
import hearthcloth.web.cloth.TiedStage;
import hearthcloth.web.gift.TiedAsked;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.wrapping.WrappingWords;
import hearthcloth.work.Purpose;
import hearthcloth.work.deed.MeantFor;
import hearthcloth.wrap.drape.Drape;
import hearthcloth.wrap.tie.Wrapped;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** A cloth tied round what she wants to wrap, before anything is cut: from three sides, to be turned, and what shows. */
public final class TiedPage {

    /** The page. */
    @PageView.Template("tied.jte")
    public record View(PageFrame frame, TiedView tied) implements PageView {}

    private final PageContext room;

    private final DrapeKeeper drapes;

    private final StillKeeper stills;

    private TiedPage(PageContext room, DrapeKeeper drapes, StillKeeper stills) {
        this.room = room;
        this.drapes = drapes;
        this.stills = stills;
    }

    public static void add(PageRoutes routes) {
        DrapeKeeper drapes = new DrapeKeeper();
        routes.whenClosed(drapes::close);
        StillKeeper stills = new StillKeeper();
        routes.of(room -> new TiedPage(room, drapes, stills))
                .get("/tie", TiedPage::choose)
                .get("/tied/{id}", TiedPage::show)
                .post("/tied/{id}/keep", TiedPage::keep)
                .get("/tied/{id}/model", TiedPage::model)
                .get("/tied/{id}/large.svg", TiedPage::large)
                .get("/tied/{id}/small.svg", TiedPage::small)
                .get("/tied/{id}/still.svg", TiedPage::still)
                .get("/tied/{id}/drape", TiedPage::drape)
                .get("/tied/{id}/net.pdf", TiedPage::net);
    }

    private WrappingWords words() {
        return WrappingWords.in(room.language());
    }

    private void choose(Context context) {
        new ClothAsked(room).choose(context, words().which(), "Tie", "/tied/", cloth -> true);
    }

    private void show(Context context) {
        SavedCloth saved = saved(context);
        TiedView view = view(context, saved);
        if (PageContext.isPart(context)) {
            room.show(context, view);
        } else {
            room.show(context, new View(room.frame(context, words().title(saved.name()), "Tie"), view));
        }
    }

    private SavedCloth saved(Context context) {
        return new ClothAsked(room).cloth(context);
    }

    private TiedAsked asked(Context context) {
        return TiedAsked.read(context::queryParam, Wished.of(room.store(), saved(context)));
    }

    private TiedView view(Context context, SavedCloth saved) {
        TiedView.On on = new TiedView.On(
                saved.id(),
                saved.name(),
                String.valueOf(saved.version()),
                room.settings().voice().unit(),
                room.token());
        Optional<Plan> plan = saved.document().plan();
        if (plan.isEmpty()) {
            String lacks = words().tiedLacks();
            return TiedView.untied(on, TiedStage.lacking(asked(context), lacks, room.language()));
        }
        Settings settings = ClothAsked.settings(room, saved);
        TiedStage.Tied cloth = new TiedStage.Tied(saved, plan.get().cloth(), settings, Wished.of(room.store(), saved));
        TiedStage stage = TiedStage.of(cloth, context::queryParam);
        Optional<TiedGift> tied = stage.isTied() ? tied(plan.get(), stage, settings) : Optional.empty();
        String from = PageContext.text(context, "from");
        return tied.map(gift -> TiedView.of(on, stage, plan.get(), gift, settings.voice(), from))
                .orElseGet(() -> TiedView.untied(on, stage));
    }

    private Optional<TiedGift> tied(Plan plan, TiedStage stage, Settings settings) {
        return stage.asked()
                .wrapped(settings)
                .flatMap(round -> folder(plan, round).tied());
    }

    private PlanFolder folder(Plan plan, Wrapped wrapped) {
        Settings settings = room.settings();
        return new PlanFolder(plan, settings.voice(), settings.paper(), Optional.of(wrapped));
    }

    private Optional<PlanFolder> folder(Context context) {
        return saved(context)
                .document()
                .plan()
                .flatMap(plan -> asked(context).wrapped(room.settings()).map(wrapped -> folder(plan, wrapped)));
    }

    /** What is shown is what the cloth is for from now on, whatever is planned next. */
    private void keep(Context context) {
        SavedCloth saved = saved(context);
        Purpose purpose = Purpose.of(
                PageContext.field(context, "gift"),
                PageContext.field(context, "tie"),
                ClothAsked.settings(room, saved).bare());
        room.store()
                .book(
                        saved,
                        new MeantFor(saved.document(), purpose).told(words().labelKeep()),
                        room.settings().voice());
        PageContext.go(
                context,
                "/tied/" + saved.id(),
                words().tiedIsFor(
                                saved.name(),
                                purpose.words(ClothAsked.settings(room, saved).voice())));
    }

    /** The model to turn, as JSON. */
    private void model(Context context) {
        context.contentType("application/json")
                .result(folder(context)
                        .flatMap(PlanFolder::tied)
                        .orElseThrow(this::notTied)
                        .model()
                        .text());
    }

    /**
     * The cloth brought to rest, as JSON: 202 while it is being made, 204 where there is none and the folds stay as they
     * are.
     */
    private void drape(Context context) {
        TiedGift tied = folder(context).flatMap(PlanFolder::tied).orElseThrow(this::notTied);
        DrapeKeeper.Answer answer = drapes.of(context.pathParam("id"), tied.fold());
        Optional<Drape> drape = answer.drape();
        if (drape.isPresent()) {
            context.contentType("application/json")
                    .result(tied.draped(drape.get()).text());
        } else {
            context.status(answer.isComing() ? HttpStatus.ACCEPTED : HttpStatus.NO_CONTENT);
        }
    }

    /** It tied as asked, alone, to fill a screen; as soft cloth where the page waits for that. */
    private void large(Context context) {
        Optional<List<String>> soft = soft(context);
        if (soft.isPresent()) {
            pictured(context, soft.get().get(soft.get().size() - 1));
            return;
        }
        PrintingWords words = room.settings().voice().printing();
        Optional<Picture> flat = folder(context).flatMap(PlanFolder::tied).map(tied -> tied.alone(LARGE, LARGE, words));
        pictured(context, LeanSvg.write(flat.orElseThrow(this::notTied)));
    }

    /** The room of a picture that fills a screen, in millimetres. */
    private static final double LARGE = 200;

    /**
     * It from one of the sides that the page shows: as soft cloth where the page asks for that and waits, or where it is
     * drawn already; else from its facets, which are there at once and are asked for anew.
     */
    private void still(Context context) {
        Optional<List<String>> soft = soft(context);
        if (soft.isPresent()) {
            pictured(context, soft.get().get(side(context, soft.get().size())));
            return;
        }
        TiedGift tied = folder(context).flatMap(PlanFolder::tied).orElseThrow(this::notTied);
        List<Picture> all = TiedView.pictures(tied, room.settings().voice());
        pictured(context, LeanSvg.write(all.get(side(context, all.size()))));
    }

    /** Its sides as soft cloth, where they are drawn already or the page waits for them. */
    private Optional<List<String>> soft(Context context) {
        String key = context.pathParam("id") + " " + saved(context).version() + " " + room.language() + " "
                + asked(context).query();
        return PageContext.text(context, "soft").isEmpty()
                ? stills.ready(key)
                : Optional.of(stills.drawn(key, drawing(folder(context).orElseThrow(this::notTied))));
    }

    private static int side(Context context, int count) {
        String from = PageContext.text(context, "from");
        return from.matches("\\d") ? Math.min(Integer.parseInt(from), count - 1) : 0;
    }

    /** Draws it later on another thread, for which all that it needs of this request is read now. */
    private Supplier<List<String>> drawing(PlanFolder folder) {
        TiedGift tied = folder.tied().orElseThrow(this::notTied).softly(STILL);
        Voice voice = room.settings().voice();
        return () -> TiedView.pictures(tied, voice).stream().map(LeanSvg::write).toList();
    }

    /** Dots along a picture that is shown some 90 to 500 points wide. */
    private static final int STILL = 420;

    /** The same of few bytes, to choose by. */
    private void small(Context context) {
        pictured(
                context,
                Thumbnail.file(folder(context).flatMap(PlanFolder::tied).orElseThrow(this::notTied)));
    }

    /** Its address names the version of the cloth that a page shows, so it is asked for once. */
    private static void pictured(Context context, String svg) {
        if (context.queryParam("v") != null) {
            context.header("Cache-Control", "private, max-age=86400");
        }
        context.contentType("image/svg+xml").result(svg);
    }

    /** The folds on a sheet of paper. */
    private void net(Context context) {
        context.contentType("application/pdf")
                .result(folder(context).flatMap(PlanFolder::printedNet).orElseThrow(this::notTied));
    }

    private NotFoundResponse notTied() {
        return new NotFoundResponse(words().tiedNone());
    }
}
