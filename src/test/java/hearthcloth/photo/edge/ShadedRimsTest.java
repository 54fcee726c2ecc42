package hearthcloth.photo.edge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.parameter.EdgeParameters;
import hearthcloth.photo.segment.OccupancyMap;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Cloth on a ground that it shades, painted column by column, so that where it ends is known. */
class ShadedRimsTest {

    private static final int SIZE = 120;
    private static final double[] CLOTH = {44, 68, 92};
    private static final double[] GROUND = {104, 107, 112};
    private static final List<Point> ROUGH =
            List.of(new Point(20, 20), new Point(62, 20), new Point(62, 100), new Point(20, 100));

    private double shade = 0.45;
    private double blur = 1.3;
    private double edge = 60.0;
    private double figure;

    /** Values of red, green and blue along a row: cloth to {@link #edge}, then ground in a shade that fades within nine pixels. */
    private double[] sharp(double x) {
        double[] out = new double[3];
        for (int c = 0; c < 3; c++) {
            double lit = 1 - shade * Math.max(0, 1 - (x - edge) / 9);
            double cloth = CLOTH[c] + (Math.floorMod((int) x / 4, 2) == 0 ? figure : 0);
            out[c] = x < edge ? cloth : GROUND[c] * lit;
        }
        return out;
    }

    private PixelImage painted(long seed) {
        Random chance = new Random(seed);
        PixelImage picture = new PixelImage(SIZE, SIZE);
        for (int x = 0; x < SIZE; x++) {
            double[] sum = new double[3];
            double weights = 0;
            for (double d = -4; d <= 4; d += 0.1) {
                double weight = Math.exp(-d * d / 2);
                double[] there = sharp(x + 0.5 + d * blur);
                weights += weight;
                for (int c = 0; c < 3; c++) {
                    sum[c] += weight * there[c];
                }
            }
            for (int y = 0; y < SIZE; y++) {
                int[] v = new int[3];
                for (int c = 0; c < 3; c++) {
                    v[c] = (int) Math.round(sum[c] / weights + 2 * chance.nextGaussian());
                }
                picture.put(x, y, v[0], v[1], v[2]);
            }
        }
        return picture;
    }

    /** The side that runs down on the right, in clockwise order as the picture's y goes down. */
    private Optional<ShadedRims.Placed> right() {
        PixelImage picture = painted(5);
        OccupancyMap bare = new OccupancyMap(LabThumbnail.of(picture), List.of());
        return new ShadedRims(picture, bare, 1, EdgeParameters.standard().shaded())
                .of(ROUGH, 0)
                .get(1);
    }

    @Test
    void cloth_ends_where_the_shade_begins_and_not_where_it_ends() {
        for (double depth : new double[] {0, 0.3, 0.6}) {
            for (double soft : new double[] {0.6, 1.3, 1.9}) {
                shade = depth;
                blur = soft;
                ShadedRims.Placed placed = right().orElseThrow();
                // light and values of colours differ by as much as the deviation says
                assertThat(placed.at().x())
                        .as("shade %s, blur %s", depth, soft)
                        .isCloseTo(edge, within(Math.max(0.45, 2 * placed.deviation())));
                assertThat(placed.at().y()).isCloseTo(60, within(1e-6));
                assertThat(placed.deviation()).isLessThan(0.8);
            }
        }
    }

    @Test
    void cloth_of_two_colours_is_left_to_others() {
        figure = 40;
        assertThat(right()).isEmpty();
    }

    @Test
    void what_lies_beside_and_is_no_shade_is_left_to_others() {
        edge = 48;
        assertThat(right()).isEmpty();
    }

    @Test
    void a_side_too_short_to_be_averaged_is_left_to_others() {
        PixelImage picture = painted(6);
        OccupancyMap bare = new OccupancyMap(LabThumbnail.of(picture), List.of());
        List<Point> little = List.of(new Point(50, 50), new Point(60, 50), new Point(60, 60), new Point(50, 60));
        assertThat(new ShadedRims(picture, bare, 1, EdgeParameters.standard().shaded()).of(little, 0))
                .hasSize(4)
                .allMatch(Optional::isEmpty);
    }

    @Test
    void the_profile_s_place_is_told_to_a_part_of_a_pixel() {
        shade = 0;
        for (double at = 57; at <= 63; at += 0.7) {
            edge = at;
            double[][] profile = new double[53][3];
            for (int k = 0; k < profile.length; k++) {
                profile[k] = sharp(60 - ShadeFit.INSIDE + k * ShadeFit.APART);
            }
            ShadeFit.Found found = new ShadeFit(profile).found();
            assertThat(60 + found.at()).isCloseTo(at, within(0.35));
            assertThat(found.misfit()).isLessThan(0.08);
        }
    }
}
