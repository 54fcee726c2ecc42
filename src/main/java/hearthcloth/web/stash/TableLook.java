package hearthcloth.web.stash;

import hearthcloth.store.Store;
import hearthcloth.web.kit.PageContext;
import io.javalin.http.Context;

/**
 * How she likes to look at the table; kept, so that it is the same tomorrow.
 *
 * @param zoom steps nearer than what shows all of it on one screen; below zero for farther
 * @param isInGreys true where only light and dark are shown
 */
record TableLook(int zoom, boolean isInGreys) {

    private static final String ZOOM = "stash.zoom";
    private static final String GREYS = "stash.greys";
    private static final int MOST = 8;

    static TableLook of(Store store) {
        int zoom = store.setting(ZOOM)
                .filter(text -> text.matches("-?\\d"))
                .map(Integer::valueOf)
                .orElse(0);
        return new TableLook(zoom, store.setting(GREYS).isPresent());
    }

    /** What the buttons over the table ask for. */
    static void keep(Context context, Store store) {
        TableLook now = of(store);
        switch (PageContext.field(context, "look")) {
            case "nearer" -> store.set(ZOOM, String.valueOf(Math.min(MOST, now.zoom + 1)));
            case "farther" -> store.set(ZOOM, String.valueOf(Math.max(-MOST, now.zoom - 1)));
            case "greys" -> store.set(GREYS, "yes");
            default -> store.unset(GREYS);
        }
    }
}
