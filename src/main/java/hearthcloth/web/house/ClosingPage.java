package hearthcloth.web.house;

import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.words.entering.EnteringWords;
import io.javalin.http.Context;
import java.net.InetAddress;
import java.net.UnknownHostException;

/**
 * Closes a workroom that was opened from a menu, where nobody sees a terminal. Only at the machine itself: a phone that is let
 * in must not put the work away under her hands.
 */
public final class ClosingPage {

    /**
     * The page.
     *
     * @param here whether she is at the machine itself
     * @param closed whether it has just been closed
     */
    @PageView.Template("close.jte")
    public record View(PageFrame frame, boolean here, boolean closed) implements PageView {

        /** What is said on it. */
        public EnteringWords words() {
            return EnteringWords.in(frame.language());
        }
    }

    private final PageContext room;
    private final Runnable closing;

    private ClosingPage(PageContext room, Runnable closing) {
        this.room = room;
        this.closing = closing;
    }

    /**
     * The page's addresses.
     *
     * @param closing told that the workroom is to be closed; returns at once
     */
    public static void add(PageRoutes routes, Runnable closing) {
        routes.of(room -> new ClosingPage(room, closing))
                .get("/close", ClosingPage::show)
                .post("/close", ClosingPage::close);
    }

    private void show(Context context) {
        room.show(
                context,
                new View(
                        room.frame(context, EnteringWords.in(room.language()).closeTitle(), ""),
                        isHere(context),
                        false));
    }

    private void close(Context context) {
        boolean here = isHere(context);
        room.show(
                context,
                new View(room.frame(context, EnteringWords.in(room.language()).closeTitle(), ""), here, here));
        if (here) {
            closing.run();
        }
    }

    /** A proxy on this machine speaks for others; only a request that names none is from here. */
    private static boolean isHere(Context context) {
        try {
            return InetAddress.getByName(context.req().getRemoteAddr()).isLoopbackAddress()
                    && context.header("X-Forwarded-For") == null;
        } catch (UnknownHostException e) {
            return false;
        }
    }
}
