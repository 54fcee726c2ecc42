package hearthcloth.web.tie;

import hearthcloth.wrap.drape.Drape;
import hearthcloth.wrap.fold.Fold;
import java.time.Duration;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * Drapes gifts beside the pages: one at a time, at the lowest priority, each once. What came out is kept by its geometry,
 * which cloths of other fabrics share; the oldest goes when there are many. When the gift of a cloth changes, what was
 * being made for it is given up. A page asks and never waits. Thread-safe.
 */
final class DrapeKeeper {

    /** Each takes about a megabyte. */
    private static final int MOST = 32;

    /** Points along the cloth's longer side: pleats as wide as a finger on a cloth of 70 cm. */
    private static final int FINE = 41;

    /**
     * What a page is told.
     *
     * @param isComing true while it is being made
     * @param drape empty while it is being made, and for good where the folds stay as they are
     */
    record Answer(boolean isComing, Optional<Drape> drape) {}

    /** One geometry, from its wait to its end. */
    private static final class Job {
        private volatile boolean stopped;
        private volatile long asked = System.nanoTime();
        private volatile boolean done;
        private volatile Optional<Drape> drape = Optional.empty();

        Answer answer() {
            asked = System.nanoTime();
            return new Answer(!done, drape);
        }

        boolean isWanted() {
            return !stopped && System.nanoTime() - asked < PATIENCE.toNanos();
        }
    }

    /** A page asks every few seconds; what none has asked for so long is given up. */
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final Map<String, Job> kept = new LinkedHashMap<>(16, 0.75f, true);
    private final Map<String, String> wanted = new LinkedHashMap<>();
    private final ThreadPoolExecutor hands =
            new ThreadPoolExecutor(1, 1, 30, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), work -> {
                Thread thread = new Thread(work, "draping");
                thread.setDaemon(true);
                return thread;
            });

    DrapeKeeper() {
        hands.allowCoreThreadTimeOut(true);
    }

    /** The drape of a fold, begun unless it is there or on its way. */
    synchronized Answer of(String cloth, Fold fold) {
        if (!Drape.isKnown(fold.fit().tie(), fold.fit().gift())) {
            return new Answer(false, Optional.empty());
        }
        String key = key(fold);
        String before = wanted.put(cloth, key);
        if (before != null && !before.equals(key) && !wanted.containsValue(before)) {
            giveUp(before);
        }
        Job job = kept.get(key);
        if (job == null || job.stopped) {
            job = new Job();
            kept.put(key, job);
            forget(wanted.keySet().iterator(), MOST);
            Job begun = job;
            hands.execute(() -> work(begun, fold));
            forgetOldest();
        }
        return job.answer();
    }

    /** Gives up whatever is being made or waits. */
    synchronized void close() {
        kept.values().forEach(job -> job.stopped = true);
    }

    /** What the geometry follows from; fabrics are not in it. */
    private static String key(Fold fold) {
        return fold.fit().tie() + " " + fold.fit().gift() + " " + fold.fit().cloth() + " "
                + fold.fit().tail() + " " + fold.fit().placing();
    }

    private void giveUp(String key) {
        Job job = kept.get(key);
        if (job != null && !job.done) {
            job.stopped = true;
            kept.remove(key);
        }
    }

    private void forget(Iterator<String> oldest, int most) {
        while (wanted.size() > most && oldest.hasNext()) {
            oldest.next();
            oldest.remove();
        }
    }

    private void forgetOldest() {
        Iterator<Job> oldest = kept.values().iterator();
        while (kept.size() > MOST && oldest.hasNext()) {
            if (oldest.next().done) {
                oldest.remove();
            }
        }
    }

    private static void work(Job job, Fold fold) {
        Optional<Drape> drape = Optional.empty();
        try {
            drape = job.isWanted() ? Drape.of(fold, FINE, job::isWanted) : drape;
        } finally {
            // what was given up begins anew when it is asked for again
            job.stopped |= drape.isEmpty();
            job.drape = drape.filter(made -> made.acceptance().holds());
            job.done = true;
        }
    }
}
