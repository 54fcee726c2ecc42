package hearthcloth.wrap.fold;

import hearthcloth.cloth.Rect;
import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Vector;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * What of a tied cloth can be seen: of every facet the parts that no later facet in its plane covers. Areas are exact,
 * by cutting convex polygons. The wrapped gift is taken as convex, so a part shows from wherever its side faces.
 * Gathered ends, knots and tails show only in part and from changing sides, so they are counted separately, and what
 * they hide is not subtracted. Tucks never show, since they are covered; the tests verify this by the area of every
 * side.
 *
 * @param pieces the parts that show, facet by facet
 */
public record Visible(Fold fold, List<Piece> pieces) {

    /** A part of a facet that shows. */
    public record Piece(Facet facet, ConvexPolygon cloth) {}

    /** Directions from which the gift is seen; the maker is at the near side. */
    public enum View {
        ABOVE(0, 0, 1),
        FRONT(0, -1, 0),
        BACK(0, 1, 0),
        RIGHT(1, 0, 0),
        LEFT(-1, 0, 0),
        CORNER(1, -1, 1),
        UNDERNEATH(0, 0, -1);

        private final double x;
        private final double y;
        private final double z;

        View(double x, double y, double z) {
            this.x = x;
            this.y = y;
            this.z = z;
        }

        /** The unit vector towards the eye. */
        public Vector eye() {
            return new Vector(x, y, z).unit();
        }
    }

    /**
     * Where the cloth of a patch lies, in square millimetres; the five add up to the patch.
     *
     * @param loose in gathered ends, knots and tails
     * @param hidden folded away or under other cloth
     */
    public record Shares(double underneath, double sides, double top, double loose, double hidden) {

        public double total() {
            return underneath + sides + top + loose + hidden;
        }

        /** The share of the patch that is seen on the standing gift, from 0 to 1. */
        public double seen() {
            return total() == 0 ? 0 : (sides + top) / total();
        }
    }

    public Visible {
        pieces = List.copyOf(pieces);
    }

    /** Finds what shows. */
    public static Visible of(Fold fold) {
        Map<String, List<Facet>> planes = new LinkedHashMap<>();
        for (Facet facet : fold.facets()) {
            if (!facet.isLoose()) {
                planes.computeIfAbsent(facet.plane().name(), name -> new ArrayList<>())
                        .add(facet);
            }
        }
        List<Piece> pieces = new ArrayList<>();
        for (List<Facet> stack : planes.values()) {
            for (int i = 0; i < stack.size(); i++) {
                Facet facet = stack.get(i);
                if (facet.part() == Facet.Part.TUCK) {
                    continue;
                }
                for (ConvexPolygon shown : uncovered(facet, stack.subList(i + 1, stack.size()))) {
                    pieces.add(new Piece(facet, shown));
                }
            }
        }
        return new Visible(fold, pieces);
    }

    private static List<ConvexPolygon> uncovered(Facet facet, List<Facet> over) {
        List<ConvexPolygon> shown = List.of(facet.cloth());
        for (Facet later : over) {
            ConvexPolygon shadow = ConvexPolygon.anticlockwise(
                    later.corners().stream().map(facet.motion()::back).toList());
            shown = shown.stream()
                    .flatMap(outline -> outline.without(shadow).stream())
                    .toList();
            if (shown.isEmpty()) {
                return shown;
            }
        }
        return shown;
    }

    /** Where the cloth of a rectangle of the plan lies. */
    public Shares shares(Rect patch) {
        return shares(fold.laying().patch(patch));
    }

    /** Where the cloth of a convex part of the cloth lies. */
    public Shares shares(ConvexPolygon part) {
        double under = shown(part, piece -> piece.facet().plane().where() == FacetPlane.Where.UNDERNEATH);
        double sides = shown(part, piece -> piece.facet().plane().where() == FacetPlane.Where.SIDES);
        double top = shown(part, piece -> piece.facet().plane().where() == FacetPlane.Where.TOP);
        double loose = 0;
        for (Facet facet : fold.facets()) {
            loose += facet.isLoose() ? facet.cloth().and(part).area() : 0;
        }
        return new Shares(under, sides, top, loose, Math.max(0, part.area() - under - sides - top - loose));
    }

    /**
     * Square millimetres of a rectangle of the plan that are seen on the standing gift; the same as {@link Shares}
     * gives, but quicker.
     */
    public double seen(Rect patch) {
        return shown(fold.laying().patch(patch), piece -> piece.facet().plane().where() != FacetPlane.Where.UNDERNEATH);
    }

    /** Square millimetres of a part of the cloth that face an eye; measured as cloth and not foreshortened. */
    public double from(View view, ConvexPolygon part) {
        Vector eye = view.eye();
        return shown(part, piece -> piece.facet().plane().out().dot(eye) > 1e-9);
    }

    /** The same for a rectangle of the plan. */
    public double from(View view, Rect patch) {
        return from(view, fold.laying().patch(patch));
    }

    private double shown(ConvexPolygon part, Predicate<Piece> which) {
        return pieces.stream()
                .filter(which)
                .mapToDouble(piece -> piece.cloth().and(part).area())
                .reduce(0, Double::sum);
    }
}
