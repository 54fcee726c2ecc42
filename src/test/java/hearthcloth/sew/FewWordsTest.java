package hearthcloth.sew;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Notation;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Ruler;
import hearthcloth.words.speech.Voice;
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

    private static List<String> said(String seam, boolean metric) {
        SeamKind kind = SeamKind.named(seam).orElseThrow();
        Making making = (metric ? Making.metric() : Making.inches()).withSeam(kind);
        Cloth cloth = new Cloth(Notation.parse("(hearth \"a\" 80 x 80 same <| 1A right \"b\" 40 x 80 same)"), making);
        return SeamTasks.of(cloth, new MakerWords(Voice.english(metric ? Ruler.MILLIMETRES : Ruler.EIGHTHS)))
                .get(0)
                .task()
                .few();
    }

    /** The narrow allowance is ¼ in, the wide one ½ in beside it: ½ in from the edge that sticks out by ¼ in. */
    @Test
    void a_felled_seam_is_laid_pinned_stitched_and_turned_under_in_this_order() {
        String all = String.join(" ", said("felled", false));

        assertThat(all)
                .containsSubsequence(
                        "up. ",
                        "1A",
                        "stick out ¼ in",
                        "Stitch ½ in from the edge on top",
                        "under ¼ in, stitch the fold.");
    }

    /** Allowances of ¾ in and a band of ⅜ in: first sewn at ¾ − ⅜ = ⅜ in, then ⅜ in from the fold. */
    @Test
    void a_french_seam_is_stitched_folded_over_and_stitched_again() {
        String all = String.join(" ", said("french, trimmed", false));

        assertThat(all)
                .containsSubsequence(
                        "up. ",
                        "Pin",
                        "Stitch ⅜ in from the edge on top",
                        "Fold the other way along the stitches. Stitch ⅜ in from the fold.",
                        "Open it, press the flap");
    }

    /** Allowances and band of ½ in: each edge is pressed over by ½ − ¼ = ¼ in, and the folds hook by the whole band. */
    @Test
    void a_lapped_seam_hooks_two_folds_and_is_stitched_twice() {
        String all = String.join(" ", said("lapped", false));

        assertThat(all)
                .containsSubsequence(
                        "Press",
                        "¼ in",
                        "¼ in of the other",
                        "up, ",
                        "Hook the folds, ½ in over each other. Pin.",
                        "Stitch along both folds, one from each side. Press.");
    }

    @Test
    void a_whipped_seam_presses_seven_millimetres_of_both_and_is_sewn_by_hand() {
        String all = String.join(" ", said("gamchimjil", true));

        assertThat(all)
                .containsSubsequence(
                        "Press 0.7 cm of",
                        "0.7 cm of the other",
                        "up. ",
                        "Whipstitch them by hand, about 1 mm apart.",
                        "Open it out and press it flat.");
    }

    /** 71 + 1 + 3 signs fill a line of 75; one sign more does not fit, and the second line is left out. */
    @Test
    void a_line_of_seventy_five_signs_is_full() {
        String most = "x".repeat(71);
        List<String> six = List.of(most, "abc", most + "y", most + "z", most + "z", most + "z");
        assertThat(FewWords.fitted(six).get(0)).isEqualTo(most + " abc").hasSize(75);

        List<String> over = List.of(most + "y", "abc", most + "yz", most + "yz", most + "yz", most + "yz");
        assertThat(FewWords.fitted(over)).doesNotContain("abc").hasSize(5);
        assertThat(FewWords.fitted(List.of("x".repeat(75), "y".repeat(76)))).containsExactly("x".repeat(75));
    }

    @Test
    void of_several_pairs_the_shortest_is_joined() {
        assertThat(FewWords.fitted(List.of("aaaa", "bbbb", "c", "d", "eeee", "ffff")))
                .containsExactly("aaaa", "bbbb", "c d", "eeee", "ffff");
        // of equal pairs the first
        assertThat(FewWords.fitted(List.of("a", "b", "c", "d", "e", "f"))).containsExactly("a b", "c", "d", "e", "f");
    }
}
