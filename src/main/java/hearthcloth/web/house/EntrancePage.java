package hearthcloth.web.house;

import hearthcloth.measure.Ruler;
import hearthcloth.store.Person;
import hearthcloth.store.json.StoreException;
import hearthcloth.store.studio.PeopleBook;
import hearthcloth.web.door.RequestGuard;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.words.entering.EnteringWords;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.speech.Voice;
import io.javalin.http.Context;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The way into a studio by name and passphrase, and out again; whoever comes first begins it as its teacher. */
public final class EntrancePage {

    /**
     * The page.
     *
     * @param isFirst true where nobody belongs to the studio yet
     */
    @PageView.Template("enter.jte")
    public record View(PageFrame frame, boolean isFirst) implements PageView {

        /** What is said on it. */
        public EnteringWords words() {
            return EnteringWords.in(frame.language());
        }
    }

    private final PageContext room;
    private final StudioDesk desk;

    /** Addresses from which somebody comes in just now: one at a time from each, so that a guesser waits for itself alone. */
    private final Set<String> coming;

    private EntrancePage(PageContext room, StudioDesk desk, Set<String> coming) {
        this.room = room;
        this.desk = desk;
        this.coming = coming;
    }

    public static void add(PageRoutes routes, StudioDesk desk) {
        Set<String> coming = ConcurrentHashMap.newKeySet();
        routes.of(room -> new EntrancePage(room, desk, coming))
                .get("/enter", (page, context) -> page.show(context, ""))
                .post("/enter", EntrancePage::enter)
                .post("/leave", EntrancePage::leave);
    }

    private EnteringWords words() {
        return EnteringWords.in(room.language());
    }

    private PeopleBook people() {
        return desk.studio().people();
    }

    private void show(Context context, String said) {
        boolean first = people().isEmpty();
        String title = words().enterTitle(first ? "yes" : "no");
        room.show(context, new View(room.frame(context, title, "").saying(said, "/enter"), first));
    }

    private void enter(Context context) {
        String address = RequestGuard.address(context);
        if (!coming.add(address)) {
            context.status(429);
            show(context, words().enterBusy());
            return;
        }
        try {
            entered(context);
        } finally {
            coming.remove(address);
        }
    }

    private void entered(Context context) {
        String name = PageContext.field(context, "name");
        String passphrase = Optional.ofNullable(context.formParam("passphrase")).orElse("");
        try {
            Optional<Person> person = people().isEmpty()
                    ? Optional.of(begun(context, name, passphrase))
                    : people().enter(name, passphrase);
            if (person.isPresent()) {
                desk.begin(context, person.get());
                PageContext.go(context, "/", "");
                return;
            }
            context.status(403);
            show(context, words().enterWrong());
        } catch (StoreException e) {
            context.status(422);
            show(context, Refusal.of(e).in(Voice.of(room.language(), Ruler.EIGHTHS)));
        }
    }

    /** Who begins a studio is its teacher; on a network that could be anybody. */
    private Person begun(Context context, String name, String passphrase) {
        if (RequestGuard.isNear(context)) {
            throw new StoreException(words().enterAtMachine());
        }
        return people().begin(name, passphrase);
    }

    private void leave(Context context) {
        desk.end(context);
        PageContext.go(context, "/enter", words().enterLeft());
    }
}
