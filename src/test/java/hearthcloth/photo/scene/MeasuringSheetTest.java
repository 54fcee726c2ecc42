package hearthcloth.photo.scene;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.draw.cloth.Paper;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Unit;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Reading;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.ReferenceSheet;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;

/** The measuring sheet, printed to PDF, rendered, laid on a floor (flat and bent) and read from the photograph of it. */
final class MeasuringSheetTest {

    private static final BufferedImage A4 = PrintedScenes.print(Paper.A4);

    /** Drawn once; each seed is used with one way of lying only. */
    private static final Map<Long, byte[]> DRAWN = new HashMap<>();

    private static Verdict read(long seed, PrintedScenes.Lying lying, double tilt, ReferenceSheet said)
            throws IOException {
        Scene scene = PrintedScenes.drawn(seed, A4, new PrintedScenes.Wish(lying, tilt, 2.1, 8, 6));
        if (!DRAWN.containsKey(seed)) {
            DRAWN.put(seed, Evaluation.jpeg(scene.photograph(), 0.8f));
        }
        Reading reading = PhotoReader.read(DRAWN.get(seed), said, ReadingProgress.NONE);
        assertThat(reading).isInstanceOf(Reading.Read.class);
        return new Verdict(scene, (Reading.Read) reading, "seed " + seed);
    }

    @Test
    void a_flat_sheet_gives_every_side_to_a_millimetre_or_so() throws IOException {
        Verdict verdict = read(3, PrintedScenes.Lying.FLAT, 10, ReferenceSheet.MEASURING);
        assertThat(verdict.found).isEqualTo(verdict.visible).isGreaterThan(3);
        assertThat(verdict.invented).isEmpty();
        assertThat(verdict.sides).allMatch(Verdict.SideCheck::held);
        assertThat(verdict.sides.stream().filter(side -> !side.doubted()))
                .hasSizeGreaterThan(8)
                .allMatch(side -> side.error() < Math.max(1.0, 0.007 * side.trueMm()));
    }

    @Test
    void it_is_read_first_whatever_was_said_to_lie_there() throws IOException {
        Verdict verdict = read(3, PrintedScenes.Lying.FLAT, 10, ReferenceSheet.LETTER);
        assertThat(verdict.sides).isNotEmpty().allMatch(Verdict.SideCheck::held);
    }

    @Test
    void a_curled_sheet_is_found_and_what_is_said_of_each_side_holds_the_truth() throws IOException {
        Verdict curled = read(4, PrintedScenes.Lying.CURLED, 15, ReferenceSheet.MEASURING);
        assertThat(curled.sides).isNotEmpty().allMatch(Verdict.SideCheck::held);
    }

    @Test
    void a_crumpled_sheet_is_found_too() throws IOException {
        Verdict crumpled = read(9, PrintedScenes.Lying.HALF_CRUMPLED, 20, ReferenceSheet.MEASURING);
        assertThat(crumpled.sides).isNotEmpty().allMatch(Verdict.SideCheck::held);
    }

    @Test
    void a_print_that_came_out_smaller_is_put_right_by_what_its_line_measures() throws IOException {
        Verdict as200 = read(5, PrintedScenes.Lying.FLAT, 5, ReferenceSheet.MEASURING);
        Verdict as190 = read(5, PrintedScenes.Lying.FLAT, 5, ReferenceSheet.parse("sheet 19 cm"));
        for (int i = 0; i < as200.sides.size(); i++) {
            double share = as190.sides.get(i).readMm() / as200.sides.get(i).readMm();
            assertThat(share).isBetween(0.949, 0.951);
        }
    }

    @Test
    void where_it_does_not_lie_the_picture_is_refused_with_that_reason() throws IOException {
        Scene scene = Scenes.drawn(2, new Scenes.Wish(Floor.Kind.PLAIN, 5, 2.1, 9, Scenes.A4));
        Reading reading = PhotoReader.read(
                Evaluation.jpeg(scene.photograph(), 0.8f), ReferenceSheet.MEASURING, ReadingProgress.NONE);
        assertThat(reading)
                .isInstanceOfSatisfying(
                        Reading.Refused.class,
                        refused -> assertThat(refused.reason().english()).contains("measuring sheet was not found"));
    }

    @Test
    void what_its_line_measures_is_read_in_either_unit_and_nonsense_is_said_to_be_so() {
        assertThat(ReferenceSheet.parse("sheet").size().height()).isEqualTo(Length.mm(254));
        assertThat(ReferenceSheet.parse("sheet 198 mm").size().height().in(Unit.MILLIMETRE))
                .isEqualTo(251.46);
        assertThat(ReferenceSheet.parse("sheet 7 7/8 in").widthMm()).isBetween(190.0, 190.1);
        Assertions.assertThatThrownBy(() -> ReferenceSheet.parse("sheet 5 cm"))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("20 cm");
    }
}
