package hearthcloth.web.piecing;

import hearthcloth.store.Store;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The table as it is kept between visits, with what can be taken back and done again.
 *
 * @param now the table's text
 * @param before earlier ones, the last one last
 * @param after later ones that were taken back, the next one last
 * @param size of the cloth, as it was typed; empty where it was not
 * @param cloth the kept cloth that is changed on the table; empty where it is a new one
 */
record KeptTable(String now, List<String> before, List<String> after, String size, String cloth) {

    private static final String KEY = "piecing.";
    /** The text of an empty table; never blank, so that it is kept among others. */
    static final String NOTHING = "locked";

    private static final String BETWEEN = "\n--\n";
    /** So many steps back are kept; ours. */
    private static final int MOST = 40;

    static KeptTable of(Store store) {
        return new KeptTable(
                store.setting(KEY + "now").filter(text -> !text.isEmpty()).orElse(NOTHING),
                list(store.setting(KEY + "before").orElse("")),
                list(store.setting(KEY + "after").orElse("")),
                store.setting(KEY + "size").orElse(""),
                store.setting(KEY + "cloth").orElse(""));
    }

    private static List<String> list(String text) {
        return text.isEmpty() ? List.of() : Arrays.asList(text.split(BETWEEN, -1));
    }

    void keep(Store store) {
        store.atOnce(() -> {
            store.set(KEY + "now", now);
            store.set(KEY + "before", String.join(BETWEEN, before));
            store.set(KEY + "after", String.join(BETWEEN, after));
            store.set(KEY + "size", size);
            store.set(KEY + "cloth", cloth);
            return now;
        });
    }

    /** The table as it is after something was done. */
    KeptTable done(String next) {
        if (next.equals(now)) {
            return this;
        }
        List<String> more = new ArrayList<>(before);
        more.add(now);
        int from = Math.max(0, more.size() - MOST);
        return new KeptTable(next, more.subList(from, more.size()), List.of(), size, cloth);
    }

    KeptTable undone() {
        if (before.isEmpty()) {
            return this;
        }
        List<String> later = new ArrayList<>(after);
        later.add(now);
        int last = before.size() - 1;
        return new KeptTable(before.get(last), before.subList(0, last), later, size, cloth);
    }

    KeptTable redone() {
        if (after.isEmpty()) {
            return this;
        }
        List<String> more = new ArrayList<>(before);
        more.add(now);
        int last = after.size() - 1;
        return new KeptTable(after.get(last), more, after.subList(0, last), size, cloth);
    }

    KeptTable sized(String other) {
        return new KeptTable(now, before, after, other, cloth);
    }

    /** An empty table, or one with a kept cloth on it. */
    static KeptTable begun(String text, String size, String cloth) {
        return new KeptTable(text, List.of(), List.of(), size, cloth);
    }

    /** A number that is another after every change. */
    String mark() {
        return Integer.toHexString((now + size + cloth + before.size()).hashCode());
    }
}
