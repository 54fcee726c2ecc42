package hearthcloth.web.made;

import hearthcloth.draw.ClothPhotograph;
import hearthcloth.draw.FabricPicture;
import hearthcloth.draw.RefusedPictureException;
import hearthcloth.measure.MeasureException;
import hearthcloth.stash.Piece;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.Store;
import hearthcloth.web.cloth.ClothAsked;
import hearthcloth.web.cloth.ClothCard;
import hearthcloth.web.gift.FirstUse;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.StaleChangeException;
import hearthcloth.web.kit.Uploads;
import hearthcloth.words.finishing.FinishingWords;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.work.Keepsake;
import hearthcloth.work.Project.Life;
import hearthcloth.work.Project.Stage;
import hearthcloth.work.deed.SlipWritten;
import hearthcloth.work.deed.UsedAgain;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;

/** The end of a cloth and the begin of its life: photograph, slip, what it wraps, what is left over. */
public final class MadePage {

    private static final int LONGEST_NAME = 80;

    private final PageContext room;

    private MadePage(PageContext room) {
        this.room = room;
    }

    public static void add(PageRoutes routes) {
        routes.of(MadePage::new)
                .get("/made/{id}", MadePage::show)
                .post("/made/{id}/slip", MadePage::slip)
                .post("/made/{id}/used", MadePage::used)
                .post("/made/{id}/leftovers", MadePage::leftovers)
                .get("/made/{id}/photograph.jpg", MadePage::photograph)
                .post("/made/{id}/photograph", MadePage::take)
                .post("/made/{id}/photograph/away", MadePage::putAway);
    }

    /** Where the photograph of a cloth is found; empty where there is none. */
    static String photograph(Store store, String cloth) {
        return ClothCard.photograph(cloth, store.portraits().kept());
    }

    private FinishingWords words() {
        return FinishingWords.in(room.language());
    }

    private SavedCloth cloth(Context context) {
        return new ClothAsked(room).cloth(context);
    }

    private void show(Context context) {
        SavedCloth cloth = cloth(context);
        if (cloth.document().plan().isEmpty()) {
            PageContext.go(context, "/cloth/" + cloth.id(), words().notMade());
            return;
        }
        String title = cloth.document().life().stage() == Stage.SEWN ? words().title() : cloth.name();
        room.show(context, MadeShown.of(room, cloth).sheet(room.frame(context, title, "Made")));
    }

    /** Everything she wrote on the slip, as one change. */
    private void slip(Context context) {
        SavedCloth saved = cloth(context);
        Life was = saved.document().life();
        StaleChangeException.check(room.language(), context, saved, ClothCard.about(was, room.language()));
        String name = PageContext.field(context, "name");
        if (name.length() > LONGEST_NAME) {
            throw new MeasureException(words().slipLongName(String.valueOf(LONGEST_NAME)));
        }
        SlipWritten.Slip slip = new SlipWritten.Slip(
                SlipForm.note(context, "made", words()),
                SlipForm.note(context, "wrapped", words()),
                SlipForm.note(context, "keeper", words()),
                SlipForm.measured(
                        context,
                        ClothAsked.settings(room, saved).bare(),
                        room.settings().voice()),
                SlipForm.note(context, "word", words()));
        boolean sewn = PageContext.field(context, "sewn").equals("yes");
        room.store().asOneChange(words().labelSlipOf(saved.name()), () -> {
            SavedCloth now = room.store()
                    .book(
                            saved,
                            new SlipWritten(saved.document(), slip, sewn).told(words().labelSlip()),
                            room.settings().voice());
            if (!name.isEmpty()) {
                room.store().cloths().rename(saved.id(), name);
            }
            return now;
        });
        PageContext.go(context, "/made/" + saved.id(), words().slipIsKept());
    }

    /** It wrapped something again. */
    private void used(Context context) {
        SavedCloth saved = cloth(context);
        Keepsake.Use use = new Keepsake.Use(
                SlipForm.note(context, "day", words()),
                SlipForm.note(context, "what", words()),
                SlipForm.note(context, "who", words()));
        SavedCloth now = room.store()
                .book(
                        saved,
                        new UsedAgain(saved.document(), use).told(words().labelAgain()),
                        room.settings().voice());
        PageContext.go(
                context,
                "/made/" + saved.id(),
                words().againUsed(saved.name(), now.document().life().uses()));
    }

    /** What is left over is wished to be used first, and the next gift is asked for. */
    private void leftovers(Context context) {
        SavedCloth saved = cloth(context);
        List<Piece> here =
                Leftovers.of(saved.document(), room.store().stash().whole()).here();
        if (here.isEmpty()) {
            PageContext.go(context, "/made/" + saved.id(), words().leftNone());
            return;
        }
        FirstUse.keep(room.store(), here);
        PageContext.go(context, "/gift", words().leftFirst());
    }

    private void photograph(Context context) {
        byte[] jpeg = room.store()
                .portraits()
                .find(context.pathParam("id"))
                .orElseThrow(() -> new NotFoundResponse(words().photoNone()));
        context.header("Cache-Control", "private, max-age=86400");
        context.contentType("image/jpeg")
                .result(context.queryParam("small") == null ? jpeg : ClothPhotograph.small(jpeg));
    }

    private void take(Context context) {
        SavedCloth saved = cloth(context);
        try {
            byte[] jpeg = ClothPhotograph.jpeg(Uploads.upload(room, context, "picture", FabricPicture.MOST_BYTES));
            room.store().portraits().keep(saved.id(), jpeg);
        } catch (RefusedPictureException e) {
            throw Uploads.refused(422, Refusal.of(e).in(room.settings().voice()), e);
        }
        PageContext.go(context, "/made/" + saved.id(), words().photoKept());
    }

    private void putAway(Context context) {
        SavedCloth saved = cloth(context);
        room.store().portraits().remove(saved.id());
        PageContext.go(context, "/made/" + saved.id(), words().photoIsAway());
    }
}
