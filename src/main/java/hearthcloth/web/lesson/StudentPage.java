package hearthcloth.web.lesson;

import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.guide.GuideLength;
import hearthcloth.guideline.Guideline;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.web.door.ClassDoor;
import hearthcloth.web.door.RequestGuard;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.teaching.TeachingWords;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.SameSite;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** A student's side of a class, on her phone: how she comes in, her scraps, her cloth and how it grows. In her own language. */
public final class StudentPage {

    private static final String IN = "/class/in";
    private static final String MINE = "/class/mine";

    /** Longer than anybody types; a page plans with so many lines. */
    private static final int LONGEST = 20_000;

    private static final int HALF_A_DAY = 12 * 3600;

    /**
     * The way in.
     *
     * @param code as far as it is known
     * @param said what went wrong; may be empty
     * @param isOn false while there is no class
     */
    @PageView.Template("class-in.jte")
    public record Door(Language language, TeachingWords words, String code, String said, boolean isOn)
            implements PageView {}

    private final PageContext room;
    private final Classroom classroom;

    private StudentPage(PageContext room, Classroom classroom) {
        this.room = room;
        this.classroom = classroom;
    }

    public static void add(PageRoutes routes, Classroom classroom) {
        routes.of(room -> new StudentPage(room, classroom))
                .get(IN, StudentPage::ask)
                .post(IN, StudentPage::come)
                .get(MINE, StudentPage::show)
                .post(MINE, StudentPage::plan)
                .post(MINE + "/other", (page, context) -> page.grow(context, Workplace::other))
                .post(MINE + "/sewn", StudentPage::sewn)
                .post(MINE + "/show", StudentPage::onWall)
                .post(MINE + "/leave", StudentPage::leave)
                .get(MINE + "/guide.pdf", StudentPage::guide)
                .get(MINE + "/plan.json", StudentPage::planFile);
    }

    private Language language() {
        return room.settings().language();
    }

    private TeachingWords words() {
        return TeachingWords.in(language());
    }

    private Optional<ClassDoor.Student> student(Context context) {
        return classroom.door().student(context);
    }

    private void ask(Context context) {
        if (student(context).isPresent()) {
            PageContext.go(context, MINE, "");
            return;
        }
        door(context, PageContext.text(context, "code"), "");
    }

    private void door(Context context, String code, String said) {
        boolean on = classroom.idea().isPresent();
        room.show(context, new Door(language(), words(), code, said, on));
    }

    private void come(Context context) {
        String code = PageContext.field(context, "code");
        ClassDoor.Answer answer =
                classroom.door().join(code, PageContext.field(context, "name"), RequestGuard.address(context));
        if (answer.said() == ClassDoor.Said.IN) {
            context.cookie(cookie(context, answer.key()));
            context.redirect(MINE, HttpStatus.SEE_OTHER);
            return;
        }
        context.status(answer.said() == ClassDoor.Said.WAIT ? 429 : 403);
        door(
                context,
                code,
                switch (answer.said()) {
                    case WRONG -> words().comeWrong();
                    case WAIT -> words().comeWait();
                    case FULL, IN -> words().comeFull();
                });
    }

    private static Cookie cookie(Context context, String key) {
        Cookie cookie = new Cookie(ClassDoor.COOKIE, key);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        cookie.setPath("/class");
        cookie.setSecure(RequestGuard.isSecure(context));
        cookie.setMaxAge(HALF_A_DAY);
        return cookie;
    }

    private Workplace place(ClassDoor.Student student) {
        return classroom.of(student, room.settings().ruler());
    }

    private void show(Context context) {
        Optional<ClassDoor.Student> student = student(context);
        Optional<Guideline> idea = classroom.idea();
        if (student.isEmpty() || idea.isEmpty()) {
            context.redirect(IN, HttpStatus.SEE_OTHER);
            return;
        }
        room.show(context, StudentWork.of(language(), student.get(), idea.get(), place(student.get())));
    }

    private void plan(Context context) {
        student(context).ifPresent(student -> {
            String heap = PageContext.field(context, "heap");
            Ruler ruler = PageContext.field(context, "unit").equals("cm") ? Ruler.MILLIMETRES : Ruler.EIGHTHS;
            classroom.ask(
                    student,
                    new Workplace.Written(
                            heap.substring(0, Math.min(heap.length(), LONGEST)),
                            PageContext.field(context, "favourite"),
                            ruler));
        });
        PageContext.go(context, MINE, "");
    }

    private void grow(Context context, UnaryOperator<Workplace> change) {
        student(context).ifPresent(student -> classroom.change(student, change));
        PageContext.go(context, MINE, "");
    }

    private void sewn(Context context) {
        int more = PageContext.field(context, "more").equals("no") ? -1 : 1;
        grow(context, place -> place.sewn(more));
    }

    private void onWall(Context context) {
        boolean on = PageContext.field(context, "on").equals("yes");
        grow(context, place -> place.shown(on));
    }

    private void leave(Context context) {
        student(context).ifPresent(student -> classroom.out(student.id()));
        context.redirect(IN, HttpStatus.SEE_OTHER);
    }

    private PlanFolder drawn(Context context) {
        ClassDoor.Student student = student(context).orElseThrow(() -> new NotFoundResponse(words().comeNone()));
        Workplace place = place(student);
        Plan plan = place.plan().orElseThrow(() -> new NotFoundResponse(words().mineNone()));
        return new PlanFolder(
                plan,
                Voice.of(language(), place.written().ruler()),
                room.settings().paper(),
                classroom.idea().flatMap(Guideline::wrapped));
    }

    private void guide(Context context) {
        context.contentType("application/pdf")
                .header("Content-Disposition", "inline; filename=\"guide.pdf\"")
                .result(drawn(context).guide(GuideLength.CLASS));
    }

    private void planFile(Context context) {
        context.contentType("application/json")
                .header("Content-Disposition", "attachment; filename=\"plan.json\"")
                .result(drawn(context).planFile());
    }
}
