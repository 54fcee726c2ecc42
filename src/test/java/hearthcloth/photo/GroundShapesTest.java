package hearthcloth.photo;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.geometry.Point;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.edge.SubpixelEdges;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.parameter.ReadingParameters;
import hearthcloth.photo.segment.Blob;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A board between two joints that run on, and what reaches across the picture, are the ground's own; cloth is not. */
final class GroundShapesTest {

    private static final int WIDTH = 640;
    private static final int HEIGHT = 460;
    private static final int FLOOR = 0xb09070;
    private static final int BOARD = 0x8a6642;
    private static final int JOINT = 0x30241a;
    private static final int CLOTH = 0x1f2a44;

    private final Painted painted = new Painted(WIDTH, HEIGHT, FLOOR, 2);
    private final List<List<Point>> outlines = new ArrayList<>();

    private void lay(int left, int top, int width, int height, int colour) {
        painted.box(left, top, width, height, colour);
        outlines.add(List.of(
                new Point(left, top),
                new Point(left + width, top),
                new Point(left + width, top + height),
                new Point(left, top + height)));
    }

    private Set<Integer> own() {
        ReadingParameters parameters = ReadingParameters.standard();
        SubpixelEdges edges =
                new SubpixelEdges(painted.picture(), 5, false, parameters.edge().steps());
        LensModel lens = LensModel.unknown(painted.picture());
        List<FittedPolygon> traced = outlines.stream()
                .map(outline -> FittedPolygon.of(outline, edges.of(outline), lens, 1.2, 4))
                .toList();
        return GroundShapes.among(
                outlines.stream().map(GroundShapesTest::blob).toList(), traced, painted.coarse(), parameters);
    }

    private static Blob blob(List<Point> outline) {
        List<Point> rim = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Point a = outline.get(i);
            Point b = outline.get((i + 1) % 4);
            int n = (int) a.to(b);
            for (int k = 0; k < n; k++) {
                rim.add(a.towards(b, (double) k / n));
            }
        }
        boolean cutOff =
                rim.stream().anyMatch(at -> at.x() < 2 || at.y() < 2 || at.x() > WIDTH - 3 || at.y() > HEIGHT - 3);
        return new Blob(rim, cutOff);
    }

    @Test
    void a_board_whose_two_joints_run_on_beyond_it_is_the_floors_and_a_strip_of_cloth_is_not() {
        painted.box(0, 118, WIDTH, 3, JOINT).box(0, 196, WIDTH, 3, JOINT);
        lay(190, 121, 260, 75, BOARD);
        lay(190, 300, 260, 75, CLOTH);

        assertThat(own()).containsExactly(0);
    }

    @Test
    void a_strip_of_cloth_one_side_of_which_lies_along_a_joint_stays() {
        painted.box(0, 118, WIDTH, 3, JOINT);
        lay(190, 121, 260, 75, CLOTH);

        assertThat(own()).isEmpty();
    }

    @Test
    void what_reaches_from_one_rim_of_the_picture_to_another_is_no_piece_and_what_runs_off_at_one_is() {
        lay(0, 380, WIDTH, 80, BOARD);
        lay(0, 100, 120, 90, CLOTH);
        lay(560, 0, 80, 70, CLOTH);

        assertThat(own()).containsExactlyInAnyOrder(0, 2);
    }
}
