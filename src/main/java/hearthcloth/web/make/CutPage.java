package hearthcloth.web.make;

import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.Guide;
import hearthcloth.sew.PieceTask;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.json.ClothDocument;
import hearthcloth.store.json.ClothDocument.Stage;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.cloth.ClothAsked;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Settings;
import hearthcloth.web.kit.StaleChangeException;
import io.javalin.http.Context;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Cutting, one piece of fabric at a time: the picture as it lies on the mat, the cuts in order, ticks that stay. */
public final class CutPage {

    /** A cut with its tick. */
    public record Line(int number, String measure, String sentence, boolean ticked) {}

    /**
     * One piece on the page.
     *
     * @param at which of the pieces, from 0
     * @param of how many there are
     * @param done how many are wholly cut, or used as they are
     * @param picture for a desk or tablet
     * @param inHand the same drawn for a telephone
     */
    public record Sheet(
            SavedCloth cloth,
            int at,
            int of,
            int done,
            PieceTask task,
            String picture,
            String inHand,
            List<Line> lines,
            List<String> cautions,
            boolean cut) {

        /** Whether its cuts can be ticked: before all is cut, and later those that planning again has asked for. */
        public boolean isTickable() {
            return !cut || isAskedLater(cloth, task.cut());
        }

        /** How far cutting has come; a piece that is used as it is counts as done, to be shown and spoken. */
        public String progress() {
            return "Piece " + (at + 1) + " of " + of + "; " + done + " done.";
        }

        /** What the piece gives and leaves, for those who read rather than look. */
        public String gives() {
            return String.join(", ", task.gives());
        }
    }

    /**
     * One piece on the page, with its forms.
     *
     * @param isAnswer true where it takes the place of the one on the page, so that progress is spoken
     */
    @PageView.Template("part/mat.jte")
    public record Mat(Sheet sheet, String token, boolean isAnswer) implements PageView {}

    /** The page. */
    @PageView.Template("cut.jte")
    public record View(PageFrame frame, Sheet sheet) implements PageView {

        public Mat mat() {
            return new Mat(sheet, frame.token(), false);
        }
    }

    /**
     * One way on after a patch came out too small.
     *
     * @param key what the form says of it
     * @param size of the cloth then
     * @param words what is done, from which piece, and what else changes
     * @param picture the cloth then
     */
    public record Way(String key, String title, String size, List<String> words, String picture) {}

    /** The piece whose cut went wrong, and what she measured, as she wrote it. */
    public record Gone(String piece, String width, String length) {}

    /**
     * The ways on, to choose one.
     *
     * @param told how short the patch is, in a sentence
     */
    @PageView.Template("cut-ways.jte")
    public record WaysOn(PageFrame frame, SavedCloth cloth, String told, Gone gone, List<Way> ways)
            implements PageView {}

    private final PageContext room;
    private final ClothAsked asked;

    private CutPage(PageContext room) {
        this.room = room;
        this.asked = new ClothAsked(room);
    }

    public static void add(PageRoutes routes) {
        routes.of(CutPage::new)
                .get("/cut", CutPage::choose)
                .get("/cut/{id}", CutPage::show)
                .post("/cut/{id}/tick", CutPage::tick)
                .post("/cut/{id}/wrong", CutPage::wrong)
                .post("/cut/{id}/done", CutPage::done);
    }

    private void choose(Context context) {
        asked.choose(context, "Which cloth will you cut?", "Cut", "/cut/", cloth -> true);
    }

    private void show(Context context) {
        SavedCloth cloth = asked.cloth(context);
        if (!room.store().atHand().canBeCut(cloth.id())) {
            String path = "/cloth/" + cloth.id();
            if (PageContext.isPart(context)) {
                context.header("HX-Redirect", path);
            } else {
                PageContext.go(context, path, "It cannot be cut as it is planned: see below what is amiss.");
            }
            return;
        }
        Sheet sheet = sheet(context);
        if (PageContext.isPart(context)) {
            room.show(context, new Mat(sheet, room.token(), true));
        } else {
            room.show(
                    context, new View(room.frame(context, "Cut " + sheet.cloth().name(), "Cut"), sheet));
        }
    }

    private Sheet sheet(Context context) {
        SavedCloth cloth = asked.cloth(context);
        Plan plan = ClothAsked.plan(cloth);
        Settings settings = ClothAsked.settings(room, cloth);
        Guide guide = Guide.of(plan, settings.ruler());
        List<PieceTask> tasks = guide.cutting();
        Set<String> ticked = cloth.document().bench().ticked();
        int done = (int) tasks.stream().filter(task -> isCut(task, ticked)).count();
        String asked = context.queryParam("piece") == null
                ? PageContext.field(context, "piece")
                : PageContext.text(context, "piece");
        int at = asked.matches("\\d{1,4}") ? Math.min(Integer.parseInt(asked), tasks.size() - 1) : first(tasks, ticked);
        PieceTask task = tasks.get(at);
        PlanFolder drawn =
                new PlanFolder(plan, settings.ruler(), settings.paper());
        List<Line> lines = task.lines().stream()
                .map(line -> new Line(
                        line.number(),
                        settings.ruler().write(line.measure(), Rounding.UP),
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
                SvgWriter.writeBare(drawn.pieceInHand(task)),
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

    /** Whether the piece is cut for a plan that was made again while sewing. */
    private static boolean isAskedLater(SavedCloth cloth, PieceCut piece) {
        return cloth.document().life().stage() == Stage.CUT
                && !piece.past()
                && ClothAsked.plan(cloth).cuts().stream().anyMatch(PieceCut::past);
    }

    private static boolean isCut(PieceTask task, Set<String> ticked) {
        return task.cut().past()
                || task.lines().stream().allMatch(line -> ticked.contains(key(task, line.number())));
    }

    private void tick(Context context) {
        SavedCloth cloth = asked.cloth(context);
        String key = PageContext.field(context, "cut");
        boolean isLater = ClothAsked.plan(cloth).cuts().stream()
                .filter(cut -> key.startsWith(cut.piece().id() + ":"))
                .anyMatch(cut -> isAskedLater(cloth, cut));
        if (!isLater) {
            designed(context);
        }
        if (!key.matches("[\\w.-]{1,60}:\\d{1,3}")) {
            throw new MeasureException("there is no such cut");
        }
        Set<String> ticked = new HashSet<>(cloth.document().bench().ticked());
        String on = PageContext.field(context, "on");
        boolean wanted = on.isEmpty() ? !ticked.contains(key) : on.equals("yes");
        boolean changed = wanted ? ticked.add(key) : ticked.remove(key);
        if (!changed) {
            // The other device was quicker with the same tick.
            answer(context);
            return;
        }
        room.store()
                .cloths()
                .save(
                        cloth,
                        "tick of a cut",
                        cloth.document().with(cloth.document().bench().withTicked(ticked)));
        answer(context);
    }

    private void answer(Context context) {
        if (PageContext.isPart(context)) {
            show(context);
        } else {
            String piece = PageContext.field(context, "piece");
            PageContext.go(
                    context,
                    "/cut/" + context.pathParam("id") + (piece.matches("\\d{1,4}") ? "?piece=" + piece : ""),
                    "");
        }
    }

    private SavedCloth designed(Context context) {
        SavedCloth cloth = asked.cloth(context);
        if (cloth.document().life().stage() != Stage.DESIGNED) {
            throw new StoreException("This cloth is cut already.");
        }
        return cloth;
    }

    private static String ticks(SavedCloth cloth) {
        int ticked = cloth.document().bench().ticked().size();
        return ticked == 1 ? "One cut is ticked." : ticked + " cuts are ticked.";
    }

    private void wrong(Context context) {
        SavedCloth cloth = designed(context);
        StaleChangeException.check(context, cloth, ticks(cloth));
        new CutSlip(room, cloth, ClothAsked.plan(cloth)).mend(context);
    }

    /** All is cut: the pieces are used up, the offcuts come back into the stash. */
    private void done(Context context) {
        SavedCloth cloth = designed(context);
        StaleChangeException.check(context, cloth, ticks(cloth));
        Plan plan = ClothAsked.plan(cloth);
        ClothDocument.Life life = cloth.document().life();
        ClothDocument now = cloth.document().with(life.at(Stage.CUT));
        int offcuts = room.store().asOneChange("cut " + cloth.name(), () -> {
            room.store().cloths().save(cloth, "cut", now);
            return room.store().stash().cut("cut " + cloth.name(), plan).size();
        });
        PageContext.go(
                context,
                "/sew/" + cloth.id(),
                "Cut. " + offcuts + (offcuts == 1 ? " offcut is" : " offcuts are") + " back in the stash.");
    }
}
