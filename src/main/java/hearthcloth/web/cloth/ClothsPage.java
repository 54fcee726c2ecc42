package hearthcloth.web.cloth;

import hearthcloth.cloth.making.Face;
import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.guide.GuideLength;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.store.ClothBook;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Settings;
import hearthcloth.web.kit.StaleChangeException;
import hearthcloth.words.Language;
import hearthcloth.words.Spoken;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.words.keeping.KeepingWords;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What she designed and made: pictures, whom it went to, its guide on paper, side by side, out and in again. */
public final class ClothsPage {

    private static final int MOST_SIDE_BY_SIDE = 4;

    /**
     * The page with all of them.
     *
     * @param sought what she looks for; empty for all
     * @param all how many there are
     */
    @PageView.Template("cloths.jte")
    public record View(PageFrame frame, List<ClothCard> cards, String sought, int all, ClothBench.History history)
            implements PageView {}

    /** The page with some of them to compare. */
    @PageView.Template("cloths-compare.jte")
    public record SideBySide(PageFrame frame, List<ClothCard> cards) implements PageView {}

    private final PageContext room;

    private ClothsPage(PageContext room) {
        this.room = room;
    }

    public static void add(PageRoutes routes) {
        routes.of(ClothsPage::new)
                .get("/cloths", ClothsPage::show)
                .get("/cloths/compare", ClothsPage::compare)
                .post("/cloths/undo", (page, context) -> page.turn(context, false))
                .post("/cloths/redo", (page, context) -> page.turn(context, true))
                .post("/cloths/{id}/remove", ClothsPage::remove)
                .get("/cloths/{id}/guide.pdf", ClothsPage::guide)
                .get("/cloths/{id}/slips.pdf", ClothsPage::slips)
                .get("/cloths/{id}/plan.json", ClothsPage::planFile)
                .get("/cloths/{id}/front.svg", (page, context) -> page.face(context, Face.FRONT))
                .get("/cloths/{id}/back.svg", (page, context) -> page.face(context, Face.BACK));
    }

    private void show(Context context) {
        List<ClothCard> cards = ClothCard.all(room, room.store().cloths().all());
        String sought = PageContext.text(context, "find");
        room.show(
                context,
                new View(
                        room.frame(context, words().title(), "Made"),
                        cards.stream().filter(card -> card.isCalled(sought)).toList(),
                        sought,
                        cards.size(),
                        new ClothBench.History(
                                book().undoable().orElse(""), book().redoable().orElse(""))));
    }

    private KeepingWords words() {
        return KeepingWords.in(room.language());
    }

    private DesigningWords designing() {
        return DesigningWords.in(room.language());
    }

    private ClothBook book() {
        return room.store().cloths();
    }

    private void turn(Context context, boolean forward) {
        Optional<String> done = forward ? book().redo() : book().undo();
        PageContext.go(
                context,
                "/cloths",
                done.map(label -> forward
                                ? designing().saidRedone(label)
                                : designing().saidUndone(label))
                        .orElseGet(designing()::saidNothing));
    }

    private void compare(Context context) {
        List<ClothCard> cards = context.queryParams("c").stream()
                .distinct()
                .limit(MOST_SIDE_BY_SIDE)
                .flatMap(id -> room.store().cloths().find(id).stream())
                .collect(Collectors.collectingAndThen(Collectors.toList(), some -> ClothCard.all(room, some)));
        if (cards.size() < 2) {
            PageContext.go(context, "/cloths", words().compareFew());
            return;
        }
        room.show(context, new SideBySide(room.frame(context, words().beside(), "Made"), cards));
    }

    private SavedCloth cloth(Context context) {
        return new ClothAsked(room).cloth(context);
    }

    private void remove(Context context) {
        SavedCloth saved = cloth(context);
        StaleChangeException.check(
                room.language(),
                context,
                saved,
                ClothCard.about(saved.document().life(), room.language()));
        room.store().asOneChange(words().labelRemoved(saved.name()), () -> {
            room.store().cloths().remove(saved.id());
            return saved;
        });
        PageContext.go(context, "/cloths", words().removed(saved.name()));
    }

    private PlanFolder drawn(Context context) {
        return drawn(context, language -> List.of());
    }

    /** @param more what is to be known before it is cut, besides what the plan says itself */
    private PlanFolder drawn(Context context, Function<Language, List<String>> more) {
        SavedCloth saved = cloth(context);
        Plan plan = saved.document()
                .plan()
                .orElseThrow(() -> new StoreException(designing().wrongLacking()));
        Settings settings = ClothAsked.settings(room, saved);
        Language language =
                Language.tagged(PageContext.text(context, "language")).orElse(settings.language());
        Paper paper = Optional.ofNullable(context.queryParam("paper"))
                .flatMap(Paper::named)
                .orElse(settings.paper());
        Ruler ruler = settings.ruler();
        return new PlanFolder(
                named(saved.name(), plan, more.apply(language)),
                Voice.of(Spoken.inGuides(language), ruler),
                paper,
                Wished.of(room.store(), saved).wrapped(ruler));
    }

    /** The plan by the name she gave the cloth, with more cautions before its own. */
    private static Plan named(String name, Plan plan, List<String> more) {
        List<Sentence> cautions = new ArrayList<>();
        more.forEach(words -> cautions.add(Sentence.itself(words)));
        cautions.addAll(plan.story().cautions());
        return new Plan(
                new Plan.Story(
                        Sentence.itself(name),
                        plan.story().goodAt(),
                        plan.story().chosen(),
                        cautions),
                plan.cloth(),
                plan.rules(),
                plan.cuts(),
                plan.bound());
    }

    private void guide(Context context) {
        GuideLength length = Optional.ofNullable(context.queryParam("length"))
                .flatMap(GuideLength::named)
                .orElse(GuideLength.FULL);
        String cloth = context.pathParam("id");
        sent(context, "application/pdf", "guide.pdf")
                .result(drawn(context, language -> room.store().atHand().warnings(cloth, language))
                        .guide(length));
    }

    private void slips(Context context) {
        sent(context, "application/pdf", "slips.pdf").result(drawn(context).slips());
    }

    private void planFile(Context context) {
        String text = drawn(context).planFile();
        sent(context, "application/json", "plan.json").result(text);
    }

    private void face(Context context, Face face) {
        String svg = SvgWriter.write(drawn(context).face(face));
        sent(context, "image/svg+xml", face == Face.FRONT ? "front.svg" : "back.svg")
                .result(svg);
    }

    /** A fixed file name: a cloth's own name may hold anything. */
    private static Context sent(Context context, String type, String file) {
        String how = type.equals("application/pdf") ? "inline" : "attachment";
        return context.contentType(type).header("Content-Disposition", how + "; filename=\"hearthcloth-" + file + "\"");
    }
}
