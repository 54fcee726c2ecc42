package hearthcloth.web.cloth;

import hearthcloth.cloth.making.Face;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanFigures;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.stash.Stash;
import hearthcloth.store.Store;
import hearthcloth.store.json.ClothDocument;
import hearthcloth.web.gift.PatchworkForm;
import hearthcloth.web.gift.WishForm;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.ExampleMark;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.Swatches;
import hearthcloth.work.StashAtHand;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The gallery: cloths that the stash can make for what she wishes, as they are found. */
public final class GalleryPage {

    private static final int PROPOSALS = 6;

    /** The setting that names those cloths, one a line. */
    private static final String ALSO = "wish.also";

    /** What she asked for: her wishes, and how the cloth is put together. */
    public record Asked(WishForm wishes, PatchworkForm patchwork) {

        /** Whether the stash decides everything. */
        public boolean isOpen() {
            return wishes.isOpen() && patchwork.way().isEmpty();
        }
    }

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

    private final PageContext room;

    /** The last search of each one's work; in a studio there are several. */
    private final Map<Store, ProposalSearch> searches = new ConcurrentHashMap<>();

    public GalleryPage(PageContext room) {
        this.room = room;
    }

    public void add(RoutesConfig routes) {
        routes.get("/cloth", this::show);
        routes.get("/proposals", this::proposals);
        routes.post("/proposals", this::look);
        routes.post("/proposals/stop", this::stop);
        routes.post("/proposals/open", this::open);
    }

    private void show(Context context) {
        StashAtHand heap = room.store().atHand();
        Stash stash = free(heap);
        Wished wished = Wished.of(room.store());
        WishForm form = WishForm.of(room.store());
        if (!stash.pieces().isEmpty()) {
            Wish wish = form.wish(wished, room.settings(), stash, PROPOSALS);
            begin(stash, wish, PatchworkForm.of(room.store()).patchwork(form));
        }
        room.show(
                context,
                "gallery.jte",
                Map.of(
                        "tied", wished.thing().isPresent(),
                        "frame", room.frame(context, "Cloths your stash can make", "Cloth"),
                        "wished", wished.words(room.settings().ruler()),
                        "form", new Asked(form, PatchworkForm.of(room.store())),
                        "fabrics", stash.fabrics(),
                        "empty", heap.stash().pieces().isEmpty(),
                        "held", HeldBack.of(heap, also()),
                        "state", state(),
                        "kept", ClothCard.all(room, room.store().cloths().all())));
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

    /** Begins a search for this wish unless one is going on or has answered it. */
    private synchronized void begin(Stash stash, Wish wish, Optional<Patchwork> patchwork) {
        Optional<ProposalSearch> last = planning();
        if (last.isPresent() && last.get().isFor(stash, wish, patchwork) && !last.get().isFailed()) {
            return;
        }
        last.ifPresent(ProposalSearch::stop);
        searches.put(room.store(), ProposalSearch.begin(stash, wish, patchwork));
    }

    private Optional<ProposalSearch> planning() {
        return Optional.ofNullable(searches.get(room.store()));
    }

    private void proposals(Context context) {
        room.show(context, "part/proposals.jte", Map.of("state", state(), "token", room.token()));
    }

    private void look(Context context) {
        WishForm form = WishForm.read(name -> PageContext.field(context, name), context.formParams("fabric"));
        Stash stash = free(room.store().atHand());
        form.wish(Wished.of(room.store()), room.settings(), stash, PROPOSALS);
        form.keep(room.store());
        PatchworkForm.read(PageContext.field(context, "patchwork")).keep(room.store());
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
        room.store().cloths().keep(id, plan.story().title(), ClothDocument.of(design, plan));
        String said = "Kept among your cloths." + (free ? "" : " Tap any bar to change it.");
        PageContext.go(context, "/cloth/" + id, said);
    }
}
