package hearthcloth.photo.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Point;
import hearthcloth.measure.Unit;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.Reading;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.photo.scale.KeptScale;
import hearthcloth.photo.scene.Photographs.Known;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Outlines that once went wrong: a corner cut off, neighbours close together, stripes that end a cloth. */
class OutlineTest {

    private static final int NAVY = 0x33506b;
    private static final int WINE = 0x7a1f2b;
    private static final int YELLOW = 0xe0c341;
    /** Seen against the floor, but far less than yellow is. */
    private static final int DUN = 0x8a7d6a;
    /** The floor's own. */
    private static final int FLOOR = 0x9c8f7d;

    /** 120 × 90 mm less a corner of 30 × 30 mm. */
    private static final Known DOG_EARED = new Known(
            List.of(
                    List.of(-300.0, -45.0),
                    List.of(-180.0, -45.0),
                    List.of(-180.0, 15.0),
                    List.of(-210.0, 45.0),
                    List.of(-300.0, 45.0)),
            NAVY,
            NAVY);

    private static List<ReadPiece> pieces = List.of();
    private static FloorScale scale = new KeptScale(1, 1, 1, 1, List.of(), 0, List.of()).scale();

    @BeforeAll
    static void read() {
        byte[] photograph = Photographs.of(
                List.of(
                        DOG_EARED,
                        Known.rectangle(170, -60, 70, 90, 0, WINE),
                        Known.rectangle(245, -60, 70, 90, 0, YELLOW),
                        Known.rectangle(220, 120, 130, 84, 5, YELLOW, DUN),
                        Known.rectangle(-230, 150, 117, 100, 0, FLOOR, WINE)),
                740,
                1800,
                6);
        Reading.Read read = (Reading.Read) PhotoReader.read(photograph, ReferenceSheet.A4, ReadingProgress.NONE);
        pieces = read.pieces();
        scale = read.scale();
    }

    /** By its place on the floor from the sheet's middle, whichever way up the reader takes the sheet. */
    private static ReadPiece at(double x, double y) {
        return pieces.stream()
                .filter(piece -> {
                    Point middle = middle(piece);
                    return Math.hypot(Math.abs(middle.x()) - Math.abs(x), Math.abs(middle.y()) - Math.abs(y)) < 25;
                })
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing read at " + x + " " + y + " among "
                        + pieces.stream().map(OutlineTest::middle).toList()));
    }

    private static Point middle(ReadPiece piece) {
        List<Point> sheet = scale.sheetInPicture().stream().map(scale::onFloor).toList();
        double x = sheet.stream().mapToDouble(Point::x).average().orElse(0);
        double y = sheet.stream().mapToDouble(Point::y).average().orElse(0);
        List<Point> floor = piece.outline().floor();
        return new Point(
                floor.stream().mapToDouble(Point::x).average().orElse(0) - x,
                floor.stream().mapToDouble(Point::y).average().orElse(0) - y);
    }

    private static List<Double> sides(ReadPiece piece) {
        return piece.outline().sides().stream()
                .map(side -> side.length().in(Unit.MILLIMETRE))
                .sorted()
                .toList();
    }

    private static void isClose(List<Double> read, double... truth) {
        assertThat(read).hasSize(truth.length);
        for (int i = 0; i < truth.length; i++) {
            assertThat(read.get(i)).isCloseTo(truth[i], within(1.5));
        }
    }

    @Test
    void a_corner_cut_off_stays_cut_off_and_out_of_the_usable_rectangle() {
        ReadPiece piece = at(-240, 0);

        isClose(sides(piece), 30 * Math.sqrt(2), 60, 90, 90, 120);
        LargestRectangle.Box best = LargestRectangle.inside(DOG_EARED.corners().stream()
                .map(c -> new Point(c.get(0), c.get(1)))
                .toList());
        assertThat(piece.usable().area()).isBetween(0.95 * best.area(), best.area());
    }

    @Test
    void two_pieces_in_line_five_millimetres_apart_are_two() {
        isClose(sides(at(170, -60)), 70, 70, 90, 90);
        isClose(sides(at(245, -60)), 70, 70, 90, 90);
    }

    @Test
    void a_striped_cloth_reaches_to_its_last_stripe() {
        isClose(sides(at(220, 120)), 84, 84, 130, 130);
    }

    /** Stripes as narrow and as long as a floor's joints: only their ends tell two sides, and nothing what lies outside the last. */
    @Test
    void stripes_on_a_cloth_of_the_floor_s_colour_are_no_joints_of_the_floor() {
        List<Double> sides = sides(at(-230, 150));

        assertThat(sides.subList(0, 2)).allSatisfy(side -> assertThat(side).isCloseTo(100, within(2.5)));
        assertThat(sides.subList(2, 4)).allSatisfy(side -> assertThat(side).isBetween(117 - 2 * 5.4 - 1, 118.0));
    }
}
