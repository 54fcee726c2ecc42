package hearthcloth.draw.tied;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Picture;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Facet;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a page gets and what is printed flat are the fold's own facets. */
class ModelTest {

    @Test
    void a_page_gets_the_box_from_every_side_in_json() throws IOException {
        Pictured pictured = Pictured.of(Tie.FLAT, "box 30 x 20 x 3 cm");
        TiedGift gift = TiedGift.of(pictured.cloth(), pictured.fold(), Pictured.LOOK);
        JsonNode read = new JsonMapper().readTree(gift.model().text());
        double area = 0;
        for (JsonNode polygon : read.get("polygons")) {
            assertThat(polygon.get("colour").asText()).matches("#[0-9a-f]{6}");
            area += polygon.get("fell").asBoolean() ? 0 : area(polygon.get("corners"));
        }
        // fells lie over patches that run on under them
        double surface = 2 * (300 * 200 + 300 * 30 + 200 * 30);
        assertThat(area).isCloseTo(surface, within(1e-4 * surface));
        assertThat(read.get("knots")).isEmpty();
    }

    private static double area(JsonNode corners) {
        double[] sum = new double[3];
        for (int i = 2; i < corners.size(); i++) {
            double[] a = way(corners.get(0), corners.get(i - 1));
            double[] b = way(corners.get(0), corners.get(i));
            sum[0] += a[1] * b[2] - a[2] * b[1];
            sum[1] += a[2] * b[0] - a[0] * b[2];
            sum[2] += a[0] * b[1] - a[1] * b[0];
        }
        return Math.sqrt(sum[0] * sum[0] + sum[1] * sum[1] + sum[2] * sum[2]) / 2;
    }

    private static double[] way(JsonNode from, JsonNode to) {
        double[] way = new double[3];
        for (int i = 0; i < 3; i++) {
            String axis = "xyz".substring(i, i + 1);
            way[i] = to.get(axis).asDouble() - from.get(axis).asDouble();
        }
        return way;
    }

    /** A paper model of a box 10 × 8 × 4 cm: the outlines printed are the drawn facets, to scale, and tile the cloth. */
    @Test
    void the_printed_net_holds_every_facet() {
        Pictured pictured = Pictured.of(Tie.FLAT, "box 10 x 8 x 4 cm");
        TiedGift gift = TiedGift.of(pictured.cloth(), pictured.fold(), Pictured.LOOK);
        Picture net = gift.net(180);
        List<Double> printed = new ArrayList<>();
        for (Mark mark : net.marks()) {
            if (mark instanceof Mark.Line line) {
                printed.add(area(line.points()));
            }
        }
        List<Facet> facets = pictured.fold().facets();
        assertThat(printed).hasSameSizeAs(facets);
        double side = pictured.cloth().finished().width().nm() / 1e6;
        double scale = side * Math.sqrt(2) / 179;
        for (int i = 0; i < facets.size(); i++) {
            double drawn = facets.get(i).cloth().area() / (scale * scale);
            assertThat(printed.get(i)).isCloseTo(drawn, within(1e-6));
        }
        double sum = printed.stream().mapToDouble(each -> each).sum();
        assertThat(sum).isCloseTo(side * side / (scale * scale), within(1e-3));
    }

    /** The same paper model: every side and diagonal printed is that of the facet as it is drawn in space, to scale. */
    @ParameterizedTest
    @EnumSource(
            value = Tie.class,
            names = {"FLAT", "ERRAND", "FOUR_CORNER", "TWO_KNOT", "EDGE_ALONG_EDGE"})
    void the_drawn_facets_are_the_printed_ones(Tie tie) {
        Pictured pictured = Pictured.of(tie, "box 10 x 8 x 4 cm");
        TiedGift gift = TiedGift.of(pictured.cloth(), pictured.fold(), Pictured.LOOK);
        double scale = gift.reach() / 179;
        List<List<Point>> printed = new ArrayList<>();
        for (Mark mark : gift.net(180).marks()) {
            if (mark instanceof Mark.Line line) {
                printed.add(line.points().subList(0, line.points().size() - 1));
            }
        }
        List<Facet> facets = pictured.fold().facets();
        assertThat(printed).hasSameSizeAs(facets);
        for (int i = 0; i < facets.size(); i++) {
            List<Vector> drawn = facets.get(i).corners();
            List<Point> paper = printed.get(i);
            assertThat(paper).hasSameSizeAs(drawn);
            for (int a = 0; a < drawn.size(); a++) {
                for (int b = 0; b < a; b++) {
                    double flat = Math.hypot(
                            paper.get(a).x() - paper.get(b).x(),
                            paper.get(a).y() - paper.get(b).y());
                    double space = drawn.get(a).minus(drawn.get(b)).length();
                    assertThat(flat * scale).isCloseTo(space, within(1e-6));
                }
            }
        }
    }

    /** Rows of stitches lie on the cloth that is seen: each end of a row in the plane of the polygon it lies over. */
    @ParameterizedTest
    @EnumSource(
            value = Tie.class,
            names = {"FLAT", "FOUR_CORNER"})
    void stitches_lie_on_the_cloth_and_knots_are_as_long_as_the_cloth_they_take(Tie tie) {
        Pictured pictured = Pictured.of(tie, "box 30 x 20 x 8 cm");
        Model model =
                TiedGift.of(pictured.cloth(), pictured.fold(), Pictured.LOOK).model();
        assertThat(model.rows()).isNotEmpty();
        for (Model.Row row : model.rows()) {
            Model.Polygon under = model.polygons().get(row.on());
            for (Model.Corner end : List.of(row.from(), row.to())) {
                assertThat(along(under.out(), end))
                        .isCloseTo(along(under.out(), under.corners().get(0)), within(0.1));
            }
        }
        assertThat(model.strands()).hasSize(2 * pictured.fold().knots().size());
        for (Model.Strand strand : model.strands()) {
            assertThat(strand.colours()).hasSize(strand.line().size() - 1);
        }
    }

    private static double along(Model.Corner way, Model.Corner place) {
        return way.x() * place.x() + way.y() * place.y() + way.z() * place.z();
    }

    private static double area(List<Point> closed) {
        double twice = 0;
        for (int i = 1; i < closed.size(); i++) {
            Point a = closed.get(i - 1);
            Point b = closed.get(i);
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return Math.abs(twice) / 2;
    }
}
