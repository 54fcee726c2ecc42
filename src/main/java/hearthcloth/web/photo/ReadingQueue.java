package hearthcloth.web.photo;

import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Photograph;
import hearthcloth.photo.Reading;
import hearthcloth.photo.plane.ShownSheet;
import hearthcloth.stash.Fabric;
import hearthcloth.store.SavedPhoto;
import hearthcloth.store.Store;
import hearthcloth.words.Language;
import hearthcloth.words.picturing.PicturingWords;
import hearthcloth.words.sentence.SentenceNotation;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.photo.PhotoSorting;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * Reads photographs beside the pages, one at a time for the whole workroom, since each takes a hundred megabytes while it
 * is read. What waits is only its number: the picture itself lies in the store until its turn comes. Thread-safe.
 */
final class ReadingQueue {

    /** For the screen: enough to see a rim by, close up. */
    private static final int SCREEN_PIXELS = 2400;

    /** What is kept with a photograph that could not be read is English, and told in the page's language. */
    private static final PicturingWords KEPT = PicturingWords.in(Language.ENGLISH);

    /** One reading, from its wait to its end. */
    static final class Job {

        private final String photo;
        private volatile boolean begun;
        private volatile boolean stopped;
        private volatile double share;
        private volatile String what = "waiting";

        private Job(String photo) {
            this.photo = photo;
        }

        boolean isBegun() {
            return begun;
        }

        double share() {
            return share;
        }

        /** What is being done now, as a catalogue calls it. */
        String what() {
            return what;
        }

        private void heard(double done, String doing) {
            if (stopped) {
                throw new Stopped();
            }
            share = done;
            what = doing;
        }
    }

    /** Ends a reading that nobody wants any more. */
    private static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private final List<Job> line = new CopyOnWriteArrayList<>();
    private final Map<String, Job> jobs = new ConcurrentHashMap<>();
    private final Semaphore table = new Semaphore(1, true);
    private final ThreadPoolExecutor reader =
            new ThreadPoolExecutor(1, 1, 30, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), work -> {
                Thread thread = new Thread(work, "reading");
                thread.setDaemon(true);
                return thread;
            });

    ReadingQueue() {
        reader.allowCoreThreadTimeOut(true);
    }

    /** The reading of a photograph that still has to be read; begun unless it is on its way. */
    Job of(Store store, SavedPhoto photo) {
        return jobs.computeIfAbsent(photo.id(), id -> {
            Job job = new Job(id);
            line.add(job);
            reader.execute(() -> work(store, job));
            return job;
        });
    }

    /** How many are read before this one. */
    int before(Job job) {
        return Math.max(0, line.indexOf(job));
    }

    void stop(String photo) {
        Optional.ofNullable(jobs.get(photo)).ifPresent(job -> job.stopped = true);
    }

    /** Ends what is being read; it and what waits lie in the store and are read when the workroom is open again. */
    void close() {
        jobs.values().forEach(job -> job.stopped = true);
    }

    /** Does what needs as much memory as a reading, when none is going on. */
    <T> T alone(Supplier<T> work) {
        table.acquireUninterruptibly();
        try {
            return work.get();
        } finally {
            table.release();
        }
    }

    private void work(Store store, Job job) {
        try {
            alone(() -> {
                job.begun = true;
                read(store, job);
                return job;
            });
        } catch (Stopped e) {
            // She does not want it any more; there is nothing to keep.
        } catch (OutOfMemoryError e) {
            store.photographs().refuse(job.photo, KEPT.refusedTooMuch());
        } catch (RuntimeException | StackOverflowError e) {
            store.photographs().refuse(job.photo, KEPT.refusedFailed());
        } finally {
            line.remove(job);
            jobs.remove(job.photo);
        }
    }

    private static void read(Store store, Job job) {
        job.heard(0, "opening");
        Optional<SavedPhoto> photo = store.photographs().find(job.photo).filter(SavedPhoto::isWaiting);
        Optional<byte[]> file = photo.flatMap(found -> store.photographs().file(found.id()));
        if (file.isEmpty()) {
            return;
        }
        Reading reading = PhotoReader.read(
                file.get(), ShownSheet.parse(photo.get().sheet()), (share, what) -> job.heard(0.9 * share, what));
        if (reading instanceof Reading.Refused refused) {
            store.photographs().refuse(job.photo, SentenceNotation.print(refused.reason()));
            return;
        }
        Reading.Read read = (Reading.Read) reading;
        if (read.pieces().isEmpty()) {
            store.photographs().refuse(job.photo, KEPT.refusedNoPieces());
            return;
        }
        job.heard(0.9, "laying");
        byte[] screen = Photograph.of(file.get()).small(SCREEN_PIXELS);
        PhotoSorting sorting = PhotoSorting.of(read.pieces(), names(store));
        job.heard(1, "done");
        store.photographs().read(job.photo, new SavedPhoto.Read(read.scale().kept(), sorting), screen);
    }

    /** Why nothing was read, in the page's language where the reason is one of ours. */
    static String told(String kept, Voice voice) {
        PicturingWords words = PicturingWords.in(voice.language());
        if (kept.equals(KEPT.refusedNoPieces())) {
            return words.refusedNoPieces();
        }
        if (kept.equals(KEPT.refusedTooMuch())) {
            return words.refusedTooMuch();
        }
        return kept.equals(KEPT.refusedFailed())
                ? words.refusedFailed()
                : SentenceNotation.parse(kept).map(said -> said.in(voice)).orElse(kept);
    }

    /** Names of fabrics in the stash. */
    static List<String> names(Store store) {
        return new ArrayList<>(
                store.stash().whole().fabrics().stream().map(Fabric::name).toList());
    }
}
