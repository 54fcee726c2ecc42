package hearthcloth.web.kit;

import hearthcloth.store.Person;
import hearthcloth.store.Store;
import java.util.Optional;

/**
 * Who a request comes from and whose work it is about: a value that travels with the request.
 *
 * @param work her stash, cloths and settings; empty in a studio while nobody has come in
 * @param person who she is in a studio; empty on one's own machine
 * @param token proves that a form came from one of our own pages
 */
public record Visitor(Optional<Store> work, Optional<Person> person, String token) {

    /** On one's own machine, where nobody has to come in. */
    public static Visitor own(Store store, String token) {
        return new Visitor(Optional.of(store), Optional.empty(), token);
    }
}
