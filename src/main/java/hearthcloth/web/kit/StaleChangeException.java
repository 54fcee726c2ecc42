package hearthcloth.web.kit;

import hearthcloth.store.SavedCloth;
import hearthcloth.words.Language;
import hearthcloth.words.framing.FramingWords;
import io.javalin.http.Context;

/** A change made on a page that something newer has overtaken. Nothing was changed; both are shown. */
public final class StaleChangeException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String now;
    private final String look;
    private final String mark;
    private final String fresh;

    /**
     * @param words what happened
     * @param now what is there now, in words
     * @param look the page that shows it
     * @param mark the field by which a form tells what it was made on
     * @param fresh what that field would say now; empty where the form can no longer be sent
     */
    public StaleChangeException(String words, String now, String look, String mark, String fresh) {
        super(words);
        this.now = now;
        this.look = look;
        this.mark = mark;
        this.fresh = fresh;
    }

    /**
     * Compares the version a form carries with that of the cloth.
     *
     * @throws StaleChangeException where it was made on another one
     */
    public static void check(Language language, Context context, SavedCloth cloth, String now) {
        if (isStale(context, cloth)) {
            throw new StaleChangeException(
                    FramingWords.in(language).staleCloth(cloth.name()),
                    now,
                    "/cloth/" + cloth.id(),
                    "version",
                    String.valueOf(cloth.version()));
        }
    }

    public static boolean isStale(Context context, SavedCloth cloth) {
        String version = PageContext.field(context, "version");
        return !version.isEmpty() && !version.equals(String.valueOf(cloth.version()));
    }

    String now() {
        return now;
    }

    String look() {
        return look;
    }

    String mark() {
        return mark;
    }

    String fresh() {
        return fresh;
    }
}
