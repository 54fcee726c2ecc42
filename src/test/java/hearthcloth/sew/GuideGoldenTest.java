package hearthcloth.sew;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Ruler;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * Whole guides, read through as a maker would before they were kept: could one sew from this without asking anybody
 * anything? Rewritten by {@code mvn test -Dgolden=write}.
 */
class GuideGoldenTest {

    private static final Path GOLDEN = Path.of("src/test/resources/golden/guide");

    @Test
    void a_small_cloth_in_inches_with_a_joined_bar_and_a_square_hem() throws IOException {
        isKept("inches.txt", GuideText.of(Guide.of(Cloths.inches(), Ruler.EIGHTHS)));
    }

    @Test
    void a_small_cloth_in_centimetres_with_fells_on_the_front_and_a_mitred_hem() throws IOException {
        isKept("metric.txt", GuideText.of(Guide.of(Cloths.metric(), Ruler.MILLIMETRES)));
    }

    private static void isKept(String file, String text) throws IOException {
        Path kept = GOLDEN.resolve(file);
        if (System.getProperty("golden", "").equals("write")) {
            Files.createDirectories(GOLDEN);
            Files.writeString(kept, text);
        }
        assertThat(text).isEqualTo(Files.readString(kept, StandardCharsets.UTF_8));
    }
}
