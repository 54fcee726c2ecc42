package hearthcloth.web.home;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Half;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Step;
import hearthcloth.measure.Length;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.stash.Stash;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.cloth.ClothCard;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Swatches;
import hearthcloth.web.kit.Ways;
import hearthcloth.words.framing.FramingWords;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Stage;
import hearthcloth.work.StashAtHand;
import io.javalin.http.Context;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The table: her heap with the question, what is in the making, what is made; an empty one plays how it goes. */
public final class HomePage {

    /** In the making as cards, and of what is made as pictures; the rest is a list. */
    private static final int CARDS = 2;

    private static final int PICTURES = 4;

    /**
     * A cloth that is not finished.
     *
     * @param how far it has come; {@code go} what is done next and {@code href} where
     * @param front what is sewn solid, the rest pale, as SVG
     */
    public record Begun(String name, String how, String go, String href, String front) {}

    /** The table. */
    @PageView.Template("home.jte")
    public record View(PageFrame frame, String heap, int pieces, Making making) implements PageView {}

    /**
     * Cloths under way and done.
     *
     * @param more under way besides those that stand as cards
     */
    public record Making(List<Begun> begun, List<Begun> more, List<ClothCard> made, int all) {}

    /**
     * The first time.
     *
     * @param isPlaying true where she asked to see it, false where she stopped it
     */
    @PageView.Template("first-run.jte")
    public record First(PageFrame frame, String film, Optional<Boolean> isPlaying) implements PageView {

        public Ways ways() {
            return new Ways(frame.language(), frame.token(), false, true);
        }
    }

    private final PageContext room;
    private final FramingWords words;

    private HomePage(PageContext room) {
        this.room = room;
        this.words = FramingWords.in(room.language());
    }

    public static void add(PageRoutes routes) {
        routes.of(HomePage::new)
                .get("/", HomePage::show)
                .get(
                        "/first-run.svg",
                        (page, context) -> context.contentType("image/svg+xml").result(FirstRun.tied()));
    }

    private void show(Context context) {
        StashAtHand heap = room.store().atHand();
        Stash stash = heap.stash();
        List<SavedCloth> cloths = room.store().cloths().all();
        if (stash.pieces().isEmpty() && cloths.isEmpty()) {
            first(context);
            return;
        }
        Map<String, Length> across = room.store().swatches().across();
        List<SavedCloth> open = cloths.stream()
                .filter(cloth -> cloth.document().life().stage() != Stage.SEWN)
                .toList();
        List<SavedCloth> done = cloths.stream()
                .filter(cloth -> cloth.document().life().stage() == Stage.SEWN)
                .toList();
        List<Begun> begun =
                open.stream().map(cloth -> begun(cloth, across, heap)).toList();
        room.show(
                context,
                new View(
                        room.frame(context, words.homeTitle(), ""),
                        ScrapHeap.of(stash.pieces(), new Swatches(stash.fabrics(), across)),
                        stash.pieces().size(),
                        new Making(
                                begun.subList(0, Math.min(CARDS, begun.size())),
                                begun.subList(Math.min(CARDS, begun.size()), begun.size()),
                                ClothCard.all(room, done.subList(0, Math.min(PICTURES, done.size()))),
                                cloths.size())));
    }

    private void first(Context context) {
        String play = PageContext.text(context, "play");
        room.show(
                context,
                new First(
                        room.frame(context, words.homeEmpty(), ""),
                        FirstRun.film(),
                        play.isEmpty() ? Optional.empty() : Optional.of(play.equals("yes"))));
    }

    /** What is done next with a cloth: how far it has come, in words, and where it goes on. */
    private record Next(String how, String go, String href) {}

    private Begun begun(SavedCloth saved, Map<String, Length> across, StashAtHand heap) {
        Optional<Plan> plan = saved.document().plan();
        Next next = plan.map(made -> next(saved, made, heap))
                .orElseGet(() -> new Next(words.begunLacks(), words.begunLook(), "/cloth/" + saved.id()));
        String front = plan.map(made -> front(saved.document(), made, across)).orElse("");
        return new Begun(saved.name(), next.how, next.go, next.href, front);
    }

    private static String front(Project document, Plan plan, Map<String, Length> across) {
        Cloth cloth = plan.cloth();
        Set<Place> on = isCut(document) ? on(cloth.steps(), sewn(document, cloth.steps())) : places(cloth);
        return ClothDrawing.sewn(cloth, new Swatches(plan.fabrics(), across), on);
    }

    private static boolean isCut(Project document) {
        return document.life().stage() == Stage.CUT || document.bench().sewn() > 0;
    }

    /** How many of the seams are sewn. */
    private static int sewn(Project document, List<Step> steps) {
        return AtTheMachine.seams(document.bench().sewn(), steps.size());
    }

    private Next next(SavedCloth saved, Plan plan, StashAtHand heap) {
        Project document = saved.document();
        if (!heap.canBeCut(saved.id())) {
            String amiss = heap.warnings(saved.id(), room.language()).get(0);
            return new Next(amiss, words.begunLook(), "/cloth/" + saved.id());
        }
        if (document.life().stage() == Stage.RECUT) {
            List<Step> steps = plan.cloth().steps();
            String said = words.begunRecut(String.valueOf(steps.size()), String.valueOf(sewn(document, steps)));
            return new Next(said, words.begunGoCutting(), "/cut/" + saved.id());
        }
        return isCut(document) ? toSew(saved, plan.cloth().steps()) : toCut(saved, plan);
    }

    private Next toSew(SavedCloth saved, List<Step> steps) {
        int sewn = sewn(saved.document(), steps);
        String of = String.valueOf(steps.size());
        String done = String.valueOf(sewn);
        String what = what(saved);
        return new Next(
                what.isEmpty() ? words.begunSewn(of, done) : words.begunSewnFor(what, of, done),
                sewn < steps.size() ? words.begunGoSewingNext(name(steps.get(sewn))) : words.begunGoSewing(),
                "/sew/" + saved.id());
    }

    private Next toCut(SavedCloth saved, Plan plan) {
        int past = plan.cuts().stream()
                .filter(PieceCut::past)
                .mapToInt(piece -> piece.tree().cuts().size())
                .sum();
        int cut = saved.document().bench().ticked().size() + past;
        if (cut > 0) {
            return new Next(words.begunCuts(cut), words.begunGoCutting(), "/cut/" + saved.id());
        }
        String what = what(saved);
        return new Next(
                what.isEmpty() ? words.begunPlanned() : words.begunPlannedFor(what),
                words.begunGoOn(),
                "/cloth/" + saved.id());
    }

    /** What it is to wrap; empty where she said nothing. */
    private String what(SavedCloth saved) {
        return Wished.of(room.store(), saved).words(room.settings().voice());
    }

    /** What a step sews on: its bar, or its patch. */
    private static String name(Step step) {
        return step.joinedBar()
                .orElseGet(() ->
                        ClothDrawing.name(step.patches(step.added()).get(0).place()));
    }

    /** The places that are sewn together after so many steps. */
    private static Set<Place> on(List<Step> steps, int sewn) {
        Set<Place> on = new HashSet<>();
        for (Step step : steps.subList(0, Math.min(sewn, steps.size()))) {
            for (Half half : Half.values()) {
                step.patches(half).forEach(patch -> on.add(patch.place()));
            }
        }
        return on;
    }

    private static Set<Place> places(Cloth cloth) {
        Set<Place> all = new HashSet<>();
        cloth.patches().forEach(patch -> all.add(patch.place()));
        return all;
    }
}
