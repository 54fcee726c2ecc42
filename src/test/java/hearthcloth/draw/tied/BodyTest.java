package hearthcloth.draw.tied;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.making.Face;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.Gift;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Parts of the tied picture: the gift ({@link Body}), lines ({@link Crease}), faces to lay on a model ({@link ClothFaces}). */
class BodyTest {

    private static List<Pane> body(String gift) {
        return Body.of(Gift.parse(gift, null));
    }

    private static double extent(List<Pane> panes, Vector way) {
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (Pane pane : panes) {
            for (Vector corner : pane.corners()) {
                least = Math.min(least, corner.dot(way));
                most = Math.max(most, corner.dot(way));
            }
        }
        return most - least;
    }

    @ParameterizedTest
    @CsvSource({
        "box 30 x 20 x 8 cm, 300, 200, 80",
        "books 21 x 15 x 2 cm, 210, 340, 20",
        "ball 22 cm, 220, 220, 220",
        "roll 6 x 38 cm, 380, 60, 60",
        "bottle 8 x 30 cm, 80, 80, 300",
    })
    void a_gift_is_as_large_as_it_was_said_to_be(String gift, double along, double across, double height) {
        List<Pane> panes = body(gift);
        assertThat(extent(panes, new Vector(1, 0, 0))).isCloseTo(along, within(0.01 * along));
        assertThat(extent(panes, new Vector(0, 1, 0))).isCloseTo(across, within(0.01 * across));
        assertThat(extent(panes, Vector.UP)).isCloseTo(height, within(0.01 * height));
    }

    /** A box is five faces: its foot is never seen. Each looks away from the middle. */
    @Test
    void the_faces_of_a_box_look_outwards_and_are_as_large_as_the_box() {
        List<Pane> panes = body("box 30 x 20 x 8 cm");
        assertThat(panes).hasSize(5);
        Vector middle = new Vector(0, 0, 40);
        double area = 0;
        for (Pane pane : panes) {
            List<Vector> c = pane.corners();
            Vector centre = c.get(0).plus(c.get(2)).times(0.5);
            assertThat(pane.out().dot(centre.minus(middle))).isPositive();
            assertThat(pane.out().length()).isCloseTo(1, within(1e-9));
            area += c.get(1).minus(c.get(0)).cross(c.get(3).minus(c.get(0))).length();
        }
        assertThat(area).isCloseTo(300 * 200 + 2 * 80 * (300 + 200), within(1e-6));
    }

    @Test
    void a_line_is_on_an_edge_where_both_its_ends_are() {
        Crease crease = new Crease(new Point(0, 0), new Point(100, 50));
        assertThat(crease.holds(new Point(20, 10), new Point(80, 40))).isTrue();
        assertThat(crease.holds(new Point(20, 10), new Point(80, 41))).isFalse();
        assertThat(crease.holds(new Point(21, 10), new Point(80, 40))).isFalse();
    }

    static Stream<Pictured> tied() {
        return Pictured.all();
    }

    /** The hem of the open cloth is an edge wherever it is folded, so lines along it are as long as it is round. */
    @ParameterizedTest
    @MethodSource("tied")
    void every_hem_of_a_folded_cloth_is_drawn(Pictured pictured) {
        var facets = pictured.fold().facets();
        List<List<Crease>> creases = Crease.of(facets);
        assertThat(creases).hasSameSizeAs(facets);
        List<Point> corners = pictured.fold().laying().whole().corners();
        double round = 0;
        double drawn = 0;
        for (int i = 0; i < corners.size(); i++) {
            Crease hem = new Crease(corners.get(i), corners.get((i + 1) % corners.size()));
            round += hem.from().to(hem.to());
            for (List<Crease> some : creases) {
                for (Crease one : some) {
                    drawn += hem.holds(one.from(), one.to()) ? one.from().to(one.to()) : 0;
                }
            }
        }
        assertThat(drawn).isCloseTo(round, within(0.02 * round));
    }

    @Test
    void both_faces_of_a_cloth_are_drawn_to_its_size_without_a_word() {
        Pictured pictured = Pictured.all().findFirst().orElseThrow();
        ClothFaces faces = new ClothFaces(pictured.cloth(), Pictured.LOOK);
        String front = faces.svg(Face.FRONT);
        String back = faces.svg(Face.BACK);
        assertThat(front).startsWith("<svg").isNotEqualTo(back).doesNotContain("<text");
        assertThat(back).doesNotContain("<text").contains("stroke-dasharray");
    }
}
