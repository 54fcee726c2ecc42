package hearthcloth.web.kits;

import hearthcloth.draw.KitsPrint;
import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.guide.GuideLength;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.together.Together;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.store.Store;
import hearthcloth.store.archive.Kit;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.cloth.NewCloth;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Settings;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.WishList;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.teaching.TeachingWords;
import hearthcloth.work.Project;
import hearthcloth.work.Purpose;
import hearthcloth.work.design.ClothKept;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** Many cloths from her stash: a class or a season's gifts, planned together beside the pages. */
public final class KitsPage {

    /**
     * The page.
     *
     * @param going how far the search is; empty where none goes on
     */
    @PageView.Template("kits.jte")
    public record View(PageFrame frame, TeachingWords words, Typed typed, String going, Optional<KitsFound> result)
            implements PageView {}

    /**
     * The form with what stands in it.
     *
     * @param free how many pieces can be planned with
     * @param faults what cannot be used in what was typed
     */
    public record Typed(KitsForm form, int free, List<String> faults) {}

    private final PageContext room;
    private final Map<Store, KitsSearch> searches;

    private KitsPage(PageContext room, Map<Store, KitsSearch> searches) {
        this.room = room;
        this.searches = searches;
    }

    public static void add(PageRoutes routes) {
        Map<Store, KitsSearch> searches = new ConcurrentHashMap<>();
        routes.of(room -> new KitsPage(room, searches))
                .get("/kits", (page, context) -> page.show(context, List.of()))
                .post("/kits", KitsPage::begin)
                .post("/kits/stop", KitsPage::stop)
                .post("/kits/move", KitsPage::move)
                .post("/kits/keep", KitsPage::keep)
                .post("/kits/away", KitsPage::away)
                .get("/kits/kits.pdf", KitsPage::print)
                .get("/kits/{n}/guide.pdf", KitsPage::guide)
                .get("/kits/{n}/kit.json", KitsPage::file);
    }

    private TeachingWords words() {
        return TeachingWords.in(room.settings().pages());
    }

    private Voice voice() {
        return room.settings().voice();
    }

    private Optional<KitsSearch> search() {
        return Optional.ofNullable(searches.get(room.store()));
    }

    private Stash free() {
        return room.store().atHand().free(Set.of());
    }

    private void show(Context context, List<String> faults) {
        Optional<KitsSearch> search = search();
        KitsForm form = faults.isEmpty()
                ? search.map(one -> one.question().typed()).orElse(KitsForm.EMPTY)
                : KitsForm.of(context);
        String going = search.filter(KitsSearch::isRunning).map(this::going).orElse("");
        room.show(
                context,
                new View(
                        room.frame(context, words().kitsTitle(), "Made"),
                        words(),
                        new Typed(form, free().pieces().size(), faults),
                        going,
                        search.flatMap(one ->
                                one.together().map(found -> KitsFound.of(one.question(), found, words(), voice())))));
    }

    private String going(KitsSearch search) {
        return search.progress()
                .map(seen -> words().kitsGoing(String.valueOf(seen.of()), String.valueOf(seen.tried())))
                .orElse(words().kitsGoing("…", "0"));
    }

    private void begin(Context context) {
        Stash heap = free();
        if (heap.pieces().isEmpty()) {
            throw new StoreException(words().kitsEmpty());
        }
        KitsForm form = KitsForm.of(context);
        try {
            List<WishList.Line> lines = form.read(heap, voice());
            search().ifPresent(KitsSearch::stop);
            searches.put(room.store(), KitsSearch.begin(new KitsSearch.Question(heap, lines, voice().ruler(), form)));
            PageContext.go(context, "/kits", "");
        } catch (BadInputException e) {
            context.status(422);
            show(context, e.in(voice()));
        }
    }

    private void stop(Context context) {
        search().ifPresent(KitsSearch::stop);
        PageContext.go(context, "/kits", "");
    }

    private void away(Context context) {
        stop(context);
        searches.remove(room.store());
    }

    private KitsSearch found() {
        return search().filter(one -> one.together().isPresent())
                .orElseThrow(() -> new NotFoundResponse(words().kitsAnew()));
    }

    private Together together() {
        return found().together().orElseThrow();
    }

    private Together.Part part(String number) {
        List<Together.Part> parts = together().parts();
        int at = number.matches("\\d{1,2}") ? Integer.parseInt(number) : parts.size();
        if (at >= parts.size()) {
            throw new NotFoundResponse(words().kitsAnew());
        }
        return parts.get(at);
    }

    private void move(Context context) {
        String to = PageContext.field(context, "to");
        String piece = PageContext.field(context, "piece");
        String name = part(to).asked().name();
        boolean there = found().question().heap().pieces().stream()
                .anyMatch(one -> one.id().equals(piece));
        boolean moved = there && found().move(piece, Integer.parseInt(to));
        PageContext.go(context, "/kits", moved ? words().kitsMoved(name, piece) : words().kitsNotMoved(name, piece));
    }

    /** All that were planned, as one change; each piece is one cloth's alone, and the stash still has it. */
    private void keep(Context context) {
        Together all = together();
        requireThere(all);
        Store store = room.store();
        int kept = store.asOneChange(words().kitsTitle(), () -> {
            int count = 0;
            for (Together.Part part : all.parts()) {
                if (part.plan().isPresent()) {
                    store.cloths()
                            .keep(
                                    NewCloth.id(false),
                                    part.asked().name(),
                                    document(part.plan().get()));
                    count++;
                }
            }
            return count;
        });
        searches.remove(store);
        PageContext.go(context, "/cloths", words().kitsKept(kept));
    }

    /** Pieces that were cut or changed meanwhile would be promised although they are gone. */
    private void requireThere(Together all) {
        Set<Piece> there = Set.copyOf(free().pieces());
        boolean gone = all.parts().stream()
                .flatMap(part -> part.plan().stream())
                .flatMap(plan -> plan.cuts().stream())
                .anyMatch(cut -> !there.contains(cut.piece()));
        if (gone) {
            throw new StoreException(words().kitsAnew());
        }
    }

    private Project document(Plan plan) {
        return new ClothKept(plan).on(Purpose.NOTHING, room.settings().paper().word());
    }

    private static Context sent(Context context, String type, String how) {
        return context.contentType(type).header("Content-Disposition", how);
    }

    private void print(Context context) {
        KitsSearch search = found();
        List<String> asked = search.question().lines().stream()
                .map(line -> line.gift().isPresent() ? line.asked(voice()) : "")
                .toList();
        Settings settings = room.settings();
        sent(context, "application/pdf", "inline; filename=\"hearthcloth-kits.pdf\"")
                .result(new KitsPrint(together(), asked, settings.voice(), settings.paper()).pdf());
    }

    private Plan plan(Context context) {
        return part(context.pathParam("n")).plan().orElseThrow(() -> new NotFoundResponse(words().kitsNothing()));
    }

    private void guide(Context context) {
        Plan plan = plan(context);
        var gift = found().question()
                .lines()
                .get(Integer.parseInt(context.pathParam("n")))
                .gift();
        PlanFolder drawn = new PlanFolder(
                plan,
                room.settings().stepVoice(),
                room.settings().paper(),
                gift.map(wish -> wish.wrapped(voice().ruler())));
        sent(context, "application/pdf", "inline; filename=\"hearthcloth-guide.pdf\"")
                .result(drawn.guide(GuideLength.CLASS));
    }

    private void file(Context context) {
        Plan plan = plan(context);
        String name = part(context.pathParam("n")).asked().name();
        sent(context, "application/json", "attachment; filename=\"kit.json\"")
                .result(Kit.of(name, document(plan)).orElseThrow().text());
    }
}
