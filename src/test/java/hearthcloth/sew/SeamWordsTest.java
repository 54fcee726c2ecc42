package hearthcloth.sew;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Notation;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.words.speech.Voice;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of one seam: sides, edges, numbers, for each way of building it. */
class SeamWordsTest {

    private static final String BAR = "(hearth \"a\" 80 x 80 %s <| 1A right \"b\" 40 x 80 %s)";

    @Nested
    class Sides {

        @ParameterizedTest
        @CsvSource({
            "right, right, BACK, right sides together",
            "right, right, FRONT, wrong sides together",
            "wrong, wrong, BACK, wrong sides together",
            "wrong, right, BACK, with the right side of bar 1A facing the wrong side of the hearth",
            "same, right, BACK, with the right side of bar 1A facing the hearth",
            "right, same, FRONT, with the wrong side of the hearth facing bar 1A",
        })
        void that_touch_are_named_so_that_the_front_comes_out_as_drawn(
                String hearth, String bar, Face fell, String words) {
            assertThat(lines(String.format(BAR, hearth, bar), Making.metric().felledOn(fell)))
                    .contains("of the hearth. Lay them " + words + ".");
        }

        @Test
        void of_fabrics_that_look_alike_both_ways_are_not_spoken_of() {
            assertThat(lines(String.format(BAR, "same", "same"), Making.metric()))
                    .contains("along the right edge of the hearth.")
                    .doesNotContain("side of");
        }

        @Test
        void the_edge_is_named_as_the_work_lies_and_not_as_the_front_is_drawn() {
            assertThat(lines(String.format(BAR, "same", "same"), Making.metric().felledOn(Face.FRONT)))
                    .contains("Lay the hearth back up.", "along the left edge of the hearth.");
        }
    }

    @Nested
    class Felled {

        @Test
        void seam_wraps_the_narrow_edge_with_the_wide_one() {
            assertThat(lines(String.format(BAR, "same", "same"), Making.metric()))
                    .contains(
                            "Let the edge of bar 1A stick out 0.5 cm beyond the edge of the hearth",
                            "Stitch 1 cm from the edge of bar 1A, which lies on top, with 2.5 mm stitches. That is 0.5 cm from"
                                    + " the edge of the hearth underneath. Backstitch at both ends.",
                            "Press both seam allowances towards the hearth; the wider one of bar 1A lies on top.",
                            "Fold the raw edge of bar 1A under by 0.5 cm",
                            "The fold lies 0.5 cm from the stitching.");
        }

        @Test
        void seam_in_which_the_work_wraps_says_so() {
            String work = "(hearth \"a\" 80 x 80 same |> 1A right \"b\" 40 x 80 same)";

            assertThat(lines(work, Making.metric()))
                    .contains(
                            "Let the edge of the hearth stick out 0.5 cm beyond the edge of bar 1A",
                            "Press both seam allowances towards bar 1A; the wider one of the hearth lies on top.");
        }

        /** docs/sources.md#felled-trimmed: sewn at ⅝ in, one side trimmed to ¼ in, ¼ in turned under, band ⅜ in. */
        @Test
        void and_trimmed_seam_is_sewn_level_and_then_trimmed() {
            assertThat(lines(String.format(BAR, "same", "same"), inches("felled and trimmed")))
                    .contains(
                            "Line up the two edges.",
                            "Stitch ⅝ in from the edge of bar 1A, which lies on top, with 2.5 mm stitches. Backstitch",
                            "Trim the seam allowance of the hearth to ¼ in.",
                            "Fold the raw edge of bar 1A under by ¼ in",
                            "The fold lies ⅜ in from the stitching.");
        }

        /** Where W − n would not cover the wrapped edge, the fold goes to that edge. */
        @Test
        void seam_with_little_to_turn_under_still_hides_the_raw_edge() {
            SeamKind tight = SeamKind.felled(Length.inches(1, 4), Length.inches(3, 8));

            assertThat(lines(String.format(BAR, "same", "same"), Making.inches().withSeam(tight)))
                    .contains("Fold the raw edge of bar 1A under by ⅛ in", "The fold lies ¼ in from the stitching.");
        }
    }

    @Nested
    class Others {

        /** Utah State University Extension: ⅜ in, trimmed to less than the next row, then ⅜ in. */
        @Test
        void a_french_seam_is_sewn_first_with_the_other_sides_together() {
            assertThat(lines(String.format(BAR, "right", "right"), inches("french, trimmed")))
                    .contains(
                            "of the hearth. Lay them wrong sides together.",
                            "Stitch ⅜ in from the edge of bar 1A, which lies on top",
                            "Trim both seam allowances to 3/16 in.".replace("3/16", "³⁄₁₆"),
                            "fold along the stitching the other way, front to front. Right sides together. Press the fold sharp.",
                            "Stitch ⅜ in from the fold.",
                            "Press the flap towards the hearth.");
        }

        /** "Hand Sewing Lessons", Model 10: ¼ in folds on opposite sides, raw edges inside a ½ in lap. */
        @Test
        void a_lapped_seam_folds_the_edges_to_opposite_faces() {
            assertThat(lines(String.format(BAR, "same", "same"), inches("lapped")))
                    .contains(
                            "Press ¼ in along the edge of bar 1A to its front, and ¼ in along the edge of the hearth to its"
                                    + " back.",
                            "overlap by ½ in and the raw edges meet inside",
                            "Turn over and edgestitch the other fold.");
        }

        @Test
        void a_whipped_seam_is_sewn_by_hand_along_two_folds() {
            assertThat(lines(
                            String.format(BAR, "same", "same"),
                            Making.metric()
                                    .withSeam(SeamKind.named("gamchimjil").orElseThrow())))
                    .contains(
                            "Press 0.7 cm along the edge of bar 1A and 0.7 cm along the edge of the hearth to the back.")
                    .contains("Whipstitch them together by hand");
        }
    }

    @Test
    void free_patchwork_speaks_of_patches_and_of_the_steps_that_made_a_block() {
        Cloth cloth = new Cloth(
                Notation.parse("((patch1 \"a\" 80 x 80 same <| patch2 \"a\" 80 x 80 same) </"
                        + " (patch3 \"a\" 60 x 40 same |> patch4 \"a\" 100 x 40 same))"),
                Making.metric());

        assertThat(SeamTasks.of(cloth, new MakerWords(Voice.english(Ruler.MILLIMETRES))))
                .extracting(seam -> seam.task().title())
                .containsExactly(
                        "Patch 2 to the right of patch 1",
                        "Patch 4 to the right of patch 3",
                        "The block of step 2 below the block of step 1");
    }

    private static Making inches(String seam) {
        return Making.inches().withSeam(SeamKind.named(seam).orElseThrow());
    }

    private static String lines(String notation, Making making) {
        Ruler ruler = making.margins().mark().equals(Ruler.MILLIMETRES.step()) ? Ruler.MILLIMETRES : Ruler.EIGHTHS;
        Cloth cloth = new Cloth(Notation.parse(notation), making);
        return String.join(
                "\n",
                SeamTasks.of(cloth, new MakerWords(Voice.english(ruler)))
                        .get(0)
                        .task()
                        .lines());
    }
}
