package hearthcloth.draw.tied;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.pleat.ReefStrands;
import java.util.ArrayList;
import java.util.List;

/**
 * The strands of a reef knot as bunches of cloth: bands turned to the eye along each middle line, shaded as if round,
 * and dark at the rims so that two strands of one fabric can be told apart. Each shows what lies on the middle line of
 * its end, since nobody can say how gathered cloth turns its patches outwards.
 */
final class Strands {

    /**
     * Where the bands begin and end across a strand, in half widths; {@link #LIGHT} says how bright each is, from 0 to
     * 1.
     */
    private static final double[] ACROSS = {-1, -0.86, -0.3, 0.35, 0.86, 1};

    private static final double[] LIGHT = {0.5, 0.86, 1, 0.9, 0.5};

    /**
     * The half width of strands whose legs lie side by side, as a share of half their distance; slightly more than one,
     * so that no ground shows between them.
     */
    static final double TIGHT = 1.02;

    /** The half width at which the course of each strand can be followed. */
    static final double OPEN = 0.62;

    private Strands() {}

    static List<Pane> of(ReefKnot knot, double breadth, Eye eye) {
        ReefStrands reef = ReefStrands.of(knot);
        List<Pane> panes = new ArrayList<>(strand(knot, knot.leads().get(0), reef.first(), breadth, eye));
        panes.addAll(strand(knot, knot.leads().get(1), reef.second(), breadth, eye));
        return panes;
    }

    /** Planes between a knot's strands and its free ends, and between it and what it stands on. */
    static List<Depth.Cut> bounds(ReefKnot knot) {
        ReefStrands reef = ReefStrands.of(knot);
        double ahead = 0;
        double below = 0;
        for (Vector place : reef.first()) {
            ahead = Math.max(ahead, -place.minus(knot.at()).dot(knot.along()));
            below = Math.min(below, place.minus(knot.at()).dot(knot.up()));
        }
        double middle = knot.at().dot(knot.along());
        return List.of(
                new Depth.Cut(knot.up(), knot.at().dot(knot.up()) + below),
                new Depth.Cut(knot.along(), middle + ahead),
                new Depth.Cut(knot.along(), middle - ahead));
    }

    private static List<Pane> strand(ReefKnot knot, ReefKnot.Lead lead, List<Vector> line, double breadth, Eye eye) {
        double half = breadth * knot.taken() / ReefStrands.UNITS;
        double whole = 0;
        for (int i = 1; i < line.size(); i++) {
            whole += line.get(i).minus(line.get(i - 1)).length();
        }
        List<Pane> panes = new ArrayList<>();
        double gone = 0;
        for (int i = 1; i < line.size(); i++) {
            double length = line.get(i).minus(line.get(i - 1)).length();
            Point middle = lead.after(knot.taken() * (gone + length / 2) / whole);
            stretch(line, i, half, eye, middle, panes);
            gone += length;
        }
        return panes;
    }

    /** Adds the bands between two points of the line, flat to the eye at the depth of their middle. */
    private static void stretch(List<Vector> line, int i, double half, Eye eye, Point middle, List<Pane> panes) {
        Vector from = line.get(i - 1);
        Vector to = line.get(i);
        double deep = from.plus(to).times(0.5).dot(eye.towards());
        Vector start = across(way(line, i - 1), eye).times(half);
        Vector end = across(way(line, i), eye).times(half);
        for (int band = 0; band < LIGHT.length; band++) {
            List<Vector> corners = List.of(
                    slid(from.plus(start.times(ACROSS[band])), deep, eye),
                    slid(to.plus(end.times(ACROSS[band])), deep, eye),
                    slid(to.plus(end.times(ACROSS[band + 1])), deep, eye),
                    slid(from.plus(start.times(ACROSS[band + 1])), deep, eye));
            panes.add(new Pane(corners, eye.towards(), false, new Pane.Skin.Bunch(middle, LIGHT[band])));
        }
    }

    private static Vector way(List<Vector> line, int i) {
        return line.get(Math.min(i + 1, line.size() - 1)).minus(line.get(Math.max(i - 1, 0)));
    }

    /** The unit vector across a strand and square to the eye. */
    private static Vector across(Vector way, Eye eye) {
        Vector across = way.cross(eye.towards());
        double length = across.length();
        return length < 1e-6 * way.length() ? eye.right() : across.times(1 / length);
    }

    /** A place moved along the line of sight to a given depth; on the picture it does not move. */
    private static Vector slid(Vector place, double deep, Eye eye) {
        return place.plus(eye.towards().times(deep - place.dot(eye.towards())));
    }
}
