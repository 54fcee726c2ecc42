package hearthcloth.plan.colour;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Join;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Seam;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Every patch of a cloth at its place, and every edge along which two of them meet: the one fold over the assembly tree
 * that all figures of colour are read off, for the front, the back and what shows once tied. Two patches meet at one
 * seam alone, the one that joins the halves they lie in, so the edges of a tree are those of its halves and those along
 * its seam.
 */
final class EdgeMap {

    /** Edges nearer to each other than this, in nanometres, are one: far below what is sewn. */
    private static final long NEAR = 10_000;

    /** A patch at its place. */
    private record Spot(int bar, int fabric, Rect at) {

        private Spot moved(Length x, Length y) {
            return new Spot(bar, fabric, at.movedBy(x, y));
        }

        Tile tile() {
            return ColourFigures.tile(bar, fabric, at);
        }
    }

    /** The edge between two patches, of no width; the patches by their number in the list. */
    private record Edge(int one, int other, Rect at) {

        private Edge moved(int by, Length x, Length y) {
            return new Edge(one + by, other + by, at.movedBy(x, y));
        }

        double mm() {
            return Math.max(at.width().nm(), at.height().nm()) / 1e6;
        }
    }

    private final Size size;
    private final List<Spot> spots;
    private final List<Edge> edges;

    private EdgeMap(Size size, List<Spot> spots, List<Edge> edges) {
        this.size = size;
        this.spots = spots;
        this.edges = edges;
    }

    /** Of a cloth made of these fabrics. */
    static EdgeMap of(Cloth cloth, FabricDifferences fabrics) {
        return cloth.work().fold(new Folding(fabrics, new LinkedHashMap<>()));
    }

    List<Tile> tiles() {
        return spots.stream().map(Spot::tile).toList();
    }

    /** The figures of the face these differences are of. */
    ColourFigures figures(FabricDifferences face) {
        ColourSum sum = new ColourSum(face);
        spots.forEach(spot -> sum.tile(spot.tile()));
        edges.forEach(edge -> meet(sum, edge, 1));
        return sum.figures();
    }

    /**
     * The figures of a part of the edges; nothing is said of balance.
     *
     * @param share of an edge that counts, from 0 to 1
     */
    ColourFigures figures(FabricDifferences face, ToDoubleFunction<Rect> share) {
        ColourSum sum = new ColourSum(face);
        for (Edge edge : edges) {
            if (spots.get(edge.one).bar != spots.get(edge.other).bar) {
                meet(sum, edge, share.applyAsDouble(edge.at));
            }
        }
        return sum.figures();
    }

    private void meet(ColourSum sum, Edge edge, double share) {
        Spot one = spots.get(edge.one);
        Spot other = spots.get(edge.other);
        sum.meeting(one.tile(), other.tile(), share * edge.mm());
    }

    /**
     * The fold itself.
     *
     * @param bars the number of each bar, by the name it has with all its parts
     */
    private record Folding(FabricDifferences fabrics, Map<String, Integer> bars) implements Assembly.Fold<EdgeMap> {

        @Override
        public EdgeMap patch(Patch patch) {
            Place place = patch.place();
            String name = place instanceof Place.Bar one ? one.bar() : place.id();
            int bar = place instanceof Place.Hearth ? 0 : bars.computeIfAbsent(name, each -> bars.size() + 1);
            int fabric = fabrics.number(patch.fabric(), patch.showing());
            Rect at = Rect.at(Length.ZERO, Length.ZERO, patch.size());
            return new EdgeMap(patch.size(), List.of(new Spot(bar, fabric, at)), List.of());
        }

        @Override
        public EdgeMap seam(Seam seam, EdgeMap first, EdgeMap second) {
            boolean isBeside = seam.join() == Join.BESIDE;
            Length x = isBeside ? first.size.width() : Length.ZERO;
            Length y = isBeside ? Length.ZERO : first.size.height();
            int count = first.spots.size();
            List<Spot> spots = new ArrayList<>(first.spots);
            second.spots.forEach(spot -> spots.add(spot.moved(x, y)));
            List<Edge> edges = new ArrayList<>(first.edges);
            second.edges.forEach(edge -> edges.add(edge.moved(count, x, y)));
            for (int one = 0; one < count; one++) {
                for (int other = count; other < spots.size(); other++) {
                    add(edges, one, other, common(spots.get(one).at, spots.get(other).at, isBeside));
                }
            }
            return new EdgeMap(seam.size(), spots, edges);
        }

        private static void add(List<Edge> edges, int one, int other, Rect edge) {
            if (edge.width().isPositive() || edge.height().isPositive()) {
                edges.add(new Edge(one, other, edge));
            }
        }

        /** The edge between one rectangle and one to the right of it or below it; a point where they do not meet. */
        private static Rect common(Rect one, Rect other, boolean isBeside) {
            Length end = isBeside ? one.right() : one.bottom();
            Length start = isBeside ? other.x() : other.y();
            Length from = isBeside ? one.y().max(other.y()) : one.x().max(other.x());
            Length to =
                    isBeside ? one.bottom().min(other.bottom()) : one.right().min(other.right());
            boolean meets = Math.abs(end.nm() - start.nm()) < NEAR && from.isLessThan(to);
            Length along = meets ? to.minus(from) : Length.ZERO;
            return isBeside
                    ? Rect.at(end, from, new Size(Length.ZERO, along))
                    : Rect.at(from, end, new Size(along, Length.ZERO));
        }
    }
}
