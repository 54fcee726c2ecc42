package hearthcloth.web.cloth;

import hearthcloth.cloth.making.Face;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.StaleChangeException;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.Language;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.design.NearestDesigns;
import hearthcloth.work.design.NearestDesigns.Kind;
import hearthcloth.work.design.NearestDesigns.Near;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The nearest cloths that can be, beside one on the bench for which the fabric does not suffice; each ready to take. */
public final class NearestPage {

    /** Counted in steps and not timed, so that what was shown is found again when she takes it. */
    private static final long STEPS = 60_000;

    /**
     * One of them.
     *
     * @param key what the form says of it
     * @param words what it is made of, and what it ties
     */
    public record Way(String key, String title, String size, List<String> words, String picture) {}

    /** All of them, with the forms to take one; on the bench, or alone on a page. */
    @PageView.Template("part/nearest.jte")
    public record Ways(Language language, SavedCloth cloth, List<Way> ways, String token) implements PageView {}

    /** The page. */
    @PageView.Template("nearest.jte")
    public record View(PageFrame frame, Ways ways) implements PageView {}

    private final PageContext room;

    private NearestPage(PageContext room) {
        this.room = room;
    }

    public static void add(PageRoutes routes) {
        routes.of(NearestPage::new)
                .get("/cloth/{id}/nearest", NearestPage::show)
                .post("/cloth/{id}/nearest", NearestPage::take);
    }

    private DesigningWords words() {
        return DesigningWords.in(room.language());
    }

    /** The cloth, where it lacks something; else it is shown as it is. */
    private Optional<SavedCloth> lacking(Context context) {
        SavedCloth saved = new ClothAsked(room).cloth(context);
        if (saved.document().plan().isPresent()) {
            PageContext.go(context, "/cloth/" + saved.id(), "");
            return Optional.empty();
        }
        return Optional.of(saved);
    }

    private void show(Context context) {
        lacking(context).ifPresent(saved -> {
            Ways ways = new Ways(room.language(), saved, ways(saved), room.token());
            room.show(
                    context,
                    PageContext.isPart(context)
                            ? ways
                            : new View(room.frame(context, words().nearTitle(), "Cloth"), ways));
        });
    }

    private List<Way> ways(SavedCloth saved) {
        Voice voice = ClothAsked.settings(room, saved).voice();
        return nearest(saved).found(() -> Budget.steps(STEPS)).stream()
                .map(near -> way(saved, near, voice))
                .toList();
    }

    private NearestDesigns nearest(SavedCloth saved) {
        return new NearestDesigns(saved.document(), saved.name(), new CutPatches(room, saved).stash());
    }

    private Way way(SavedCloth saved, Near near, Voice voice) {
        Plan plan = near.plan();
        String size = voice.write(plan.cloth().finished(), Rounding.NEAREST);
        List<String> words = new ArrayList<>();
        words.add(words().nearOf(plan.fabrics().stream().map(Fabric::name).collect(Collectors.joining(", "))));
        String fits = Wished.of(room.store(), saved).fits(plan.cloth().finished(), voice);
        if (!fits.isEmpty()) {
            words.add(fits);
        }
        Swatches swatches = new Swatches(plan.fabrics(), room.store().swatches().across());
        String title = words().nearKind(near.kind().name());
        return new Way(
                near.kind().name(),
                title,
                size,
                words,
                ClothDrawing.still(plan.cloth(), Face.FRONT, swatches, title + ", " + size));
    }

    private void take(Context context) {
        Optional<SavedCloth> lacking = lacking(context);
        if (lacking.isEmpty()) {
            return;
        }
        SavedCloth saved = lacking.get();
        StaleChangeException.check(room.language(), context, saved, "");
        String asked = PageContext.field(context, "way");
        NearestDesigns nearest = nearest(saved);
        Near near = Arrays.stream(Kind.values())
                .filter(kind -> kind.name().equals(asked))
                .findFirst()
                .flatMap(kind -> nearest.of(kind, Budget.steps(STEPS)))
                .orElseThrow(() -> new MeasureException(words().nearGone()));
        String label = words().nearKind(near.kind().name());
        new CutPatches(room, saved).save(label, nearest.taken(near));
        PageContext.go(context, "/cloth/" + saved.id(), words().nearTaken(label));
    }
}
