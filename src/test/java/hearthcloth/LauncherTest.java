package hearthcloth;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The launcher's first start on a machine whose workroom never says its port: nothing waits for it for ever, and nothing of
 * it stays. Maven and Java are scripts here; all that is judged is the launcher.
 */
class LauncherTest {

    /** Writes its process down where it is to be the workroom, and never opens. */
    private static final String JAVA = """
            #!/bin/sh
            case "$*" in
              *"--port 0"*) echo $$ > "$WORKROOM.new"; mv "$WORKROOM.new" "$WORKROOM"; exec sleep 600 ;;
              *" plan "*) exit 0 ;;
              *) echo "started with $*" ;;
            esac
            """;

    /** Far longer than the launcher waits, on a busy machine too; it has an end. */
    private static final Duration PATIENCE = Duration.ofMinutes(5);

    @TempDir
    Path folder;

    private Path workroom;
    private Process launched;

    @BeforeEach
    void lay() throws IOException {
        Files.createDirectories(folder.resolve("src/main"));
        Files.writeString(folder.resolve("pom.xml"), "");
        Files.createDirectories(folder.resolve("examples"));
        Files.createDirectories(folder.resolve("packaging"));
        for (String file : List.of("hearthcloth", "packaging/start", "packaging/remember")) {
            Files.copy(Path.of(file), folder.resolve(file), StandardCopyOption.COPY_ATTRIBUTES);
        }
        workroom = folder.resolve("workroom.pid");
        Files.createDirectories(folder.resolve("ideapage/src"));
        script("ideapage/build", "#!/bin/sh\n");
        script("bin/java", JAVA);
        script("bin/javac", "#!/bin/sh\n");
        script(".mvn/run", "#!/bin/sh\nmkdir -p target/run/lib target/classes\n: > target/hearthcloth.jar\n");
        script("bin/jar", "#!/bin/sh\n[ \"$1\" = xf ] || : > \"$3\"\n");
        ProcessBuilder builder = new ProcessBuilder("bash", "hearthcloth", "stash", "list")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile());
        builder.environment().put("PATH", folder.resolve("bin") + ":" + System.getenv("PATH"));
        builder.environment().put("WORKROOM", workroom.toString());
        launched = builder.start();
    }

    @AfterEach
    void end() {
        launched.destroyForcibly();
    }

    private void script(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(Objects.requireNonNull(file.getParent()));
        Files.writeString(file, text);
        assertThat(file.toFile().setExecutable(true)).isTrue();
    }

    private ProcessHandle workroom() throws IOException, InterruptedException {
        while (!Files.exists(workroom) && launched.isAlive()) {
            launched.waitFor(50, TimeUnit.MILLISECONDS);
        }
        return ProcessHandle.of(Long.parseLong(Files.readString(workroom).strip()))
                .orElseThrow();
    }

    /** It would run for ten minutes. */
    private static void isGone(ProcessHandle workroom) {
        try {
            assertThat(workroom.onExit())
                    .as("the workroom that never opened still runs")
                    .succeedsWithin(PATIENCE);
        } finally {
            workroom.destroyForcibly();
        }
    }

    @Test
    void goes_on_without_a_workroom_that_never_opens() throws Exception {
        ProcessHandle workroom = workroom();

        assertThat(launched.waitFor(PATIENCE.toMillis(), TimeUnit.MILLISECONDS))
                .as("the launcher ends")
                .isTrue();
        assertThat(launched.exitValue()).isZero();
        assertThat(Files.readString(folder.resolve("said"))).contains("Building", "started with", "stash list");
        isGone(workroom);
    }

    @Test
    void leaves_nothing_running_where_it_is_stopped_meanwhile() throws Exception {
        ProcessHandle workroom = workroom();
        launched.destroy();
        launched.waitFor();
        isGone(workroom);
    }
}
