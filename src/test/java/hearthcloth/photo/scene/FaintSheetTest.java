package hearthcloth.photo.scene;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Reading;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.ReferenceSheet;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** White paper on a crumpled bedsheet, from which it differs less than the folds do from each other; and a mat on a table. */
class FaintSheetTest {

    private static final Paint BEDSHEET = Paint.srgb(0xe6dfe3);
    private static final Paint TABLE = Paint.srgb(0xa8794a);
    private static final int PAPER = 0xf2f2f4;
    private static final int FAINT = 0xdcd4d8;
    private static final int MAT = 0x2c5560;
    private static final int NAVY = 0x1f2a44;
    private static final int OCHRE = 0xc7762b;

    private static final Scrap PATCH = box(250, -160, 120, 80, 0.3, NAVY);
    private static final Scrap STRIP = box(150, 190, 260, 50, -0.1, OCHRE);

    @ParameterizedTest(name = "turned by {0}, camera tilted by {1}°")
    @CsvSource({"0.2, 5", "-0.6, 12"})
    void paper_that_hardly_differs_is_found_by_its_rim_and_doubted(double turn, double tilt) throws IOException {
        foundAndDoubted(turn, tilt);
    }

    @Tag("long")
    @ParameterizedTest(name = "turned by {0}, camera tilted by {1}°")
    @CsvSource({"0.9, 9", "0, 3", "-0.3, 8", "0.5, 11"})
    void paper_that_hardly_differs_is_found_by_its_rim_however_it_lies(double turn, double tilt) throws IOException {
        foundAndDoubted(turn, tilt);
    }

    private static void foundAndDoubted(double turn, double tilt) throws IOException {
        Scrap paper = box(-110, -20, 210, 297, turn, PAPER);

        Reading reading = crumpled(tilt, paper, PATCH, STRIP);

        assertThat(reading).isInstanceOf(Reading.Read.class);
        Reading.Read read = (Reading.Read) reading;
        assertThat(farthestCorner(read, paper, camera(tilt))).isLessThan(1.2);
        assertThat(read.pieces())
                .hasSize(2)
                .allSatisfy(piece -> assertThat(piece.doubts()).anySatisfy(doubt -> {
                    assertThat(doubt.kind()).isEqualTo(Doubt.Kind.SHEET);
                    assertThat(doubt.sentence().english()).contains("A4 hardly differs");
                }));
    }

    @ParameterizedTest(name = "{0} by {1} mm")
    @CsvSource({"210, 287", "215.9, 279.4"})
    void faint_paper_of_nearly_its_proportions_is_no_a4(double width, double height) throws IOException {
        isNoA4(width, height);
    }

    @Tag("long")
    @ParameterizedTest(name = "{0} by {1} mm")
    @CsvSource({"230, 311", "210, 240", "180, 180"})
    void faint_paper_of_other_proportions_is_no_a4(double width, double height) throws IOException {
        isNoA4(width, height);
    }

    private static void isNoA4(double width, double height) throws IOException {
        assertThat(reason(crumpled(5, box(-110, -20, width, height, 0.2, PAPER), PATCH, STRIP)))
                .contains("A4");
    }

    @Test
    void bare_crumpled_ground_has_no_sheet() throws IOException {
        assertThat(reason(crumpled(5, PATCH, STRIP))).contains("No A4 was found");
    }

    /** Four sharp rims in a sheet's proportions, paler inside; but they go on beyond its corners, as joints do. */
    @Test
    void a_gap_between_pale_cloths_is_no_sheet() throws IOException {
        Scrap[] round = {
            box(-110, -20 - 148.5 - 45, 420, 90, 0, FAINT),
            box(-110, -20 + 148.5 + 45, 420, 90, 0, FAINT),
            box(-110 - 105 - 45, -20, 90, 297, 0, FAINT),
            box(-110 + 105 + 45, -20, 90, 297, 0, FAINT),
            PATCH
        };

        assertThat(reason(crumpled(5, round))).contains("No A4 was found");
    }

    @Test
    void a_mat_with_all_on_it_is_ground_though_pieces_lie_over_its_rim() throws IOException {
        Scrap mat = box(0, 0, 640, 430, 0.05, MAT);
        Scrap paper = box(-110, -20, 210, 297, 0.2, PAPER);
        Scrap over = box(300, 100, 160, 90, 0.1, OCHRE);
        Floor table = new Floor(Floor.Kind.WOOD, TABLE, 5);

        Reading reading = reading(scene(table, List.of(), 5, mat, paper, box(150, -120, 120, 80, 0.3, NAVY), over));

        assertThat(reading).isInstanceOf(Reading.Read.class);
        Reading.Read read = (Reading.Read) reading;
        assertThat(farthestCorner(read, paper, camera(5))).isLessThan(1.2);
        assertThat(read.pieces().stream()
                        .map(piece -> Math.round(piece.outline().areaMm2() / 480) * 480))
                .containsExactlyInAnyOrder(9600L, 14400L);
    }

    private static double farthestCorner(Reading.Read read, Scrap paper, Camera camera) {
        return paper.corners().stream()
                .map(corner -> camera.pictureAt(corner[0], corner[1]))
                .mapToDouble(at -> read.scale().sheetInPicture().stream()
                        .mapToDouble(spot -> Math.hypot(spot.x() - at[0], spot.y() - at[1]))
                        .min()
                        .orElseThrow())
                .max()
                .orElseThrow();
    }

    private static String reason(Reading reading) {
        assertThat(reading).isInstanceOf(Reading.Refused.class);
        return ((Reading.Refused) reading).reason().english();
    }

    private static Reading crumpled(double tilt, Scrap... scraps) throws IOException {
        return reading(scene(tilt, scraps));
    }

    /** Folds: long soft shades and lights across the floor. */
    private static Scene scene(double tilt, Scrap... scraps) {
        List<Light.Shadow> folds = IntStream.range(-8, 9)
                .mapToObj(i -> new Light.Shadow(60 * i, 25 * i, 34 + i % 3 * 6, 900, i % 2 == 0 ? 0.12 : -0.06, 1.3))
                .toList();
        return scene(new Floor(Floor.Kind.PLAIN, BEDSHEET, 3), folds, tilt, scraps);
    }

    private static Scene scene(Floor floor, List<Light.Shadow> folds, double tilt, Scrap... scraps) {
        return new Scene(
                floor, Arrays.asList(scraps), new Light(0.0001, 0, folds, 0.2, 0.2), camera(tilt), 2, /* seed= */ 11);
    }

    private static Reading reading(Scene scene) throws IOException {
        return PhotoReader.read(Evaluation.jpeg(scene.photograph(), 0.8f), ReferenceSheet.A4, ReadingProgress.NONE);
    }

    private static Camera camera(double tilt) {
        return new Camera(1680, 1260, 1260, -0.02, new double[] {0, 0}, 675, Math.toRadians(tilt), 0.15);
    }

    private static Scrap box(double x, double y, double width, double height, double turn, int colour) {
        Weave weave = new Weave(Weave.Kind.PLAIN, Paint.srgb(colour), Paint.srgb(colour), 10, colour);
        return new Scrap(Scenes.box(new double[] {x, y}, width, height, turn), weave, 0, colour == PAPER);
    }
}
