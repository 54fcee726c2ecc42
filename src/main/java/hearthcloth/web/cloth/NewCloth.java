package hearthcloth.web.cloth;

import hearthcloth.web.kit.ExampleMark;
import java.util.UUID;

/** Names for cloths that are new in the store. */
public final class NewCloth {

    private NewCloth() {}

    /** A name no other cloth has; one of the example is marked as such. */
    public static String id(boolean example) {
        return (example ? ExampleMark.MARK : "")
                + UUID.randomUUID().toString().replace("-", "").substring(0, 12);
    }
}
