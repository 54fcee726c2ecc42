package hearthcloth.web;

import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Size;
import hearthcloth.plan.AfterSlip;
import hearthcloth.plan.Plan;
import hearthcloth.plan.Settling;
import hearthcloth.sew.Guide;
import hearthcloth.sew.PieceTask;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.store.ClothDocument;
import hearthcloth.store.ClothDocument.Stage;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.StashEdit;
import hearthcloth.store.StoreException;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Cutting, one piece of fabric at a time: the picture as it lies on the mat, the cuts in order, ticks that stay. */
public final class CutPage {

    /** A cut with its tick. */
    public record Line(int number, String measure, String sentence, boolean ticked) {}

    /**
     * One piece on the page.
     *
     * @param at which of the pieces, from 0
     * @param of how many there are
     * @param done how many are wholly cut
     */
    public record Sheet(
            SavedCloth cloth,
            int at,
            int of,
            int done,
            PieceTask task,
            String picture,
            List<Line> lines,
            List<String> cautions,
            boolean cut) {

        /** What the piece gives and leaves, for those who read rather than look. */
        public String gives() {
            return String.join(", ", task.gives());
        }
    }

    private final Room room;

    CutPage(Room room) {
        this.room = room;
    }

    void add(RoutesConfig routes) {
        routes.get("/cut", this::choose);
        routes.get("/cut/{id}", this::show);
        routes.post("/cut/{id}/tick", this::tick);
        routes.post("/cut/{id}/wrong", this::wrong);
        routes.post("/cut/{id}/done", this::done);
    }

    private void choose(Context context) {
        List<SavedCloth> cloths = room.store().cloths().all().stream()
                .filter(cloth -> cloth.document().plan().isPresent())
                .toList();
        if (cloths.size() == 1) {
            context.redirect("/cut/" + cloths.get(0).id());
            return;
        }
        room.show(
                context,
                "cut-choose.jte",
                Map.of("frame", room.frame(context, "Which cloth will you cut?", "Cut"), "cloths", cloths));
    }

    private SavedCloth cloth(Context context) {
        return room.store()
                .cloths()
                .find(context.pathParam("id"))
                .orElseThrow(() -> new NotFoundResponse("There is no such cloth; it may have been removed."));
    }

    private static Plan plan(SavedCloth cloth) {
        return cloth.document()
                .plan()
                .orElseThrow(() -> new StoreException("The stash does not suffice for this cloth; change it first."));
    }

    private void show(Context context) {
        Sheet sheet = sheet(context);
        Map<String, Object> values = Map.of(
                "frame", room.frame(context, "Cut " + sheet.cloth().name(), "Cut"),
                "sheet", sheet,
                "token", room.token());
        room.show(context, Room.isPart(context) ? "part/mat.jte" : "cut.jte", values);
    }

    private Sheet sheet(Context context) {
        SavedCloth cloth = cloth(context);
        Plan plan = plan(cloth);
        Guide guide = Guide.of(plan, room.settings().ruler());
        List<PieceTask> tasks = guide.cutting();
        Set<String> ticked = cloth.document().bench().ticked();
        int done = (int) tasks.stream().filter(task -> isCut(task, ticked)).count();
        String asked = context.queryParam("piece") == null ? Room.field(context, "piece") : Room.text(context, "piece");
        int at = asked.matches("\\d{1,4}") ? Math.min(Integer.parseInt(asked), tasks.size() - 1) : first(tasks, ticked);
        PieceTask task = tasks.get(at);
        PlanFolder drawn =
                new PlanFolder(plan, room.settings().ruler(), room.settings().paper());
        List<Line> lines = task.lines().stream()
                .map(line -> new Line(
                        line.number(),
                        room.settings().ruler().write(line.measure(), hearthcloth.measure.Rounding.NEAREST),
                        line.sentence(),
                        ticked.contains(key(task, line.number()))))
                .toList();
        return new Sheet(
                cloth,
                at,
                tasks.size(),
                done,
                task,
                SvgWriter.writeBare(drawn.piece(task)),
                lines,
                guide.notes().cautions().stream()
                        .map(caution -> caution.topic() + ": " + caution.words())
                        .toList(),
                cloth.document().life().stage() != Stage.DESIGNED);
    }

    private static int first(List<PieceTask> tasks, Set<String> ticked) {
        for (int i = 0; i < tasks.size(); i++) {
            if (!isCut(tasks.get(i), ticked)) {
                return i;
            }
        }
        return tasks.size() - 1;
    }

    private static String key(PieceTask task, int number) {
        return task.cut().piece().id() + ":" + number;
    }

    private static boolean isCut(PieceTask task, Set<String> ticked) {
        return task.lines().stream().allMatch(line -> ticked.contains(key(task, line.number())));
    }

    private void tick(Context context) {
        SavedCloth cloth = designed(context);
        String key = Room.field(context, "cut");
        if (!key.matches("[\\w.-]{1,60}:\\d{1,3}")) {
            throw new MeasureException("there is no such cut");
        }
        Set<String> ticked = new HashSet<>(cloth.document().bench().ticked());
        if (!ticked.add(key)) {
            ticked.remove(key);
        }
        room.store()
                .cloths()
                .save(
                        cloth,
                        "tick of a cut",
                        cloth.document()
                                .with(new ClothDocument.Bench(
                                        cloth.document().bench().locked(), ticked)));
        answer(context);
    }

    private void answer(Context context) {
        if (Room.isPart(context)) {
            show(context);
        } else {
            String piece = Room.field(context, "piece");
            Room.go(
                    context,
                    "/cut/" + context.pathParam("id") + (piece.matches("\\d{1,4}") ? "?piece=" + piece : ""),
                    "");
        }
    }

    private SavedCloth designed(Context context) {
        SavedCloth cloth = cloth(context);
        if (cloth.document().life().stage() != Stage.DESIGNED) {
            throw new StoreException("This cloth is cut already.");
        }
        return cloth;
    }

    /** A slip: the stash is put right as it now lies on the table, and the cloth is planned again from it. */
    private void wrong(Context context) {
        SavedCloth cloth = designed(context);
        Plan plan = plan(cloth);
        String wrong = Room.field(context, "id");
        Optional<Size> real = Room.field(context, "width").isEmpty()
                        && Room.field(context, "length").isEmpty()
                ? Optional.empty()
                : Optional.of(new Size(
                        Measures.length(
                                Room.field(context, "width"), room.settings().bare()),
                        Measures.length(
                                Room.field(context, "length"), room.settings().bare())));
        Piece piece = plan.cuts().stream()
                .map(cut -> cut.piece())
                .filter(each -> each.id().equals(wrong))
                .findFirst()
                .orElseThrow(() -> new StoreException("This piece is not in the plan any more; load the page again."));
        if (real.isPresent() && !holds(piece.size(), real.get())) {
            throw new MeasureException("what is left cannot be larger than the piece was; check both sides");
        }
        Set<String> cut = Guide.of(plan, room.settings().ruler()).cutting().stream()
                .filter(task -> !task.lines().isEmpty()
                        && isCut(task, cloth.document().bench().ticked()))
                .map(task -> task.cut().piece().id())
                .collect(Collectors.toSet());
        AfterSlip slip =
                AfterSlip.of(plan, cut, wrong, real, room.store().stash().nextPiece());
        room.store().stash().edit(new StashEdit("a slip in piece " + wrong, slip.gone(), slip.come()));
        settle(context, cloth, plan);
    }

    private static boolean holds(Size was, Size real) {
        return real.width().isPositive() && real.height().isPositive() && (was.holds(real) || was.holds(real.turned()));
    }

    private void settle(Context context, SavedCloth cloth, Plan before) {
        Stash stash = room.store().stash().whole();
        ClothDocument was = cloth.document();
        ClothDocument.Bench bench = new ClothDocument.Bench(was.bench().locked(), Set.of());
        Settling.Answer answer =
                new Settling(stash, room.settings().ruler()).fit(was.design(), cloth.name(), ClothPage.within(1_500));
        if (answer instanceof Settling.Answer.Made made) {
            room.store()
                    .cloths()
                    .save(
                            cloth,
                            "planned again after a slip",
                            new ClothDocument(was.design(), Optional.of(made.plan()), List.of(), bench, was.life()));
            int joins = made.plan().figures().joins() - before.figures().joins();
            Room.go(
                    context,
                    "/cut/" + cloth.id(),
                    "Planned again from what is left; what you have cut is used as it is. "
                            + (joins > 0 ? "It takes " + joins + " more joins." : "It takes no more joins."));
        } else {
            List<String> why = ((Settling.Answer.Lacking) answer).why();
            room.store()
                    .cloths()
                    .save(
                            cloth,
                            "planned again after a slip",
                            new ClothDocument(was.design(), Optional.empty(), why, bench, was.life()));
            Room.go(
                    context,
                    "/cloth/" + cloth.id(),
                    "What is left does not suffice as it is. Change a bar or a width.");
        }
    }

    /** All is cut: the pieces are used up, the offcuts come back into the stash. */
    private void done(Context context) {
        SavedCloth cloth = designed(context);
        Plan plan = plan(cloth);
        int offcuts = room.store().stash().cut("cut " + cloth.name(), plan).size();
        ClothDocument.Life life = cloth.document().life();
        room.store()
                .cloths()
                .save(
                        cloth,
                        "cut",
                        cloth.document()
                                .with(new ClothDocument.Life(
                                        Stage.CUT, life.made(), life.wrapped(), life.keeper(), life.uses())));
        Room.go(
                context,
                "/cloths",
                "Cut. " + offcuts + (offcuts == 1 ? " offcut is" : " offcuts are") + " back in the stash.");
    }
}
