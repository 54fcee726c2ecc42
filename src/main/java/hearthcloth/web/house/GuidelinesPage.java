package hearthcloth.web.house;

import hearthcloth.cloth.making.Face;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.plan.rework.GuidelineFit;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.store.Person;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.store.studio.GuidelineBook;
import hearthcloth.web.cloth.DesignPlanning;
import hearthcloth.web.cloth.NewCloth;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Swatches;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.work.Project;
import hearthcloth.work.Purpose;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Cloths that teachers hand to everybody as guidelines; each follows them with her own stash. */
public final class GuidelinesPage {

    private static final long ANSWER_WITHIN_MS = 1_500;

    /** A cloth handed out, as it is shown. */
    public record Card(String id, String name, String teacher, String size, String picture) {}

    /**
     * The page.
     *
     * @param isTeacher true where she may hand cloths out
     * @param own her cloths, to hand out; none where she is no teacher
     */
    @PageView.Template("guidelines.jte")
    public record View(PageFrame frame, List<Card> cards, boolean isTeacher, List<SavedCloth> own)
            implements PageView {}

    private final PageContext room;
    private final StudioDesk desk;

    private GuidelinesPage(PageContext room, StudioDesk desk) {
        this.room = room;
        this.desk = desk;
    }

    public static void add(PageRoutes routes, StudioDesk desk) {
        routes.of(room -> new GuidelinesPage(room, desk))
                .get("/guidelines", GuidelinesPage::show)
                .post("/guidelines", GuidelinesPage::hand)
                .post("/guidelines/{id}/follow", GuidelinesPage::follow)
                .post("/guidelines/{id}/away", GuidelinesPage::away);
    }

    private GuidelineBook book() {
        return desk.studio().guidelines();
    }

    /** Who came in; the desk shows this page to nobody else. */
    private Person here() {
        return room.visitor().person().orElseThrow(() -> new StoreException("Come in by name and passphrase first."));
    }

    private void show(Context context) {
        boolean teacher = here().isTeacher();
        List<SavedCloth> own = teacher ? room.store().cloths().all() : List.of();
        room.show(
                context,
                new View(
                        room.frame(context, "Guidelines", ""),
                        book().all().stream().map(this::card).toList(),
                        teacher,
                        own));
    }

    private Card card(GuidelineBook.Handed handed) {
        Ruler ruler = room.settings().ruler();
        var cloth = DesignFit.unfitted(handed.design());
        Set<Fabric> fabrics = new LinkedHashSet<>(handed.design().scheme().hearth());
        handed.design().scheme().bars().forEach(fabrics::addAll);
        String size = ruler.write(cloth.finished(), Rounding.NEAREST);
        return new Card(
                handed.id(),
                handed.name(),
                handed.teacher(),
                size,
                ClothDrawing.still(
                        cloth, Face.FRONT, new Swatches(List.copyOf(fabrics), Map.of()), handed.name() + ", " + size));
    }

    private void hand(Context context) {
        SavedCloth cloth = room.store()
                .cloths()
                .find(PageContext.field(context, "cloth"))
                .orElseThrow(() -> new NotFoundResponse("There is no such cloth; it may have been removed."));
        if (cloth.document().isFree()) {
            throw new MeasureException(
                    "a cloth of scraps is its own heap's: only a cloth with a hearth and bars can be handed on");
        }
        book().hand(here(), cloth.name(), cloth.document().design());
        PageContext.go(context, "/guidelines", cloth.name() + " is handed to everybody.");
    }

    private void follow(Context context) {
        GuidelineBook.Handed handed = book().find(context.pathParam("id"))
                .orElseThrow(() -> new NotFoundResponse("This guideline has been withdrawn."));
        Stash stash = room.store().atHand().free(Set.of());
        if (stash.pieces().isEmpty()) {
            throw new StoreException("Your stash is empty; lay in what you have first.");
        }
        GuidelineFit.Followed followed = new GuidelineFit(handed.design())
                .followed(stash, room.settings().ruler(), handed.name(), TimeLimit.within(ANSWER_WITHIN_MS));
        String id = NewCloth.id(false);
        room.store().cloths().keep(id, handed.name() + " after " + handed.teacher(), document(followed));
        PageContext.go(
                context,
                "/cloth/" + id,
                followed.answer() instanceof DesignFit.Answer.Made
                        ? "It fits your stash. It is yours now: change what you like."
                        : "You don't have enough fabric for it; the page says what is short.");
    }

    private static Project document(GuidelineFit.Followed followed) {
        if (followed.answer() instanceof DesignFit.Answer.Made made) {
            return Project.of(DesignPlanning.bound(followed.design(), made.plan()), made.plan(), Purpose.NOTHING);
        }
        return new Project(
                followed.design(),
                Optional.empty(),
                ((DesignFit.Answer.Lacking) followed.answer()).why(),
                Project.Bench.CLEAR,
                Project.Life.begun(Purpose.NOTHING));
    }

    private void away(Context context) {
        book().away(here(), context.pathParam("id"));
        PageContext.go(context, "/guidelines", "Withdrawn. Cloths made after it stay with those who made them.");
    }
}
