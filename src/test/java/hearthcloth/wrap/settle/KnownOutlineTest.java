package hearthcloth.wrap.settle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Laying;
import hearthcloth.wrap.fold.Motion;
import hearthcloth.wrap.fold.Visible;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Folds whose outline is known by a formula, eased. */
class KnownOutlineTest {

    /** Half a per cent. */
    private static final double NEAR = 0.005;

    private static final double SIDE = 700;

    private static Settled settled(Size cloth, List<Facet> facets) {
        Fit fit = Tie.ROUND.fit(Gift.parse("ball 10 cm", null), cloth, Length.cm(12));
        Laying laying = new Laying(cloth, fit.placing(), false);
        return Settled.of(Visible.of(new Fold(fit, laying, facets, List.of())), Stiffness.COTTON);
    }

    private static double reach(Settled mesh, ToDoubleFunction<Vector> along) {
        double most = mesh.places().stream().mapToDouble(along).max().orElseThrow();
        return most - mesh.places().stream().mapToDouble(along).min().orElseThrow();
    }

    private static double area(Settled mesh) {
        double area = 0;
        for (int t = 0; t < mesh.triangles().size(); t += 3) {
            Vector a = mesh.places().get(mesh.triangles().get(t));
            Vector b = mesh.places().get(mesh.triangles().get(t + 1));
            Vector c = mesh.places().get(mesh.triangles().get(t + 2));
            area += b.minus(a).cross(c.minus(a)).length() / 2;
        }
        return area;
    }

    @Test
    void a_square_folded_in_halves_is_as_long_and_half_as_wide_and_keeps_its_cloth() {
        Motion lower = new Motion(new Point(0, 0), new Vector(0, 0, 0), new Vector(1, 0, 0), new Vector(0, 1, 0));
        Motion upper = new Motion(new Point(0, 0), new Vector(0, 0, 0), new Vector(1, 0, 0), new Vector(0, -1, 0));
        double half = SIDE / 2;
        Settled mesh = settled(
                Size.square(Length.mm(700)),
                List.of(
                        new Facet(
                                Facet.Part.BASE,
                                ConvexPolygon.rectangle(-half, 0, half, half),
                                lower,
                                new FacetPlane("underneath", new Vector(0, 0, -1))),
                        new Facet(
                                Facet.Part.TOP,
                                ConvexPolygon.rectangle(-half, -half, half, 0),
                                upper,
                                new FacetPlane("top", new Vector(0, 0, 1)))));
        assertThat(reach(mesh, Vector::x)).isCloseTo(SIDE, within(NEAR * SIDE));
        assertThat(reach(mesh, Vector::y)).isCloseTo(half, within(NEAR * half));
        assertThat(area(mesh)).isCloseTo(SIDE * SIDE, within(NEAR * SIDE * SIDE));
    }

    /** A strip as long as a circle is round lies at the circle's radius, length over 2π, and keeps its cloth. */
    @Test
    void a_strip_round_a_cylinder_lies_at_its_length_over_two_pi() {
        int sides = 48;
        double wide = SIDE / sides;
        double high = 60;
        double inner = wide / 2 / Math.tan(Math.PI / sides);
        List<Facet> facets = new ArrayList<>();
        for (int i = 0; i < sides; i++) {
            double angle = 2 * Math.PI * (i + 0.5) / sides;
            Vector out = new Vector(Math.cos(angle), Math.sin(angle), 0);
            Vector along = new Vector(-Math.sin(angle), Math.cos(angle), 0);
            Motion motion =
                    new Motion(new Point((i + 0.5) * wide - SIDE / 2, 0), out.times(inner), along, new Vector(0, 0, 1));
            ConvexPolygon strip =
                    ConvexPolygon.rectangle(i * wide - SIDE / 2, -high / 2, (i + 1) * wide - SIDE / 2, high / 2);
            facets.add(new Facet(Facet.Part.WALL, strip, motion, new FacetPlane("strip " + i, out)));
        }
        Settled mesh = settled(new Size(Length.mm(700), Length.mm(60)), facets);
        double radius = SIDE / 2 / Math.PI;
        double mean = mesh.places().stream()
                .mapToDouble(place -> Math.hypot(place.x(), place.y()))
                .average()
                .orElseThrow();
        assertThat(mean).isCloseTo(radius, within(NEAR * radius));
        assertThat(area(mesh)).isCloseTo(SIDE * high, within(NEAR * SIDE * high));
    }
}
