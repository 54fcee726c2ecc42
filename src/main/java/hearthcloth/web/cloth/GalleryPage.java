package hearthcloth.web.cloth;

import hearthcloth.cloth.making.Face;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanFigures;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.store.json.ClothDocument;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.gift.MeasuredSeams;
import hearthcloth.web.gift.PatchworkForm;
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
import hearthcloth.words.Usual;
import hearthcloth.work.Purpose;
import hearthcloth.work.StashAtHand;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The gallery: cloths that the stash can make for what she wishes, as they are found. */
public final class GalleryPage {

    private static final int PROPOSALS = 6;

    /** The setting that names those cloths, one a line. */
    private static final String ALSO = "wish.also";

    /** One proposal in the gallery. */
    public record Card(
            String name, String title, String figures, String goodAt, String front, String back, String size) {}

    /**
     * How far the search is.
     *
     * @param share tried so far, 0 to 100
     * @param why what is short where nothing can be made
     */
    public record State(
            boolean running,
            boolean stopped,
            int share,
            int found,
            List<Card> cards,
            String verdict,
            List<String> why) {}

    /** What the search found, with the forms for it. */
    @PageView.Template("part/proposals.jte")
    public record Proposals(State state, String token) implements PageView {}

    /**
     * What she has to plan from.
     *
     * @param fabrics to choose from
     * @param isEmpty true where there is nothing in the stash at all
     * @param held what a new cloth is not planned from
     */
    public record Heap(List<Fabric> fabrics, boolean isEmpty, HeldBack held) {}

    /**
     * The page.
     *
     * @param kept the cloths she has already
     */
    @PageView.Template("gallery.jte")
    public record View(PageFrame frame, WishView wishes, Heap heap, Proposals proposals, ClothCard.Choice kept)
            implements PageView {}

    private final PageContext room;

    private final ProposalSearches searches;

    private GalleryPage(PageContext room, ProposalSearches searches) {
        this.room = room;
        this.searches = searches;
    }

    public static void add(PageRoutes routes) {
        ProposalSearches searches = new ProposalSearches();
        routes.of(room -> new GalleryPage(room, searches))
                .get("/cloth", GalleryPage::show)
                .get("/proposals", GalleryPage::proposals)
                .post("/proposals", GalleryPage::look)
                .post("/proposals/stop", GalleryPage::stop)
                .post("/proposals/open", GalleryPage::open);
    }

    private void show(Context context) {
        StashAtHand heap = room.store().atHand();
        Stash stash = free(heap);
        Purpose wished = Wished.of(room.store());
        WishForm form = WishForm.of(room.store());
        Usual usual = usual();
        String trouble = stash.pieces().isEmpty() ? "" : begun(stash, wished, form, usual);
        room.show(
                context,
                new View(
                        room.frame(context, "Cloths your stash can make", "Cloth"),
                        WishView.of(room.store(), wished, usual, trouble),
                        new Heap(stash.fabrics(), heap.stash().pieces().isEmpty(), HeldBack.of(heap, also())),
                        shown(),
                        new ClothCard.Choice(
                                ClothCard.all(room, room.store().cloths().all()), "/cloth/")));
    }

    /** Begins to look; wishes that cannot be used any more, since her ruler or her seam is another now, are said instead. */
    private String begun(Stash stash, Purpose wished, WishForm form, Usual usual) {
        try {
            searches.begin(
                    room.store(),
                    stash,
                    form.wish(wished, usual, stash, PROPOSALS),
                    PatchworkForm.of(room.store()).patchwork(form));
            return "";
        } catch (MeasureException e) {
            return ErrorPages.upright(String.valueOf(e.getMessage()));
        }
    }

    private Usual usual() {
        return MeasuredSeams.of(room.store()).usual(room.settings());
    }

    /** The cloths whose pieces she allows a new one to take all the same. */
    private Set<String> also() {
        return room.store()
                .setting(ALSO)
                .map(text -> Set.copyOf(Arrays.asList(text.split("\n"))))
                .orElse(Set.of());
    }

    private Stash free(StashAtHand heap) {
        return heap.free(also());
    }

    private Optional<ProposalSearch> planning() {
        return searches.of(room.store());
    }

    private void proposals(Context context) {
        room.show(context, shown());
    }

    private void look(Context context) {
        WishForm form = WishForm.read(name -> PageContext.field(context, name), context.formParams("fabric"));
        Stash stash = free(room.store().atHand());
        form.wish(Wished.of(room.store()), usual(), stash, PROPOSALS);
        PatchworkForm patchwork = PatchworkForm.read(PageContext.field(context, "patchwork"));
        patchwork.patchwork(form);
        form.keep(room.store());
        patchwork.keep(room.store());
        room.store().set(ALSO, String.join("\n", context.formParams("also")));
        PageContext.go(context, "/cloth", "");
    }

    private void stop(Context context) {
        planning().ifPresent(ProposalSearch::stop);
        if (PageContext.isPart(context)) {
            proposals(context);
        } else {
            PageContext.go(context, "/cloth", "Stopped; the best so far is shown.");
        }
    }

    private Proposals shown() {
        return new Proposals(state(), room.token());
    }

    private State state() {
        Optional<ProposalSearch> now = planning();
        if (now.isEmpty()) {
            return new State(false, false, 0, 0, List.of(), "", List.of());
        }
        ProposalSearch search = now.get();
        int of = Math.max(1, search.progress().of());
        List<Card> cards = new ArrayList<>();
        Map<String, Length> pictures = room.store().swatches().across();
        search.plans().forEach((name, plan) -> cards.add(card(name, plan, pictures)));
        String verdict = search.isFailed()
                ? "The search stumbled over this stash. Change a wish and look again."
                : search.outcome().map(GalleryPage::verdict).orElse("");
        List<String> why = search.outcome()
                .filter(outcome -> outcome instanceof PlanOutcome.CannotMake)
                .map(outcome -> ((PlanOutcome.CannotMake) outcome).why())
                .orElse(List.of());
        return new State(
                search.isRunning(),
                search.isStopped(),
                100 * search.progress().tried() / of,
                search.progress().found(),
                cards,
                verdict,
                why);
    }

    private static String verdict(PlanOutcome outcome) {
        if (outcome instanceof PlanOutcome.CannotMake cannot) {
            return cannot.proven()
                    ? "This cannot be made from this stash."
                    : "No way was found yet to make this from this stash.";
        }
        return "";
    }

    private Card card(String name, Plan plan, Map<String, Length> pictures) {
        Swatches swatches = new Swatches(plan.fabrics(), pictures);
        Ruler ruler = room.settings().ruler();
        PlanFigures figures = plan.figures();
        Size size = plan.cloth().finished();
        String words = size.isSquare()
                ? ruler.write(size.width(), Rounding.NEAREST) + " square"
                : ruler.write(size, Rounding.NEAREST);
        String joins = plan.cloth().isFree()
                ? plan.cloth().patches().size() + " patches"
                : figures.joins() == 0 ? "no joins" : "joins " + ClothFigures.joins(figures, plan.bound());
        return new Card(
                name,
                plan.story().title(),
                joins + "; " + figures.areas().lostPercent() + " % lost",
                plan.story().goodAt(),
                ClothDrawing.still(
                        plan.cloth(),
                        Face.FRONT,
                        swatches,
                        "Front: " + plan.story().title() + ", " + words),
                ClothDrawing.still(plan.cloth(), Face.BACK, swatches, "Back"),
                words);
    }

    private void open(Context context) {
        String name = PageContext.field(context, "name");
        Optional<Plan> shown = planning().flatMap(search -> search.shown(name));
        if (shown.isEmpty()) {
            PageContext.go(context, "/cloth", "That proposal is gone; these are the ones now.");
            return;
        }
        Plan plan = shown.get();
        boolean example = plan.cuts().stream()
                .anyMatch(cut -> ExampleMark.isOn(cut.piece().id()));
        String id = NewCloth.id(example);
        boolean free = plan.cloth().isFree();
        Design design = free ? Design.undivided(plan) : DesignEdits.settled(plan, WishForm.order(plan));
        room.store().cloths().keep(id, plan.story().title(), ClothDocument.of(design, plan, Wished.of(room.store())));
        String said = "Kept among your cloths." + (free ? "" : " Tap any bar to change it.");
        PageContext.go(context, "/cloth/" + id, said);
    }
}
