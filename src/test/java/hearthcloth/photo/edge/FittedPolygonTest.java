package hearthcloth.photo.edge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.parameter.EdgeParameters;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FittedPolygonTest {

    private static final LensModel STRAIGHT = new LensModel(new Point(500, 500), 700, 0, 0.01);
    private static final LensModel BARREL = new LensModel(new Point(500, 500), 700, 0.06, 0.01);

    /** The best straight line through a bowed side is off it by several pixels at its ends, and yet is that side's. */
    @Test
    void a_side_that_the_lens_bows_is_not_far_from_the_straight_line_it_was_laid_by() {
        Line side = Line.through(new Point(100, 150), new Point(900, 150));
        Line laid = Line.fitted(IntStream.rangeClosed(0, 80)
                .mapToObj(i -> BARREL.bent(new Point(100 + 10 * i, 150)))
                .toList());
        Point a = at(laid, BARREL.bent(new Point(100, 150)));
        Point b = at(laid, BARREL.bent(new Point(900, 150)));

        assertThat(Math.abs(side.off(BARREL.straight(a)))).isGreaterThan(4);
        assertThat(FittedPolygon.off(side, a, b, BARREL)).isLessThan(0.6);
        assertThat(FittedPolygon.off(side.moved(3), a, b, BARREL)).isCloseTo(3, within(0.6));
    }

    /** And one that is turned is as far off as its worse end. */
    @Test
    void a_turned_line_is_as_far_off_as_its_worse_end() {
        Point a = new Point(100, 150);
        Point b = new Point(900, 150);

        assertThat(FittedPolygon.off(Line.through(new Point(100, 151), new Point(900, 154)), a, b, STRAIGHT))
                .isCloseTo(4, within(0.05));
    }

    @Test
    void a_side_is_sure_so_much_farther_in_as_it_scatters_and_is_softer_than_the_sheet() {
        FittedPolygon traced =
                rectangle(200, 100, new double[] {0.1, 0.4, 0.1, 0.1}, new double[] {0.9, 0.9, 0.7, 0.95});

        List<Double> insets =
                traced.insets(0.9, EdgeParameters.standard().following().unsharp());

        assertThat(insets.get(0)).isPositive().isCloseTo(insets.get(3), within(1e-9));
        assertThat(insets.get(1)).isCloseTo(4 * insets.get(0), within(1e-9));
        assertThat(insets.get(2)).isCloseTo(3 * insets.get(0), within(1e-9));
        assertThat(Polygons.signedArea(traced.inset(insets, STRAIGHT)))
                .isCloseTo((200 - insets.get(1) - insets.get(3)) * (100 - insets.get(0) - insets.get(2)), within(1e-6));
    }

    /** However unsure the sides of a thread-thin strip are, they do not pass each other. */
    @Test
    void a_thin_strip_stays_the_right_way_round() {
        FittedPolygon traced = rectangle(200, 5, new double[] {1.5, 1.5, 1.5, 1.5}, new double[] {0.2, 0.2, 0.2, 0.2});

        assertThat(Polygons.signedArea(traced.inset(
                        traced.insets(0.9, EdgeParameters.standard().following().unsharp()), STRAIGHT)))
                .isPositive();
    }

    private static FittedPolygon rectangle(double width, double height, double[] scatter, double[] sharpness) {
        List<Point> corners = List.of(
                new Point(100, 100),
                new Point(100 + width, 100),
                new Point(100 + width, 100 + height),
                new Point(100, 100 + height));
        List<EdgeFit> sides = IntStream.range(0, 4)
                .mapToObj(i -> new EdgeFit(
                        Collections.nCopies(9, corners.get(i)), Collections.nCopies(9, 1.0), 0, sharpness[i]))
                .toList();
        List<EdgeFit.Fit> fits = IntStream.range(0, 4)
                .mapToObj(i ->
                        new EdgeFit.Fit(Line.through(corners.get(i), corners.get((i + 1) % 4)), scatter[i], 0.05, 1, 0))
                .toList();
        return new FittedPolygon(corners, sides, fits);
    }

    private static Point at(Line line, Point near) {
        double along = line.along(near);
        return line.at().plus(along * line.dx(), along * line.dy());
    }
}
