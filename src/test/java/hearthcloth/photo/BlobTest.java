package hearthcloth.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BlobTest {

    /** An L of 60 × 60 less 40 × 40, walked round pixel by pixel. */
    private static final List<Spot> ELL = List.of(
            new Spot(0, 0), new Spot(60, 0), new Spot(60, 20), new Spot(20, 20), new Spot(20, 60), new Spot(0, 60));

    private static final Blob BLOB = new Blob(walked(ELL), false);

    private static List<Spot> walked(List<Spot> corners) {
        List<Spot> rim = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Spot from = corners.get(i);
            Spot to = corners.get((i + 1) % corners.size());
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
        List<Spot> triangle = List.of(new Spot(0, 0), new Spot(80, 0), new Spot(0, 80));
        List<Spot> square = List.of(new Spot(0, 0), new Spot(60, 0), new Spot(60, 60), new Spot(0, 60));

        assertThat(BLOB.straying(square, 4)).isCloseTo(72 / 240.0, within(0.02));
        assertThat(BLOB.straying(triangle, 4)).isGreaterThan(0.2);
    }

    @Test
    void a_place_inside_a_bent_shape_is_inside_it() {
        assertThat(BLOB.holds(BLOB.inner())).isTrue();
    }
}
