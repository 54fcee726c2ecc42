package hearthcloth.photo.scene;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.photo.FabricClusters;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.Reading;
import hearthcloth.photo.ReadingOverlay;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.photo.plane.ReferenceSheet;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** One picture laid by hand, with everything in it that must be doubted and something that must not. */
class DoubtTest {

    private static final Floor FLOOR = new Floor(Floor.Kind.PLAIN, Paint.srgb(0xb7c0c4), 3);
    private static final int NAVY = 0x1f2a44;
    private static final int RED = 0xb23a48;
    private static final int MUSTARD = 0xe0c341;

    private static Scene scene;
    private static byte[] photograph;
    private static Reading.Read read;

    @BeforeAll
    static void lay_the_table_and_take_the_picture() throws IOException {
        scene = scene(
                Scenes.A4,
                List.of(
                        scrap(-320, 200, 120, 80, NAVY, 0),
                        scrap(-320, 90, 110, 70, NAVY, 0),
                        scrap(-40, 250, 100, 90, RED, 0),
                        scrap(40, 250, 60, 60, MUSTARD, 0),
                        scrap(250, 220, 100, 80, 0xbbc4c8, 0),
                        scrap(300, 0, 100, 90, RED, 4.5),
                        scrap(-420, -200, 170, 90, MUSTARD, 0),
                        scrap(250, -170, 120, 60, MUSTARD, 0)));
        photograph = Evaluation.jpeg(scene.photograph(), 0.8f);
        read = (Reading.Read) PhotoReader.read(photograph, ReferenceSheet.A4, ReadingProgress.NONE);
    }

    @Test
    void pieces_that_touch_are_doubted() {
        assertThat(kinds(at(-10, 250))).contains(Doubt.Kind.TOUCHING);
    }

    @Test
    void a_piece_that_runs_off_the_picture_is_doubted() {
        assertThat(kinds(at(-420, -200))).contains(Doubt.Kind.CUT_OFF);
    }

    @Test
    void a_frayed_piece_is_told() {
        assertThat(kinds(at(300, 0))).contains(Doubt.Kind.FRAYED);
    }

    @Test
    void a_piece_like_its_ground_is_doubted_or_not_seen_but_never_trusted() {
        assertThat(read.pieces().stream().filter(p -> holds(p, 250, 220)).flatMap(p -> kinds(p).stream()))
                .allMatch(kind -> kind == Doubt.Kind.FAINT);
        assertThat(read.pieces().stream().filter(p -> holds(p, 250, 220) && !p.isDoubted()))
                .isEmpty();
    }

    @Test
    void a_plain_clear_piece_is_not_doubted_and_is_measured() {
        ReadPiece piece = at(-320, 200);

        assertThat(piece.doubts()).isEmpty();
        LargestRectangle.Box box = piece.usable();
        assertThat(Math.max(box.width(), box.height())).isBetween(117.0, 120.0);
        assertThat(Math.min(box.width(), box.height())).isBetween(77.5, 80.0);
        assertThat(piece.look().name()).contains("blue");
    }

    @Test
    void pieces_of_one_fabric_are_grouped() {
        ReadPiece one = at(-320, 200);
        ReadPiece two = at(-320, 90);
        ReadPiece other = at(250, -170);

        List<List<ReadPiece>> groups = FabricClusters.grouped(read.pieces());

        assertThat(groups)
                .anySatisfy(group -> assertThat(group).contains(one, two).doesNotContain(other));
        assertThat(groups.stream().flatMap(List::stream)).containsExactlyInAnyOrderElementsOf(read.pieces());
    }

    @Test
    void a_corner_dragged_by_hand_is_measured_anew() {
        ReadPiece piece = at(-320, 200);
        List<Point> corners = new ArrayList<>(piece.outline().picture());
        Point inPicture = read.scale().inPicture(read.scale().onFloor(corners.get(0)));
        corners.set(0, inPicture);

        assertThat(read.scale().byHand(corners).areaMm2())
                .isCloseTo(9600, org.assertj.core.data.Percentage.withPercentage(1));
    }

    @Test
    void the_overlay_shows_the_picture_with_words_below_for_every_doubt() {
        BufferedImage overlay = ReadingOverlay.drawn(photograph, read, Ruler.EIGHTHS);
        long doubts = read.pieces().stream().mapToLong(p -> p.doubts().size()).sum();

        assertThat(overlay.getWidth()).isLessThanOrEqualTo(1600);
        assertThat(overlay.getHeight()).isEqualTo(overlay.getWidth() * 3 / 4 + (int) doubts * 24 + 12);
    }

    @Test
    void without_its_sheet_nothing_is_measured() {
        Reading reading = PhotoReader.read(photograph, ReferenceSheet.CARD, ReadingProgress.NONE);

        assertThat(reading).isInstanceOf(Reading.Refused.class);
        assertThat(((Reading.Refused) reading).reason().english())
                .contains("card")
                .contains("take the picture");
    }

    @Test
    void a_rectangle_of_any_known_size_serves_as_the_sheet() throws IOException {
        Scene mat = scene(new Scenes.Format(150, 225), List.of(scrap(-300, 100, 120, 100, NAVY, 0)));

        Reading reading = PhotoReader.read(
                Evaluation.jpeg(mat.photograph(), 0.8f),
                ReferenceSheet.of(new Size(Length.mm(150), Length.mm(225))),
                ReadingProgress.NONE);

        assertThat(reading).isInstanceOf(Reading.Read.class);
        List<Verdict.SideCheck> sides = new Verdict(mat, (Reading.Read) reading, "mat").sides;
        assertThat(sides).hasSize(4).allMatch(Verdict.SideCheck::held);
    }

    @Test
    void a_card_is_told_from_scraps_by_its_rounded_corners() throws IOException {
        Scene scene = Scenes.drawn(3003, new Scenes.Wish(Floor.Kind.PLAIN, 15, 2.1, 8, Scenes.CARD));

        Reading reading =
                PhotoReader.read(Evaluation.jpeg(scene.photograph(), 0.8f), ReferenceSheet.CARD, ReadingProgress.NONE);

        assertThat(reading).isInstanceOf(Reading.Read.class);
        assertThat(new Verdict(scene, (Reading.Read) reading, "card").missed).isEmpty();
    }

    private static Scene scene(Scenes.Format sheet, List<Scrap> scraps) {
        Camera camera = new Camera(1680, 1260, 1260, -0.02, new double[] {0, 0}, 680, Math.toRadians(10), 0.1);
        List<Scrap> all = new ArrayList<>();
        all.add(box(
                0,
                0,
                sheet.width(),
                sheet.height(),
                new Weave(Weave.Kind.PLAIN, Paint.srgb(0xf4f4f2), Paint.srgb(0), 10, 1),
                0,
                true));
        all.addAll(scraps);
        Light light = new Light(0.0001, 0, List.of(), 0.2, 0.2);
        return new Scene(FLOOR, all, light, camera, 2, 11);
    }

    private static Scrap scrap(double x, double y, double width, double height, int colour, double fray) {
        Weave weave = new Weave(Weave.Kind.PLAIN, Paint.srgb(colour), Paint.srgb(colour), 10, (long) (x + 7 * y));
        return box(x, y, width, height, weave, fray, false);
    }

    private static Scrap box(double x, double y, double w, double h, Weave weave, double fray, boolean sheet) {
        return new Scrap(
                List.of(
                        new double[] {x - w / 2, y - h / 2},
                        new double[] {x + w / 2, y - h / 2},
                        new double[] {x + w / 2, y + h / 2},
                        new double[] {x - w / 2, y + h / 2}),
                weave,
                fray,
                sheet);
    }

    private static ReadPiece at(double x, double y) {
        return read.pieces().stream().filter(p -> holds(p, x, y)).findFirst().orElseThrow();
    }

    private static boolean holds(ReadPiece piece, double x, double y) {
        double[] p = scene.camera.pictureAt(x, y);
        Point middle = new Point(p[0], p[1]);
        double[] distances = piece.outline().picture().stream()
                .mapToDouble(middle::to)
                .sorted()
                .toArray();
        return distances[0] < 190 && inside(piece.outline().picture(), p);
    }

    private static boolean inside(List<Point> corners, double[] p) {
        java.awt.geom.Path2D path = new java.awt.geom.Path2D.Double();
        path.moveTo(corners.get(0).x(), corners.get(0).y());
        corners.stream().skip(1).forEach(c -> path.lineTo(c.x(), c.y()));
        path.closePath();
        return path.contains(p[0], p[1]);
    }

    private static List<Doubt.Kind> kinds(ReadPiece piece) {
        return piece.doubts().stream()
                .map(Doubt::kind)
                .sorted(Comparator.naturalOrder())
                .toList();
    }
}
