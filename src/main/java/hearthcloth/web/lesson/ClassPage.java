package hearthcloth.web.lesson;

import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.GuidelineWords;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.door.ClassDoor;
import hearthcloth.web.door.Openness;
import hearthcloth.web.door.Signpost;
import hearthcloth.web.house.SaidIdea;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Uploads;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.teaching.TeachingWords;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The teacher's side of a class: begins it with an idea, shows the code and the wall, puts people out, ends it. */
public final class ClassPage {

    /** A guideline with a picture is under half of it. */
    private static final int MOST_BYTES = 1 << 20;

    /** A cloth whose idea a class can begin with. */
    public record Own(String id, String name) {}

    /** The page before a class. */
    @PageView.Template("class.jte")
    public record View(PageFrame frame, TeachingWords words, List<Own> own, boolean isReached) implements PageView {}

    /** An address and its picture. */
    public record Way(String address, String picture) {}

    /**
     * One place on the wall.
     *
     * @param id of the student
     * @param picture of the cloth, as far as it is sewn; empty where she shows nothing
     * @param seams how far it is; empty before the first seam
     */
    public record Card(String id, String name, String picture, String size, String seams) {}

    /** The class itself: who may come in by what, and the wall. */
    @PageView.Template("class-wall.jte")
    public record Wall(PageFrame frame, TeachingWords words, Door door, List<Card> cards) implements PageView {}

    /** How students come in. */
    public record Door(String code, List<Way> ways, List<String> rules) {}

    private final PageContext room;
    private final Classroom classroom;
    private final Openness openness;

    private ClassPage(PageContext room, Classroom classroom, Openness openness) {
        this.room = room;
        this.classroom = classroom;
        this.openness = openness;
    }

    public static void add(PageRoutes routes, Classroom classroom, Openness openness) {
        routes.of(room -> new ClassPage(room, classroom, openness))
                .get("/class", ClassPage::show)
                .post("/class", ClassPage::begin)
                .post("/class/end", ClassPage::end)
                .post("/class/out/{id}", ClassPage::out);
    }

    private TeachingWords words() {
        return TeachingWords.in(room.settings().pages());
    }

    /** In a studio only a teacher has a class; on her own machine she is one. */
    private void requireTeacher() {
        if (room.visitor().person().filter(person -> !person.isTeacher()).isPresent()) {
            throw new StoreException(StoringSentences.teacher());
        }
    }

    private void show(Context context) {
        requireTeacher();
        PageFrame frame = room.frame(context, words().classTitle(), "Made");
        if (classroom.idea().isEmpty()) {
            List<Own> own = room.store().cloths().all().stream()
                    .filter(cloth -> cloth.document().plan().isPresent()
                            && !cloth.document().isFree())
                    .map(cloth -> new Own(cloth.id(), cloth.name()))
                    .toList();
            room.show(context, new View(frame, words(), own, isReached()));
            return;
        }
        Guideline idea = classroom.idea().get();
        Voice voice = Voice.of(room.language(), idea.told().ruler());
        Door door = new Door(
                classroom.door().code(),
                ways(context),
                GuidelineWords.of(idea).stream().map(rule -> rule.in(voice)).toList());
        room.show(context, new Wall(frame.called(idea.told().name()), words(), door, cards()));
    }

    private boolean isReached() {
        return openness.lan() || openness.origin().isPresent();
    }

    private List<Way> ways(Context context) {
        List<String> addresses = new ArrayList<>();
        openness.origin().ifPresent(origin -> addresses.add(origin + "/class/in"));
        if (openness.lan()) {
            Signpost.hosts().forEach(host -> addresses.add("http://" + host + ":" + context.port() + "/class/in"));
        }
        return addresses.stream()
                .map(address -> new Way(
                        address,
                        Signpost.picture(address + "?code=" + classroom.door().code(), words().classQr())))
                .toList();
    }

    private List<Card> cards() {
        Ruler ruler = room.settings().ruler();
        List<Card> cards = new ArrayList<>();
        for (ClassDoor.Student student : classroom.door().all()) {
            Workplace place = classroom.of(student, ruler);
            cards.add(
                    place.growing().isShown() && place.plan().isPresent()
                            ? shown(student, place, place.plan().get(), ruler)
                            : new Card(student.id(), student.name(), "", "", words().classHidden()));
        }
        return cards;
    }

    private Card shown(ClassDoor.Student student, Workplace place, Plan plan, Ruler ruler) {
        String size =
                Voice.of(room.settings().pages(), ruler).write(plan.cloth().finished(), Rounding.NEAREST);
        int sewn = place.growing().sewn();
        String all = String.valueOf(plan.cloth().steps().size());
        return new Card(
                student.id(),
                student.name(),
                Growth.drawn(place, student.name() + ", " + size),
                size,
                sewn == 0 ? "" : words().classSeams(all, String.valueOf(sewn)));
    }

    private void begin(Context context) {
        requireTeacher();
        String id = PageContext.field(context, "cloth");
        Guideline idea = id.isEmpty()
                ? SaidIdea.read(
                        room, new String(Uploads.upload(room, context, "file", MOST_BYTES), StandardCharsets.UTF_8))
                : SaidIdea.of(room, context, cloth(id));
        classroom.begin(idea);
        PageContext.go(context, "/class", "");
    }

    private SavedCloth cloth(String id) {
        return room.store()
                .cloths()
                .find(id)
                .orElseThrow(() ->
                        new NotFoundResponse(DesigningWords.in(room.language()).wrongNone()));
    }

    private void end(Context context) {
        requireTeacher();
        classroom.end();
        PageContext.go(context, "/class", words().classEnded());
    }

    private void out(Context context) {
        requireTeacher();
        String id = context.pathParam("id");
        String name = classroom.door().all().stream()
                .filter(student -> student.id().equals(id))
                .map(ClassDoor.Student::name)
                .findFirst()
                .orElse("");
        classroom.out(id);
        PageContext.go(context, "/class", name.isEmpty() ? "" : words().classIsOut(name));
    }
}
