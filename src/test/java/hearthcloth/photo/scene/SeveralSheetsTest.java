package hearthcloth.photo.scene;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.draw.cloth.Paper;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Reading;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.ReferenceSheet;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Several sheets in one photograph are used together: none comes as a piece, and where they contradict each other that is said. */
final class SeveralSheetsTest {

    private static final int[] COLOURS = {0x1f2a44, 0x7a1f2b, 0x2e5e4e, 0xc7762b};
    private static final Camera CAMERA =
            new Camera(1680, 1260, 1260, -0.02, new double[] {0, 0}, 1700 * 0.75, Math.toRadians(9), 0.1);

    private static Scrap scrap(double[] at, double width, double height, double turn, int colour, boolean sheet) {
        Weave weave = new Weave(Weave.Kind.PLAIN, Paint.srgb(colour), Paint.srgb(colour), 10, colour);
        return new Scrap(Scenes.box(at, width, height, turn), weave, 0, sheet);
    }

    private static List<Scrap> pieces() {
        List<Scrap> pieces = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            double[] at = {-420 + 250.0 * (i % 4), i < 4 ? -90 : 150};
            pieces.add(scrap(at, 110 + 9 * i, 90 + 6 * i, 0.2 * i, COLOURS[i % 4], false));
        }
        return pieces;
    }

    private static Scene scene(List<Scrap> pieces, List<Scrap> plain, List<BentSheet> printed) {
        List<Scrap> all = new ArrayList<>(plain);
        all.addAll(pieces);
        Floor floor = new Floor(Floor.Kind.PLAIN, Paint.srgb(0x8f8270), 3);
        Light light = new Light(0.0001, -0.0001, List.of(), 0.2, 0.2);
        return new Scene(floor, all, printed, light, CAMERA, 2, 7);
    }

    private static Reading.Read read(Scene scene, ReferenceSheet sheet) throws IOException {
        Reading reading = PhotoReader.read(Evaluation.jpeg(scene.photograph(), 0.8f), sheet, ReadingProgress.NONE);
        assertThat(reading).isInstanceOf(Reading.Read.class);
        return (Reading.Read) reading;
    }

    private static void isReadByTwo(Scene scene, Reading.Read read) {
        Verdict verdict = new Verdict(scene, read, "two sheets");
        assertThat(read.scale().sheetsInPicture()).hasSize(2);
        assertThat(verdict.found).isEqualTo(8);
        assertThat(verdict.invented).isEmpty();
        assertThat(verdict.doubted).isZero();
        assertThat(verdict.sides).isNotEmpty().allMatch(Verdict.SideCheck::held).allMatch(Verdict.SideCheck::good);
    }

    @Test
    void two_sheets_of_plain_paper_are_used_together_and_neither_is_a_piece() throws IOException {
        List<Scrap> sheets = List.of(
                scrap(new double[] {-560, -330}, 210, 297, 0.3, 0xf4f4f2, true),
                scrap(new double[] {540, 360}, 210, 297, 1.2, 0xf3f3f1, true));
        Scene scene = scene(pieces(), sheets, List.of());
        isReadByTwo(scene, read(scene, ReferenceSheet.A4));
    }

    @Test
    void two_measuring_sheets_are_used_together() throws IOException {
        BufferedImage print = PrintedScenes.print(Paper.A4);
        List<BentSheet> sheets = List.of(sheet(print, -560, -330), sheet(print, 540, 360));
        Scene scene = scene(pieces(), List.of(), sheets);
        isReadByTwo(scene, read(scene, ReferenceSheet.MEASURING));
    }

    @Test
    void measuring_sheets_that_were_printed_to_different_sizes_make_every_piece_doubted() throws IOException {
        BufferedImage print = PrintedScenes.print(Paper.A4);
        List<BentSheet> sheets = List.of(
                sheet(print, -560, -330),
                new BentSheet(print, PrintedScenes.PIXELS_PER_MM * 1.04, 540, 360, 1.2, BentSheet.Bend.none()));
        Reading.Read read = read(scene(pieces(), List.of(), sheets), ReferenceSheet.MEASURING);
        assertThat(read.pieces())
                .isNotEmpty()
                .allSatisfy(piece -> assertThat(piece.doubts())
                        .anyMatch(doubt -> doubt.kind() == Doubt.Kind.SHEET
                                && doubt.sentence().english().contains("do not agree")));
    }

    private static BentSheet sheet(BufferedImage print, double x, double y) {
        return new BentSheet(print, PrintedScenes.PIXELS_PER_MM, x, y, 1.2, BentSheet.Bend.none());
    }
}
