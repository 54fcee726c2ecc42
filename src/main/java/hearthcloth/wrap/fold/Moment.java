package hearthcloth.wrap.fold;

import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import java.util.ArrayList;
import java.util.List;

/**
 * The cloth at one moment of tying: what is folded lies as in the finished fold, by the same facets; the corners whose
 * turn has not come still lie flat.
 */
public enum Moment {
    /** Nothing folded, the gift on the cloth. */
    LAID,
    /** The near corner is over. */
    NEAR_OVER,
    /** Near and far are over. */
    NEAR_AND_FAR,
    /** All but the far corner are over. */
    ALL_BUT_FAR,
    /** Done. */
    TIED;

    /** True where this moment of a tie can be drawn: of the ties of a box set on the diagonal all, else the first and last. */
    public boolean isDrawn(Tie tie, Gift gift) {
        boolean diagonal = gift instanceof Gift.Box && tie != Tie.EDGE_ALONG_EDGE;
        return this == LAID || this == TIED || diagonal;
    }

    /**
     * The fold as far as it has come.
     *
     * @throws IllegalArgumentException where this moment cannot be drawn
     */
    public Fold of(Fold tied) {
        if (!isDrawn(tied.fit().tie(), tied.fit().gift())) {
            throw new IllegalArgumentException(
                    this + " of the " + tied.fit().tie().words() + " is not drawn");
        }
        if (this == TIED) {
            return tied;
        }
        List<Outline> flat = flat(tied);
        List<Facet> facets = new ArrayList<>();
        for (Outline outline : flat) {
            facets.add(new Facet(Facet.Part.BASE, outline, ON_THE_TABLE, TABLE));
        }
        for (Facet facet : this == LAID ? List.<Facet>of() : tied.facets()) {
            Facet.Part part = facet.part() == Facet.Part.TUCK ? Facet.Part.TOP : facet.part();
            List<Outline> folded = List.of(facet.cloth());
            for (Outline still : flat) {
                folded = folded.stream()
                        .flatMap(outline -> outline.without(still).stream())
                        .toList();
            }
            folded.forEach(outline -> facets.add(new Facet(part, outline, facet.motion(), facet.plane())));
        }
        return new Fold(tied.fit(), tied.laying(), facets, knots(tied));
    }

    private static final Plane TABLE = new Plane("table", Space.UP);

    private static final Motion ON_THE_TABLE =
            new Motion(new Point(0, 0), new Space(0, 0, 0), new Space(1, 0, 0), new Space(0, 1, 0));

    /** What still lies on the table beyond the gift. */
    private List<Outline> flat(Fold tied) {
        Outline cloth = tied.laying().whole();
        if (!(tied.fit().gift() instanceof Gift.Box box) || this == LAID) {
            return List.of(cloth);
        }
        Panels panels = Panels.of(box, cloth);
        Outline beside = cloth.between(Panels.FAR, -panels.halfW(), panels.halfW());
        Outline right = beside.above(Panels.RIGHT, panels.halfL());
        Outline left = beside.above(Panels.LEFT, panels.halfL());
        Outline far = cloth.above(Panels.FAR, panels.halfW());
        return switch (this) {
            case NEAR_OVER -> List.of(far, right, left);
            case NEAR_AND_FAR -> List.of(right, left);
            default -> List.of(far);
        };
    }

    /** Of several knots the first, once near and far are over. */
    private List<Knot> knots(Fold tied) {
        boolean first = this == NEAR_AND_FAR && tied.fit().tie() == Tie.FOUR_CORNER;
        return first ? tied.knots().subList(0, 1) : List.of();
    }
}
