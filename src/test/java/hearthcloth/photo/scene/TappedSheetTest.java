package hearthcloth.photo.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import hearthcloth.geometry.Point;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Unit;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Reading;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.plane.ShownSheet;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Where the reader cannot tell which thing is the sheet, she taps its corners; a finger need not be exact. */
class TappedSheetTest {

    private static final int WIDTH = 1680;
    private static final int HEIGHT = 1260;
    private static final int PAPER = 0xf4f4f2;
    private static final int NAVY = 0x1f2a44;

    /** As far as a finger errs on a phone: ten points of 360. */
    private static final double FINGER = WIDTH * 10.0 / 360;

    private static final double[] AT = {-90, -20};
    private static final double TURN = 0.2;

    private static final Scrap A4 = box(AT[0], AT[1], 210, 297, TURN, PAPER);
    private static final Scrap RIVAL = box(190, 60, 180, 254.6, -0.3, 0xf2f0ea);
    private static final Scrap PATCH = box(260, -190, 120, 80, 0.3, NAVY);

    private static Scrap box(double x, double y, double width, double height, double turn, int colour) {
        Weave weave = new Weave(Weave.Kind.PLAIN, Paint.srgb(colour), Paint.srgb(colour), 10, colour);
        return new Scrap(Scenes.box(new double[] {x, y}, width, height, turn), weave, 0, colour == PAPER);
    }

    private static Camera camera() {
        return new Camera(WIDTH, HEIGHT, HEIGHT, -0.02, new double[] {0, 0}, 900 * 0.75, Math.toRadians(12), 0.15);
    }

    private static byte[] photograph(Scrap... scraps) throws IOException {
        Floor floor = new Floor(Floor.Kind.PLAIN, Paint.srgb(0x9c8f7d), 3);
        Light light = new Light(0.0001, 0, List.of(), 0.2, 0.2);
        return Evaluation.jpeg(new Scene(floor, List.of(scraps), light, camera(), 2, 11).photograph(), 0.8f);
    }

    /** The sheet's true corners in the picture, each off by up to {@code off} pixels, as shares of the picture. */
    private static List<Point> taps(double off, long seed) {
        Random chance = new Random(seed);
        List<Point> taps = new ArrayList<>();
        double[][] corners = {{-105, -148.5}, {105, -148.5}, {105, 148.5}, {-105, 148.5}};
        for (double[] corner : corners) {
            double x = AT[0] + corner[0] * Math.cos(TURN) - corner[1] * Math.sin(TURN);
            double y = AT[1] + corner[0] * Math.sin(TURN) + corner[1] * Math.cos(TURN);
            double[] seen = camera().pictureAt(x, y);
            taps.add(new Point(
                    (seen[0] + off * (2 * chance.nextDouble() - 1)) / WIDTH,
                    (seen[1] + off * (2 * chance.nextDouble() - 1)) / HEIGHT));
        }
        return taps;
    }

    @Test
    void a_sheet_with_a_rival_is_read_where_its_corners_are_tapped_with_a_finger() throws IOException {
        byte[] photograph = photograph(A4, RIVAL, PATCH);
        assertThat(PhotoReader.read(photograph, ReferenceSheet.A4, ReadingProgress.NONE))
                .isInstanceOf(Reading.Refused.class);
        for (long seed = 1; seed <= 3; seed++) {
            readWhereTapped(photograph, seed);
        }
    }

    private static void readWhereTapped(byte[] photograph, long seed) {
        Reading reading = PhotoReader.read(
                photograph, new ShownSheet(ReferenceSheet.A4, taps(FINGER, seed)), ReadingProgress.NONE);

        assertThat(reading).as("taps of seed " + seed).isInstanceOf(Reading.Read.class);
        Reading.Read read = (Reading.Read) reading;
        assertThat(read.sharedDoubts()).isEmpty();
        assertThat(read.pieces()).hasSize(2);
        List<Double> sides = read.pieces().stream()
                .flatMap(piece -> piece.outline().sides().stream())
                .map(side -> side.length().in(Unit.MILLIMETRE))
                .sorted()
                .toList();
        double[] truth = {80, 80, 120, 120, 180, 180, 254.6, 254.6};
        assertThat(sides).hasSize(truth.length);
        for (int i = 0; i < truth.length; i++) {
            assertThat(sides.get(i)).isCloseTo(truth[i], offset(1.5));
        }
    }

    @Test
    void where_no_rim_shows_the_tap_holds_and_every_size_is_doubted() throws IOException {
        byte[] photograph = photograph(PATCH);

        Reading reading =
                PhotoReader.read(photograph, new ShownSheet(ReferenceSheet.A4, taps(0, 1)), ReadingProgress.NONE);

        assertThat(reading).isInstanceOf(Reading.Read.class);
        assertThat(((Reading.Read) reading).pieces()).hasSize(1).allSatisfy(piece -> {
            assertThat(piece.doubts()).anySatisfy(doubt -> {
                assertThat(doubt.kind()).isEqualTo(Doubt.Kind.SHEET);
                assertThat(doubt.sentence().english()).contains("cannot be seen", "where you tapped");
            });
            assertThat(piece.outline().sides())
                    .allSatisfy(side ->
                            assertThat(side.giveOrTake().in(Unit.MILLIMETRE)).isGreaterThan(2));
        });
    }

    @Test
    void corners_that_go_round_no_sheet_are_told() throws IOException {
        byte[] photograph = photograph(A4, PATCH);
        List<Point> taps = taps(0, 1);
        List<Point> crossed = List.of(taps.get(0), taps.get(2), taps.get(1), taps.get(3));
        List<Point> shorter = List.of(
                taps.get(0),
                taps.get(1),
                taps.get(1).towards(taps.get(2), 0.7),
                taps.get(0).towards(taps.get(3), 0.7));

        assertThat(reason(photograph, crossed)).contains("round one shape");
        assertThat(reason(photograph, shorter)).contains("too long or too short for A4");
    }

    private static String reason(byte[] photograph, List<Point> taps) {
        Reading reading = PhotoReader.read(photograph, new ShownSheet(ReferenceSheet.A4, taps), ReadingProgress.NONE);
        assertThat(reading).isInstanceOf(Reading.Refused.class);
        return ((Reading.Refused) reading).reason().english();
    }

    @Test
    void what_was_tapped_is_written_and_read_back_and_half_of_it_is_told() {
        List<Point> taps = List.of(new Point(0.1, 0.2), new Point(0.5, 0.2), new Point(0.5, 0.7), new Point(0.1, 0.7));

        ShownSheet read = ShownSheet.parse(ShownSheet.words("letter", taps));

        assertThat(read).isEqualTo(new ShownSheet(ReferenceSheet.LETTER, taps));
        assertThat(ShownSheet.parse("12 x 18 in").isShown()).isFalse();
        assertThatThrownBy(() -> ShownSheet.parse("a4 at 0.1 0.2, 0.5 0.2"))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("four corners, and 2 were said");
        assertThatThrownBy(() -> ShownSheet.parse("a4 at 0.1 0.2, 0.5 oops, 0.5 0.7, 0.1 0.7"))
                .hasMessageContaining("\"0.5 oops\" is no corner");
        assertThatThrownBy(() -> ShownSheet.parse("a4 at 0.1 0.2, 5 0.2, 0.5 0.7, 0.1 0.7"))
                .hasMessageContaining("is no corner");
    }
}
