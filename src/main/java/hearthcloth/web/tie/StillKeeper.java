package hearthcloth.web.tie;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * Pictures of tied gifts as soft cloth, drawn beside the pages one gift at a time, each once; the oldest go when there are
 * many. A page shows the facets' pictures until it has asked for these. Thread-safe.
 */
final class StillKeeper {

    /** Each takes about half a megabyte. */
    private static final int MOST = 16;

    private final Map<String, CompletableFuture<List<String>>> kept = new LinkedHashMap<>(16, 0.75f, true);
    private final ThreadPoolExecutor hands =
            new ThreadPoolExecutor(1, 1, 30, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), StillKeeper::hand);

    @SuppressWarnings("ThreadPriorityCheck") // only who waits less is chosen so, nothing rests on it
    private static Thread hand(Runnable work) {
        Thread thread = new Thread(work, "soft-stills");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    }

    StillKeeper() {
        hands.allowCoreThreadTimeOut(true);
    }

    /** Those of one gift as SVG, where they are drawn already. */
    synchronized Optional<List<String>> ready(String key) {
        CompletableFuture<List<String>> there = kept.get(key);
        return there == null || !there.isDone() || there.isCompletedExceptionally()
                ? Optional.empty()
                : Optional.of(there.join());
    }

    /** Those of one gift, begun unless they are there or on their way; waits for them. */
    List<String> drawn(String key, Supplier<List<String>> drawing) {
        CompletableFuture<List<String>> there;
        synchronized (this) {
            there = kept.get(key);
            if (there == null || there.isCompletedExceptionally()) {
                there = CompletableFuture.supplyAsync(drawing, hands);
                kept.put(key, there);
                for (String oldest : new ArrayList<>(kept.keySet())) {
                    if (kept.size() > MOST) {
                        kept.remove(oldest);
                    }
                }
            }
        }
        return there.join();
    }
}
