package hearthcloth.wrap.settle;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.FacetPlane;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Visible;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What shows of a tied cloth as a fine mesh: the facets of its fold cut small, lifted off the gift by the layers under
 * them, drawn up and gathered towards the knots, and rounded over edges. It is made in one go and needs no waiting. It
 * shows the spare corners tucked in, as the fold does; how cloth falls that is not tucked in, {@code wrap.drape} tries.
 *
 * <p>No point comes inside a plane that it lay in, so a convex gift is never cut into; threads are pulled back to their
 * length where easing has stretched them. Where that did not do, nothing is eased and the cloth is shown as the fold laid
 * it. How high cloth stands and how deep it gathers is chosen for the drawing.
 *
 * @param places in space, in millimetres
 * @param cloth where each lies on the flat cloth on the table
 * @param triangles three numbers each, anticlockwise seen from the cloth's inside
 * @param isSoft whether it is eased; false where it lies as the fold laid it
 */
public record Settled(List<Vector> places, List<Point> cloth, List<Integer> triangles, boolean isSoft) {

    /** Cells along the cloth's longer side; half as wide near knots. */
    private static final double CELLS = 40;

    /** How far loose pieces in one plane lie off each other, in millimetres; at most {@code HIGHEST}. */
    private static final double LAYER = 0.25;

    private static final double HIGHEST = 3;

    public Settled {
        places = List.copyOf(places);
        cloth = List.copyOf(cloth);
        triangles = List.copyOf(triangles);
    }

    /** As cloth of this stiffness: where it is stiffer it bends more roundly and gathers in fewer, higher folds. */
    public static Settled of(Visible visible, Stiffness stiffness) {
        Fit fit = visible.fold().fit();
        double side = Math.max(
                fit.cloth().width().in(Unit.MILLIMETRE), fit.cloth().height().in(Unit.MILLIMETRE));
        Snipping snipping = new Snipping(side / CELLS, visible.fold().knots());
        visible.pieces().forEach(piece -> snipping.add(piece.facet(), piece.cloth(), 0));
        if (fit.gift() instanceof Gift.Box && !visible.fold().knots().isEmpty()) {
            under(visible.fold()).forEach(piece -> snipping.under(piece.facet(), piece.cloth(), UNDER));
        }
        if (fit.gift() instanceof Gift.TwoBottles) {
            between(visible.fold(), snipping);
        }
        loose(visible.fold(), snipping);
        Web web = snipping.web();
        Easing easing = new Easing(web, side, stiffness);
        boolean isSquare = fit.gift() instanceof Gift.Box;
        easing.lift(isSquare ? Stance.SQUARE : Stance.ROUND);
        if (isSquare) {
            // round something round, and of books, the fold itself gathers all cloth to the knot
            visible.fold().knots().forEach(easing::gather);
        }
        easing.round();
        boolean isSoft = new Truth(web, visible.fold().knots()).holds(fit.gift());
        if (!isSoft) {
            web.asFolded();
        }
        return of(web, isSoft);
    }

    /** How far what lies under others is drawn inside its plane, in millimetres. */
    private static final double UNDER = 0.2;

    /** Adds what two bottles stand on: between them one looks down on the inside of the cloth, layer over layer. */
    private static void between(Fold fold, Snipping snipping) {
        List<Facet> base = fold.facets().stream()
                .filter(facet -> facet.part() == Facet.Part.BASE)
                .toList();
        double apart = Math.min(UNDER, HIGHEST / Math.max(1, base.size()));
        for (int i = 0; i < base.size(); i++) {
            snipping.under(base.get(i), base.get(i).cloth(), apart * (base.size() - i));
        }
    }

    /** Adds free and gathered ends, those in one plane a little apart, closer together where they are many. */
    private static void loose(Fold fold, Snipping snipping) {
        Map<String, Integer> all = new HashMap<>();
        List<Facet> loose = fold.facets().stream()
                .filter(facet -> facet.isLoose() && facet.part() != Facet.Part.KNOT)
                .toList();
        loose.forEach(facet -> all.merge(facet.plane().name(), 1, Integer::sum));
        Map<String, Integer> layers = new HashMap<>();
        for (Facet facet : loose) {
            int layer = layers.merge(facet.plane().name(), 1, Integer::sum);
            double apart =
                    Math.min(LAYER, HIGHEST / all.getOrDefault(facet.plane().name(), 1));
            snipping.add(facet, facet.cloth(), layer * apart);
        }
    }

    /**
     * What would be seen without the walls' panels and the two flaps that lie last over the top: the others and the spare
     * corners, which show where those part.
     */
    private static List<Visible.Piece> under(Fold fold) {
        List<Facet> flaps = fold.facets().stream()
                .filter(facet -> facet.part() == Facet.Part.TOP && facet.plane().where() == FacetPlane.Where.TOP)
                .toList();
        List<Facet> last = flaps.subList(Math.max(0, flaps.size() - 2), flaps.size());
        List<Facet> under = fold.facets().stream()
                .filter(facet -> facet.part() == Facet.Part.TUCK || flaps.contains(facet))
                .filter(facet -> facet.plane().where() != FacetPlane.Where.UNDERNEATH && !last.contains(facet))
                .map(facet -> facet.as(Facet.Part.TOP))
                .toList();
        return Visible.of(new Fold(fold.fit(), fold.laying(), under, List.of())).pieces();
    }

    /** Where a point of the flat cloth has come to lie, or the nearest one that is drawn. */
    public Vector place(Point at) {
        int best = 0;
        for (int k = 1; k < places.size(); k++) {
            best = cloth.get(k).to(at) < cloth.get(best).to(at) ? k : best;
        }
        return places.get(best);
    }

    private static Settled of(Web web, boolean isSoft) {
        List<Vector> places = new ArrayList<>();
        for (int k = 0; k < web.points(); k++) {
            places.add(web.place(k));
        }
        List<Integer> triangles = new ArrayList<>();
        for (int corner : web.triangles) {
            triangles.add(corner);
        }
        return new Settled(places, web.cloth, triangles, isSoft);
    }
}
