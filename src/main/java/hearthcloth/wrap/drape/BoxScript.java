package hearthcloth.wrap.drape;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.pleat.Panels;
import hearthcloth.wrap.pleat.ReefStrands;
import java.util.ArrayList;
import java.util.List;

/**
 * How hands tie a box with pairs of corners, each knot in its turn.
 *
 * @param panels the box
 * @param scale from millimetres to the drape's own world
 */
record BoxScript(Panels panels, List<ReefKnot> knots, double scale) {

    static BoxScript of(Fold fold, double scale) {
        if (!(fold.fit().gift() instanceof Gift.Box box)) {
            throw new IllegalArgumentException(fold.fit().gift() + " is not a box");
        }
        return new BoxScript(Panels.of(box, fold.laying().whole()), fold.knots(), scale);
    }

    private double halfL() {
        return panels.halfL() * scale;
    }

    private double halfW() {
        return panels.halfW() * scale;
    }

    private double height() {
        return panels.height() * scale;
    }

    Solid solid() {
        return new Solid.Block(halfL(), halfW(), height());
    }

    /** The foot and the rim. */
    Creases creases() {
        return new Creases(around(halfL()), around(halfW()));
    }

    private List<Double> around(double half) {
        return List.of(-half - height(), -half, half, half + height());
    }

    Handling hands(Sheet sheet) {
        List<List<Grip>> pairs = new ArrayList<>();
        for (ReefKnot knot : knots) {
            ReefStrands reef = ReefStrands.of(knot);
            Point first = knot.leads().get(0).axis();
            Point second = knot.leads().get(1).axis();
            pairs.add(List.of(
                    grip(sheet, first, reef.first(), knot.bunch()), grip(sheet, second, reef.second(), knot.bunch())));
        }
        thin(sheet, pairs);
        return new BoxHands(pairs, halfL(), halfW(), sheet);
    }

    private Grip grip(Sheet sheet, Point way, List<Vector> strand, double bunch) {
        List<Vector> line = strand.stream().map(place -> place.times(scale)).toList();
        return new Grip(sheet, way, panels.half(way) * scale, height(), line, bunch * scale);
    }

    /** Towards a knot cloth is packed so tightly that layers this thick would not find room. */
    private void thin(Sheet sheet, List<List<Grip>> pairs) {
        for (List<Grip> pair : pairs) {
            for (Grip grip : pair) {
                for (int k = 0; k < sheet.points(); k++) {
                    double on = grip.beyond(k);
                    double away = on > 0 ? Math.max(0, on - grip.taken()) : -on;
                    double share = Math.max(0.04, Math.min(1, away / grip.taken()));
                    sheet.thickness[k] = Math.min(sheet.thickness[k], share * sheet.full);
                }
            }
        }
    }
}
