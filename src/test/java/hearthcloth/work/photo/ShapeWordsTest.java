package hearthcloth.work.photo;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.geometry.Point;
import hearthcloth.measure.Ruler;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a maker would call an outline. */
class ShapeWordsTest {

    private static String word(double... xy) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            corners.add(new Point(xy[i], xy[i + 1]));
        }
        return ShapeWords.of(new PieceOutline(corners, List.of(), List.of()), Voice.english(Ruler.MILLIMETRES));
    }

    /** A strip is four times as long as it is wide; sides within 3 % of each other are equal. */
    @ParameterizedTest
    @CsvSource({
        "100, 100, square",
        "100, 102.9, square",
        "102.9, 100, square",
        "100, 103.1, rectangle",
        "100, 399, rectangle",
        "399, 100, rectangle",
        "100, 401, strip",
        "401, 100, strip",
    })
    void four_square_corners_are_named_by_how_long_they_are(double width, double height, String name) {
        assertThat(word(0, 0, width, 0, width, height, 0, height)).isEqualTo(name);
        // the other way round, and turned by the angle whose tangent is 3/4
        assertThat(word(0, 0, 0, height, width, height, width, 0)).isEqualTo(name);
        assertThat(word(
                        0,
                        0,
                        0.8 * width,
                        0.6 * width,
                        0.8 * width - 0.6 * height,
                        0.6 * width + 0.8 * height,
                        -0.6 * height,
                        0.8 * height))
                .isEqualTo(name);
    }

    /** tan 2.9° = 0.0507 and tan 3.1° = 0.0542. */
    @Test
    void a_corner_may_be_three_degrees_off_and_no_more() {
        assertThat(word(0, 0, 100, 0, 105.07, 100, 5.07, 100)).isEqualTo("square");
        assertThat(word(0, 0, 100, 0, 105.42, 100, 5.42, 100)).isEqualTo("four uneven sides");
    }

    @Test
    void an_l_has_six_square_corners_one_of_them_inwards() {
        assertThat(word(0, 0, 20, 0, 20, 10, 10, 10, 10, 20, 0, 20)).isEqualTo("L-shape");
        assertThat(word(0, 0, 20, 0, 30, 10, 20, 20, 10, 20, 0, 10)).isEqualTo("6 sides");
    }

    @Test
    void other_outlines_are_named_by_their_sides() {
        assertThat(word(0, 0, 20, 0, 10, 15)).isEqualTo("triangle");
        assertThat(word(0, 0, 20, 0, 15, 10, 5, 10)).isEqualTo("four uneven sides");
        assertThat(word(0, 0, 20, 0, 25, 10, 10, 20, -5, 10)).isEqualTo("5 sides");
        assertThat(word(0, 0, 20, 0, 25, 10, 20, 20, 0, 20, -5, 15, -5, 5)).isEqualTo("7 sides");
    }
}
