package hearthcloth.photo.scene;

import hearthcloth.geometry.Point;
import hearthcloth.measure.Unit;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.Reading;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.photo.plane.MeasuredLength;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;

/** Holds one reading against the truth of the scene it was drawn from. */
final class Verdict {

    /** A side of a scrap as it is and as it was read. */
    record SideCheck(double trueMm, double readMm, double giveOrTakeMm, boolean doubted, String where) {
        double error() {
            return Math.abs(readMm - trueMm);
        }

        boolean good() {
            return error() <= Math.max(1.5, 0.01 * trueMm);
        }

        boolean held() {
            return error() <= giveOrTakeMm;
        }
    }

    /** A usable rectangle against the best of the true piece. */
    record Use(double share, double overMm, boolean doubted, String where) {}

    final List<SideCheck> sides = new ArrayList<>();
    final List<Use> uses = new ArrayList<>();
    final List<String> missed = new ArrayList<>();
    final List<String> invented = new ArrayList<>();
    int visible;
    int found;
    int lostSides;
    int doubted;

    private final Scene scene;

    Verdict(Scene scene, Reading.Read read, String name) {
        this.scene = scene;
        List<ReadPiece> free = new ArrayList<>(read.pieces());
        for (int i = 0; i < scene.scraps.size(); i++) {
            Scrap scrap = scene.scraps.get(i);
            if (!scrap.isSheet()) {
                judge(scrap, free, read, name + "#" + i);
            }
        }
        for (ReadPiece piece : free) {
            invented.add(name + " piece " + piece.number() + (piece.isDoubted() ? " doubted" : ""));
        }
    }

    private void judge(Scrap scrap, List<ReadPiece> free, Reading.Read read, String where) {
        boolean seen = scene.contrast(scrap) >= 10;
        List<Point> corners = seen(scrap);
        ReadPiece best = null;
        double most = 0.5;
        for (ReadPiece piece : free) {
            double share = overlap(corners, piece.outline().picture());
            if (share > most) {
                most = share;
                best = piece;
            }
        }
        visible += seen ? 1 : 0;
        if (best == null) {
            if (seen) {
                missed.add(String.format(
                        "%s contrast %.0f %s",
                        where, scene.contrast(scrap), scrap.weave().kind()));
            }
            return;
        }
        free.remove(best);
        found += seen ? 1 : 0;
        doubted += best.isDoubted() ? 1 : 0;
        if (seen) {
            sides(scrap, corners, best, where + "=" + best.number());
            use(scrap, best, read, where + "=" + best.number());
        }
    }

    private List<Point> seen(Scrap scrap) {
        List<Point> out = new ArrayList<>();
        for (double[] c : scrap.corners()) {
            double[] p = scene.camera.pictureAt(c[0], c[1]);
            out.add(new Point(p[0], p[1]));
        }
        return out;
    }

    private void sides(Scrap scrap, List<Point> corners, ReadPiece piece, String where) {
        List<Point> read = piece.outline().picture();
        int n = read.size();
        for (int i = 0; i < corners.size(); i++) {
            int a = nearest(read, corners.get(i));
            int b = nearest(read, corners.get((i + 1) % corners.size()));
            double leash = 0.2 * corners.get(i).to(corners.get((i + 1) % corners.size()));
            boolean next = b == (a + 1) % n || a == (b + 1) % n;
            if (!next
                    || read.get(a).to(corners.get(i)) > leash
                    || read.get(b).to(corners.get((i + 1) % corners.size())) > leash) {
                lostSides++;
                continue;
            }
            MeasuredLength side = piece.outline().sides().get(b == (a + 1) % n ? a : b);
            sides.add(new SideCheck(
                    scrap.side(i),
                    side.length().in(Unit.MILLIMETRE),
                    side.giveOrTake().in(Unit.MILLIMETRE),
                    piece.isDoubted(),
                    where + " side " + i + (scrap.frayMm() > 0 ? " frayed " : " clean ")
                            + scrap.weave().kind()));
        }
    }

    private static int nearest(List<Point> spots, Point to) {
        int best = 0;
        for (int i = 0; i < spots.size(); i++) {
            best = spots.get(i).to(to) < spots.get(best).to(to) ? i : best;
        }
        return best;
    }

    private void use(Scrap scrap, ReadPiece piece, Reading.Read read, String where) {
        List<Point> truth =
                scrap.corners().stream().map(c -> new Point(c[0], c[1])).toList();
        LargestRectangle.Box box = piece.usable();
        List<double[]> c = new ArrayList<>();
        for (Point corner : box.corners()) {
            Point px = read.scale().inPicture(corner);
            c.add(scene.camera.floorAt(px.x(), px.y()));
        }
        uses.add(new Use(
                box.area() / LargestRectangle.inside(truth).area(),
                leastOver(scrap, box, c),
                piece.isDoubted(),
                where));
    }

    /** The rectangle laid on the true scrap where the reader put it, then nudged until it sticks out least. */
    private static double leastOver(Scrap scrap, LargestRectangle.Box box, List<double[]> c) {
        double[] at = {
            c.stream().mapToDouble(p -> p[0]).average().orElse(0),
            c.stream().mapToDouble(p -> p[1]).average().orElse(0),
            Math.atan2(c.get(1)[1] - c.get(0)[1], c.get(1)[0] - c.get(0)[0])
        };
        double over = over(scrap, box, at);
        for (double step = 2; step > 0.02; ) {
            double[] best = at;
            for (int move = 0; move < 6; move++) {
                double[] to = at.clone();
                to[move / 2] += (move % 2 == 0 ? 1 : -1) * (move / 2 == 2 ? step / 50 : step);
                best = over(scrap, box, to) < over(scrap, box, best) - 1e-9 ? to : best;
            }
            step = best == at ? step / 2 : step;
            at = best;
            over = over(scrap, box, at);
        }
        return over;
    }

    /** How far the worst place of the rectangle's rim lies outside the scrap. */
    private static double over(Scrap scrap, LargestRectangle.Box box, double[] at) {
        List<Point> corners =
                new LargestRectangle.Box(new Point(at[0], at[1]), box.width(), box.height(), at[2]).corners();
        double worst = 0;
        for (int i = 0; i < 4; i++) {
            for (int k = 0; k < 8; k++) {
                Point a = corners.get(i);
                Point b = corners.get((i + 1) % 4);
                double x = a.x() + (b.x() - a.x()) * k / 8;
                double y = a.y() + (b.y() - a.y()) * k / 8;
                if (!scrap.holds(x, y)) {
                    worst = Math.max(worst, scrap.rim(x, y)[0]);
                }
            }
        }
        return worst;
    }

    private static double overlap(List<Point> one, List<Point> other) {
        Area both = new Area(path(one));
        both.intersect(new Area(path(other)));
        Area any = new Area(path(one));
        any.add(new Area(path(other)));
        return size(both) / size(any);
    }

    private static Path2D path(List<Point> corners) {
        Path2D path = new Path2D.Double();
        path.moveTo(corners.get(0).x(), corners.get(0).y());
        corners.forEach(c -> path.lineTo(c.x(), c.y()));
        path.closePath();
        return path;
    }

    private static double size(Area area) {
        double twice = 0;
        double[] p = new double[6];
        double[] start = new double[2];
        double[] last = new double[2];
        for (PathIterator it = area.getPathIterator(null); !it.isDone(); it.next()) {
            int kind = it.currentSegment(p);
            if (kind == PathIterator.SEG_MOVETO) {
                start = new double[] {p[0], p[1]};
            } else {
                double[] to = kind == PathIterator.SEG_CLOSE ? start : new double[] {p[0], p[1]};
                twice += last[0] * to[1] - to[0] * last[1];
                p[0] = to[0];
                p[1] = to[1];
            }
            last = new double[] {p[0], p[1]};
        }
        return Math.abs(twice) / 2;
    }
}
