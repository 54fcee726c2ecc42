package hearthcloth.web.gift;

import hearthcloth.store.SavedCloth;
import hearthcloth.store.Store;
import hearthcloth.work.Purpose;
import java.util.Optional;

/** What the next cloth is to be for, as it is kept among the settings, and what each kept cloth is for. */
public final class Wished {

    private static final String NEXT = "wish.";

    /** What was wished when cloths did not yet remember what they are for: those kept then are for that. */
    private static final String EARLIER = "earlier.";

    private Wished() {}

    /** What the next cloth is for. */
    public static Purpose of(Store store) {
        return read(store, NEXT);
    }

    /** What this cloth is for, whatever is planned next. */
    public static Purpose of(Store store, SavedCloth cloth) {
        return Optional.ofNullable(cloth.document().life().purpose()).orElseGet(() -> earlier(store));
    }

    private static Purpose earlier(Store store) {
        return read(store, isPinned(store) ? EARLIER : NEXT);
    }

    private static boolean isPinned(Store store) {
        return store.setting(EARLIER + "gift").isPresent();
    }

    private static Purpose read(Store store, String kind) {
        return new Purpose(
                store.setting(kind + "gift").orElse(""),
                store.setting(kind + "tie").orElse(""),
                store.setting(kind + "size").orElse(""));
    }

    /** Keeps what the next cloth is for. Cloths that do not remember what they are for stay with what was wished before. */
    public static void keep(Store store, Purpose next) {
        if (!isPinned(store)) {
            write(store, EARLIER, of(store));
        }
        write(store, NEXT, next);
    }

    private static void write(Store store, String kind, Purpose purpose) {
        store.set(kind + "gift", purpose.gift());
        store.set(kind + "tie", purpose.tie());
        store.set(kind + "size", purpose.size());
    }
}
