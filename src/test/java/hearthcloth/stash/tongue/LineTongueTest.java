package hearthcloth.stash.tongue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** {@link LineTongue} by a small language of two numbers and one rule; {@link LatinLines} and {@link EasternLines} leave English alone. */
class LineTongueTest {

    private static final LineTongue SMALL = new LineTongue("par", "zwo*=2 tri=3", "par|cm", "{n} par -> $0 of them");

    @Test
    void a_number_word_counts_where_a_unit_or_a_counter_follows() {
        assertThat(SMALL.english("par zwo cm")).isEqualTo("par 2 cm");
        assertThat(SMALL.english("par, zwo greens"))
                .as("with a star also at the beginning of a part")
                .isEqualTo("par, 2 greens");
        assertThat(SMALL.english("par, tri greens")).isEqualTo("par, tri greens");
    }

    @Test
    void a_line_without_a_sign_of_the_language_is_passed_by() {
        assertThat(SMALL.english("4 x 8 in, green print")).isEqualTo("4 x 8 in, green print");
        assertThat(SMALL.english("")).isEmpty();
    }

    /** English lines as they stand in the help; no other language may take a word of them for its own. */
    @Test
    void english_lines_stay_as_they_are() {
        for (String line : List.of(
                "4 x 8 in, 12 of them, green print, right side",
                "1 1/2 yd of 44 in, oat linen, washed",
                "6 in square, rust",
                "fat quarter, kelp",
                "10 x 12 cm, navy")) {
            for (LineTongue tongue : List.of(
                    LatinLines.FRENCH,
                    LatinLines.GERMAN,
                    LatinLines.SPANISH,
                    EasternLines.KOREAN,
                    EasternLines.JAPANESE)) {
                assertThat(tongue.english(line)).isEqualTo(line);
            }
        }
    }
}
