package hearthcloth.draw.tied;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.Rect;
import hearthcloth.cloth.face.Shown;
import hearthcloth.cloth.making.Face;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.Laying;
import hearthcloth.wrap.fold.Motion;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.fold.Visible;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What is drawn on top, judged by rays: each sample point of a picture is looked through to the nearest facet of the fold,
 * taken back to the plan, and asked which patch lies there. Shares no code with the drawing but the fold and {@link Shown}.
 */
class ViewTest {

    private static final int SAMPLES = 200;

    static List<Pictured> all() {
        return Pictured.all().toList();
    }

    @ParameterizedTest
    @MethodSource("all")
    void the_patch_on_top_is_the_one_a_ray_meets_first(Pictured pictured) {
        front = Shown.of(pictured.cloth(), Face.FRONT);
        back = Shown.of(pictured.cloth(), Face.BACK);
        Visible visible = Visible.of(pictured.fold());
        Scene scene = Scene.of(visible);
        for (Eye eye : List.of(Eye.ABOVE, Eye.FRONT, Eye.CORNER)) {
            View view = view(scene, eye, pictured);
            List<Layer> layers = layers(pictured, eye);
            Random chance = new Random(20261125);
            int seen = 0;
            int wrong = 0;
            for (int i = 0; i < SAMPLES; i++) {
                Point at = sample(view, chance);
                String met = met(layers, at, eye, pictured);
                String drawn = drawn(view, at);
                seen += met.isEmpty() ? 0 : 1;
                wrong += met.equals(drawn) ? 0 : 1;
            }
            assertThat(seen).isGreaterThan(SAMPLES / 5);
            // a ray that grazes an edge may fall to either side
            assertThat(wrong).as(eye.key()).isLessThanOrEqualTo(SAMPLES / 100);
        }
    }

    /** Seen from above, a box's patches fill its top as the figures say: areas drawn are areas counted. */
    @ParameterizedTest
    @MethodSource("all")
    void nothing_shines_through(Pictured pictured) {
        Scene scene = Scene.of(Visible.of(pictured.fold()));
        for (Eye eye : List.of(Eye.ABOVE, Eye.FRONT, Eye.CORNER)) {
            View view = view(scene, eye, pictured);
            assertThat(view.things()).isNotEmpty();
            for (View.Thing thing : view.things()) {
                if (thing instanceof View.Thing.Area area) {
                    assertThat(area.patch()).isNotEmpty();
                }
            }
        }
    }

    /** A flat wrap has no loose ends: its visible pieces fill the box's outline from above exactly. */
    @Test
    void areas_from_above_sum_to_the_top() {
        Pictured flat = Pictured.of(hearthcloth.wrap.Tie.FLAT, "box 30 x 20 x 3 cm");
        View view = view(Scene.of(Visible.of(flat.fold())), Eye.ABOVE, flat);
        double hidden = 0;
        double whole = 0;
        for (View.Thing thing : view.things()) {
            if (thing instanceof View.Thing.Area area) {
                whole += area(area.outline());
            }
        }
        // fells lie over the patches they run on to, so the sum counts them twice
        for (View.Thing thing : view.things()) {
            if (thing instanceof View.Thing.Area area && area.fell()) {
                hidden += area(area.outline());
            }
        }
        assertThat(whole - hidden).isCloseTo(300.0 * 200, within(1e-3));
    }

    private static double area(List<Point> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            Point a = outline.get(i);
            Point b = outline.get((i + 1) % outline.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return Math.abs(twice) / 2;
    }

    /** Something a ray may meet: a facet of cloth, or a pane of a knot's strand. */
    private record Layer(List<double[]> corners, List<Vector> places, Vector out, Motion motion, String strand) {}

    private static List<Layer> layers(Pictured pictured, Eye eye) {
        List<Layer> layers = new ArrayList<>();
        Motion none = pictured.fold().facets().get(0).motion();
        for (Facet facet : pictured.fold().facets()) {
            boolean inside = facet.part() == Facet.Part.TUCK || facet.part() == Facet.Part.KNOT;
            if (!inside) {
                layers.add(layer(facet.corners(), facet.plane().out(), facet.motion(), "", eye));
            }
        }
        Pattern pattern = Pattern.of(pictured.cloth(), pictured.fold().laying());
        for (ReefKnot knot : pictured.fold().knots()) {
            for (Pane pane : Strands.of(knot, Strands.TIGHT, eye)) {
                Pane.Skin.Bunch bunch = (Pane.Skin.Bunch) pane.skin();
                String patch = pattern.at(Face.FRONT, bunch.middle()).name();
                layers.add(layer(pane.corners(), pane.out(), none, patch, eye));
            }
        }
        return layers;
    }

    private static Layer layer(List<Vector> places, Vector out, Motion motion, String strand, Eye eye) {
        List<double[]> corners = places.stream()
                .map(place -> new double[] {eye.x(place), eye.y(place)})
                .toList();
        return new Layer(corners, places, out, motion, strand);
    }

    private Shown front = Shown.of(Pictured.cloth(Length.cm(70)), Face.FRONT);
    private Shown back = front;

    private String met(List<Layer> layers, Point at, Eye eye, Pictured pictured) {
        double nearest = Double.NEGATIVE_INFINITY;
        String patch = "";
        for (Layer layer : layers) {
            double facing = layer.out.dot(eye.towards());
            if (Math.abs(facing) < 1e-9 || !holds(layer.corners, at)) {
                continue;
            }
            Vector on = eye.right().times(at.x()).plus(eye.up().times(-at.y()));
            double deep = layer.out.dot(layer.places.get(0).minus(on)) / facing;
            // of layers in one plane the later lies outside
            if (facing > 0 ? deep >= nearest - 1e-6 : deep > nearest + 1e-6) {
                nearest = Math.max(nearest, deep);
                patch = layer.strand.isEmpty()
                        ? patch(layer, on.plus(eye.towards().times(deep)), eye, pictured)
                        : layer.strand;
            }
        }
        return patch;
    }

    /** The last field of the face towards the eye that holds the place. */
    private String patch(Layer layer, Vector place, Eye eye, Pictured pictured) {
        boolean inside = layer.motion.inside().dot(eye.towards()) > 0;
        Shown shown = inside ? back : front;
        Point plan = plan(pictured.fold().laying(), layer.motion.back(place));
        double width = mm(pictured.cloth().finished().width());
        double x = inside ? width - plan.x() : plan.x();
        String patch = "";
        for (Shown.Field field : shown.fields()) {
            Rect rect = field.at();
            boolean holds = x >= mm(rect.x())
                    && x <= mm(rect.right())
                    && plan.y() >= mm(rect.y())
                    && plan.y() <= mm(rect.bottom());
            patch = holds ? field.patch().place().id() : patch;
        }
        return patch;
    }

    private static double mm(Length length) {
        return length.in(Unit.MILLIMETRE);
    }

    private static String drawn(View view, Point at) {
        String patch = "";
        for (View.Thing thing : view.things()) {
            if (thing instanceof View.Thing.Area area
                    && holds(
                            area.outline().stream()
                                    .map(point -> new double[] {point.x(), point.y()})
                                    .toList(),
                            at)) {
                patch = area.patch();
            }
        }
        return patch;
    }

    /** Crossings of a ray to the right: odd inside. */
    private static boolean holds(List<double[]> outline, Point at) {
        boolean in = false;
        for (int i = 0; i < outline.size(); i++) {
            double[] a = outline.get(i);
            double[] b = outline.get((i + 1) % outline.size());
            if ((a[1] > at.y()) != (b[1] > at.y())) {
                double x = a[0] + (at.y() - a[1]) / (b[1] - a[1]) * (b[0] - a[0]);
                in ^= x > at.x();
            }
        }
        return in;
    }

    private static Point sample(View view, Random chance) {
        var bounds = view.bounds();
        return new Point(
                bounds.x() + chance.nextDouble() * bounds.width(), bounds.y() + chance.nextDouble() * bounds.height());
    }

    private static View view(Scene scene, Eye eye, Pictured pictured) {
        Laying laying = pictured.fold().laying();
        return View.of(
                scene,
                eye,
                Pattern.of(pictured.cloth(), laying),
                laying.placing().out(),
                Pictured.LOOK);
    }

    /** The place on the plan that lies at this point of the table: the laying is turned about, as any three places show. */
    private static Point plan(Laying laying, Point at) {
        Point zero = laying.at(0, 0);
        Point x = laying.at(1, 0).minus(zero);
        Point y = laying.at(0, 1).minus(zero);
        Point from = at.minus(zero);
        return new Point(x.dot(from) / x.dot(x), y.dot(from) / y.dot(y));
    }
}
