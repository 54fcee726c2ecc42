package hearthcloth.sew;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Notation;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.words.speech.Voice;
import org.junit.jupiter.api.Test;

/** What comes before the first seam. */
class TrialSeamTest {

    private static final String TWO = "(hearth \"a\" 80 x 80 same <| 1A right \"b\" 40 x 80 same)";
    private static final String TASKS = "(A1 \"a\" 80 x 80 same <| A2 \"b\" 40 x 80 same)";
    private static final String LOOSE = "(patch1 \"a\" 80 x 80 same <| patch2 \"b\" 40 x 80 same)";

    private static Cloth cloth(String notation, Making making) {
        return new Cloth(Notation.parse(notation), making);
    }

    /** Two squares of 10 cm lose 5 + 10 mm: 18.5 cm. Two of 4 in lose ¼ + ½ in: 7¼ in (docs/sources.md#seam-arithmetic). */
    @Test
    void two_scraps_come_out_shorter_by_both_allowances() {
        Task metric = TrialSeam.seam(cloth(TWO, Making.metric()), new MakerWords(Voice.english(Ruler.MILLIMETRES)));
        assertThat(metric.check().map(Task.Check::size)).contains(new Size(Length.mm(185), Length.cm(10)));
        assertThat(metric.check().map(Task.Check::sentence))
                .contains("Together they should now measure 18.5 × 10 cm. Measure across the seam first.");
        assertThat(metric.lines())
                .startsWith("Cut two scraps 10 cm square and sew them together as in the first seam below.")
                .anyMatch(line -> line.endsWith("0.5 cm of one edge and 1 cm of the other: 1.5 cm in all."));

        Task inches = TrialSeam.seam(cloth(TWO, Making.inches()), new MakerWords(Voice.english(Ruler.EIGHTHS)));
        assertThat(inches.check().map(Task.Check::size)).contains(new Size(Length.inches(29, 4), Length.inches(4)));
        assertThat(inches.lines())
                .startsWith("Cut two scraps 4 in square and sew them together as in the first seam below.")
                .anyMatch(line -> line.endsWith("¼ in of one edge and ½ in of the other: ¾ in in all."));
    }

    @Test
    void a_difference_does_no_harm_as_far_as_the_leeway_goes_and_free_patchwork_has_none() {
        MakerWords words = new MakerWords(Voice.english(Ruler.MILLIMETRES));
        assertThat(TrialSeam.seam(cloth(TWO, Making.metric()), words).lines())
                .last()
                .asString()
                .startsWith("Measure after every step. Every bar is cut 1.2 cm too long");
        assertThat(TrialSeam.seam(cloth(LOOSE, Making.metric()), words).lines())
                .last()
                .asString()
                .startsWith("Measure after every step. Nothing is cut too long here.");
        assertThat(TrialSeam.seam(cloth(TWO, Making.metric().withLeeway(Length.ZERO)), words)
                        .lines())
                .noneMatch(line -> line.startsWith("Measure after every step."));
    }

    @Test
    void front_and_back_are_told_apart_by_the_face_the_seams_are_pressed_to() {
        MakerWords words = new MakerWords(Voice.english(Ruler.MILLIMETRES));
        assertThat(TrialSeam.seam(cloth(TWO, Making.metric()), words).warnings())
                .singleElement()
                .asString()
                .startsWith("All seams are pressed to the back, and the front stays smooth.");
        assertThat(TrialSeam.seam(cloth(TWO, Making.metric().felledOn(Face.FRONT)), words)
                        .warnings())
                .singleElement()
                .asString()
                .startsWith("All seams are pressed to the front, and the back stays smooth.");
    }

    @Test
    void laying_out_counts_the_patches_and_explains_only_the_names_there_are() {
        assertThat(TrialSeam.layout(
                                cloth(TWO, Making.metric()),
                                Voice.english(Ruler.MILLIMETRES).sewing())
                        .lines())
                .startsWith("Lay out all 2 patches as in the picture of the front, each with its slip.")
                .anyMatch(line -> line.startsWith("The hearth is the centre. A bar is named"))
                .noneMatch(line -> line.startsWith("A letter is a small task."));
        assertThat(TrialSeam.layout(
                                cloth(TASKS, Making.metric()),
                                Voice.english(Ruler.MILLIMETRES).sewing())
                        .lines())
                .anyMatch(line -> line.startsWith("A letter is a small task."))
                .noneMatch(line -> line.startsWith("The hearth"));
        assertThat(TrialSeam.layout(
                                cloth(LOOSE, Making.metric()),
                                Voice.english(Ruler.MILLIMETRES).sewing())
                        .lines())
                .noneMatch(line -> line.startsWith("A letter") || line.startsWith("The hearth"));
        assertThat(TrialSeam.layout(
                                cloth("hearth \"a\" 80 x 80 same", Making.metric()),
                                Voice.english(Ruler.MILLIMETRES).sewing())
                        .lines())
                .startsWith("Lay out the one patch as in the picture of the front, each with its slip.");
    }
}
