package hearthcloth.web.cloth;

import hearthcloth.cloth.making.Face;
import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.PngWriter;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.draw.tied.Thumbnail;
import hearthcloth.measure.Ruler;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.designing.DesigningWords;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Optional;
import java.util.function.Function;

/** Pictures of a cloth to keep and to send: flat, back and tied, without a word on them, and both beside each other. */
public final class PicturesPage {

    private final PageContext room;

    private PicturesPage(PageContext room) {
        this.room = room;
    }

    public static void add(PageRoutes routes) {
        PageRoutes.OfPage<PicturesPage> pages = routes.of(PicturesPage::new);
        both(pages, "flat", folder -> Optional.of(folder.plain(Face.FRONT)));
        both(pages, "reverse", folder -> Optional.of(folder.plain(Face.BACK)));
        both(pages, "tied", PlanFolder::tiedAlone);
        pages.get("/cloths/{id}/tied-small.svg", PicturesPage::small);
        both(pages, "share", folder -> Optional.of(folder.toSend()));
    }

    private static void both(
            PageRoutes.OfPage<PicturesPage> pages, String name, Function<PlanFolder, Optional<Picture>> drawn) {
        pages.get("/cloths/{id}/" + name + ".svg", (page, context) -> page.svg(context, drawn));
        pages.get("/cloths/{id}/" + name + ".png", (page, context) -> page.png(context, name, drawn));
    }

    private Picture picture(Context context, Function<PlanFolder, Optional<Picture>> drawn) {
        return drawn.apply(folder(context)).orElseThrow(this::untied);
    }

    private NotFoundResponse untied() {
        return new NotFoundResponse(DesigningWords.in(room.language()).wrongTiesNone());
    }

    /** The tied gift of few bytes, to choose a view by; a picture of its own, so it brings its own shadow. */
    private void small(Context context) {
        String svg = folder(context).tied().map(Thumbnail::file).orElseThrow(this::untied);
        kept(context);
        context.contentType("image/svg+xml").result(svg);
    }

    private PlanFolder folder(Context context) {
        SavedCloth cloth = new ClothAsked(room).cloth(context);
        Settings settings = ClothAsked.settings(room, cloth);
        Ruler ruler = settings.ruler();
        return new PlanFolder(
                ClothAsked.plan(cloth),
                ruler,
                settings.paper(),
                Wished.of(room.store(), cloth).wrapped(ruler));
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
