package hearthcloth.photo.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** A bent sheet stands on the plane that a table under it would be. */
final class SheetSupportTest {

    private static final Point MIDDLE = new Point(95, 127);

    private static final List<Point> PLACES = places();

    private static List<Point> places() {
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 5; j++) {
                out.add(new Point(23 + 48 * i, 23 + 52 * j));
            }
        }
        return out;
    }

    private static SheetSupport under(ToDoubleFunction<Point> height) {
        return SheetSupport.of(PLACES, PLACES.stream().mapToDouble(height).toArray(), MIDDLE);
    }

    @Test
    void under_a_sheet_with_one_end_up_the_floor_goes_on_as_under_its_flat_part() {
        SheetSupport floor = under(at -> at.y() < 130 ? 0 : (at.y() - 130) * (at.y() - 130) / 1000);
        for (Point place : PLACES) {
            assertThat(floor.at(place)).isCloseTo(0, within(0.1));
        }
    }

    @Test
    void an_arch_stands_on_its_two_ends() {
        SheetSupport floor = under(at -> 10 - Math.pow((at.y() - 127) / 104, 2) * 10);
        assertThat(floor.at(MIDDLE)).isCloseTo(0, within(0.1));
        assertThat(floor.at(new Point(23, 23))).isCloseTo(0, within(0.1));
    }

    @Test
    void a_slope_that_is_the_same_all_over_is_the_floors_own() {
        SheetSupport floor = under(at -> 3 + 0.02 * at.x() - 0.01 * at.y());
        for (Point place : PLACES) {
            assertThat(floor.at(place)).isCloseTo(3 + 0.02 * place.x() - 0.01 * place.y(), within(0.1));
        }
    }
}
