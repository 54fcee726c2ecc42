package hearthcloth.web.make;

import hearthcloth.measure.MeasureException;
import hearthcloth.sew.PieceTask;
import hearthcloth.store.ClothBook;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.cloth.ClothAsked;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.StaleChangeException;
import hearthcloth.words.making.MakingWords;
import hearthcloth.work.deed.AllCut;
import hearthcloth.work.deed.CutsMade;
import hearthcloth.work.deed.Deed;
import io.javalin.http.Context;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Cutting, one piece of fabric at a time: the picture as it lies on the mat, the cuts in order, ticks that stay. */
public final class CutPage {

    /**
     * One way on after a patch came out too small.
     *
     * @param key what the form says of it
     * @param size of the cloth then
     * @param words what is done, from which piece, and what else changes
     * @param picture the cloth then
     */
    public record Way(String key, String title, String size, List<String> words, String picture) {}

    /** The piece whose cut went wrong, and what she measured, as she wrote it. */
    public record Gone(String piece, String width, String length) {}

    /**
     * The ways on, to choose one.
     *
     * @param told how short the patch is, in a sentence
     */
    @PageView.Template("cut-ways.jte")
    public record WaysOn(PageFrame frame, SavedCloth cloth, String told, Gone gone, List<Way> ways)
            implements PageView {

        /** What is said on it. */
        public MakingWords words() {
            return MakingWords.in(frame.language());
        }
    }

    private final PageContext room;
    private final ClothAsked asked;

    private CutPage(PageContext room) {
        this.room = room;
        this.asked = new ClothAsked(room);
    }

    public static void add(PageRoutes routes) {
        routes.of(CutPage::new)
                .get("/cut", CutPage::choose)
                .get("/cut/{id}", CutPage::show)
                .post("/cut/{id}/tick", CutPage::tick)
                .post("/cut/{id}/next", CutPage::next)
                .post("/cut/{id}/back", CutPage::back)
                .post("/cut/{id}/wrong", CutPage::wrong)
                .post("/cut/{id}/done", CutPage::done)
                .post("/cut/{id}/not-all", CutPage::notAll);
    }

    private MakingWords words() {
        return MakingWords.in(room.language());
    }

    private void choose(Context context) {
        asked.choose(context, words().cutWhich(), "Cut", "/cut/", cloth -> true);
    }

    private void show(Context context) {
        SavedCloth cloth = asked.cloth(context);
        if (!room.store().atHand().canBeCut(cloth.id())) {
            String path = "/cloth/" + cloth.id();
            if (PageContext.isPart(context)) {
                context.header("HX-Redirect", path);
            } else {
                PageContext.go(context, path, words().cutAmiss());
            }
            return;
        }
        CutShown shown = CutShown.of(room, cloth, asked(context));
        if (PageContext.isPart(context)) {
            room.show(context, new CutSheet.Mat(shown.sheet(), shown.slips(), room.asker(), true, AskedBack.NOTHING));
        } else {
            room.show(
                    context,
                    new CutSheet.View(
                            room.frame(context, words().cutTitle(cloth.name()), "Cut"),
                            shown.sheet(),
                            shown.slips(),
                            AskedBack.NOTHING));
        }
    }

    /** The piece that is asked for, from 0; below 0 for the first that is not cut yet. */
    private static int asked(Context context) {
        String asked = context.queryParam("piece") == null
                ? PageContext.field(context, "piece")
                : PageContext.text(context, "piece");
        return asked.matches("\\d{1,4}") ? Integer.parseInt(asked) : -1;
    }

    private void tick(Context context) {
        SavedCloth cloth = toCut(context);
        String key = PageContext.field(context, "cut");
        if (!key.matches("[\\w.-]{1,60}:\\d{1,3}")) {
            throw new MeasureException(words().cutNone());
        }
        if (!CutTicks.of(cloth, ClothAsked.settings(room, cloth)).isOfNow(key)) {
            throw new StoreException(words().cutGone());
        }
        Set<String> ticked = new HashSet<>(cloth.document().bench().ticked());
        String on = PageContext.field(context, "on");
        boolean wanted = on.isEmpty() ? !ticked.contains(key) : on.equals("yes");
        if (wanted) {
            ticked.add(key);
        } else {
            ticked.remove(key);
        }
        save(cloth, ticked);
        answer(context);
    }

    /** One cut is made, or all that are left of a piece; the page moves on by itself, and after the last cut to the sewing. */
    private void next(Context context) {
        SavedCloth cloth = toCut(context);
        CutTicks ticks = CutTicks.of(cloth, ClothAsked.settings(room, cloth));
        PieceTask task = ticks.piece(PageContext.field(context, "of"));
        String number = PageContext.field(context, "number");
        Set<String> ticked = ticks.after(task, number);
        save(cloth, ticked);
        if (!ticked.equals(cloth.document().bench().ticked())
                && new CutTicks(ticks.tasks(), ticked, words()).isAllCut()) {
            allCut(context, asked.cloth(context));
            return;
        }
        onward(context, CutTicks.isCut(task, ticked) ? -1 : ticks.number(task));
    }

    /** The cut made last in this piece was not; before the first cut, the piece before this one is shown. */
    private void back(Context context) {
        SavedCloth cloth = toCut(context);
        CutTicks ticks = CutTicks.of(cloth, ClothAsked.settings(room, cloth));
        PieceTask task = ticks.piece(PageContext.field(context, "of"));
        Set<String> ticked = ticks.before(task);
        boolean changed = !ticked.equals(cloth.document().bench().ticked());
        if (changed) {
            save(cloth, ticked);
        }
        onward(context, changed ? ticks.number(task) : Math.max(0, ticks.number(task) - 1));
    }

    /** Records what was ticked, or had its tick taken away; where the other device was quicker, nothing. */
    private void save(SavedCloth cloth, Set<String> ticked) {
        new CutsMade(cloth.document(), ticked)
                .told()
                .ifPresent(
                        deed -> room.store().book(cloth, deed, room.settings().voice()));
    }

    private void onward(Context context, int piece) {
        if (PageContext.isPart(context)) {
            SavedCloth now = asked.cloth(context);
            CutShown shown = CutShown.of(room, now, piece);
            room.show(context, new CutSheet.Mat(shown.sheet(), shown.slips(), room.asker(), true, AskedBack.NOTHING));
        } else {
            PageContext.go(context, "/cut/" + context.pathParam("id") + (piece < 0 ? "" : "?piece=" + piece), "");
        }
    }

    private void answer(Context context) {
        if (PageContext.isPart(context)) {
            show(context);
        } else {
            String piece = PageContext.field(context, "piece");
            PageContext.go(
                    context,
                    "/cut/" + context.pathParam("id") + (piece.matches("\\d{1,4}") ? "?piece=" + piece : ""),
                    "");
        }
    }

    /** The cloth, which must have something to cut. */
    private SavedCloth toCut(Context context) {
        SavedCloth cloth = asked.cloth(context);
        if (!cloth.document().life().stage().isToCut()) {
            throw new StoreException(words().cutAlready());
        }
        return cloth;
    }

    private String ticks(SavedCloth cloth) {
        return words().cutTicked(cloth.document().bench().ticked().size());
    }

    private void wrong(Context context) {
        SavedCloth cloth = toCut(context);
        StaleChangeException.check(room.language(), context, cloth, ticks(cloth));
        try {
            new CutSlip(room, cloth, ClothAsked.plan(cloth)).mend(context);
        } catch (MeasureException e) {
            askedBack(context, cloth, e);
        }
    }

    /** A measure that does not fit is asked about where she wrote it. */
    private void askedBack(Context context, SavedCloth cloth, MeasureException e) {
        List<String> pieces = ClothAsked.plan(cloth).cuts().stream()
                .map(cut -> cut.piece().id())
                .toList();
        int at = pieces.indexOf(PageContext.field(context, "id"));
        if (at < 0) {
            throw e;
        }
        String place = PageContext.field(context, "short").isEmpty() ? "wrong" : "short";
        AskedBack back = AskedBack.about(
                place, context, List.of("width", "length"), e, room.settings().voice());
        CutShown shown = CutShown.of(room, cloth, at);
        context.status(422);
        room.show(
                context,
                new CutSheet.View(room.frame(context, back.title(), "Cut"), shown.sheet(), shown.slips(), back));
    }

    private void done(Context context) {
        SavedCloth cloth = toCut(context);
        StaleChangeException.check(room.language(), context, cloth, ticks(cloth));
        allCut(context, cloth);
    }

    /** All is cut: the pieces are used up, the offcuts come back into the stash. */
    private void allCut(Context context, SavedCloth cloth) {
        Deed cut = new AllCut(cloth.document(), room.store().stash().nextPiece()).of(cloth.name());
        room.store().book(cloth, cut, room.settings().voice());
        int offcuts = cut.pieces().come().size();
        PageContext.go(context, "/sew/" + cloth.id(), words().cutIsCut(offcuts));
    }

    /** Back from the first step of sewing: the last press was one too many, and the pieces come back as they were. */
    private void notAll(Context context) {
        SavedCloth cloth = asked.cloth(context);
        ClothBook book = room.store().cloths();
        boolean isLast = book.undoable(cloth.id())
                .filter(AllCut.label(cloth.name()).in(room.settings().voice())::equals)
                .isPresent();
        if (!isLast) {
            PageContext.go(context, "/sew/" + cloth.id(), words().cutChanged());
            return;
        }
        book.undo(cloth.id());
        PageContext.go(context, "/cut/" + cloth.id(), words().cutAgain());
    }
}
