package hearthcloth.web.door;

import hearthcloth.words.Language;
import hearthcloth.words.Spoken;
import hearthcloth.words.entering.EnteringWords;
import io.javalin.http.HttpResponseException;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Locale;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;

/**
 * Measures what requests send while it is read, told or not: more than is meant for its address is refused, and all that is
 * under way at a time stays within what the workroom's memory holds. Thread-safe.
 */
public final class RequestMeasure extends Handler.Wrapper {

    /** A photograph with the form round it. */
    public static final long LARGEST_PHOTOGRAPH = 81L << 20;

    /** An archive of many cloths with pictures of fabrics. */
    static final long LARGEST_FILE = 64L << 20;

    /** A form without a file: ten thousand lines of pieces and some to spare. */
    static final long LARGEST_FORM = 2L << 20;

    /** What somebody sends who is not let in yet. */
    static final long LARGEST_KNOCK = 4L << 10;

    /** So many megabytes may be under way at a time, in requests of all; one photograph of the largest kind and some forms. */
    private static final int MOST_MEGABYTES = 96;

    private static final long PATIENCE_S = 10;
    private static final String NAME = RequestMeasure.class.getName();

    private final Semaphore megabytes = new Semaphore(MOST_MEGABYTES, true);

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        Measured measured = new Measured(request, largest(request), megabytes);
        request.setAttribute(NAME, measured);
        return super.handle(measured, response, Callback.from(callback, measured::done));
    }

    private static long largest(Request request) {
        String type = request.getHeaders().get(HttpHeader.CONTENT_TYPE);
        boolean hasFile = type != null && type.toLowerCase(Locale.ROOT).startsWith("multipart/");
        if (!hasFile) {
            return LARGEST_FORM;
        }
        return Request.getPathInContext(request).equals("/stash/photo") ? LARGEST_PHOTOGRAPH : LARGEST_FILE;
    }

    /** The measure of a request; empty outside a server. */
    static @Nullable Measured of(HttpServletRequest request) {
        return request.getAttribute(NAME) instanceof Measured measured ? measured : null;
    }

    private static String words(long most, EnteringWords words) {
        if (most >= LARGEST_PHOTOGRAPH) {
            return words.doorLargePhotograph();
        }
        return most < LARGEST_FORM ? words.doorBefore() : words.doorLarge(String.valueOf(most >> 20));
    }

    /** A request that is measured. */
    static final class Measured extends Request.Wrapper {

        private final Semaphore megabytes;
        private final AtomicInteger weight = new AtomicInteger();
        private volatile long most;
        private long seen;

        private Measured(Request request, long most, Semaphore megabytes) {
            super(request);
            this.most = most;
            this.megabytes = megabytes;
        }

        /**
         * Of somebody not let in.
         *
         * @throws HttpResponseException where it says itself that it is too large
         */
        void knock() {
            most = LARGEST_KNOCK;
            refuseTold();
        }

        /** Refuses what says itself that it is too large. */
        void refuseTold() {
            if (getLength() > most) {
                throw tooLarge();
            }
        }

        /** Waits for room in memory; false where there is none for long. */
        boolean weigh() throws InterruptedException {
            long length = getLength() < 0 ? most : getLength();
            int needed = (int) Math.min(MOST_MEGABYTES, length >> 20);
            if (needed > 0 && !megabytes.tryAcquire(needed, PATIENCE_S, TimeUnit.SECONDS)) {
                return false;
            }
            weight.addAndGet(needed);
            return true;
        }

        private HttpResponseException tooLarge() {
            Language language = Spoken.toReader(getHeaders().get(HttpHeader.ACCEPT_LANGUAGE));
            return new HttpResponseException(413, words(most, EnteringWords.in(language)));
        }

        private void done() {
            megabytes.release(weight.getAndSet(0));
        }

        @Override
        public Content.@Nullable Chunk read() {
            Content.Chunk chunk = super.read();
            if (chunk == null || Content.Chunk.isFailure(chunk)) {
                return chunk;
            }
            seen += chunk.remaining();
            if (seen > most) {
                chunk.release();
                return Content.Chunk.from(tooLarge(), true);
            }
            return chunk;
        }
    }
}
