package hearthcloth.sew;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** {@link FewWords}: whatever a seam has to say, five lines of 75 signs are made of it. */
class FewWordsTest {

    private static List<String> lines(Random chance, int count) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            lines.add("Line " + i + " " + "x".repeat(chance.nextInt(78)) + ".");
        }
        return lines;
    }

    /** Seeds 1 to 200, up to twelve lines of up to 87 signs. */
    @Test
    void five_lines_of_seventy_five_signs_at_most_in_the_order_said() {
        for (int seed = 1; seed <= 200; seed++) {
            Random chance = new Random(seed);
            List<String> all = lines(chance, 1 + chance.nextInt(12));
            List<String> fitted = FewWords.fitted(all);
            assertThat(fitted).hasSizeLessThanOrEqualTo(5).allMatch(line -> line.length() <= 75);
            String said = String.join(" ", fitted);
            int at = -1;
            for (String line : all) {
                int found = said.indexOf(line);
                if (found >= 0) {
                    assertThat(found).isGreaterThan(at);
                    at = found;
                }
            }
            assertThat(at)
                    .as("something is said")
                    .isGreaterThanOrEqualTo(all.stream().allMatch(line -> line.length() > 75) ? -1 : 0);
        }
    }

    @Test
    void what_fits_is_said_whole() {
        List<String> five = List.of("One.", "Two.", "Three.", "Four.", "Five.");
        assertThat(FewWords.fitted(five)).isEqualTo(five);
        assertThat(FewWords.fitted(List.of("One.", "Two.", "Three.", "Four.", "Five.", "Six.")))
                .as("the two shortest neighbours share a line")
                .containsExactly("One. Two.", "Three.", "Four.", "Five.", "Six.");
    }
}
