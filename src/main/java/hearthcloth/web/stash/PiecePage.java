package hearthcloth.web.stash;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Lot;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.store.StashBook;
import hearthcloth.store.StashEdit;
import hearthcloth.web.kit.FormFields;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.PieceDrawing;
import hearthcloth.web.kit.StaleChangeException;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.stashing.StashingWords;
import hearthcloth.work.StashAtHand;
import hearthcloth.work.deed.Deed;
import hearthcloth.work.deed.PiecesChanged;
import hearthcloth.work.deed.PiecesSplit;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** One kind of piece: its size and fabric, cut in two, used up, taken away; one, some or all that are alike. */
public final class PiecePage {

    private static final double PIXELS = 300;

    /**
     * What the page shows of them.
     *
     * @param held what holds some of them back from new cloths; empty where nothing does
     * @param aside how many of them are set aside
     * @param seen tells this state of the pieces from a later one
     * @param fabrics to choose from
     */
    public record Alike(
            String id,
            String fabric,
            String size,
            int count,
            String numbers,
            String about,
            String held,
            int aside,
            String width,
            String length,
            String washed,
            String seen,
            PieceDrawing drawn,
            List<String> fabrics,
            String back) {}

    /** The page. */
    @PageView.Template("stash-piece.jte")
    public record View(PageFrame frame, Alike piece) implements PageView {}

    /**
     * How many of those alike are meant.
     *
     * @param of how many there are
     * @param usual what stands in the box
     */
    public record Many(Language language, int of, int usual) {}

    private final PageContext room;

    private PiecePage(PageContext room) {
        this.room = room;
    }

    static void add(PageRoutes routes) {
        routes.of(PiecePage::new)
                .get("/stash/piece/{id}", PiecePage::show)
                .post("/stash/piece/{id}/change", PiecePage::change)
                .post("/stash/piece/{id}/split", PiecePage::split)
                .post("/stash/piece/{id}/use", (page, context) -> page.away(context, page.words()::deedUse))
                .post("/stash/piece/{id}/delete", (page, context) -> page.away(context, page.words()::deedDelete))
                .post("/stash/piece/{id}/aside", (page, context) -> page.aside(context, true))
                .post("/stash/piece/{id}/back", (page, context) -> page.aside(context, false));
    }

    private StashingWords words() {
        return StashingWords.in(room.language());
    }

    private StashBook book() {
        return room.store().stash();
    }

    private static Optional<Lot> lot(Context context, Stash stash) {
        String id = context.pathParam("id");
        return stash.pieces().stream()
                .filter(piece -> piece.id().equals(id))
                .findFirst()
                .map(piece -> Lot.around(piece, stash));
    }

    private void show(Context context) {
        Stash stash = book().whole();
        Lot lot = lot(context, stash).orElseThrow(() -> new NotFoundResponse(words().goneNoPiece()));
        List<String> fabrics = stash.fabrics().stream()
                .map(Fabric::name)
                .sorted(String.CASE_INSENSITIVE_ORDER)
                .toList();
        Alike alike = alike(context.pathParam("id"), lot, fabrics, back(PageContext.text(context, "back")));
        room.show(
                context,
                new View(room.frame(context, words().pieceTitle(alike.fabric(), alike.size()), "Stash"), alike));
    }

    private Alike alike(String id, Lot lot, List<String> fabrics, String back) {
        Voice voice = room.settings().voice();
        StashAtHand heap = room.store().atHand();
        Piece piece = lot.first();
        Size size = lot.size();
        return new Alike(
                id,
                piece.fabric().name(),
                voice.write(size, Rounding.NEAREST),
                lot.count(),
                lot.numbers(),
                FabricSaid.about(piece, voice.language()),
                heap.held(lot.pieces(), voice.language()),
                (int) lot.pieces().stream().filter(heap::isAside).count(),
                written(size.width(), room.settings().ruler()),
                written(size.height(), room.settings().ruler()),
                piece.washed().name(),
                seen(lot),
                drawn(lot),
                fabrics,
                back);
    }

    private PieceDrawing drawn(Lot lot) {
        return PieceDrawing.of(
                lot.size(),
                lot.first().fabric(),
                lot.count(),
                PieceDrawing.scale(lot.size().width().max(lot.size().height()), PIXELS),
                room.store().swatches().across(),
                "cloth");
    }

    /** As it is edited: on the ruler's marks where it lies on one, else exactly. */
    private static String written(Length length, Ruler ruler) {
        boolean onMark = ruler.mark(length, Rounding.NEAREST).equals(length);
        return onMark ? ruler.write(length, Rounding.NEAREST) : length.toString();
    }

    static String back(String given) {
        return given.matches("/stash(\\?[A-Za-z0-9=&%+._*-]*)?") ? given : "/stash";
    }

    private static String seen(Lot lot) {
        Piece piece = lot.first();
        return piece.size() + "|" + piece.washed() + "|" + lot.count() + "|" + piece.fabric();
    }

    /** The pieces she means, as they were when the page was shown. */
    private List<Piece> meant(Context context, Stash stash) {
        return meant(context, stash, piece -> true);
    }

    /** Of the pieces she means only those that will do. */
    private List<Piece> meant(Context context, Stash stash, Predicate<Piece> willDo) {
        Optional<Lot> now = lot(context, stash);
        Lot lot = now.filter(found -> seen(found).equals(context.formParam("seen")))
                .orElseThrow(() -> overtaken(now));
        String many = PageContext.field(context, "many");
        int count = many.isEmpty() ? 1 : many.matches("\\d{1,5}") ? Integer.parseInt(many) : 0;
        List<Piece> some = lot.pieces().stream().filter(willDo).toList();
        if (count < 1 || count > some.size()) {
            throw new MeasureException(words().wrongHowMany(String.valueOf(some.size())));
        }
        return some.subList(0, count);
    }

    private StaleChangeException overtaken(Optional<Lot> now) {
        StashingWords words = words();
        if (now.isEmpty()) {
            return new StaleChangeException(words.stalePieces(), words.staleGone(), "/stash", "seen", "");
        }
        Lot lot = now.get();
        Piece piece = lot.first();
        String pieces = words.piecesSaid(piece.fabric().name(), lot.count());
        String size = room.settings().voice().write(lot.size(), Rounding.NEAREST);
        String washed = words.washed(piece.washed().name());
        return new StaleChangeException(
                words.stalePieces(),
                washed.isEmpty() ? words.staleNow(pieces, size) : words.staleNowWashed(pieces, size, washed),
                "/stash/piece/" + piece.id(),
                "seen",
                seen(lot));
    }

    private void change(Context context) {
        Stash stash = book().whole();
        List<Piece> gone = meant(context, stash);
        Size size = new Size(length(context, "width"), length(context, "length"));
        StashFields.checked(size);
        String name = StashFields.name(PageContext.field(context, "fabric"), room.language());
        Piece.Washed washed = FormFields.choice(Piece.Washed.class, PageContext.field(context, "washed"))
                .orElse(Piece.Washed.UNKNOWN);
        Deed.Pieces changed = new PiecesChanged(gone, stash).to(name, size, washed);
        if (changed.isNone()) {
            done(context, words().unchanged());
            return;
        }
        edit(context, words()::deedChange, gone, changed.come());
    }

    private Length length(Context context, String name) {
        return Measures.length(PageContext.field(context, name), room.settings().bare());
    }

    private void split(Context context) {
        PiecesSplit split = new PiecesSplit(
                meant(context, book().whole()),
                PageContext.field(context, "cut").equals("width"),
                book().nextPiece());
        Deed.Pieces parts = split.at(length(context, "at"))
                .orElseThrow(() -> new MeasureException(
                        words().wrongOutside(room.settings().voice().write(split.whole(), Rounding.NEAREST))));
        edit(context, words()::deedSplit, parts.gone(), parts.come());
    }

    private void away(Context context, UnaryOperator<String> deed) {
        edit(context, deed, meant(context, book().whole()), List.of());
    }

    /** Kept for something else, or given back to what can be planned with. */
    private void aside(Context context, boolean on) {
        StashAtHand heap = room.store().atHand();
        List<Piece> pieces = meant(context, heap.stash(), piece -> heap.isAside(piece) != on);
        String what = words().piecesOf(pieces.get(0).fabric().name(), pieces.size());
        String label = on ? words().deedAside(what) : words().deedBack(what);
        book().edit(StashEdit.aside(label, pieces.stream().map(Piece::id).toList(), on));
        done(context, words().done(label));
    }

    private void edit(Context context, UnaryOperator<String> deed, List<Piece> gone, List<Piece> come) {
        String label = deed.apply(words().piecesOf(gone.get(0).fabric().name(), gone.size()));
        book().edit(new StashEdit(label, gone, come));
        done(context, words().done(label));
    }

    private static void done(Context context, String said) {
        PageContext.go(context, back(PageContext.field(context, "back")), said);
    }
}
