package hearthcloth.web.gallery;

import hearthcloth.draw.FabricPicture;
import hearthcloth.draw.RefusedPictureException;
import hearthcloth.store.Store;
import hearthcloth.web.gift.FirstUse;
import hearthcloth.web.gift.Leanings;
import hearthcloth.web.gift.WishForm;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.Uploads;
import hearthcloth.words.choosing.ChoosingWords;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.work.Promises;
import io.javalin.http.Context;
import java.util.List;

/** Wishes set and taken back one at a time, beside the form, and the colours of a picture she loves. */
final class WishesPage {

    private final PageContext room;
    private final KeptWishes kept;

    private WishesPage(PageContext room) {
        this.room = room;
        this.kept = new KeptWishes(room);
    }

    static void add(PageRoutes routes) {
        routes.of(WishesPage::new).post("/wishes/picture", WishesPage::loved).post("/wishes", WishesPage::wish);
    }

    private Store store() {
        return room.store();
    }

    /** A wish set or taken back. */
    private void wish(Context context) {
        String of = PageContext.text(context, "of");
        String what = of.isEmpty() ? PageContext.field(context, "what") : of;
        String value = PageContext.field(context, "value");
        boolean isAway = PageContext.field(context, "do").equals("less");
        if (what.equals("before")) {
            Leanings.settle(store(), value.equals("keep"));
        } else if (what.equals("first")) {
            FirstUse.clear(store());
        } else if (what.equals("also")) {
            kept.allow(
                    isAway
                            ? List.of()
                            : store().atHand().rivals().stream()
                                    .map(Promises.Counting::cloth)
                                    .toList());
        } else if (what.equals("show")) {
            WishForm.of(store()).showing(isAway ? "" : value).keep(store());
        } else if (what.equals("only")) {
            LovedPalette.clear(store());
            WishForm.of(store()).ofAny().keep(store());
        } else {
            Leanings was = kept.leanings();
            (isAway ? was.less(what, value) : was.with(what, value)).keep(store());
            Leanings.settle(store(), true);
        }
        PageContext.go(context, "/cloth", "");
    }

    /** Only the fabrics nearest to the colours of a picture she sends are used. */
    private void loved(Context context) {
        LovedPalette palette;
        try {
            palette = LovedPalette.seen(Uploads.upload(room, context, "picture", FabricPicture.MOST_BYTES));
        } catch (RefusedPictureException e) {
            throw Uploads.refused(422, Refusal.of(e).in(room.settings().voice()), e);
        }
        List<String> names = palette.fabrics(kept.leanings().from(kept.free()));
        palette.keep(store());
        WishForm.of(store()).only(names).keep(store());
        PageContext.go(
                context,
                "/cloth",
                names.isEmpty() ? ChoosingWords.in(room.language()).lovedNone() : "");
    }
}
