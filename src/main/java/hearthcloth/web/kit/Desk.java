package hearthcloth.web.kit;

import hearthcloth.store.Person;
import hearthcloth.store.Store;
import java.util.Optional;

/** Whose work the request at hand is about. */
public interface Desk {

    /** Her stash, cloths and settings; empty in a studio while nobody has come in. */
    Optional<Store> work();

    /** Who she is in a studio; empty on one's own machine. */
    Optional<Person> person();

    /** Proves that a form came from one of our own pages. */
    String token();

    /** One's own machine, where nobody has to come in. */
    record Own(Store store, String token) implements Desk {

        @Override
        public Optional<Store> work() {
            return Optional.of(store);
        }

        @Override
        public Optional<Person> person() {
            return Optional.empty();
        }
    }
}
