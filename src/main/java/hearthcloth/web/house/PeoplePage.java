package hearthcloth.web.house;

import hearthcloth.store.Person;
import hearthcloth.store.json.StoreException;
import hearthcloth.store.studio.PeopleBook;
import hearthcloth.web.kit.PageContext;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;

/** Who belongs to the studio; a teacher brings people in, and everybody changes her own passphrase. */
public final class PeoplePage {

    private final PageContext room;
    private final StudioDesk desk;

    public PeoplePage(PageContext room, StudioDesk desk) {
        this.room = room;
        this.desk = desk;
    }

    public void add(RoutesConfig routes) {
        routes.get("/people", this::show);
        routes.post("/people", this::bring);
        routes.post("/people/passphrase", this::own);
        routes.post("/people/{id}/passphrase", this::forgotten);
    }

    private PeopleBook people() {
        return desk.studio().people();
    }

    private void show(Context context) {
        room.show(
                context,
                "people.jte",
                Map.of(
                        "frame",
                        room.frame(context, "People of this studio", ""),
                        "people",
                        people().all(),
                        "me",
                        desk.here()));
    }

    private static String secret(Context context, String name) {
        return Optional.ofNullable(context.formParam(name)).orElse("");
    }

    private void requireTeacher() {
        if (!desk.here().isTeacher()) {
            throw new StoreException("Only a teacher does this.");
        }
    }

    private void bring(Context context) {
        requireTeacher();
        Person.Part part =
                PageContext.field(context, "part").equals("teacher") ? Person.Part.TEACHER : Person.Part.MAKER;
        Person person = people().add(PageContext.field(context, "name"), secret(context, "passphrase"), part);
        PageContext.go(
                context,
                "/people",
                person.name() + " can come in now. Tell them the passphrase; they can change it here.");
    }

    private void own(Context context) {
        Person me = desk.here();
        if (people().enter(me.name(), secret(context, "old")).isEmpty()) {
            throw new StoreException("That is not your passphrase. Nothing was changed.");
        }
        people().change(me, secret(context, "passphrase"));
        desk.begin(context, me);
        PageContext.go(context, "/people", "Your passphrase is changed; on other devices you come in anew.");
    }

    private void forgotten(Context context) {
        requireTeacher();
        String id = context.pathParam("id");
        Person person = (id.matches("\\d{1,18}") ? people().find(Long.parseLong(id)) : Optional.<Person>empty())
                .orElseThrow(() -> new StoreException("There is nobody of this number."));
        people().change(person, secret(context, "passphrase"));
        if (person.id() == desk.here().id()) {
            desk.begin(context, person);
        }
        PageContext.go(context, "/people", person.name() + " has a new passphrase. Tell them; they can change it here.");
    }
}
