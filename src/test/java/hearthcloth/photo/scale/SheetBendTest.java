package hearthcloth.photo.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.plane.MeasuringSheet;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.plane.SheetStiffness;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.Test;

/** {@link SheetBend} by a {@link SheetSight} and its {@link BendGuess}es, under a camera of known place; and {@link SheetStiffness}. */
class SheetBendTest {

    private static final double FOCAL = 1_500;
    private static final LensModel LENS = new LensModel(new Point(1_000, 750), 1_250, 0, 0.003);
    private static final Point FOOT = new Point(130, 420);
    private static final double HEIGHT = 800;
    private static final double TILT = 0.35;

    /** Where a place of the sheet shows that stands so high above the floor. */
    private static Point seen(Point at, double lift) {
        double sin = Math.sin(TILT);
        double cos = Math.cos(TILT);
        double x = at.x() - FOOT.x();
        double y = FOOT.y() - at.y();
        double down = HEIGHT - lift;
        double depth = down * cos + y * sin;
        return LENS.middle().plus(FOCAL * x / depth, -FOCAL * (y * cos - down * sin) / depth);
    }

    private static List<MarkedSheet.Placed> marks(ToDoubleFunction<Point> lift, double noise) {
        Random chance = new Random(9);
        List<MarkedSheet.Placed> out = new ArrayList<>();
        for (MeasuringSheet.Mark mark : MeasuringSheet.marks()) {
            for (Point corner : mark.corners()) {
                Point at = seen(corner, lift.applyAsDouble(corner))
                        .plus(noise * chance.nextGaussian(), noise * chance.nextGaussian());
                out.add(new MarkedSheet.Placed(corner, at, Math.max(0.06, noise)));
            }
        }
        return out;
    }

    /** One end curls up by as much as this. */
    private static ToDoubleFunction<Point> curled(double most) {
        return at -> at.y() < 140 ? 0 : most * Math.pow((at.y() - 140) / 105, 2);
    }

    private static double flat(Point at) {
        return 0 * at.x();
    }

    @Test
    void a_flat_sheet_is_seen_where_it_lies_and_the_camera_above_it() {
        SheetSight sight = SheetSight.of(LENS, marks(SheetBendTest::flat, 0), FOCAL);

        assertThat(sight.seen()).isEqualTo(16);
        assertThat(sight.places()).hasSize(16 + 8);
        assertThat(sight.eye().foot().to(FOOT)).isLessThan(0.5);
        assertThat(sight.eye().height()).isCloseTo(HEIGHT, within(0.5));
        for (int i = 0; i < 16; i++) {
            assertThat(sight.places().get(i).to(MeasuringSheet.marks().get(i).middle()))
                    .isLessThan(1e-9);
            assertThat(Math.abs(sight.off().get(2 * i))).isLessThan(1e-3);
            assertThat(Math.abs(sight.off().get(2 * i + 1))).isLessThan(1e-3);
        }
    }

    @Test
    void with_few_marks_each_corner_is_a_place() {
        SheetSight sight = SheetSight.of(LENS, marks(SheetBendTest::flat, 0).subList(0, 24), FOCAL);

        assertThat(sight.seen()).isEqualTo(24);
        assertThat(sight.places().get(1))
                .isEqualTo(MeasuringSheet.marks().get(0).corners().get(1));
    }

    @Test
    void places_along_the_paper_s_rim_lie_beyond_the_dark_one() {
        List<Point> rim = SheetSight.of(LENS, marks(SheetBendTest::flat, 0), FOCAL)
                .places()
                .subList(16, 24);

        // A4 is 210 x 297: about 11 and 17 beyond 190 x 254 each way
        assertThat(rim)
                .containsExactlyInAnyOrder(
                        new Point(-11, -17),
                        new Point(95, -17),
                        new Point(201, -17),
                        new Point(-11, 127),
                        new Point(201, 127),
                        new Point(-11, 271),
                        new Point(95, 271),
                        new Point(201, 271));
    }

    @Test
    void a_mark_that_is_lifted_moves_away_from_the_camera_s_foot() {
        SheetSight sight = SheetSight.of(LENS, marks(SheetBendTest::flat, 0), FOCAL);
        SimpleMatrix parallax = sight.parallax();
        for (int i = 0; i < 16; i++) {
            Point at = sight.places().get(i);
            Point lifted = sight.first().ofStraight(seen(at, 1));

            assertThat(lifted.x() - at.x()).isCloseTo(parallax.get(2 * i, i), within(3e-3));
            assertThat(lifted.y() - at.y()).isCloseTo(parallax.get(2 * i + 1, i), within(3e-3));
            assertThat(parallax.get(2 * i, (i + 1) % 16)).isZero();
        }
    }

    @Test
    void the_plane_s_numbers_move_a_place_as_a_projective_map_does() {
        Point at = new Point(150, 200);
        double x = (at.x() - 95) / 130;
        double y = (at.y() - 127) / 130;
        double small = 1e-4;
        double[][] by = SheetSight.moves(at);
        // (x, y) to (x, y) / (1 - small x) and / (1 - small y), in units of 130 mm and of one millimetre
        assertThat(by[0][6]).isCloseTo((x / (1 - small * x) - x) / small, within(1e-3));
        assertThat(by[1][6]).isCloseTo((y / (1 - small * x) - y) / small, within(1e-3));
        assertThat(by[0][7]).isCloseTo((x / (1 - small * y) - x) / small, within(1e-3));
        assertThat(by[1][7]).isCloseTo((y / (1 - small * y) - y) / small, within(1e-3));
        for (int k = 0; k < 6; k++) {
            assertThat(by[0][k]).isCloseTo(k % 2 == 1 ? 0 : new double[] {1, x, y}[k / 2], within(1e-12));
            assertThat(by[1][k]).isCloseTo(k % 2 == 0 ? 0 : new double[] {1, x, y}[k / 2], within(1e-12));
        }
    }

    private static BendGuess likeliest(ToDoubleFunction<Point> lift) {
        return BendGuess.all(SheetSight.of(LENS, marks(lift, 0.1), FOCAL)).stream()
                .max((a, b) -> Double.compare(a.likelihood(), b.likelihood()))
                .orElseThrow();
    }

    /** The deviation of heights that a guess says. */
    private static double height(BendGuess guess) {
        return Math.sqrt(guess.before().get(9, 9));
    }

    @Test
    void a_flat_sheet_is_likeliest_flat_and_a_bent_one_bent() {
        assertThat(BendGuess.all(SheetSight.of(LENS, marks(SheetBendTest::flat, 0.1), FOCAL)))
                .hasSize(15);
        assertThat(height(likeliest(SheetBendTest::flat))).isLessThan(0.1);
        assertThat(height(likeliest(curled(12)))).isGreaterThan(1);
    }

    @Test
    void samples_explain_the_marks_as_seen() {
        SheetSight sight = SheetSight.of(LENS, marks(curled(12), 0.1), FOCAL);
        BendGuess guess = likeliest(curled(12));

        SimpleMatrix drawn = guess.drawn(40, new Random(10));

        assertThat(drawn.getNumRows()).isEqualTo(9 + 24);
        assertThat(drawn.getNumCols()).isEqualTo(40);
        double bent = 0;
        for (int s = 0; s < 40; s++) {
            SimpleMatrix left = sight.off().minus(guess.model().mult(drawn.getColumn(s)));
            assertThat(left.elementMaxAbs()).isLessThan(1.5);
            // the marks at the left: the last row stands above the line of the first and the third
            bent += (drawn.get(9 + 12, s) - 2 * drawn.get(9 + 6, s) + drawn.get(9, s)) / 40;
        }
        assertThat(sight.off().elementMaxAbs()).isGreaterThan(0.5);
        // 12 x (91 / 105) squared is 9, over twice the span
        assertThat(bent).isBetween(4.0, 20.0);
    }

    private static double farthest(List<Point> corners) {
        List<Point> truth = FloorPlane.rectangle(190, 254);
        double far = 0;
        for (int i = 0; i < 4; i++) {
            far = Math.max(far, corners.get(i).to(seen(truth.get(i), 0)));
        }
        return far;
    }

    @Test
    void the_floor_under_a_flat_sheet_is_the_sheet() {
        SheetBend.Floor floor = SheetBend.of(LENS, marks(SheetBendTest::flat, 0.1), FOCAL);

        assertThat(floor.shown()).hasSize(1 + 9);
        assertThat(farthest(floor.shown().get(0).corners())).isLessThan(0.6);
        assertThat(floor.liftMm()).isLessThan(0.6);
        // the same seed, the same floor
        assertThat(SheetBend.of(LENS, marks(SheetBendTest::flat, 0.1), FOCAL)).isEqualTo(floor);
    }

    @Test
    void the_floor_under_a_curled_sheet_is_nearer_than_if_it_were_flat_and_the_lift_is_told() {
        List<MarkedSheet.Placed> marks = marks(curled(14), 0.1);
        SheetSight sight = SheetSight.of(LENS, marks, FOCAL);
        List<Point> asFlat = FloorPlane.rectangle(190, 254).stream()
                .map(sight.first()::straight)
                .toList();

        SheetBend.Floor floor = SheetBend.of(LENS, marks, FOCAL);

        assertThat(floor.liftMm()).isBetween(5.0, 20.0);
        assertThat(farthest(floor.shown().get(0).corners())).isLessThan(0.9 * farthest(asFlat));
        // and it is less sure
        double sure = spread(SheetBend.of(LENS, marks(SheetBendTest::flat, 0.1), FOCAL));
        assertThat(spread(floor)).isGreaterThan(1.5 * sure);
    }

    private static double spread(SheetBend.Floor floor) {
        double squares = 0;
        for (SheetBend.Shown shown : floor.shown().subList(1, 10)) {
            for (int c = 0; c < 4; c++) {
                squares += Math.pow(
                        shown.corners().get(c).to(floor.shown().get(0).corners().get(c)), 2);
            }
        }
        return Math.sqrt(squares);
    }

    @Test
    void paper_curls_and_cards_bend_and_mats_hardly_do() {
        ReferenceSheet mat = ReferenceSheet.of(new Size(Length.mm(450), Length.mm(300)));

        assertThat(SheetStiffness.of(ReferenceSheet.A4)).isEqualTo(SheetStiffness.of(ReferenceSheet.LETTER));
        assertThat(SheetStiffness.of(ReferenceSheet.A4).liftMm()).isEqualTo(1.5);
        assertThat(SheetStiffness.of(ReferenceSheet.CARD).liftMm()).isEqualTo(1.1);
        assertThat(SheetStiffness.of(mat).liftMm()).isEqualTo(0.2);
        // a skew of a hundredth beside a side of 500 pixels: what is over the usual moves a corner
        assertThat(SheetStiffness.of(ReferenceSheet.A4).cornerPixels(0.01, 500)).isCloseTo(4, within(1e-9));
        assertThat(SheetStiffness.of(ReferenceSheet.CARD).cornerPixels(0.01, 500))
                .isCloseTo(6.4, within(1e-9));
        assertThat(SheetStiffness.of(mat).cornerPixels(0.01, 500)).isCloseTo(3, within(1e-9));
        assertThat(SheetStiffness.of(mat).cornerPixels(0.003, 500)).isZero();
    }
}
