package hearthcloth.web.house;

import hearthcloth.store.Person;
import hearthcloth.store.json.StoreException;
import hearthcloth.store.studio.PeopleBook;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.words.entering.EnteringWords;
import hearthcloth.words.framing.FramingWords;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/** Who belongs to the studio; a teacher brings people in, and everybody changes her own passphrase. */
public final class PeoplePage {

    /** The page. */
    @PageView.Template("people.jte")
    public record View(PageFrame frame, List<Person> people, Person me) implements PageView {

        /** What somebody is, in a word. */
        public String part(Person person) {
            return words().peoplePart(person.isTeacher() ? "teacher" : "maker");
        }

        /** What is said on it. */
        public EnteringWords words() {
            return EnteringWords.in(frame.language());
        }
    }

    private final PageContext room;
    private final StudioDesk desk;

    private PeoplePage(PageContext room, StudioDesk desk) {
        this.room = room;
        this.desk = desk;
    }

    public static void add(PageRoutes routes, StudioDesk desk) {
        routes.of(room -> new PeoplePage(room, desk))
                .get("/people", PeoplePage::show)
                .post("/people", PeoplePage::bring)
                .post("/people/passphrase", PeoplePage::own)
                .post("/people/{id}/passphrase", PeoplePage::forgotten);
    }

    private PeopleBook people() {
        return desk.studio().people();
    }

    private EnteringWords words() {
        return EnteringWords.in(room.language());
    }

    /** Who came in; the desk shows this page to nobody else. */
    private Person here() {
        return room.visitor()
                .person()
                .orElseThrow(() ->
                        new StoreException(FramingWords.in(room.language()).troubleComeIn()));
    }

    private void show(Context context) {
        room.show(context, new View(room.frame(context, words().peopleTitle(), ""), people().all(), here()));
    }

    private static String secret(Context context, String name) {
        return Optional.ofNullable(context.formParam(name)).orElse("");
    }

    private void requireTeacher() {
        if (!here().isTeacher()) {
            throw new StoreException(words().peopleTeacherOnly());
        }
    }

    private void bring(Context context) {
        requireTeacher();
        Person.Part part =
                PageContext.field(context, "part").equals("teacher") ? Person.Part.TEACHER : Person.Part.MAKER;
        Person person = people().add(PageContext.field(context, "name"), secret(context, "passphrase"), part);
        PageContext.go(context, "/people", words().peopleCanCome(person.name()));
    }

    private void own(Context context) {
        Person me = here();
        if (people().enter(me.name(), secret(context, "old")).isEmpty()) {
            throw new StoreException(words().peopleNotYours());
        }
        people().change(me, secret(context, "passphrase"));
        desk.begin(context, me);
        PageContext.go(context, "/people", words().peopleChanged());
    }

    private void forgotten(Context context) {
        requireTeacher();
        String id = context.pathParam("id");
        Person person = (id.matches("\\d{1,18}") ? people().find(Long.parseLong(id)) : Optional.<Person>empty())
                .orElseThrow(() -> new StoreException(words().peopleNobody()));
        people().change(person, secret(context, "passphrase"));
        if (person.id() == here().id()) {
            desk.begin(context, person);
        }
        PageContext.go(context, "/people", words().peopleHasNew(person.name()));
    }
}
