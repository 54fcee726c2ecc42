package hearthcloth.sew;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Made;
import hearthcloth.cloth.making.Hem;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.words.speech.Voice;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Hems of the felled example: 380 mm raw, 340 mm hemmed (docs/sources.md#felled-example, #hem-fold). */
class HemmingTest {

    private static final Length TEN = Length.mm(10);

    @Test
    void a_square_hem_is_measured_raw_then_half_done_then_done() {
        assertThat(tasks(new Hem(TEN, TEN, Hem.Corner.SQUARE)))
                .flatExtracting(
                        task -> task.check().map(Task.Check::size).stream().toList())
                .containsExactly(
                        Size.square(Length.mm(380)),
                        new Size(Length.mm(380), Length.mm(340)),
                        Size.square(Length.mm(340)));
    }

    /** hem_mitre.csv, h = 10: marked at 40 mm, stitched 14.142 mm; trimmed 5 mm away at 40 − 5√2 = 32.9 mm. */
    @Test
    void a_mitre_is_marked_stitched_and_trimmed_where_the_table_says() {
        Task mitre = tasks(new Hem(TEN, TEN, Hem.Corner.MITRED)).stream()
                .filter(task -> task.title().startsWith("Mitre"))
                .findFirst()
                .orElseThrow();

        assertThat(String.join("\n", mitre.lines()))
                .contains(
                        "Mark the raw edges 4 cm from the point of the corner",
                        "about 1.4 cm",
                        "cut from about 3.3 cm along");
    }

    @Test
    void a_hem_turned_once_is_told_as_one_fold() {
        assertThat(tasks(new Hem(Length.ZERO, TEN, Hem.Corner.SQUARE)))
                .flatExtracting(Task::lines)
                .anyMatch(line -> line.contains("The raw edge still shows"))
                .noneMatch(line -> line.startsWith("Fold in again") || line.contains("inner fold"));
    }

    @Test
    void a_cloth_without_a_hem_has_no_hem_steps() {
        assertThat(tasks(new Hem(Length.ZERO, Length.ZERO, Hem.Corner.SQUARE))).isEmpty();
    }

    /** Twelve layers where a seam runs out on an edge: six seams on each of the four sides of three rounds of pairs. */
    @Test
    void thick_places_are_named_edge_by_edge() {
        List<String> warnings = tasks(new Hem(TEN, TEN, Hem.Corner.MITRED)).stream()
                .flatMap(task -> task.warnings().stream())
                .toList();

        assertThat(warnings).allMatch(warning -> warning.contains("up to 12 layers"));
        assertThat(warnings).hasSize(2);
    }

    private static List<Task> tasks(Hem hem) {
        Cloth cloth = new Cloth(
                Made.felledExample().work(), Made.felledExampleMaking().withHem(hem));
        return Hemming.of(cloth, new MakerWords(Voice.english(Ruler.MILLIMETRES)));
    }
}
