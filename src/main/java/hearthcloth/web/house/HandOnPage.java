package hearthcloth.web.house;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.Taken;
import hearthcloth.guideline.file.GuidelineFile;
import hearthcloth.guideline.fit.Ask;
import hearthcloth.guideline.fit.Fitted;
import hearthcloth.guideline.fit.GuidelinePlanner;
import hearthcloth.idea.IdeaPage;
import hearthcloth.idea.MissingPlannerException;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.archive.Kit;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.cloth.NewCloth;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.web.kit.Uploads;
import hearthcloth.words.handing.HandingWords;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.teaching.TeachingWords;
import hearthcloth.work.Purpose;
import hearthcloth.work.design.ClothKept;
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
    public record View(PageFrame frame, String id, String name, List<RuleField> rules) implements PageView {

        /** What is said on it. */
        public HandingWords words() {
            return HandingWords.in(frame.language());
        }
    }

    /** The page on which a file is brought in. */
    @PageView.Template("bring-in.jte")
    public record BringIn(PageFrame frame, List<Own> own) implements PageView {

        /** What is said on it. */
        public HandingWords words() {
            return HandingWords.in(frame.language());
        }
    }

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

    private HandingWords words() {
        return HandingWords.in(room.language());
    }

    private void begin(Context context) {
        List<Own> own = room.store().cloths().all().stream()
                .filter(cloth ->
                        cloth.document().plan().isPresent() && !cloth.document().isFree())
                .map(cloth -> new Own(cloth.id(), cloth.name()))
                .toList();
        room.show(context, new BringIn(room.frame(context, words().title(), "Made"), own));
    }

    private SavedCloth cloth(Context context) {
        return room.store()
                .cloths()
                .find(context.pathParam("id"))
                .orElseThrow(() -> new NotFoundResponse(words().noCloth()));
    }

    private void show(Context context) {
        SavedCloth cloth = cloth(context);
        SaidIdea.plan(room, cloth);
        room.show(context, new View(room.frame(context, words().title(), "Made"), cloth.id(), cloth.name(), rules()));
    }

    private List<RuleField> rules() {
        HandingWords words = words();
        Choice kept = new Choice(Taken.KEPT, words.choice("kept"));
        Choice open = new Choice("open", words.choice("open"));
        Choice share = new Choice(Taken.SHARE, words.choice("share"));
        return List.of(
                new RuleField("size", words.field("size"), List.of(open, kept), "16 to 20 in"),
                new RuleField(
                        "hearth",
                        words.field("hearth"),
                        List.of(share, kept, new Choice("largest square", words.choice("square")), open),
                        "30 to 40 %"),
                new RuleField(
                        "bars",
                        words.field("bars"),
                        List.of(open, share, kept, new Choice("strips", words.choice("strips"))),
                        "2 to 3 in"),
                new RuleField("rounds", words.field("rounds"), List.of(kept, open), "2 to 4"),
                new RuleField("order", words.field("order"), List.of(kept, open), ""),
                new RuleField("colours", words.field("colours"), List.of(kept, open), "two halves or frames"),
                new RuleField(
                        "middle",
                        words.field("middle"),
                        List.of(
                                new Choice("any", words.choice("any")),
                                new Choice("favourite", words.choice("favourite")),
                                new Choice("lightest", words.choice("lightest")),
                                new Choice("darkest", words.choice("darkest"))),
                        ""));
    }

    private void file(Context context) {
        sent(context, "application/json", "idea.json")
                .result(GuidelineFile.write(SaidIdea.of(room, context, cloth(context))));
    }

    private void page(Context context) {
        SavedCloth cloth = cloth(context);
        Stash pieces = new Stash(SaidIdea.plan(room, cloth).cuts().stream()
                .<Piece>map(cut -> cut.piece())
                .toList());
        try {
            // as a file to keep: its planner needs a content policy that the workroom's own pages never have
            sent(context, "application/octet-stream", "idea.html")
                    .result(IdeaPage.of(SaidIdea.of(room, context, cloth), pieces));
        } catch (MissingPlannerException e) {
            throw new StoreException(Refusal.of(e), e);
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
        Guideline guideline = SaidIdea.read(room, text);
        Stash stash = room.store().atHand().free(Set.of());
        if (stash.pieces().isEmpty()) {
            throw new StoreException(words().empty());
        }
        Optional<String> favourite =
                Optional.of(PageContext.field(context, "favourite")).filter(name -> !name.isBlank());
        Fitted fitted = GuidelinePlanner.fit(guideline, stash, new Ask(favourite, 1, 1), 1, limit(), seen -> {});
        Fitted.Nearest nearest = fitted.cloths().stream()
                .findFirst()
                .orElseThrow(() -> new StoreException(words().noneFits(said(fitted))));
        String id = NewCloth.id(false);
        Plan plan = nearest.plan();
        room.store()
                .cloths()
                .keep(
                        id,
                        guideline.told().name(),
                        new ClothKept(plan)
                                .on(Purpose.NOTHING, room.settings().paper().word()));
        PageContext.go(context, "/cloth/" + id, told(nearest, fitted));
    }

    /** A cloth with its pieces: both are hers then. */
    private void kit(Context context, String text) {
        TeachingWords words = TeachingWords.in(room.language());
        String id = Kit.read(text)
                .orElseThrow(() -> Uploads.refused(422, words.kitRefused()))
                .into(room.store(), room.settings().voice());
        PageContext.go(context, "/cloth/" + id, words.kitCame());
    }

    private void kitFile(Context context) {
        SavedCloth cloth = cloth(context);
        sent(context, "application/json", "kit.json")
                .result(Kit.of(cloth.name(), cloth.document())
                        .orElseThrow(() -> new StoreException(words().lacks()))
                        .text());
    }

    private static Budget limit() {
        return TimeLimit.within(ANSWER_WITHIN_MS);
    }

    private String said(Fitted fitted) {
        return Sentence.row(fitted.why()).in(room.settings().voice());
    }

    private String told(Fitted.Nearest nearest, Fitted fitted) {
        if (nearest.keepsAll()) {
            return words().fitsAll();
        }
        String bent = nearest.isScraps()
                ? words().asScraps()
                : String.join(
                        " ",
                        nearest.bends().stream()
                                .map(bend -> bend.what().in(room.settings().voice()))
                                .toList());
        return words().nearest(bent, said(fitted));
    }
}
