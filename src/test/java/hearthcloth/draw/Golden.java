package hearthcloth.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files looked at once and then kept. Rewritten by {@code mvn test -Dgolden=write}. */
final class Golden {

    private static final Path FOLDER = Path.of("src/test/resources/golden/draw");

    private Golden() {}

    static void isKept(String file, String text) throws IOException {
        Path kept = FOLDER.resolve(file);
        if (System.getProperty("golden", "").equals("write")) {
            Files.createDirectories(FOLDER);
            Files.writeString(kept, text);
        }
        assertThat(text).isEqualTo(Files.readString(kept));
    }
}
