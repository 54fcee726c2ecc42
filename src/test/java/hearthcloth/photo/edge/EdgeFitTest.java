package hearthcloth.photo.edge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LensModel;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** How far a side sways, told from the noise of its places. */
class EdgeFitTest {

    private static final LensModel STRAIGHT = new LensModel(new Point(500, 500), 700, 0, 0.01);

    private static List<Point> places(IntToDoubleFunction off) {
        return IntStream.range(0, 200)
                .mapToObj(i -> new Point(100 + 1.5 * i, 300 + off.applyAsDouble(i)))
                .toList();
    }

    private static EdgeFit.Fit fit(List<Point> places) {
        return new EdgeFit(places, Collections.nCopies(200, 1.0), 0, 1).fit(STRAIGHT, 2);
    }

    private static double waver(List<Point> places) {
        return EdgeFit.waver(
                fit(places).line().offs(places),
                DoubleStream.generate(() -> 1).limit(200).toArray());
    }

    @Test
    void noise_is_no_waver() {
        Random chance = new Random(4);

        List<Point> places = places(i -> 0.4 * chance.nextGaussian());

        assertThat(fit(places).scatter()).isBetween(0.3, 0.45);
        assertThat(waver(places)).isLessThan(0.15);
        assertThat(fit(places).deviation()).isLessThan(0.1);
    }

    @Test
    void a_cut_that_sways_by_a_pixel_wavers_by_its_root_mean_square() {
        Random chance = new Random(4);

        List<Point> places = places(i -> Math.sin(2 * Math.PI * i / 50) + 0.2 * chance.nextGaussian());

        double covariance = 0.5 * Math.cos(2 * Math.PI * 5 / 50);
        assertThat(waver(places)).isCloseTo(Math.sqrt(covariance), within(0.1));
        assertThat(fit(places).deviation()).isBetween(0.2, 0.5);
    }
}
