package hearthcloth.web.piecing;

import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.patchwork.byhand.Filling;
import hearthcloth.plan.patchwork.byhand.Fits;
import hearthcloth.plan.patchwork.byhand.LaidOut;
import hearthcloth.plan.patchwork.byhand.ScrapFit;
import hearthcloth.plan.patchwork.byhand.Swap;
import hearthcloth.plan.patchwork.byhand.Swaps;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.Store;
import hearthcloth.web.cloth.NewCloth;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.ExampleMark;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Swatches;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.work.Project;
import hearthcloth.work.Purpose;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Scraps put together by hand: two are tapped, what fits next is offered, the rest is filled on demand. */
public final class PiecingPage {

    /** A cloth is filled within this. */
    private static final long FILL_WITHIN_MS = 1_200;

    /** The page. */
    @PageView.Template("piecing.jte")
    public record View(PageFrame frame, HandBoard board) implements PageView {}

    /** What was done: the table then, what is said, and the scrap that is chosen next. */
    private record Done(KeptTable kept, String said, String at) {}

    private final PageContext room;

    private PiecingPage(PageContext room) {
        this.room = room;
    }

    public static void add(PageRoutes routes) {
        routes.of(PiecingPage::new)
                .get("/piecing", PiecingPage::show)
                .post("/piecing/do", PiecingPage::act)
                .post("/piecing/make", PiecingPage::make)
                .post("/piecing/from/{id}", PiecingPage::from);
    }

    private DesigningWords words() {
        return DesigningWords.in(room.language());
    }

    private void show(Context context) {
        answer(
                context,
                PageContext.text(context, "at"),
                PageContext.text(context, "to"),
                PageContext.text(context, "said"));
    }

    private void answer(Context context, String at, String to, String said) {
        HandBoard board = board(HandTable.of(room), at, to, said);
        if (PageContext.isPart(context)) {
            room.show(context, board);
        } else {
            room.show(context, new View(room.frame(context, words().piecingTitle(), "Cloth"), board));
        }
    }

    private HandBoard board(HandTable table, String at, String to, String said) {
        Swatches swatches =
                new Swatches(table.stash().fabrics(), room.store().swatches().across());
        int first = at.isEmpty() ? -1 : table.scrap(at);
        BoardView view = new BoardView(table, swatches, first, to.isEmpty() || first < 0 ? -1 : table.scrap(to));
        StringBuilder tiles = new StringBuilder();
        swatches.tiles(tiles);
        return new HandBoard(
                view.drawn(),
                view.spare(),
                view.chosen(),
                deeds(table),
                new HandBoard.Told(
                        said,
                        view.about(),
                        written(table),
                        table.kept().mark(),
                        tiles.toString(),
                        new HandBoard.Asking(room.token(), table.settings())));
    }

    private HandBoard.Deeds deeds(HandTable table) {
        return new HandBoard.Deeds(
                table.plan().isPresent(),
                HandTable.cloth(room.store(), table.kept())
                        .map(SavedCloth::name)
                        .orElse(""),
                !table.kept().before().isEmpty(),
                !table.kept().after().isEmpty(),
                table.laid().parts().isEmpty());
    }

    private String written(HandTable table) {
        Size size = table.heap().wished();
        return table.kept().size().isEmpty()
                ? table.settings().voice().number(size.width(), Rounding.NEAREST) + " x "
                        + table.settings().voice().number(size.height(), Rounding.NEAREST)
                : table.kept().size();
    }

    private void act(Context context) {
        HandTable table = HandTable.of(room);
        String at = PageContext.field(context, "at");
        if (!PageContext.field(context, "mark").equals(table.kept().mark())) {
            to(context, at, words().piecingStale());
            return;
        }
        Done done = done(context, table, at);
        done.kept.keep(room.store());
        to(context, done.at, done.said);
    }

    private void to(Context context, String at, String said) {
        if (PageContext.isPart(context)) {
            answer(context, at, "", said);
        } else {
            String query = at.isEmpty() ? "" : "?at=" + java.net.URLEncoder.encode(at, StandardCharsets.UTF_8);
            PageContext.go(context, "/piecing" + query, said);
        }
    }

    private Done done(Context context, HandTable table, String at) {
        KeptTable kept = table.kept();
        LaidOut laid = table.laid();
        int scrap = at.isEmpty() ? -1 : table.scrap(at);
        String what = PageContext.field(context, "do");
        String join = PageContext.field(context, "join");
        String swap = PageContext.field(context, "swap");
        if (!join.isEmpty()) {
            return joined(table, join.split(" ", -1));
        }
        if (!swap.isEmpty()) {
            return swapped(table, swap.split(" ", -1));
        }
        return switch (what) {
            case "undo" -> new Done(kept.undone(), words().piecingSaid("UNDO"), "");
            case "redo" -> new Done(kept.redone(), words().piecingSaid("REDO"), "");
            case "clear" ->
                new Done(KeptTable.begun(KeptTable.NOTHING, kept.size(), ""), words().piecingSaid("CLEAR"), "");
            case "size" -> sized(context, table);
            case "fill" -> filled(table, at);
            case "lay" -> new Done(changed(table, table.hand().brought(laid, scrap)), words().piecingSaid("LAY"), at);
            case "apart" -> new Done(changed(table, table.hand().apart(laid, scrap)), words().piecingSaid("APART"), at);
            case "lock" -> new Done(changed(table, laid.lockTurned(scrap)), words().piecingSaid("LOCK"), at);
            case "turn" ->
                new Done(
                        changed(table, table.hand().turned(laid, scrap).orElse(laid)), words().piecingSaid("TURN"), at);
            default -> throw new MeasureException(words().wrongForm());
        };
    }

    private static KeptTable changed(HandTable table, LaidOut laid) {
        return table.kept().done(table.text().of(laid));
    }

    private static int scrap(HandTable table, String coded) {
        return table.scrap(URLDecoder.decode(coded, StandardCharsets.UTF_8));
    }

    private Done joined(HandTable table, String[] value) {
        int first = scrap(table, value[0]);
        int second = value.length < 4 ? -1 : scrap(table, value[1]);
        Fits fits = new Fits(table.heap(), table.laid());
        Optional<ScrapFit> way = first < 0 || second < 0
                ? Optional.empty()
                : fits.ways(first, second).stream()
                        .filter(fit ->
                                fit.beside() == value[2].equals("beside") && fit.turned() == value[3].equals("turned"))
                        .findFirst();
        ScrapFit fit = way.orElseThrow(() -> new MeasureException(words().wrongForm()));
        String trims = new BoardView(table, new Swatches(List.of(), java.util.Map.of()), -1, -1).trims(fit);
        return new Done(
                changed(table, fits.joined(fit)),
                words().piecingJoined(table.id(first), table.id(second), trims),
                table.id(first));
    }

    private Done swapped(HandTable table, String[] value) {
        int one = scrap(table, value[0]);
        int other = value.length < 2 ? -1 : scrap(table, value[1]);
        Swaps swaps = new Swaps(table.heap(), table.laid());
        Swap swap = swaps.of(one, Integer.MAX_VALUE).stream()
                .filter(each -> each.other() == other)
                .findFirst()
                .orElseThrow(() -> new MeasureException(words().wrongForm()));
        return new Done(changed(table, swaps.swapped(swap)), words().piecingSaid("SWAP"), table.id(other));
    }

    private Done sized(Context context, HandTable table) {
        String size = PageContext.field(context, "size");
        Size read = Measures.size(size, table.settings().bare());
        if (!read.width().isPositive()
                || !read.height().isPositive()
                || Purpose.MOST.isLessThan(read.width().max(read.height()))) {
            throw new MeasureException(words().wrongForm());
        }
        return new Done(table.kept().sized(size), words().piecingSaid("SIZE"), "");
    }

    private Done filled(HandTable table, String at) {
        LaidOut laid = table.laid();
        Set<Integer> locked = table.heap().isWhole(laid) ? laid.locked() : laid.scraps();
        long seed = 1L + table.kept().before().size();
        return new Filling(table.heap(), laid)
                .filled(locked, TimeLimit.within(FILL_WITHIN_MS), seed)
                .map(next -> new Done(changed(table, next), words().piecingSaid("FILL"), at))
                .orElseGet(() -> new Done(table.kept(), words().piecingSaid("SHORT"), at));
    }

    /** Keeps the cloth: as a new one, or as a change of the one that was put on the table. */
    private void make(Context context) {
        HandTable table = HandTable.of(room);
        Plan plan = table.plan().orElseThrow(() -> new MeasureException(words().piecingSaid("SHORT")));
        Store store = room.store();
        Optional<SavedCloth> cloth = HandTable.cloth(store, table.kept());
        String id = cloth.map(SavedCloth::id)
                .orElseGet(() -> NewCloth.id(plan.cuts().stream()
                        .anyMatch(cut -> ExampleMark.isOn(cut.piece().id()))));
        if (cloth.isPresent()) {
            Project was = cloth.get().document();
            Project changed =
                    new Project(Design.undivided(plan), Optional.of(plan), List.of(), was.bench(), was.life());
            store.book(
                    cloth.get(),
                    HandTable.again(store, cloth.get()).taken(words().piecingDeed(), changed),
                    room.settings().voice());
        } else {
            String name = plan.story().title().in(room.settings().voice());
            Project made = Project.of(Design.undivided(plan), plan, Wished.of(store));
            store.cloths().keep(id, name, made.onPaper(room.settings().paper().word()));
        }
        KeptTable.begun(KeptTable.NOTHING, table.kept().size(), "").keep(store);
        PageContext.go(context, "/cloth/" + id, words().piecingSaid("MADE"));
    }

    /** Puts a kept cloth of scraps on the table. */
    private void from(Context context) {
        Store store = room.store();
        SavedCloth cloth = store.cloths()
                .find(context.pathParam("id"))
                .filter(HandTable::isOpen)
                .orElseThrow(() -> new NotFoundResponse(words().wrongNone()));
        KeptTable.begun(KeptTable.NOTHING, "", cloth.id()).keep(store);
        HandTable table = HandTable.of(room);
        Optional<LaidOut> laid = cloth.document().plan().flatMap(table.hand()::laidOut);
        KeptTable.begun(laid.map(table.text()::of).orElse(KeptTable.NOTHING), "", laid.isPresent() ? cloth.id() : "")
                .keep(store);
        PageContext.go(
                context,
                laid.isPresent() ? "/piecing" : "/cloth/" + cloth.id(),
                words().piecingSaid(laid.isPresent() ? "FROM" : "NOT"));
    }
}
