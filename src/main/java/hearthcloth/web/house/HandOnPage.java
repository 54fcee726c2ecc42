package hearthcloth.web.house;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.guideline.Bend;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.Taken;
import hearthcloth.guideline.file.GuidelineFile;
import hearthcloth.guideline.fit.Ask;
import hearthcloth.guideline.fit.Fitted;
import hearthcloth.guideline.fit.GuidelinePlanner;
import hearthcloth.idea.IdeaPage;
import hearthcloth.idea.MissingPlannerException;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.archive.Kit;
import hearthcloth.store.json.ClothDocument;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.cloth.NewCloth;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.web.kit.Uploads;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.teaching.TeachingWords;
import hearthcloth.work.Purpose;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Hands an idea on as a file, and takes one in that somebody sent, fitted to her stash. */
public final class HandOnPage {

    /** A guideline with a picture is under an eighth of it. */
    private static final int MOST_BYTES = Kit.MOST_BYTES;

    private static final long ANSWER_WITHIN_MS = 3_000;

    /** A choice of a cloth, and what may be said of it. */
    public record RuleField(String name, String label, List<Choice> choices, String example) {}

    /** One thing that may be said of a choice. */
    public record Choice(String value, String words) {}

    /** A cloth of hers, to choose from. */
    public record Own(String id, String name) {}

    /**
     * The page on which an idea is taken from a cloth.
     *
     * @param rules what is said of each choice in it
     */
    @PageView.Template("hand-on.jte")
    public record View(PageFrame frame, String id, String name, List<RuleField> rules) implements PageView {}

    /** The page on which a file is brought in. */
    @PageView.Template("bring-in.jte")
    public record BringIn(PageFrame frame, List<Own> own) implements PageView {}

    private final PageContext room;

    private HandOnPage(PageContext room) {
        this.room = room;
    }

    public static void add(PageRoutes routes) {
        routes.of(HandOnPage::new)
                .get("/hand-on", HandOnPage::begin)
                .post("/hand-on", HandOnPage::in)
                .get("/hand-on/{id}", HandOnPage::show)
                .get("/hand-on/{id}/kit.json", HandOnPage::kitFile)
                .post("/hand-on/{id}/idea.json", HandOnPage::file)
                .post("/hand-on/{id}/page.html", HandOnPage::page);
    }

    private void begin(Context context) {
        List<Own> own = room.store().cloths().all().stream()
                .filter(cloth ->
                        cloth.document().plan().isPresent() && !cloth.document().isFree())
                .map(cloth -> new Own(cloth.id(), cloth.name()))
                .toList();
        room.show(context, new BringIn(room.frame(context, "Hand on an idea", "Made"), own));
    }

    private SavedCloth cloth(Context context) {
        return room.store()
                .cloths()
                .find(context.pathParam("id"))
                .orElseThrow(() -> new NotFoundResponse("There is no such cloth; it may have been removed."));
    }

    private void show(Context context) {
        SavedCloth cloth = cloth(context);
        SaidIdea.plan(cloth);
        room.show(context, new View(room.frame(context, "Hand on an idea", "Made"), cloth.id(), cloth.name(), rules()));
    }

    private static List<RuleField> rules() {
        Choice kept = new Choice(Taken.KEPT, "the idea: as in this cloth");
        Choice open = new Choice("open", "only that day's: as her heap has it");
        Choice share = new Choice(Taken.SHARE, "the idea: its share of the cloth's width");
        return List.of(
                new RuleField("size", "The size", List.of(open, kept), "16 to 20 in"),
                new RuleField(
                        "hearth",
                        "The hearth",
                        List.of(share, kept, new Choice("largest square", "her largest square"), open),
                        "30 to 40 %"),
                new RuleField(
                        "bars",
                        "The bars",
                        List.of(open, share, kept, new Choice("strips", "as wide as her strips")),
                        "2 to 3 in"),
                new RuleField("rounds", "How many rounds", List.of(kept, open), "2 to 4"),
                new RuleField("order", "The order", List.of(kept, open), ""),
                new RuleField("colours", "The colours", List.of(kept, open), "two halves or frames"),
                new RuleField(
                        "middle",
                        "In the middle",
                        List.of(
                                new Choice("any", "any fabric"),
                                new Choice("favourite", "her favourite"),
                                new Choice("lightest", "her lightest"),
                                new Choice("darkest", "her darkest")),
                        ""));
    }

    private void file(Context context) {
        sent(context, "application/json", "idea.json").result(GuidelineFile.write(SaidIdea.of(room, context, cloth(context))));
    }

    private void page(Context context) {
        SavedCloth cloth = cloth(context);
        Stash pieces = new Stash(
                SaidIdea.plan(cloth).cuts().stream().<Piece>map(cut -> cut.piece()).toList());
        try {
            // as a file to keep: its planner needs a content policy that the workroom's own pages never have
            sent(context, "application/octet-stream", "idea.html")
                    .result(IdeaPage.of(SaidIdea.of(room, context, cloth), pieces));
        } catch (MissingPlannerException e) {
            throw new StoreException(String.valueOf(e.getMessage()), e);
        }
    }

    private static Context sent(Context context, String type, String name) {
        return context.contentType(type).header("Content-Disposition", "attachment; filename=\"" + name + "\"");
    }

    private void in(Context context) {
        String text = new String(Uploads.upload(room, context, "file", MOST_BYTES), StandardCharsets.UTF_8);
        if (Kit.isOne(text)) {
            kit(context, text);
            return;
        }
        Guideline guideline = SaidIdea.read(text, room.settings().ruler());
        Stash stash = room.store().atHand().free(Set.of());
        if (stash.pieces().isEmpty()) {
            throw new StoreException("Your stash is empty; lay in what you have first.");
        }
        Optional<String> favourite =
                Optional.of(PageContext.field(context, "favourite")).filter(name -> !name.isBlank());
        Fitted fitted = GuidelinePlanner.fit(guideline, stash, new Ask(favourite, 1, 1), 1, limit(), seen -> {});
        Fitted.Nearest nearest = fitted.cloths().stream()
                .findFirst()
                .orElseThrow(() -> new StoreException(
                        "Your stash makes no cloth of this idea yet. " + said(fitted)));
        String id = NewCloth.id(false);
        Plan plan = nearest.plan();
        Design design = NewCloth.design(plan);
        room.store().cloths().keep(id, guideline.told().name(), ClothDocument.of(design, plan, Purpose.NOTHING));
        PageContext.go(context, "/cloth/" + id, told(nearest, fitted));
    }

    /** A cloth with its pieces: both are hers then. */
    private void kit(Context context, String text) {
        String id = Kit.read(text).into(room.store());
        TeachingWords words = TeachingWords.in(room.settings().pages());
        PageContext.go(context, "/cloth/" + id, words.kitCame());
    }

    private void kitFile(Context context) {
        SavedCloth cloth = cloth(context);
        sent(context, "application/json", "kit.json")
                .result(Kit.of(cloth.name(), cloth.document()).text());
    }

    private static Budget limit() {
        return TimeLimit.within(ANSWER_WITHIN_MS);
    }

    private String said(Fitted fitted) {
        return Sentence.row(fitted.why()).in(room.settings().voice());
    }

    private String told(Fitted.Nearest nearest, Fitted fitted) {
        if (nearest.keepsAll()) {
            return "It fits your stash and keeps every rule. It is yours now: change what you like.";
        }
        String bent = nearest.isScraps()
                ? "Your pieces give no hearth with bars; the scraps are laid together as they are."
                : String.join(" ", nearest.bends().stream().map(Bend::what).toList());
        return "The nearest your stash makes. " + bent + " Why: " + said(fitted);
    }
}
