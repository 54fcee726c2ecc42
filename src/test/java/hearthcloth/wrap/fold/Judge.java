package hearthcloth.wrap.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/** Judges a fold from outside: lengths, areas and overlaps by other means than those that made it. */
final class Judge {

    private static final GeometryFactory JTS = new GeometryFactory();

    /** JTS works on a grid of a hundred-thousandth of a millimetre, where it cannot fail. */
    private static final PrecisionModel FINE = new PrecisionModel(1e5);

    private Judge() {}

    /** Every facet keeps the distances between its corners to 1e-9 and lies in the plane it names. */
    static void isNeverStretched(Fold fold) {
        double worst = 0;
        for (Facet facet : fold.facets()) {
            List<Point> flat = facet.cloth().corners();
            List<Space> laid = facet.corners();
            for (int i = 0; i < flat.size(); i++) {
                for (int j = 0; j < i; j++) {
                    double on = Math.hypot(
                            flat.get(i).u() - flat.get(j).u(),
                            flat.get(i).v() - flat.get(j).v());
                    double in = laid.get(i).minus(laid.get(j)).length();
                    worst = Math.max(worst, Math.abs(in - on) / Math.max(1, on));
                }
            }
            // a facet lies in the plane it says, and faces it squarely
            assertThat(Math.abs(facet.motion().inside().dot(facet.plane().out())))
                    .isCloseTo(1, within(1e-9));
        }
    }

    /** The facets' outlines tile the cloth: their areas sum to it and their union (JTS) is no smaller. */
    static void isEveryBitOfTheClothOnce(Fold fold) {
        double whole = fold.laying().whole().area();
        assertThat(fold.area()).isCloseTo(whole, within(1e-9 * whole));
        Geometry union = union(fold.facets().stream().map(Facet::cloth).toList());
        assertThat(union.getArea()).isCloseTo(whole, within(1e-6 * whole));
        assertThat(union.difference(polygon(fold.laying().whole()).buffer(1e-3)).getArea())
                .isLessThan(1e-3);
    }

    /** The outlines (made of places in space by {@code flat}) cover this many square millimetres. */
    static Geometry union(List<Outline> outlines) {
        List<Geometry> polygons =
                outlines.stream().map(Judge::polygon).map(p -> p.buffer(0)).toList();
        return UnaryUnionNG.union(JTS.buildGeometry(polygons), FINE);
    }

    static Geometry polygon(Outline outline) {
        List<Point> corners = outline.corners();
        Coordinate[] ring = new Coordinate[corners.size() + 1];
        for (int i = 0; i <= corners.size(); i++) {
            Point corner = corners.get(i % corners.size());
            ring[i] = new Coordinate(corner.u(), corner.v());
        }
        return JTS.createPolygon(ring);
    }

    /** What the facets of one plane cover there, seen along {@code flat}. */
    static Geometry shadow(List<Facet> facets, Function<Space, Point> flat) {
        return union(facets.stream()
                .map(facet ->
                        Outline.anticlockwise(facet.corners().stream().map(flat).toList()))
                .toList());
    }

    /** A random point of a facet's outline. */
    static Point some(Outline outline, Random chance) {
        List<Point> corners = outline.corners();
        double sum = 0;
        Point point = new Point(0, 0);
        for (Point corner : corners) {
            double weight = -Math.log(1 - chance.nextDouble());
            point = point.plus(corner.times(weight));
            sum += weight;
        }
        return point.times(1 / sum);
    }
}
