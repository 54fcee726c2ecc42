package hearthcloth;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Piece;
import hearthcloth.store.StashBook;
import hearthcloth.store.Store;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The real workroom is killed by SIGKILL at random moments while a browser writes, again and again over one file. Every
 * change that was acknowledged is there afterwards, and none by half. {@code -Dhearthcloth.kills=100} kills more often.
 */
class KilledWorkroomTest {

    /** Each change adds so many pieces of a size of its own, a deed to undo it and the next free number. */
    private static final int PIECES = 3;

    private static final int KILLS = Integer.getInteger("hearthcloth.kills", 5);

    private final Random random = new Random(20_261_125);
    private final AtomicInteger sent = new AtomicInteger();
    private final Set<Integer> acknowledged = new ConcurrentSkipListSet<>();
    private final Path file;

    KilledWorkroomTest(@TempDir Path folder) {
        file = folder.resolve("work.db");
    }

    @Test
    void every_acknowledged_change_outlives_the_kill_and_none_is_half_there() {
        int inFlight = 0;
        int kept = 0;
        int lost = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            if (kill % 5 == 4) {
                killedWhileOpening();
            } else {
                killedWhileWriting();
            }
            compare();
            int open = sent.get() - acknowledged.size() - lost;
            int whole = settle();
            inFlight += open;
            kept += whole;
            lost += open - whole;
        }
        undoneAndDoneAgain();
        System.out.println("Killed " + KILLS + " times; " + acknowledged.size() + " changes; " + inFlight
                + " were on their way without an answer, " + kept + " of these kept whole, the others not at all.");
    }

    private void killedWhileOpening() {
        try (RunningWorkroom room = RunningWorkroom.started(List.of(), "--data", file.toString())) {
            LockSupport.parkNanos(random.nextInt(900) * 1_000_000L);
            room.kill();
        }
    }

    private void killedWhileWriting() {
        try (RunningWorkroom room = RunningWorkroom.opened("--data", file.toString())) {
            Semaphore answers = new Semaphore(0);
            Thread writer = new Thread(() -> write(room, answers), "writer");
            writer.start();
            answers.acquireUninterruptibly(random.nextInt(12));
            LockSupport.parkNanos(random.nextInt(80_000_000));
            room.kill();
            writer.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    /** Writes until no answer comes any more. */
    private void write(RunningWorkroom room, Semaphore answers) {
        try {
            String token = room.token("/gift");
            while (true) {
                int change = sent.getAndIncrement();
                HttpResponse<String> response = room.post("/stash/line", token, "line", line(change));
                assertThat(response.statusCode()).as(response.body()).isEqualTo(303);
                acknowledged.add(change);
                answers.release();
            }
        } catch (IOException e) {
            // Killed. Whoever waits for answers need not wait longer.
            answers.release(100);
        }
    }

    private static String line(int change) {
        return PIECES + " oat linen " + (1 + change % 50) + " x " + (1 + change / 50) + " in";
    }

    private static Size size(int change) {
        return new Size(Length.inches(1 + change % 50), Length.inches(1 + change / 50));
    }

    private Map<Size, Integer> there(Store store) {
        Map<Size, Integer> there = new HashMap<>();
        store.stash().whole().pieces().stream().map(Piece::size).forEach(size -> there.merge(size, 1, Integer::sum));
        return there;
    }

    private void compare() {
        Map<Size, Integer> there = there(Store.open(file, Clock.systemUTC()));
        for (int change = 0; change < sent.get(); change++) {
            Optional<Integer> found = Optional.ofNullable(there.remove(size(change)));
            if (acknowledged.contains(change)) {
                assertThat(found).as("acknowledged change " + change).contains(PIECES);
            } else {
                assertThat(found.orElse(0)).as("unanswered change " + change).isIn(0, PIECES);
            }
        }
        assertThat(there).as("pieces nobody sent").isEmpty();
    }

    /** From now on, what was kept without an answer counts as kept; how much that was. */
    private int settle() {
        Map<Size, Integer> there = there(Store.open(file, Clock.systemUTC()));
        int kept = 0;
        for (int change = 0; change < sent.get(); change++) {
            if (there.containsKey(size(change)) && acknowledged.add(change)) {
                kept++;
            }
        }
        return kept;
    }

    /** The record of changes fits the pieces, change by change. */
    private void undoneAndDoneAgain() {
        StashBook book = Store.open(file, Clock.systemUTC()).stash();
        List<Piece> all = book.whole().pieces();
        int changes = 0;
        while (changes < 50 && book.undo().isPresent()) {
            changes++;
        }
        assertThat(book.whole().pieces()).hasSize(all.size() - PIECES * changes);
        while (book.redo().isPresent()) {
            changes--;
        }
        assertThat(changes).isZero();
        assertThat(book.whole().pieces()).isEqualTo(all);
        assertThat(book.nextPiece())
                .isGreaterThan(all.stream().mapToInt(Piece::row).max().orElse(0));
    }
}
