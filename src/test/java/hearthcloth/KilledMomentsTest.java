package hearthcloth;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.stash.Piece;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.Store;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The real workroom is killed by SIGKILL at random moments of what is rare and large: the first start, the change to a newer
 * form, an archive brought in, a safety copy made, one put back. Afterwards there is what was before or what was to be, whole,
 * and what was acknowledged is there. {@code -Dhearthcloth.kills=100} kills more often.
 */
class KilledMomentsTest {

    private static final int KILLS = Integer.getInteger("hearthcloth.kills", 2);

    /** Forms that are changed when they are opened today, and whose work is not alike. */
    private static final List<String> EARLIER = List.of("1", "3", "5", "8");

    private final Random random = new Random(20_261_130);

    @TempDir
    Path folder;

    private Path file = Path.of("work.db");

    /** All that a workroom holds, to be compared. */
    private record Work(List<Piece> pieces, List<String> cloths) {
        static Work of(Path file) {
            Store store = Store.open(file, Clock.systemUTC());
            return new Work(
                    store.stash().whole().pieces(),
                    store.cloths().all().stream().map(SavedCloth::name).sorted().toList());
        }
    }

    private void begin(int kill) throws IOException {
        file = Files.createDirectories(folder.resolve("kill" + kill)).resolve("work.db");
    }

    /** Kills the room while it does something, or after it; true where it was acknowledged. */
    private boolean killedDuring(RunningWorkroom room, int mostMs, Callable<HttpResponse<String>> what)
            throws InterruptedException {
        FutureTask<HttpResponse<String>> asked = new FutureTask<>(what);
        Thread thread = new Thread(asked, "asker");
        thread.start();
        LockSupport.parkNanos(random.nextInt(mostMs) * 1_000_000L);
        room.kill();
        try {
            HttpResponse<String> answer = asked.get();
            assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
            return true;
        } catch (ExecutionException e) {
            assertThat(e.getCause()).isInstanceOf(IOException.class);
            return false;
        }
    }

    private static void lines(RunningWorkroom room, String... lines) throws IOException {
        String token = room.token("/gift");
        for (String line : lines) {
            assertThat(room.post("/stash/line", token, "line", line).statusCode())
                    .isEqualTo(303);
        }
    }

    /** Nothing but the file, what SQLite keeps beside it, where it is open, and its copies; no part of a copy is left after the next one. */
    private void tidy() throws IOException {
        try (Stream<Path> beside = Files.list(file.getParent())) {
            assertThat(beside.map(path -> path.getFileName().toString()))
                    .allMatch(name -> name.matches("work\\.db(-wal|-shm|-journal|\\.open|\\.copies|\\.aside-.*)?"));
        }
    }

    /** Every copy that has a name opens and says the same as one of these. */
    private void copiesAre(Work... any) throws IOException {
        Path copies = file.resolveSibling("work.db.copies");
        if (!Files.isDirectory(copies)) {
            return;
        }
        List<Path> whole = new ArrayList<>();
        try (Stream<Path> entries = Files.list(copies)) {
            entries.filter(path -> path.toString().endsWith(".db")).forEach(whole::add);
        }
        for (Path copy : whole) {
            Path opened = Files.createTempDirectory(folder, "copy").resolve("work.db");
            Files.copy(copy, opened);
            assertThat(Work.of(opened)).isIn((Object[]) any);
        }
    }

    @Test
    void the_first_start() throws Exception {
        for (int kill = 0; kill < KILLS; kill++) {
            begin(kill);
            try (RunningWorkroom room = RunningWorkroom.started(List.of(), "--data", file.toString(), "--new")) {
                LockSupport.parkNanos(random.nextInt(2_000) * 1_000_000L);
                room.kill();
            }
            try (RunningWorkroom room = RunningWorkroom.opened("--data", file.toString(), "--new")) {
                lines(room, "3 oat linen 10 x 20 in");
            }
            assertThat(Work.of(file).pieces()).hasSize(3);
            tidy();
        }
    }

    private void earlier(Path at, String form) throws IOException {
        try (InputStream in = Store.class.getResourceAsStream("form-" + form + ".sql")) {
            assertThat(in).isNotNull();
            String script = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            Jdbi.create("jdbc:sqlite:" + at)
                    .useTransaction(handle -> handle.createScript(script).execute());
        }
    }

    @Test
    void the_change_to_a_newer_form() throws Exception {
        for (int kill = 0; kill < KILLS; kill++) {
            String form = EARLIER.get(kill % EARLIER.size());
            begin(kill);
            earlier(file, form);
            Path beside = folder.resolve("whole" + kill + ".db");
            earlier(beside, form);
            Work whole = Work.of(beside);
            try (RunningWorkroom room = RunningWorkroom.started(List.of(), "--data", file.toString())) {
                LockSupport.parkNanos(random.nextInt(2_500) * 1_000_000L);
                room.kill();
            }
            assertThat(Work.of(file)).as("form " + form).isEqualTo(whole);
            copiesAre(whole);
            tidy();
        }
    }

    @Test
    void an_archive_brought_in_instead_of_all_there_is() throws Exception {
        byte[] archive = archive();
        for (int kill = 0; kill < KILLS; kill++) {
            begin(kill);
            boolean isAcknowledged;
            Work before;
            try (RunningWorkroom room = RunningWorkroom.opened("--data", file.toString(), "--new")) {
                lines(room, "2 oat linen 10 x 20 in", "1 plum silk 7 x 7 in");
                before = Work.of(file);
                String token = room.token("/cloths");
                isAcknowledged =
                        killedDuring(room, 400, () -> room.send("/archive", token, "file", archive, "how", "instead"));
            }
            Work after = Work.of(file);
            if (isAcknowledged || !after.equals(before)) {
                assertThat(after.pieces())
                        .hasSizeGreaterThan(10)
                        .noneMatch(piece -> before.pieces().contains(piece));
                assertThat(after.cloths()).isNotEmpty();
            }
            tidy();
        }
    }

    /** The example's work, as it is sent from one machine to another. */
    private byte[] archive() throws IOException {
        Path example = folder.resolve("example.db");
        try (RunningWorkroom room = RunningWorkroom.opened("--data", example.toString(), "--new")) {
            room.post("/example", room.token("/gift"));
            return room.bytes("/archive");
        }
    }

    @Test
    void a_copy_made_and_one_put_back() throws Exception {
        for (int kill = 0; kill < KILLS; kill++) {
            begin(kill);
            Work first;
            Work second;
            try (RunningWorkroom room = RunningWorkroom.opened("--data", file.toString(), "--new")) {
                lines(room, "2 oat linen 10 x 20 in");
                first = Work.of(file);
                assertThat(room.post("/copies", room.token("/gift")).statusCode())
                        .isEqualTo(303);
                lines(room, "4 sea ramie 9 x 9 in");
                second = Work.of(file);
                String token = room.token("/gift");
                killedDuring(room, 150, () -> room.post("/copies", token));
            }
            assertThat(Work.of(file)).isEqualTo(second);
            copiesAre(first, second);
            try (RunningWorkroom room =
                    RunningWorkroom.started(List.of(), "--data", file.toString(), "--restore", "last")) {
                LockSupport.parkNanos(random.nextInt(2_000) * 1_000_000L);
                room.kill();
            }
            assertThat(Work.of(file)).isIn(first, second);
            copiesAre(first, second);
            tidy();
        }
    }
}
