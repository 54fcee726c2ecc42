package hearthcloth.web.house;

import hearthcloth.cloth.making.Face;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.store.Person;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.store.studio.GuidelineBook;
import hearthcloth.web.cloth.NewCloth;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Swatches;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.words.framing.FramingWords;
import hearthcloth.words.handing.HandingWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Project;
import hearthcloth.work.design.GuidelineFollowed;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
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
    public record View(PageFrame frame, List<Card> cards, boolean isTeacher, List<SavedCloth> own) implements PageView {

        /** What is said on it. */
        public HandingWords words() {
            return HandingWords.in(frame.language());
        }
    }

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

    private HandingWords words() {
        return HandingWords.in(room.language());
    }

    private GuidelineBook book() {
        return desk.studio().guidelines();
    }

    /** Who came in; the desk shows this page to nobody else. */
    private Person here() {
        return room.visitor()
                .person()
                .orElseThrow(() ->
                        new StoreException(FramingWords.in(room.language()).troubleComeIn()));
    }

    private void show(Context context) {
        boolean teacher = here().isTeacher();
        List<SavedCloth> own = teacher ? room.store().cloths().all() : List.of();
        room.show(
                context,
                new View(
                        room.frame(context, words().classTitle(), ""),
                        book().all().stream().map(this::card).toList(),
                        teacher,
                        own));
    }

    private Card card(GuidelineBook.Handed handed) {
        Voice voice = room.settings().voice();
        var cloth = DesignFit.unfitted(handed.design());
        Set<Fabric> fabrics = new LinkedHashSet<>(handed.design().scheme().hearth());
        handed.design().scheme().bars().forEach(fabrics::addAll);
        String size = voice.write(cloth.finished(), Rounding.NEAREST);
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
                .orElseThrow(() -> new NotFoundResponse(words().noCloth()));
        if (cloth.document().isFree()) {
            throw new MeasureException(words().scraps());
        }
        book().hand(here(), cloth.name(), cloth.document().design());
        PageContext.go(context, "/guidelines", words().classHanded(cloth.name()));
    }

    private void follow(Context context) {
        GuidelineBook.Handed handed =
                book().find(context.pathParam("id")).orElseThrow(() -> new NotFoundResponse(words().classWithdrawn()));
        Stash stash = room.store().atHand().free(Set.of());
        if (stash.pieces().isEmpty()) {
            throw new StoreException(words().empty());
        }
        String paper = room.settings().paper().word();
        Project followed = new GuidelineFollowed(handed.design(), handed.name(), paper)
                .from(stash, TimeLimit.within(ANSWER_WITHIN_MS));
        String id = NewCloth.id(false);
        room.store().cloths().keep(id, words().classAfter(handed.name(), handed.teacher()), followed);
        PageContext.go(
                context, "/cloth/" + id, followed.plan().isPresent() ? words().classFits() : words().classLacks());
    }

    private void away(Context context) {
        book().away(here(), context.pathParam("id"));
        PageContext.go(context, "/guidelines", words().classIsAway());
    }
}
