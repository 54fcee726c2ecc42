package hearthcloth;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchService;
import java.util.List;
import java.util.Random;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@code plan} is stopped and killed while it writes. What was there is whole afterwards, a stop leaves nothing hidden, and
 * what a kill leaves goes at the next run. {@code -Dhearthcloth.kills=100} kills more often.
 */
class KilledPlanTest {

    private static final int KILLS = Integer.getInteger("hearthcloth.kills", 2);

    private final Random random = new Random(20_261_130);
    private final Path folder;
    private final Path out;

    KilledPlanTest(@TempDir Path folder) {
        this.folder = folder;
        this.out = folder.resolve("out");
    }

    @BeforeEach
    void plan() throws Exception {
        assertThat(started().waitFor()).isZero();
    }

    private Process started() throws IOException {
        return new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "hearthcloth.Main",
                        "plan",
                        "examples/two-lengths.csv",
                        "--budget",
                        "1ms",
                        "--out",
                        out.toString()))
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile())
                .start();
    }

    /** A plan that has begun to write, some moments later. */
    private Process writing() throws Exception {
        try (WatchService watch = out.getFileSystem().newWatchService()) {
            out.register(watch, StandardWatchEventKinds.ENTRY_CREATE);
            Process plan = started();
            watch.take();
            LockSupport.parkNanos(random.nextInt(400) * 1_000_000L);
            return plan;
        }
    }

    private List<String> hidden() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.map(path -> String.valueOf(path.getFileName()))
                    .filter(name -> name.startsWith(".hearthcloth-"))
                    .toList();
        }
    }

    private void isWhole() throws IOException {
        for (String file : new String[] {"plan.json", "front.svg", "back.svg", "cut.svg", "guide.pdf"}) {
            assertThat(out.resolve("1").resolve(file)).isNotEmptyFile();
        }
    }

    @Test
    void stopped_while_it_writes_it_leaves_nothing_hidden_and_what_was_there_is_whole() throws Exception {
        for (int kill = 0; kill < KILLS; kill++) {
            Process plan = writing();
            plan.destroy();
            plan.waitFor();
            assertThat(hidden()).isEmpty();
            isWhole();
        }
        assertThat(Files.readString(folder.resolve("said"))).doesNotContain("Exception");
    }

    @Test
    void what_a_kill_leaves_goes_at_the_next_run() throws Exception {
        for (int kill = 0; kill < KILLS; kill++) {
            Process plan = writing();
            plan.destroyForcibly();
            plan.waitFor();
        }
        assertThat(started().waitFor()).isZero();
        assertThat(hidden()).isEmpty();
        isWhole();
    }
}
