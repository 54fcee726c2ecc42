package hearthcloth.draw.picture;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A picture for the screen in few bytes; worked by hand, in tenths of a millimetre. */
class LeanSvgTest {

    private static final Colour KELP = Colour.of(0x4f6f56);
    private static final Colour OAT = Colour.of(0xddd0b7);

    private static List<Point> square(double x, double y, double side) {
        return List.of(new Point(x, y), new Point(x + side, y), new Point(x + side, y + side), new Point(x, y + side));
    }

    private static List<Point> backwards(List<Point> outline) {
        List<Point> other = new ArrayList<>(outline);
        java.util.Collections.reverse(other);
        return other;
    }

    private static String written(Mark... marks) {
        return LeanSvg.write(new Picture("Two squares", 20, 10, List.of(marks)));
    }

    @Test
    void neighbours_of_one_colour_are_one_path_that_turns_one_way() {
        String svg = written(
                new Mark.Area(square(0, 0, 1), KELP),
                new Mark.Area(backwards(square(2, 0, 1)), KELP),
                new Mark.Area(square(4, 0, 1), OAT));

        assertThat(svg).contains("viewBox=\"0 0 200 100\"", "width=\"20mm\"", "<title>Two squares</title>");
        assertThat(svg.split("<path", -1)).hasSize(3);
        // Corner to corner, each as seen from the one before; both clockwise on the screen.
        assertThat(svg).contains("fill=\"#4f6f56\" d=\"M0 0l10 0 0 10 -10 0zM20 0l10 0 0 10 -10 0z\"");
    }

    @Test
    void tints_stay_apart_since_they_add_up() {
        String svg = written(new Mark.Tint(square(0, 0, 1), KELP, 0.5), new Mark.Tint(square(0, 0, 1), KELP, 0.5));

        assertThat(svg.split("fill-opacity=\"0.5\"", -1)).hasSize(3);
    }

    @Test
    void stitches_keep_their_dashes_and_what_is_too_small_to_be_seen_is_left_out() {
        Stroke dashes = Stroke.stitches(0.4, KELP);
        String svg = written(
                new Mark.Line(List.of(new Point(0, 0), new Point(5, 0)), dashes),
                new Mark.Line(List.of(new Point(0, 1), new Point(5, 1)), dashes),
                new Mark.Area(square(9, 9, 0.1), OAT));

        assertThat(svg).contains("stroke-width=\"4\"", "stroke-dasharray=\"", "d=\"M0 0l50 0M0 10l50 0\"");
        assertThat(svg).doesNotContain(OAT.hex());
    }
}
