package hearthcloth.web.make;

import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.sew.Guide;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.cloth.ClothAsked;
import hearthcloth.web.house.Threads;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.making.MakingWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Project.Stage;
import hearthcloth.work.deed.Deed;
import hearthcloth.work.deed.SewingSoFar;
import hearthcloth.work.deed.SewnWrongly;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/** Sewing, one step at a time beside the machine: two parts, what to do with them, one number to check. */
public final class SewPage {

    /** The page that shows the ways on after a measure that is not as planned. */
    @PageView.Template("sew-ways.jte")
    public record WaysOn(PageFrame frame, SewWays ways) implements PageView {

        /** What is said on it. */
        public MakingWords words() {
            return MakingWords.in(frame.language());
        }
    }

    /** The page about a bar that lies the other side up. */
    @PageView.Template("sew-side.jte")
    public record OtherSide(PageFrame frame, SewSide side) implements PageView {

        /** What is said on it. */
        public MakingWords words() {
            return MakingWords.in(frame.language());
        }
    }

    private final PageContext room;
    private final ClothAsked asked;

    private SewPage(PageContext room) {
        this.room = room;
        this.asked = new ClothAsked(room);
    }

    public static void add(PageRoutes routes) {
        routes.of(SewPage::new)
                .get("/sew", SewPage::choose)
                .get("/sew/{id}", SewPage::show)
                .post("/sew/{id}/done", SewPage::done)
                .post("/sew/{id}/again", SewPage::again)
                .post("/sew/{id}/measure", SewPage::measure)
                .post("/sew/{id}/choose", SewPage::goOn)
                .post("/sew/{id}/side", SewPage::side)
                .post("/sew/{id}/side/live", SewPage::live);
    }

    private MakingWords words() {
        return MakingWords.in(room.language());
    }

    private void choose(Context context) {
        asked.choose(
                context,
                words().sewWhich(),
                "Sew",
                "/sew/",
                cloth -> cloth.document().life().stage() != Stage.SEWN);
    }

    private List<AtTheMachine> steps(SavedCloth cloth) {
        Voice voice = settings(cloth).stepVoice();
        return AtTheMachine.of(Guide.of(ClothAsked.plan(cloth), voice), voice.sewing());
    }

    private Settings settings(SavedCloth cloth) {
        return ClothAsked.settings(room, cloth);
    }

    private void show(Context context) {
        String known = PageContext.text(context, "known");
        if (!known.isEmpty() && known.equals(String.valueOf(asked.cloth(context).version()))) {
            context.status(204);
            return;
        }
        SewSheet sheet = sheet(context, asked(context).orElse(-1));
        if (PageContext.isPart(context)) {
            room.show(context, new SewSheet.Needle(sheet, room.asker(), true, AskedBack.NOTHING));
        } else {
            room.show(
                    context,
                    new SewSheet.View(
                            room.frame(context, words().sewTitle(sheet.cloth().name()), "Sew"),
                            sheet,
                            AskedBack.NOTHING));
        }
    }

    /** @param wanted the step that is shown; below 0 for the one she has come to */
    private SewSheet sheet(Context context, int wanted) {
        SavedCloth cloth = asked.cloth(context);
        List<AtTheMachine> steps = steps(cloth);
        int done = Math.min(cloth.document().bench().sewn(), steps.size());
        int at = Math.min(wanted < 0 ? done : wanted, steps.size() - 1);
        AtTheMachine step = steps.get(at);
        Voice voice = settings(cloth).stepVoice();
        PlanFolder drawn =
                new PlanFolder(ClothAsked.plan(cloth), voice, settings(cloth).paper(), Optional.empty());
        List<AtTheMachine> left = steps.subList(done, steps.size());
        return new SewSheet(
                cloth,
                new SewSheet.Place(at, steps.size(), done),
                step,
                new SewSheet.Pictures(
                        SvgWriter.writeOnPage(drawn.step(step), "desk"),
                        SvgWriter.writeOnPage(drawn.stepInHand(step), "hand"),
                        SewnSoFar.drawn(cloth, steps, at, words())),
                new SewSheet.Told(
                        step.task()
                                .check()
                                .map(check -> settings(cloth).voice().write(check.size(), Rounding.NEAREST))
                                .orElse(""),
                        thread(cloth, step),
                        OwnPace.of(room.store()).sentence(left, words()),
                        SewingSoFar.bar(step).orElse(""),
                        step.thick(),
                        voice.language().tag()));
    }

    /** What the whole cloth takes, on the first step; on a seam which thread shows least and most there. */
    private String thread(SavedCloth cloth, AtTheMachine step) {
        Threads threads = Threads.of(room.store());
        return step.kind() == AtTheMachine.Kind.LAY
                ? threads.sentence(ClothAsked.plan(cloth), settings(cloth).voice())
                : step.seam()
                        .map(seam -> threads.sentence(
                                ClothAsked.plan(cloth), seam, settings(cloth).voice()))
                        .orElse("");
    }

    /** The step that is asked for; without one, the one she has come to. */
    private static java.util.OptionalInt asked(Context context) {
        String step = PageContext.text(context, "step");
        return step.matches("\\d{1,4}")
                ? java.util.OptionalInt.of(Integer.parseInt(step))
                : java.util.OptionalInt.empty();
    }

    /** Pressed twice, or on two devices, a step is done once. */
    private void done(Context context) {
        SavedCloth cloth = cut(context);
        int step = number(context, words());
        List<AtTheMachine> steps = steps(cloth);
        Optional<Deed> done =
                new SewingSoFar(cloth.document(), steps).done(step, room.store().now());
        if (done.isPresent()) {
            room.store().book(cloth, done.get(), room.settings().voice());
            if (step + 1 == steps.size()) {
                PageContext.go(context, "/made/" + cloth.id(), "");
                return;
            }
        }
        answer(context, cloth);
    }

    /** Unpicked, or pressed by mistake: this step and those after it are to do again. */
    private void again(Context context) {
        SavedCloth cloth = asked.cloth(context);
        int step = number(context, words());
        new SewingSoFar(cloth.document(), steps(cloth))
                .unpicked(step)
                .ifPresent(
                        deed -> room.store().book(cloth, deed, room.settings().voice()));
        answer(context, cloth);
    }

    /** Sewing begins when all is cut; else what is planned could still be changed under the needle. */
    private SavedCloth cut(Context context) {
        SavedCloth cloth = asked.cloth(context);
        if (cloth.document().life().stage().isToCut()) {
            throw new StoreException(words().sewNotCut());
        }
        return cloth;
    }

    /** What a step really measures: as planned, and she sews on; else the ways on are shown. */
    private void measure(Context context) {
        try {
            measured(context);
        } catch (MeasureException e) {
            // Asked back where she wrote it, so that nothing has to be typed again.
            boolean bar = isOfBar(context);
            SewSheet sheet = sheet(context, number(context, words()));
            if (bar ? !sheet.isBarAsked() : !sheet.isMeasured()) {
                throw e;
            }
            AskedBack asked = AskedBack.about(
                    bar ? "bar" : "work",
                    context,
                    bar ? List.of("bar") : List.of("width", "height"),
                    e,
                    room.settings().voice());
            context.status(422);
            room.show(context, new SewSheet.View(room.frame(context, asked.title(), "Sew"), sheet, asked));
        }
    }

    private void measured(Context context) {
        SavedCloth cloth = cut(context);
        if (isOfBar(context)) {
            room.show(
                    context,
                    new WaysOn(
                            room.frame(context, words().amissBarPage(), "Sew"),
                            new SewBar(room, cloth, steps(cloth), context).ways()));
            return;
        }
        SewMeasure measure = new SewMeasure(room, cloth, steps(cloth), context);
        if (measure.isAsPlanned()) {
            room.store().book(cloth, measure.noted(), room.settings().voice());
            PageContext.go(context, "/sew/" + cloth.id(), words().sewAsPlanned());
        } else {
            room.show(context, new WaysOn(room.frame(context, words().measuredTitle(), "Sew"), measure.ways()));
        }
    }

    private void goOn(Context context) {
        SavedCloth cloth = cut(context);
        String way = PageContext.field(context, "way");
        String to = isOfBar(context)
                ? new SewBar(room, cloth, steps(cloth), context).choose(way)
                : new SewMeasure(room, cloth, steps(cloth), context).choose(way);
        PageContext.go(context, to, to.startsWith("/cut/") ? words().sewPlannedCut() : words().sewPlanned());
    }

    private static boolean isOfBar(Context context) {
        return !PageContext.field(context, "bar").isEmpty();
    }

    private Optional<SewSide> wrong(Context context, SavedCloth cloth) {
        SewnWrongly.Wrong wrong = SewnWrongly.Wrong.named(PageContext.field(context, "wrong"));
        return SewSide.of(cloth, steps(cloth), number(context, words()), wrong, words());
    }

    private void side(Context context) {
        SavedCloth cloth = cut(context);
        wrong(context, cloth)
                .ifPresentOrElse(
                        side -> room.show(context, new OtherSide(room.frame(context, words().sidePage(), "Sew"), side)),
                        () -> PageContext.go(context, "/sew/" + cloth.id(), words().sideAlike()));
    }

    private void live(Context context) {
        SavedCloth cloth = cut(context);
        SewSide side = wrong(context, cloth).orElseThrow(() -> new MeasureException(words().sideAlike()));
        Deed left = side.left().orElseThrow(() -> new MeasureException(words().sideNoFit()));
        room.store().book(cloth, left, room.settings().voice());
        PageContext.go(context, "/sew/" + cloth.id(), words().sideLeft());
    }

    static int number(Context context, MakingWords words) {
        String step = PageContext.field(context, "step");
        if (!step.matches("\\d{1,4}")) {
            throw new MeasureException(words.sewNoStep());
        }
        return Integer.parseInt(step);
    }

    private void answer(Context context, SavedCloth cloth) {
        if (PageContext.isPart(context)) {
            show(context);
        } else {
            PageContext.go(context, "/sew/" + cloth.id(), "");
        }
    }
}
