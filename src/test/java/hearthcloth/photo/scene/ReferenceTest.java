package hearthcloth.photo.scene;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Reading;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.ReferenceSheet;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** All sizes hang on the sheet: what is like it is never taken for it in silence. */
class ReferenceTest {

    private static final int PAPER = 0xf4f4f2;
    private static final int COTTON = 0xf2f0ea;
    private static final int OLIVE = 0x6f7f3a;
    private static final int NAVY = 0x1f2a44;
    private static final int BLUE = 0x1c3f94;

    private static final Scrap A4 = box(-90, -20, 210, 297, 0.2, PAPER);
    private static final Scrap PATCH = box(260, -190, 120, 80, 0.3, NAVY);

    @Test
    void a_card_is_taken_and_not_scraps_of_its_proportions_that_are_plainer_and_larger() throws IOException {
        Scrap card = new Scrap(Scenes.card(new double[] {-60, 20}, 0.7), weave(BLUE), 0, true);

        Reading.Read read = read(
                ReferenceSheet.CARD,
                12,
                450,
                card,
                box(90, 60, 68, 43, 0.2, OLIVE),
                box(60, -70, 103, 65, 1.1, OLIVE),
                box(-120, -90, 85.6, 53.98, 0.1, OLIVE));

        assertThat(isAt(read, camera(12, 450), -60, 20)).isTrue();
    }

    @Test
    void scraps_of_a_cards_proportions_are_no_card() throws IOException {
        assertThat(refusal(
                        ReferenceSheet.CARD,
                        12,
                        450,
                        box(90, 60, 68, 43, 0.2, OLIVE),
                        box(60, -70, 85.6, 53.98, 1.1, NAVY)))
                .contains("No card was found");
    }

    @Test
    void white_cloth_of_the_sheets_very_proportions_is_a_rival() throws IOException {
        assertThat(refusal(ReferenceSheet.A4, 12, 900, A4, PATCH, box(190, 60, 180, 254.6, -0.3, COTTON)))
                .contains("Two things")
                .contains("A4")
                .contains("out of the picture");
    }

    @Test
    void white_cloth_of_nearly_the_sheets_proportions_does_not_take_its_place() throws IOException {
        Reading.Read larger = read(ReferenceSheet.A4, 12, 900, A4, PATCH, box(190, 60, 230, 311, -0.3, PAPER));
        Reading.Read smaller = read(ReferenceSheet.A4, 12, 900, A4, PATCH, box(190, 60, 186, 271, -0.3, PAPER));

        assertThat(Stream.of(larger, smaller)).allMatch(read -> isAt(read, camera(12, 900), -90, -20));
    }

    @Test
    void two_sheets_of_one_size_are_no_rivals() throws IOException {
        Reading.Read read = read(ReferenceSheet.A4, 12, 900, A4, PATCH, box(190, 60, 210, 297, -0.3, PAPER));

        assertThat(read.scale().sheetsInPicture()).hasSize(2);
        assertThat(read.pieces()).hasSize(1).allMatch(piece -> piece.doubts().isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"0", "28"})
    void a_sheet_of_the_other_kind_is_named(double tilt) throws IOException {
        otherKindIsNamed(tilt);
    }

    @Tag("long")
    @ParameterizedTest
    @CsvSource({"4", "8", "12", "16", "20", "24"})
    void a_sheet_of_the_other_kind_is_named_at_every_tilt_between(double tilt) throws IOException {
        otherKindIsNamed(tilt);
    }

    private static void otherKindIsNamed(double tilt) throws IOException {
        Scrap letter = box(-90, -20, 215.9, 279.4, 0.2, PAPER);

        assertThat(refusal(ReferenceSheet.LETTER, tilt, 900, A4, PATCH))
                .contains("looks like A4")
                .contains("Say A4");
        assertThat(refusal(ReferenceSheet.A4, tilt, 900, letter, PATCH)).contains("looks like Letter");
    }

    @Test
    void a_sheet_of_which_a_strip_is_covered_makes_every_piece_doubtful() throws IOException {
        Reading.Read read = read(ReferenceSheet.A4, 5, 900, box(-90, -20, 210, 287, 0.2, PAPER), PATCH);

        assertThat(read.pieces())
                .hasSize(1)
                .allSatisfy(piece -> assertThat(piece.doubts()).anySatisfy(doubt -> {
                    assertThat(doubt.kind()).isEqualTo(Doubt.Kind.SHEET);
                    assertThat(doubt.sentence().english()).contains("3 %").contains("flat and clear");
                }));
        assertThat(read.sharedDoubts()).hasSize(1);
        assertThat(read.pieces().get(0).doubts()).containsAll(read.sharedDoubts());
        assertThat(read.pieces().get(0).ownDoubts()).doesNotContainAnyElementsOf(read.sharedDoubts());
    }

    @Test
    void a_sheet_of_which_more_is_covered_is_refused() throws IOException {
        assertThat(refusal(ReferenceSheet.A4, 5, 900, box(-90, -20, 210, 240, 0.2, PAPER), PATCH))
                .contains("No A4 was found");
    }

    @Test
    void cream_cloth_of_the_sheets_proportions_is_not_taken_where_a_larger_white_thing_lies_half_in_shadow()
            throws IOException {
        Light light = new Light(0.0001, 0, List.of(new Light.Shadow(-230, -20, 100, 600, 0.35, 0.1)), 0.2, 0.2);
        Scrap covered = new Scrap(
                List.of(
                        new double[] {-195, -168},
                        new double[] {15, -168},
                        new double[] {15, 70},
                        new double[] {-60, 70},
                        new double[] {-60, 129},
                        new double[] {-195, 129}),
                weave(PAPER),
                0,
                true);

        Reading reading =
                reading(light, ReferenceSheet.A4, 5, 900, covered, box(190, 60, 145, 205, 0.2, COTTON), PATCH);

        assertThat(reading)
                .isInstanceOfSatisfying(
                        Reading.Refused.class,
                        refused -> assertThat(refused.reason().english()).contains("Two things", "shadow"));
    }

    @Test
    void a_sheet_that_a_dark_scrap_touches_which_runs_off_the_picture_is_told_by_its_whiteness() throws IOException {
        Scrap strip = box(-10, 260, 40, 310, 0.2, NAVY);

        Reading.Read read = read(ReferenceSheet.A4, 5, 900, A4, PATCH, strip);

        assertThat(isAt(read, camera(5, 900), -90, -20)).isTrue();
        assertThat(read.sharedDoubts()).isEmpty();
        assertThat(read.pieces()).anyMatch(piece -> piece.ownDoubts().isEmpty());
    }

    @Test
    void a_mat_and_cloth_of_its_proportions_are_not_told_apart() throws IOException {
        ReferenceSheet mat = ReferenceSheet.of(new Size(Length.mm(300), Length.mm(220)));

        assertThat(refusal(mat, 8, 900, box(-90, -20, 300, 220, 0.2, OLIVE), box(230, 80, 210, 154, -0.3, NAVY)))
                .contains("Two things");
    }

    @Test
    void a_scrap_is_no_mat_that_only_a_camera_high_above_could_see_so_small() throws IOException {
        ReferenceSheet mat = ReferenceSheet.of(new Size(Length.mm(450), Length.mm(300)));

        assertThat(refusal(mat, 8, 900, box(-90, -20, 90, 60, 0.2, OLIVE), box(260, -190, 90, 90, 0.3, NAVY)))
                .contains("No rectangle was found");
    }

    private static Reading.Read read(ReferenceSheet sheet, double tilt, double across, Scrap... scraps)
            throws IOException {
        Reading reading = reading(sheet, tilt, across, scraps);
        assertThat(reading).isInstanceOf(Reading.Read.class);
        return (Reading.Read) reading;
    }

    private static String refusal(ReferenceSheet sheet, double tilt, double across, Scrap... scraps)
            throws IOException {
        Reading reading = reading(sheet, tilt, across, scraps);
        assertThat(reading).isInstanceOf(Reading.Refused.class);
        return ((Reading.Refused) reading).reason().english();
    }

    private static Reading reading(ReferenceSheet sheet, double tilt, double across, Scrap... scraps)
            throws IOException {
        return reading(new Light(0.0001, 0, List.of(), 0.2, 0.2), sheet, tilt, across, scraps);
    }

    private static Reading reading(Light light, ReferenceSheet sheet, double tilt, double across, Scrap... scraps)
            throws IOException {
        Camera camera = camera(tilt, across);
        Floor floor = new Floor(Floor.Kind.PLAIN, Paint.srgb(0x9c8f7d), 3);
        Scene scene = new Scene(floor, List.of(scraps), light, camera, 2, 11);
        return PhotoReader.read(Evaluation.jpeg(scene.photograph(), 0.8f), sheet, ReadingProgress.NONE);
    }

    private static Camera camera(double tilt, double across) {
        return new Camera(1680, 1260, 1260, -0.02, new double[] {0, 0}, across * 0.75, Math.toRadians(tilt), 0.15);
    }

    /** Whether the sheet was taken to be where its middle really is. */
    private static boolean isAt(Reading.Read read, Camera camera, double x, double y) {
        List<Point> corners = read.scale().sheetInPicture();
        double[] at = camera.pictureAt(x, y);
        double px = corners.stream().mapToDouble(Point::x).average().orElseThrow();
        double py = corners.stream().mapToDouble(Point::y).average().orElseThrow();
        return Math.hypot(px - at[0], py - at[1]) < 15;
    }

    private static Scrap box(double x, double y, double width, double height, double turn, int colour) {
        return new Scrap(Scenes.box(new double[] {x, y}, width, height, turn), weave(colour), 0, colour == PAPER);
    }

    private static Weave weave(int colour) {
        return new Weave(Weave.Kind.PLAIN, Paint.srgb(colour), Paint.srgb(colour), 10, colour);
    }
}
