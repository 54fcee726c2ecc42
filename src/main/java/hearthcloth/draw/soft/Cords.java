package hearthcloth.draw.soft;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.number.Elementary;
import java.util.ArrayList;
import java.util.List;

/** The strands of knots as tubes with small folds along them. Not thread-safe. */
public final class Cords {

    private static final int RING = 18;
    private static final int FOLDS = 5;

    /** How deep its folds are beside its thickness (ours). */
    private static final double DEEP = 0.07;

    /** Millimetres of cloth wound round a strand, from its middle line outwards and back (ours). */
    private static final double ROUND = 26;

    /** How thin it ends where the free end comes out, beside its thickness. */
    private static final double CLOSED = 0.05;

    /**
     * A strand.
     *
     * @param line its middle line, in millimetres
     * @param middles where each place of the line lies on the cloth's front, as shares
     * @param half half its thickness, in millimetres
     * @param left what one millimetre to the left of the line adds on the cloth's front
     */
    public record Cord(List<Vector> line, List<Point> middles, double half, Point left) {
        public Cord {
            line = List.copyOf(line);
            middles = List.copyOf(middles);
        }

        /** The same with its line's corners cut off. */
        private Cord rounder() {
            List<Vector> finer = new ArrayList<>(List.of(line.get(0)));
            List<Point> on = new ArrayList<>(List.of(middles.get(0)));
            for (int i = 1; i < line.size(); i++) {
                for (double share : new double[] {0.25, 0.75}) {
                    Vector from = line.get(i - 1);
                    Point at = middles.get(i - 1);
                    finer.add(from.plus(line.get(i).minus(from).times(share)));
                    on.add(at.plus(middles.get(i).minus(at).times(share)));
                }
            }
            finer.add(line.get(line.size() - 1));
            on.add(middles.get(middles.size() - 1));
            return new Cord(finer, on, half, left);
        }

        private double gone(int i) {
            return line.get(i).minus(line.get(i - 1)).length();
        }
    }

    private final List<Vector> places = new ArrayList<>();
    private final List<Point> shares = new ArrayList<>();
    private final List<Integer> corners = new ArrayList<>();

    private Cords() {}

    /** All of them as one surface. */
    public static Shape of(List<Cord> all) {
        Cords cords = new Cords();
        all.forEach(cord -> cords.add(cord.rounder().rounder()));
        return Shape.of(cords.places, cords.shares, cords.corners);
    }

    private void add(Cord cord) {
        int first = places.size();
        double whole = 0;
        for (int i = 1; i < cord.line().size(); i++) {
            whole += cord.gone(i);
        }
        double gone = 0;
        Vector side = new Vector(0.3, 0.5, 0.8);
        for (int i = 0; i < cord.line().size(); i++) {
            gone += i == 0 ? 0 : cord.gone(i);
            Vector way = cord.line()
                    .get(Math.min(i + 1, cord.line().size() - 1))
                    .minus(cord.line().get(Math.max(i - 1, 0)))
                    .unit();
            side = side.minus(way.times(side.dot(way))).unit();
            double left = Math.min(1, (whole - gone) / cord.half());
            double full = cord.half() * Math.max(CLOSED, Math.sqrt(1 - (1 - left) * (1 - left)));
            ring(cord, i, new Frame(side, way.cross(side), full, gone / cord.half() / 3));
            if (i > 0) {
                join(first + i * (RING + 1));
            }
        }
    }

    /** How a ring lies: two ways square to the strand, its radius, and how far its folds have turned. */
    private record Frame(Vector side, Vector other, double full, double turned) {}

    private void ring(Cord cord, int i, Frame frame) {
        for (int k = 0; k <= RING; k++) {
            double angle = 2 * Math.PI * k / RING;
            double half = frame.full() * (1 + DEEP * Elementary.sin(FOLDS * angle + frame.turned()));
            places.add(cord.line()
                    .get(i)
                    .plus(frame.side().times(half * Elementary.cos(angle)))
                    .plus(frame.other().times(half * Elementary.sin(angle))));
            shares.add(cord.middles().get(i).plus(cord.left().times(ROUND * Elementary.sin(angle / 2))));
        }
    }

    private void join(int ring) {
        for (int k = 1; k <= RING; k++) {
            int b = ring + k;
            int a = b - RING - 1;
            corners.addAll(List.of(a - 1, a, b, a - 1, b, b - 1));
        }
    }
}
