package hearthcloth.photo;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.photo.edge.EdgelMap;
import hearthcloth.photo.edge.Edgels;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.parameter.GroundParameters;
import hearthcloth.photo.parameter.ReadingParameters;
import hearthcloth.photo.segment.Blob;
import hearthcloth.photo.segment.OccupancyMap;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Tells which shapes are the ground's own and no pieces: boards and tiles, whose two long rims run on beyond them as lines of the
 * ground, and what reaches from one rim of the picture to another, as furniture and the edge of a carpet do.
 */
final class GroundShapes {

    /** Rims of the picture are met within this, in coarse pixels. */
    private static final double AT_RIM = 2;
    /** Fewer places of a shape's rim there are chance. */
    private static final int SOME = 4;
    /** Edgels nearer to a shape are its own, in coarse pixels. */
    private static final int CLEAR = 8;
    /** A joint is about so wide, in coarse pixels. */
    private static final double JOINT = 4;
    /** Sides that differ in direction by a smaller sine are opposite ones. */
    private static final double PARALLEL = 0.2;
    /** A side of which less than this share shows is no long rim to be followed. */
    private static final double SEEN = 0.3;
    /** Where more of a rim's continuation lies under shapes than this, it tells nothing. */
    private static final double COVERED = 0.4;

    private final List<FittedPolygon> traced;
    private final LabThumbnail coarse;
    private final GroundParameters.Own own;
    private final OccupancyMap occupied;
    private final EdgelMap edges;

    private GroundShapes(
            List<Blob> blobs, List<FittedPolygon> traced, LabThumbnail coarse, ReadingParameters parameters) {
        this.traced = traced;
        this.coarse = coarse;
        this.own = parameters.ground().own();
        this.occupied = new OccupancyMap(coarse, blobs, CLEAR);
        this.edges = new EdgelMap(
                Edgels.in(
                        coarse.smoothed(1.2),
                        occupied::isFree,
                        parameters.sheet().faint().edgels()),
                coarse.width,
                coarse.height,
                parameters.sheet().faint().edgels());
    }

    /** Which of the shapes, by their places in the list, are the ground's own. */
    static Set<Integer> among(
            List<Blob> blobs, List<FittedPolygon> traced, LabThumbnail coarse, ReadingParameters parameters) {
        GroundParameters.Own own = parameters.ground().own();
        Set<Integer> found = new HashSet<>();
        Set<Integer> suspected = new HashSet<>();
        for (int i = 0; i < blobs.size(); i++) {
            if (rims(blobs.get(i), coarse) >= own.rims()) {
                found.add(i);
            } else if (blobs.get(i).cutOff() || isSlender(traced.get(i).corners(), own.slender())) {
                suspected.add(i);
            }
        }
        if (!suspected.isEmpty()) {
            GroundShapes shapes = new GroundShapes(blobs, traced, coarse, parameters);
            suspected.stream().filter(shapes::runsOn).forEach(found::add);
        }
        return found;
    }

    /** How many of the picture's four rims a shape touches. */
    private static int rims(Blob blob, LabThumbnail coarse) {
        if (!blob.cutOff()) {
            return 0;
        }
        double near = AT_RIM * coarse.step;
        double right = (double) coarse.width * coarse.step;
        double low = (double) coarse.height * coarse.step;
        int[] met = new int[4];
        for (Point at : blob.rim()) {
            met[0] += at.x() < near ? 1 : 0;
            met[1] += at.y() < near ? 1 : 0;
            met[2] += right - at.x() < near ? 1 : 0;
            met[3] += low - at.y() < near ? 1 : 0;
        }
        return (int) IntStream.of(met).filter(count -> count >= SOME).count();
    }

    private static boolean isSlender(List<Point> corners, double times) {
        if (corners.size() != 4) {
            return false;
        }
        double one = corners.get(0).to(corners.get(1)) + corners.get(2).to(corners.get(3));
        double other = corners.get(1).to(corners.get(2)) + corners.get(3).to(corners.get(0));
        return Math.max(one, other) > times * Math.min(one, other);
    }

    /** Whether two opposite sides of a shape go on, beyond both of their ends that can be judged, as lines of the ground. */
    private boolean runsOn(int shape) {
        List<Point> corners = traced.get(shape).corners();
        int n = corners.size();
        for (int i = 0; i < n; i++) {
            for (int j = i + 2; j < Math.min(n, i + n - 1); j++) {
                if (isPair(shape, i, j) && goesOn(corners, i) && goesOn(corners, j)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean isPair(int shape, int i, int j) {
        FittedPolygon at = traced.get(shape);
        Line one = at.fits().get(i).line();
        Line other = at.fits().get(j).line();
        boolean isSeen = at.fits().get(i).share() > SEEN && at.fits().get(j).share() > SEEN;
        return isSeen && Math.abs(one.sine(other)) < PARALLEL;
    }

    /** Whether a side goes on at each end that can be judged, and at one at least. */
    private boolean goesOn(List<Point> corners, int side) {
        Point a = corners.get(side).times(1.0 / coarse.step);
        Point b = corners.get((side + 1) % corners.size()).times(1.0 / coarse.step);
        End one = end(a, b);
        End other = end(b, a);
        return one != End.STOPS && other != End.STOPS && (one == End.RUNS_ON || other == End.RUNS_ON);
    }

    /** What becomes of a line beyond a corner. */
    private enum End {
        RUNS_ON,
        STOPS,
        /** It leaves the picture there, or runs under something. */
        UNKNOWN
    }

    private End end(Point from, Point to) {
        double length = from.to(to);
        Point begin = from.towards(to, 1 + own.past() / length);
        Point end = from.towards(to, 1 + own.beyond() / length);
        if (!isOpen(begin, end)) {
            return End.UNKNOWN;
        }
        return shown(begin, end) >= own.shown() ? End.RUNS_ON : End.STOPS;
    }

    /** The share on which an edge shows, there or a little to one side: of the two edges of a joint the stronger one is known. */
    private double shown(Point begin, Point end) {
        double length = begin.to(end);
        double across = (begin.y() - end.y()) / length;
        double down = (end.x() - begin.x()) / length;
        return IntStream.rangeClosed(-1, 1)
                .mapToDouble(side -> edges.shown(
                        begin.plus(side * JOINT * across, side * JOINT * down),
                        end.plus(side * JOINT * across, side * JOINT * down)))
                .max()
                .orElse(0);
    }

    private boolean isOpen(Point begin, Point end) {
        int n = (int) (own.beyond() - own.past());
        int covered = 0;
        for (int i = 0; i < n; i++) {
            Point at = begin.towards(end, (i + 0.5) / n);
            covered += occupied.isFree((int) Math.floor(at.x()), (int) Math.floor(at.y())) ? 0 : 1;
        }
        return covered < COVERED * n;
    }
}
