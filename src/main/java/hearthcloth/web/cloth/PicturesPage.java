package hearthcloth.web.cloth;

import hearthcloth.cloth.making.Face;
import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.PngWriter;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.draw.tied.Thumbnail;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Stash;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.SwatchBook;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PieceDrawing;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.work.Purpose;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Pictures of a cloth to keep and to send: flat, back and tied, without a word on them, and both beside each other. */
public final class PicturesPage {

    /** What stands in the place of a small picture of a cloth that does not tie what it is for. */
    private static final String NOTHING = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 1 1\"/>";

    private final PageContext room;

    private PicturesPage(PageContext room) {
        this.room = room;
    }

    public static void add(PageRoutes routes) {
        PageRoutes.OfPage<PicturesPage> pages = routes.of(PicturesPage::new);
        both(pages, "flat", folder -> Optional.of(folder.plain(Face.FRONT)));
        both(pages, "reverse", folder -> Optional.of(folder.plain(Face.BACK)));
        both(pages, "tied", PlanFolder::tiedAlone);
        pages.get("/cloths/{id}/small/tied.svg", PicturesPage::small);
        for (ClothBench.Look look : List.of(ClothBench.Look.FLAT, ClothBench.Look.BACK, ClothBench.Look.VALUES)) {
            pages.get("/cloths/{id}/small/" + look.address() + ".svg", (page, context) -> page.small(context, look));
        }
        both(pages, "share", folder -> Optional.of(folder.toSend()));
    }

    private static void both(
            PageRoutes.OfPage<PicturesPage> pages, String name, Function<PlanFolder, Optional<Picture>> drawn) {
        pages.get("/cloths/{id}/" + name + ".svg", (page, context) -> page.svg(context, drawn));
        pages.get("/cloths/{id}/" + name + ".png", (page, context) -> page.png(context, name, drawn));
    }

    private Picture picture(Context context, Function<PlanFolder, Optional<Picture>> drawn) {
        return drawn.apply(folder(context, false)).orElseThrow(this::untied);
    }

    private NotFoundResponse untied() {
        return new NotFoundResponse(DesigningWords.in(room.language()).wrongTiesNone());
    }

    /** The tied gift of few bytes, to choose a view by; a picture of its own, so it brings its own shadow. */
    private void small(Context context) {
        String svg = folder(context, true).tied().map(Thumbnail::file).orElse(NOTHING);
        kept(context);
        context.contentType("image/svg+xml").result(svg);
    }

    /** A face of few bytes, to choose a view by; her photographs of fabrics are in it. */
    private void small(Context context, ClothBench.Look look) {
        SavedCloth saved = new ClothAsked(room).cloth(context);
        SwatchBook photographs = room.store().swatches();
        ClothView view = new ClothView(
                saved,
                new Stash(List.of()),
                photographs.across(),
                ClothAsked.settings(room, saved),
                Purpose.NOTHING,
                "");
        String svg = view.small(look);
        for (String fabric : view.pictures().keySet()) {
            String address = PieceDrawing.address(fabric);
            if (svg.contains(address)) {
                svg = svg.replace(
                        address,
                        photographs
                                .find(fabric)
                                .map(found -> "data:" + found.kind() + ";base64," + found.picture())
                                .orElse(""));
            }
        }
        kept(context);
        context.contentType("image/svg+xml").result(svg);
    }

    /** @param always whether a cloth for no gift is tied all the same, round what it can be shown with */
    private PlanFolder folder(Context context, boolean always) {
        SavedCloth cloth = new ClothAsked(room).cloth(context);
        Settings settings = ClothAsked.settings(room, cloth);
        Ruler ruler = settings.ruler();
        Plan plan = ClothAsked.plan(cloth);
        Purpose wished = Wished.of(room.store(), cloth);
        Purpose shown = always ? wished.orShown(plan.cloth().finished(), ruler) : wished;
        return new PlanFolder(plan, ruler, settings.paper(), shown.wrapped(ruler));
    }

    /** Its address names the version of the cloth that a page shows, so it is asked for once. */
    private static void kept(Context context) {
        if (context.queryParam("v") != null) {
            context.header("Cache-Control", "private, max-age=86400");
        }
    }

    private void svg(Context context, Function<PlanFolder, Optional<Picture>> drawn) {
        context.contentType("image/svg+xml").result(SvgWriter.writeClear(picture(context, drawn)));
    }

    private void png(Context context, String name, Function<PlanFolder, Optional<Picture>> drawn) {
        context.contentType("image/png")
                .header("Content-Disposition", "attachment; filename=\"hearthcloth-" + name + ".png\"")
                .result(PngWriter.write(picture(context, drawn), PlanFolder.KEPT_DPI));
    }
}
