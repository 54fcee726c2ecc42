package hearthcloth.draw.tied;

import hearthcloth.colour.Colour;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.TyingMoment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the hands moved from one moment to the next: arrows that end at the cloth's corners where they lie now, and
 * begin where they lay before.
 *
 * @param ways the corners that moved, each from where to where in space
 */
record Moves(List<Way> ways) {

    /** The movement of a corner. */
    record Way(Vector from, Vector to) {}

    static final Moves NONE = new Moves(List.of());

    /** A corner that moved by less than this share of the cloth's width was only drawn along. */
    private static final double STILL = 0.05;

    /** An arrow rises over its way by this share of its length. */
    private static final double ARCH = 0.22;

    private static final int STEPS = 24;
    private static final Stroke SHAFT = Stroke.solid(0.75, Palette.MADDER);
    private static final Stroke RIM = Stroke.solid(1.75, Colour.WHITE);

    Moves {
        ways = List.copyOf(ways);
    }

    /** The moves from one moment to {@code moment}, which {@code now} shows. */
    static Moves between(Fold before, TyingMoment moment, Fold now) {
        double width = Math.sqrt(now.laying().whole().area());
        List<Way> ways = new ArrayList<>();
        for (Point point : followed(moment, now)) {
            Optional<Vector> from = place(before, point).map(place -> turned(moment, now.fit(), place));
            Optional<Vector> to = place(now, point);
            if (from.isPresent() && to.isPresent() && to.get().minus(from.get()).length() > STILL * width) {
                ways.add(new Way(from.get(), to.get()));
            }
        }
        return new Moves(ways);
    }

    /** The cloth's corners that a hand takes; where it takes an edge, a place near its middle; of a closing book its fore edge. */
    private static List<Point> followed(TyingMoment moment, Fold now) {
        List<Point> corners = now.laying().whole().corners();
        if (moment == TyingMoment.CLOSED && now.fit().gift() instanceof Gift.Books books) {
            double edge = books.width().plus(books.thickness()).in(Unit.MILLIMETRE);
            return List.of(new Point(0, edge));
        }
        if (moment == TyingMoment.FLAPS_OVER) {
            return middles(corners);
        }
        if (now.fit().tie() == Tie.EDGE_ALONG_EDGE && moment == TyingMoment.FIRST_PAIR) {
            return corners.stream()
                    .filter(corner -> corner.x() * corner.y() > 0)
                    .toList();
        }
        if (moment == TyingMoment.HIDDEN) {
            return corners.stream()
                    .filter(corner -> corner.y() > Math.abs(corner.x()))
                    .toList();
        }
        boolean bottle = moment == TyingMoment.FIRST_PAIR && now.fit().gift() instanceof Gift.Bottle;
        boolean sides = SIDES.contains(moment);
        return corners.stream()
                .filter(corner -> !bottle || Math.abs(corner.y()) > Math.abs(corner.x()))
                .filter(corner -> !sides || Math.abs(corner.x()) > Math.abs(corner.y()))
                .toList();
    }

    private static List<Point> middles(List<Point> corners) {
        List<Point> middles = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            // a little within the edge, which may be folded under
            middles.add(new Point(0.36 * (a.x() + b.x()), 0.36 * (a.y() + b.y())));
        }
        return middles;
    }

    /** Moments in which the hands move left and right, and near and far are only drawn along. */
    private static final Set<TyingMoment> SIDES =
            Set.of(TyingMoment.SIDES_UP, TyingMoment.STOOD, TyingMoment.ENDS_IN, TyingMoment.CROSSED);

    /**
     * Where a place lay before the maker turned things: a roll is turned over about its axis before it is tied; a tip
     * that hides a knot is first drawn out at the near edge.
     */
    private static Vector turned(TyingMoment moment, Fit fit, Vector place) {
        if (moment == TyingMoment.TIED && fit.tie() == Tie.ROLL && fit.gift() instanceof Gift.Roll roll) {
            return new Vector(place.x(), -place.y(), roll.diameter().in(Unit.MILLIMETRE) - place.z());
        }
        if (moment == TyingMoment.HIDDEN && fit.gift() instanceof Gift.Box box) {
            return new Vector(
                    0, -box.across().in(Unit.MILLIMETRE) / 2, box.height().in(Unit.MILLIMETRE));
        }
        return place;
    }

    /** Where a point of the cloth lies; on an edge, by the outermost facet. */
    private static Optional<Vector> place(Fold fold, Point point) {
        List<Facet> facets = fold.facets();
        for (int i = facets.size() - 1; i >= 0; i--) {
            if (holds(facets.get(i).cloth(), point)) {
                return Optional.of(facets.get(i).motion().at(point));
            }
        }
        return Optional.empty();
    }

    private static boolean holds(ConvexPolygon outline, Point point) {
        List<Point> corners = outline.corners();
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            if ((b.x() - a.x()) * (point.y() - a.y()) - (b.y() - a.y()) * (point.x() - a.x()) < -1e-6) {
                return false;
            }
        }
        return true;
    }

    /** Each arrow's line as seen, in millimetres of the gift: as much of its end as lies within {@code room}. */
    List<List<Point>> lines(Eye eye, Bounds room) {
        List<List<Point>> lines = new ArrayList<>();
        for (Way way : ways) {
            Point from = new Point(eye.x(way.from), eye.y(way.from));
            Point to = new Point(eye.x(way.to), eye.y(way.to));
            double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
            List<Point> line = new ArrayList<>();
            for (int i = STEPS; i >= 0; i--) {
                double t = i / (double) STEPS;
                double rise = 4 * t * (1 - t) * ARCH * length;
                Point at = new Point(from.x() + (to.x() - from.x()) * t, from.y() + (to.y() - from.y()) * t - rise);
                if (i < STEPS && !holds(room, at)) {
                    break;
                }
                line.add(0, at);
            }
            lines.add(line);
        }
        return lines;
    }

    private static boolean holds(Bounds room, Point at) {
        return at.x() >= room.x() && at.x() <= room.right() && at.y() >= room.y() && at.y() <= room.bottom();
    }

    /** Draws an arrow whose points are already on paper. */
    static void draw(List<Point> line, Sketch sketch) {
        if (line.size() < 3) {
            return;
        }
        Point tip = line.get(line.size() - 1);
        double gone = 0;
        int back = line.size() - 1;
        while (back > 0 && gone < HEAD) {
            back--;
            gone = Math.hypot(
                    tip.x() - line.get(back).x(), tip.y() - line.get(back).y());
        }
        if (gone < HEAD) {
            return;
        }
        Point foot = line.get(back);
        Point way = new Point((tip.x() - foot.x()) / gone, (tip.y() - foot.y()) / gone);
        List<Point> shaft = new ArrayList<>(line.subList(0, back + 1));
        shaft.add(tip.plus(-way.x() * HEAD * 0.8, -way.y() * HEAD * 0.8));
        sketch.add(new Mark.Line(shaft, RIM));
        sketch.add(new Mark.Area(head(tip.plus(way.x() * 0.8, way.y() * 0.8), way, HEAD + 1.5, 2.4), Colour.WHITE));
        sketch.add(new Mark.Line(shaft, SHAFT));
        sketch.add(new Mark.Area(head(tip, way, HEAD, 1.6), Palette.MADDER));
    }

    /** The length of an arrow's head on paper, in millimetres. */
    private static final double HEAD = 3.4;

    private static List<Point> head(Point tip, Point way, double length, double half) {
        Point foot = tip.plus(-way.x() * length, -way.y() * length);
        return List.of(tip, foot.plus(-way.y() * half, way.x() * half), foot.plus(way.y() * half, -way.x() * half));
    }
}
