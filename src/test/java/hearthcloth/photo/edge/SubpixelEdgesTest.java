package hearthcloth.photo.edge;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.parameter.EdgeParameters;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a blurred edge is, told by light: the picture's steps are those of IEC 61966-2-1, written here again. */
class SubpixelEdgesTest {

    private static final LensModel STRAIGHT = new LensModel(new Point(100, 100), 140, 0, 0.01);
    private static final double LEFT = 40.3;
    private static final double RIGHT = 160.3;
    private static final double TOP = 50.6;
    private static final double BOTTOM = 150.6;
    private static final List<Point> CORNERS =
            List.of(new Point(LEFT, TOP), new Point(RIGHT, TOP), new Point(RIGHT, BOTTOM), new Point(LEFT, BOTTOM));

    @ParameterizedTest(name = "cloth of {0} light on a floor of {1}")
    @CsvSource({"0.8, 0.03", "0.03, 0.8", "0.5, 0.1", "0.1, 0.6"})
    void pale_cloth_is_no_larger_and_dark_cloth_no_smaller_than_its_light(double cloth, double floor) {
        List<EdgeFit> sides = new SubpixelEdges(
                        blurred(cloth, floor),
                        6,
                        true,
                        EdgeParameters.standard().steps())
                .of(CORNERS);

        for (int i = 0; i < 4; i++) {
            Point middle = CORNERS.get(i).towards(CORNERS.get((i + 1) % 4), 0.5);
            EdgeFit.Fit fit = sides.get(i).fit(STRAIGHT, 1.2);
            double bySteps = Math.abs(fit.line().off(middle));
            double byLight = Math.abs(fit.moved(sides.get(i).shift()).line().off(middle));
            assertThat(bySteps).isGreaterThan(0.08);
            assertThat(byLight).isLessThan(0.75 * bySteps);
        }
    }

    private static PixelImage blurred(double cloth, double floor) {
        PixelImage picture = new PixelImage(200, 200);
        for (int y = 0; y < 200; y++) {
            for (int x = 0; x < 200; x++) {
                double share = covered(x + 0.5, LEFT, RIGHT) * covered(y + 0.5, TOP, BOTTOM);
                int step = (int) Math.round(255 * encoded(floor + share * (cloth - floor)));
                picture.put(x, y, step, step, step);
            }
        }
        return picture;
    }

    /** Blurred evenly over two pixels. */
    private static double covered(double at, double from, double to) {
        return Math.max(0, Math.min(1, Math.min((at - from) / 2 + 0.5, (to - at) / 2 + 0.5)));
    }

    private static double encoded(double light) {
        return light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
    }
}
