package hearthcloth.web.house;

import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageView;
import hearthcloth.store.Person;
import hearthcloth.store.json.StoreException;
import hearthcloth.store.studio.PeopleBook;
import hearthcloth.web.kit.PageContext;
import io.javalin.http.Context;
import java.util.Optional;

/** The way into a studio by name and passphrase, and out again; whoever comes first begins it as its teacher. */
public final class EntrancePage {

    /**
     * The page.
     *
     * @param isFirst true where nobody belongs to the studio yet
     */
    @PageView.Template("enter.jte")
    public record View(PageFrame frame, boolean isFirst) implements PageView {}

    private final PageContext room;
    private final StudioDesk desk;

    private EntrancePage(PageContext room, StudioDesk desk) {
        this.room = room;
        this.desk = desk;
    }

    public static void add(PageRoutes routes, StudioDesk desk) {
        routes.of(room -> new EntrancePage(room, desk))
                .get("/enter", (page, context) -> page.show(context, ""))
                .post("/enter", EntrancePage::enter)
                .post("/leave", EntrancePage::leave);
    }

    private PeopleBook people() {
        return desk.studio().people();
    }

    private void show(Context context, String said) {
        boolean first = people().isEmpty();
        String title = first ? "Begin a studio" : "Come in";
        room.show(context, new View(room.frame(context, title, "").saying(said, "/enter"), first));
    }

    private void enter(Context context) {
        String name = PageContext.field(context, "name");
        String passphrase = Optional.ofNullable(context.formParam("passphrase")).orElse("");
        try {
            Optional<Person> person = people().isEmpty()
                    ? Optional.of(people().begin(name, passphrase))
                    : people().enter(name, passphrase);
            if (person.isPresent()) {
                desk.begin(context, person.get());
                PageContext.go(context, "/gift", "");
                return;
            }
            context.status(403);
            show(context, "Name and passphrase do not belong together. Try again.");
        } catch (StoreException e) {
            context.status(422);
            show(context, String.valueOf(e.getMessage()));
        }
    }

    private void leave(Context context) {
        desk.end(context);
        PageContext.go(context, "/enter", "You have left. Nobody sees your work here now.");
    }
}
