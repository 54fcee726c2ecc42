package hearthcloth.photo.segment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BlobTest {

    /** An L of 60 × 60 less 40 × 40, walked round pixel by pixel. */
    private static final List<Point> ELL = List.of(
            new Point(0, 0),
            new Point(60, 0),
            new Point(60, 20),
            new Point(20, 20),
            new Point(20, 60),
            new Point(0, 60));

    private static final Blob BLOB = new Blob(walked(ELL), false);

    private static List<Point> walked(List<Point> corners) {
        List<Point> rim = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point from = corners.get(i);
            Point to = corners.get((i + 1) % corners.size());
            for (int s = 0; s < from.to(to); s++) {
                rim.add(from.towards(to, s / from.to(to)));
            }
        }
        return rim;
    }

    @Test
    void its_own_corners_leave_nothing_of_its_rim_out() {
        assertThat(BLOB.straying(ELL, 4)).isZero();
    }

    @Test
    void a_triangle_or_a_square_over_an_ell_covers_its_notch() {
        List<Point> triangle = List.of(new Point(0, 0), new Point(80, 0), new Point(0, 80));
        List<Point> square = List.of(new Point(0, 0), new Point(60, 0), new Point(60, 60), new Point(0, 60));

        assertThat(BLOB.straying(square, 4)).isCloseTo(72 / 240.0, within(0.02));
        assertThat(BLOB.straying(triangle, 4)).isGreaterThan(0.2);
    }

    @Test
    void a_place_inside_a_bent_shape_is_inside_it() {
        assertThat(BLOB.holds(BLOB.inner())).isTrue();
    }
}
