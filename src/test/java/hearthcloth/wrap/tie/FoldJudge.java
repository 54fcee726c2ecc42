package hearthcloth.wrap.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Motion;
import hearthcloth.wrap.fold.Visible;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Function;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/** Judges a fold from outside: lengths, areas and overlaps by other means than those that made it. */
public final class FoldJudge {

    private static final GeometryFactory JTS = new GeometryFactory();

    /** JTS works on a grid of a hundred-thousandth of a millimetre, where it cannot fail. */
    private static final PrecisionModel FINE = new PrecisionModel(1e5);

    private FoldJudge() {}

    /** Every facet keeps the distances between its corners to 1e-9 and lies in the plane it names. */
    public static void isNeverStretched(Fold fold) {
        double worst = 0;
        for (Facet facet : fold.facets()) {
            List<Point> flat = facet.cloth().corners();
            List<Vector> laid = facet.corners();
            for (int i = 0; i < flat.size(); i++) {
                for (int j = 0; j < i; j++) {
                    double on = Math.hypot(
                            flat.get(i).x() - flat.get(j).x(),
                            flat.get(i).y() - flat.get(j).y());
                    double in = laid.get(i).minus(laid.get(j)).length();
                    worst = Math.max(worst, Math.abs(in - on) / Math.max(1, on));
                }
            }
            // a facet lies in the plane it says, and faces it squarely
            assertThat(Math.abs(facet.motion().inside().dot(facet.plane().out())))
                    .isCloseTo(1, within(1e-9));
        }
    }

    /** The facets' areas sum to the cloth's, and each of 2 000 points of the cloth lies in exactly one (JTS). */
    public static void isEveryBitOfTheClothOnce(Fold fold) {
        double whole = fold.laying().whole().area();
        double area = fold.facets().stream()
                .mapToDouble(facet -> facet.cloth().area())
                .sum();
        assertThat(area).isCloseTo(whole, within(1e-9 * whole));
        STRtree tree = new STRtree();
        for (Facet facet : fold.facets()) {
            Geometry polygon = polygon(facet.cloth());
            tree.insert(polygon.getEnvelopeInternal(), polygon);
        }
        Random chance = new Random(4711);
        int wrong = 0;
        for (int i = 0; i < 2000; i++) {
            Point point = some(fold.laying().whole(), chance);
            Coordinate place = new Coordinate(point.x(), point.y());
            List<?> near = tree.query(new Envelope(place));
            long inside = near.stream()
                    .filter(polygon -> SimplePointInAreaLocator.locate(place, (Geometry) polygon) != Location.EXTERIOR)
                    .count();
            wrong += inside == 1 ? 0 : 1;
        }
        // a point may fall on a crease within a rounding
        assertThat(wrong).isLessThanOrEqualTo(1);
    }

    /** In every plane the parts that show cover just what all its facets together cover (JTS), none of it twice. */
    public static void agreesWithJts(Visible visible) {
        Map<String, List<Facet>> planes = new TreeMap<>();
        for (Facet facet : visible.fold().facets()) {
            if (!facet.isLoose() && facet.part() != Facet.Part.TUCK) {
                planes.computeIfAbsent(facet.plane().name(), name -> new ArrayList<>())
                        .add(facet);
            }
        }
        Map<String, Double> shown = new TreeMap<>();
        for (Visible.Piece piece : visible.pieces()) {
            shown.merge(piece.facet().plane().name(), piece.cloth().area(), Double::sum);
        }
        planes.forEach((name, facets) -> {
            Motion flat = facets.get(0).motion();
            double covered = shadow(facets, flat::back).getArea();
            assertThat(shown.getOrDefault(name, 0.0)).as(name).isCloseTo(covered, within(1e-5 * covered + 1e-2));
        });
    }

    /** The outlines (made of places in space by {@code flat}) cover this many square millimetres. */
    static Geometry union(List<ConvexPolygon> outlines) {
        List<Geometry> polygons =
                outlines.stream().map(FoldJudge::polygon).map(p -> p.buffer(0)).toList();
        return UnaryUnionNG.union(JTS.buildGeometry(polygons), FINE);
    }

    static Geometry polygon(ConvexPolygon outline) {
        List<Point> corners = outline.corners();
        Coordinate[] ring = new Coordinate[corners.size() + 1];
        for (int i = 0; i <= corners.size(); i++) {
            Point corner = corners.get(i % corners.size());
            ring[i] = new Coordinate(corner.x(), corner.y());
        }
        return JTS.createPolygon(ring);
    }

    /** What the facets of one plane cover there, seen along {@code flat}. */
    public static Geometry shadow(List<Facet> facets, Function<Vector, Point> flat) {
        return union(facets.stream()
                .map(facet -> ConvexPolygon.anticlockwise(
                        facet.corners().stream().map(flat).toList()))
                .toList());
    }

    /** A random point of a facet's outline. */
    public static Point some(ConvexPolygon outline, Random chance) {
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
