package hearthcloth.draw.tied;

import hearthcloth.geometry.Vector;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.fold.Visible;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;

/**
 * Everything drawn of one moment.
 *
 * @param ground places whose shadow falls on the ground
 * @param breadth of the knots' strands, 1 where they touch
 */
record Scene(List<Pane> panes, List<ReefKnot> knots, List<Vector> ground, double breadth) {

    Scene {
        panes = List.copyOf(panes);
        knots = List.copyOf(knots);
        ground = List.copyOf(ground);
    }

    /** The tied gift: the visible parts of cloth that lies close, everything that is loose, and the knots. */
    static Scene of(Visible visible) {
        Fold fold = visible.fold();
        List<Pane> panes = new ArrayList<>();
        List<Vector> ground = new ArrayList<>();
        IdentityHashMap<Facet, List<Crease>> creases = creases(fold);
        // between two bottles one looks down on the inside of the cloth they stand on, layer over layer
        boolean open = fold.fit().gift() instanceof Gift.TwoBottles;
        for (Visible.Piece piece : visible.pieces()) {
            Facet facet = piece.facet();
            if (!open || facet.part() != Facet.Part.BASE) {
                List<Vector> corners =
                        piece.cloth().corners().stream().map(facet.motion()::at).toList();
                panes.add(new Pane(corners, facet.plane().out(), true, skin(facet, creases)));
                ground.addAll(corners);
            }
        }
        for (Facet facet : fold.facets()) {
            boolean loose = facet.isLoose() && facet.part() != Facet.Part.KNOT;
            if (loose || (open && facet.part() == Facet.Part.BASE)) {
                panes.add(new Pane(facet.corners(), facet.plane().out(), false, skin(facet, creases)));
            }
        }
        return new Scene(panes, fold.knots(), ground, Strands.TIGHT);
    }

    /** A moment on the way: cloth seen from both sides, and the gift where it is not covered yet. */
    static Scene of(Fold moment, List<Pane> gift) {
        IdentityHashMap<Facet, List<Crease>> creases = creases(moment);
        boolean open =
                moment.facets().stream().anyMatch(facet -> facet.plane().name().equals("table"));
        List<Pane> panes = new ArrayList<>(open ? gift : List.of());
        if (isAngular(moment)) {
            // flaps that stand are seen from both sides, so every layer is drawn
            for (Facet facet : moment.facets()) {
                if (!facet.isLoose()) {
                    panes.add(new Pane(facet.corners(), facet.plane().out(), false, skin(facet, creases)));
                }
            }
        } else {
            for (Visible.Piece piece : Visible.of(moment).pieces()) {
                Facet facet = piece.facet();
                List<Vector> corners =
                        piece.cloth().corners().stream().map(facet.motion()::at).toList();
                panes.add(new Pane(corners, facet.plane().out(), false, skin(facet, creases)));
            }
        }
        for (Facet facet : moment.facets()) {
            if (facet.isLoose() && facet.part() != Facet.Part.KNOT) {
                panes.add(new Pane(facet.corners(), facet.plane().out(), false, skin(facet, creases)));
            }
        }
        return new Scene(panes, moment.knots(), List.of(), Strands.TIGHT);
    }

    /** The part of the scene higher than this. */
    Scene above(double height) {
        Vector up = new Vector(0, 0, 1);
        List<Pane> higher = new ArrayList<>();
        for (Pane pane : panes) {
            switch (pane.side(up, height)) {
                case BEFORE -> higher.add(pane);
                case ACROSS -> higher.add(pane.before(up, height));
                default -> {}
            }
        }
        List<ReefKnot> tied =
                knots.stream().filter(knot -> knot.at().z() > height).toList();
        return new Scene(higher, tied, ground, breadth);
    }

    private static boolean isAngular(Fold fold) {
        return fold.fit().gift() instanceof Gift.Box || fold.fit().gift() instanceof Gift.Books;
    }

    /** All panes from far to near. */
    List<Pane> from(Eye eye) {
        List<Pane> all = new ArrayList<>(panes);
        knots.forEach(knot -> all.addAll(Strands.of(knot, breadth, eye)));
        List<Depth.Cut> cuts =
                knots.stream().flatMap(knot -> Strands.bounds(knot).stream()).toList();
        return Depth.of(all, cuts).from(eye.towards());
    }

    private static Pane.Skin skin(Facet facet, IdentityHashMap<Facet, List<Crease>> creases) {
        return new Pane.Skin.Cloth(facet, creases.getOrDefault(facet, List.of()));
    }

    /** The creases to draw. Pleats on a round gift only serve the drawing, so there only loose ends have creases. */
    private static IdentityHashMap<Facet, List<Crease>> creases(Fold fold) {
        boolean angular = isAngular(fold);
        List<Facet> sharp = fold.facets().stream()
                .filter(facet -> facet.isLoose() || (angular && facet.part() != Facet.Part.TUCK))
                .toList();
        List<List<Crease>> edges = Crease.of(sharp);
        IdentityHashMap<Facet, List<Crease>> creases = new IdentityHashMap<>();
        for (int i = 0; i < sharp.size(); i++) {
            creases.put(sharp.get(i), edges.get(i));
        }
        return creases;
    }
}
