package hearthcloth.web.gallery;

import hearthcloth.measure.MeasureException;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Stash;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.Store;
import hearthcloth.web.cloth.ClothCard;
import hearthcloth.web.cloth.NewCloth;
import hearthcloth.web.gift.Foresight;
import hearthcloth.web.gift.GiftDrawing;
import hearthcloth.web.gift.Leanings;
import hearthcloth.web.gift.PatchworkForm;
import hearthcloth.web.gift.ScrapForm;
import hearthcloth.web.gift.WishForm;
import hearthcloth.web.gift.WishView;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.ErrorPages;
import hearthcloth.web.kit.ExampleMark;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.choosing.ChoosingWords;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.work.Purpose;
import hearthcloth.work.StashAtHand;
import hearthcloth.work.design.ClothKept;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What her heap can make: four cloths flat and tied beside each other, more on demand, wishes as chips. */
public final class GalleryPage {

    /** What a fabric can be picked for, by which the catalogue knows it. */
    public static final List<String> PICKED = List.of("hearth", "show", "without");

    /** On one page, and looked for at most. */
    private static final int AT_ONCE = 4;

    private static final int FEW = 3;

    /** So long a page waits for a first look to end, which it mostly does: cards on the page come sooner than any asked for. */
    private static final long FIRST_WITHIN_MS = 60;

    /**
     * What she wishes.
     *
     * @param drawn the gift, small, as SVG; empty where there is none
     * @param loved the colours of a picture she loves, each with her fabric nearest to it
     */
    public record Wishes(WishView view, WishChips chips, String drawn, List<LovedPalette.Row> loved) {}

    /**
     * The page.
     *
     * @param kept the cloths she has already
     */
    @PageView.Template("gallery.jte")
    public record View(
            PageFrame frame, Wishes wishes, GalleryHeap heap, ProposalCards.View proposals, ClothCard.Choice kept)
            implements PageView {}

    /** All that were found, to one scale. */
    @PageView.Template("proposals-beside.jte")
    public record Beside(PageFrame frame, List<ProposalCards.Card> cards) implements PageView {}

    private final PageContext room;
    private final ProposalSearches searches;
    private final KeptWishes kept;

    private GalleryPage(PageContext room, ProposalSearches searches) {
        this.room = room;
        this.searches = searches;
        this.kept = new KeptWishes(room);
    }

    /**
     * Adds the pages.
     *
     * @return begins to look for a gift that a page shows, before she asks what her heap can make for it
     */
    public static Foresight add(PageRoutes routes) {
        ProposalSearches searches = new ProposalSearches();
        routes.whenClosed(searches::stop);
        routes.of(room -> new GalleryPage(room, searches))
                .get("/cloth", GalleryPage::show)
                .get("/proposals/beside", GalleryPage::beside)
                .get("/proposals/three", GalleryPage::few)
                .get("/proposals/{name}/soft.svg", GalleryPage::soft)
                .get("/proposals", (page, context) -> page.room.show(context, page.shown(context)))
                .post("/proposals", GalleryPage::look)
                .post("/proposals/stop", GalleryPage::stop)
                .post("/proposals/open", GalleryPage::open);
        WishesPage.add(routes);
        return (room, purpose) -> new GalleryPage(room, searches).foreseen(purpose);
    }

    /** For another gift than the one she planned for, her wishes wait. */
    private void foreseen(Purpose purpose) {
        Leanings lean = purpose.equals(Wished.of(store())) ? kept.leanings() : Leanings.NONE;
        Stash stash = lean.from(kept.free());
        if (!stash.pieces().isEmpty()) {
            try {
                searches.foresee(store(), kept.question(stash, purpose, lean));
            } catch (MeasureException e) {
                // Wishes that cannot be used: the gallery will say so.
            }
        }
    }

    private ChoosingWords words() {
        return ChoosingWords.in(room.language());
    }

    private Store store() {
        return room.store();
    }

    private void show(Context context) {
        StashAtHand heap = store().atHand();
        Purpose wished = Wished.of(store());
        Stash free = heap.free(kept.also());
        Leanings lean = kept.leanings();
        Stash stash = lean.from(free);
        String trouble = begun(stash, wished, lean);
        searches.of(store()).ifPresent(search -> search.await(FIRST_WITHIN_MS));
        Swatches swatches = new Swatches(free.fabrics(), store().swatches().across());
        WishChips.Asked asked = new WishChips.Asked(
                lean,
                WishForm.of(store()),
                kept.first(stash),
                free,
                room.settings().voice(),
                wished.thing().isPresent(),
                kept.waiting());
        room.show(
                context,
                new View(
                        room.frame(context, words().galleryTitle(), "Cloth"),
                        wishes(wished, trouble, asked, stash, swatches),
                        GalleryHeap.of(room, heap, HeapLeft.of(heap.stash(), free, stash), free, swatches),
                        shown(context),
                        new ClothCard.Choice(
                                ClothCard.all(room, store().cloths().all()), "/cloth/")));
    }

    private Wishes wishes(Purpose wished, String trouble, WishChips.Asked asked, Stash stash, Swatches swatches) {
        return new Wishes(
                WishView.of(store(), wished, kept.usual(), room.settings().voice(), trouble),
                WishChips.of(
                        asked,
                        stash,
                        swatches,
                        searches.of(store())
                                .map(search -> search.plans().values())
                                .orElse(List.of())),
                GiftDrawing.of(wished.gift()),
                LovedPalette.of(store()).rows(stash, swatches, room.language()));
    }

    /**
     * Begins to look; wishes that cannot be used any more, since her ruler or her seam is another now, are said instead. Where
     * nothing can be looked for, what an earlier search found answers another question and goes.
     */
    private String begun(Stash stash, Purpose wished, Leanings lean) {
        if (stash.pieces().isEmpty()) {
            searches.forget(store());
            return "";
        }
        try {
            searches.begin(store(), kept.question(stash, wished, lean));
            return "";
        } catch (MeasureException e) {
            searches.forget(store());
            return ErrorPages.upright(Refusal.of(e).in(room.settings().voice()));
        }
    }

    private void look(Context context) {
        WishForm was = WishForm.of(store());
        WishForm form = WishForm.read(name -> PageContext.field(context, name), was.fabrics())
                .showing(was.show());
        kept.settle(
                form,
                PatchworkForm.read(
                        PageContext.field(context, "patchwork"),
                        ScrapForm.read(name -> PageContext.field(context, name), context.formParams("with"))),
                context.formParams("also"));
        PageContext.go(context, "/cloth", "");
    }

    private void stop(Context context) {
        searches.of(store()).ifPresent(ProposalSearch::stop);
        if (PageContext.isPart(context)) {
            room.show(context, shown(context));
        } else {
            PageContext.go(context, "/cloth", words().foundStopped());
        }
    }

    private ProposalCards.View shown(Context context) {
        String more = PageContext.text(context, "more");
        int most = AT_ONCE * (1 + (more.matches("[1-9]") ? Integer.parseInt(more) : 0));
        return cards(most, "/proposals" + (more.matches("[1-9]") ? "?more=" + more : ""));
    }

    private ProposalCards.View cards(int most, String again) {
        return new ProposalCards(room, Wished.of(store())).view(searches.of(store()), most, names(), again);
    }

    /** A few for who has nothing to cut or to sew yet. */
    private void few(Context context) {
        // Asked again, it only tells how far the search is: one that failed is not begun anew four times a second.
        if (PageContext.text(context, "again").isEmpty()) {
            Leanings lean = kept.leanings();
            begun(lean.from(kept.free()), Wished.of(store()), lean);
        }
        room.show(context, cards(FEW, "/proposals/three?again=yes"));
    }

    private void beside(Context context) {
        ProposalCards.View all = cards(KeptWishes.MOST, "/proposals");
        room.show(
                context,
                new Beside(
                        room.frame(context, words().foundBeside(), "Cloth"),
                        all.state().cards()));
    }

    /** A proposal tied, as soft cloth, which takes a moment; its card shows the facets until it is there. */
    private void soft(Context context) {
        ProposalCards cards = new ProposalCards(room, Wished.of(store()));
        String svg = searches.of(store())
                .flatMap(search -> search.soft(context.pathParam("name"), cards::soft))
                .filter(drawn -> !drawn.isEmpty())
                .orElseThrow(() -> new NotFoundResponse(words().foundGone()));
        context.header("Cache-Control", "private, max-age=3600")
                .contentType("image/svg+xml")
                .result(svg);
    }

    private Set<String> names() {
        return store().cloths().all().stream().map(SavedCloth::name).collect(Collectors.toSet());
    }

    private void open(Context context) {
        String name = PageContext.field(context, "name");
        Optional<ProposalSearch> search = searches.of(store());
        Optional<Plan> shown = search.flatMap(now -> now.shown(name));
        if (shown.isEmpty()) {
            PageContext.go(context, "/cloth", words().foundGone());
            return;
        }
        Plan plan = shown.get();
        boolean example = plan.cuts().stream()
                .anyMatch(cut -> ExampleMark.isOn(cut.piece().id()));
        String id = NewCloth.id(example);
        boolean free = plan.cloth().isFree();
        Map<String, Plan> found = search.orElseThrow().plans();
        // The first card of a search is replaced while it looks on; taken then, it keeps the name she saw.
        Map<String, Plan> all = found.containsKey(name) ? found : Map.of(name, plan);
        int place = List.copyOf(all.keySet()).indexOf(name);
        String title = ProposalNames.of(all, names(), room.settings().voice()).get(place);
        store().cloths()
                .keep(
                        id,
                        title,
                        new ClothKept(plan)
                                .on(Wished.of(store()), room.settings().paper().word()));
        PageContext.go(context, "/cloth/" + id, free ? words().foundKept() : words().foundKeptTap());
    }
}
