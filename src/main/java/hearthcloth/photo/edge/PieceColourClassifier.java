package hearthcloth.photo.edge;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.ground.IlluminationCorrection;
import hearthcloth.photo.parameter.EdgeParameters;
import hearthcloth.photo.segment.OccupancyMap;
import java.util.List;

/**
 * Tells one piece's colours from those of the ground round it, by how often each colour occurs well inside the piece
 * and how often round it (Bayes' rule). The ground's colours also count in shade, since a piece shades the floor beside
 * it.
 */
final class PieceColourClassifier {

    /** Bins along each of red, green and blue under even light. */
    private static final int BINS = 44;
    /** The width of a bin, in steps of 255; they reach to 288, since even light may brighten a colour beyond 255. */
    private static final double BIN = 288.0 / BINS;

    private final IlluminationCorrection light;
    private final OccupancyMap occupied;
    private final int own;
    private final float[] cloth;

    private PieceColourClassifier(IlluminationCorrection light, OccupancyMap occupied, int own, float[] cloth) {
        this.light = light;
        this.occupied = occupied;
        this.own = own;
        this.cloth = cloth;
    }

    /**
     * Learns the colours of a piece.
     *
     * @param corners roughly where it lies, in raw pixels
     * @param own its index among the shapes
     * @param near how far the rim may be off, in pixels; nothing nearer to it is learnt from, as far as the piece is
     *     wide enough
     */
    static PieceColourClassifier of(
            IlluminationCorrection light,
            OccupancyMap occupied,
            List<Point> corners,
            int own,
            double near,
            EdgeParameters.Colours parameters) {
        float[] in = new float[BINS * BINS * BINS];
        float[] out = new float[BINS * BINS * BINS];
        double inset = near;
        double inside = learnInside(light, corners, inset, in, parameters);
        while (inside < parameters.enough() && inset > 1) {
            inset *= 0.6;
            inside = learnInside(light, corners, inset, in, parameters);
        }
        double outside = learnOutside(light, occupied, corners, own, near, out, parameters);
        float[] p = blurred(in);
        float[] q = blurred(out);
        for (int i = 0; i < p.length; i++) {
            double one = p[i] / Math.max(1, inside) + parameters.unseen();
            double other = q[i] / Math.max(1, outside) + parameters.unseen();
            p[i] = (float) (one / (one + other));
        }
        return new PieceColourClassifier(light, occupied, own, p);
    }

    private static double learnInside(
            IlluminationCorrection light,
            List<Point> corners,
            double inset,
            float[] to,
            EdgeParameters.Colours parameters) {
        double left = corners.stream().mapToDouble(Point::x).min().orElse(0);
        double right = corners.stream().mapToDouble(Point::x).max().orElse(0);
        double top = corners.stream().mapToDouble(Point::y).min().orElse(0);
        double low = corners.stream().mapToDouble(Point::y).max().orElse(0);
        double stride = Math.max(1, Math.sqrt((right - left) * (low - top) / parameters.most()));
        double[] colour = new double[3];
        double count = 0;
        for (double y = top + 0.5; y < low; y += stride) {
            for (double x = left + 0.5; x < right; x += stride) {
                if (Polygons.wellInside(corners, x, y, inset)) {
                    light.at(x, y, colour);
                    put(to, colour, 1, 1);
                    count++;
                }
            }
        }
        return count;
    }

    private static double learnOutside(
            IlluminationCorrection light,
            OccupancyMap occupied,
            List<Point> corners,
            int own,
            double near,
            float[] to,
            EdgeParameters.Colours parameters) {
        int outwards = Polygons.signedArea(corners) > 0 ? -1 : 1;
        double stride = Math.max(1, Math.sqrt(1.6 * near * Polygons.perimeter(corners) / parameters.most()));
        double[] colour = new double[3];
        double count = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            double length = Math.max(1, a.to(b));
            double nx = -(b.y() - a.y()) / length * outwards;
            double ny = (b.x() - a.x()) / length * outwards;
            for (double s = stride / 2; s < length; s += stride) {
                for (double t = 0.4 * near; t < 2 * near; t += stride) {
                    Point at = a.towards(b, s / length).plus(t * nx, t * ny);
                    if (!occupied.byOther(at.x(), at.y(), own) && !Polygons.inside(corners, at.x(), at.y())) {
                        light.at(at.x(), at.y(), colour);
                        put(to, colour, 1, 1);
                        for (double shade : parameters.shades()) {
                            put(to, colour, shade, parameters.inShade());
                        }
                        count += 1 + parameters.inShade() * parameters.shades().size();
                    }
                }
            }
        }
        return count;
    }

    private static void put(float[] bins, double[] colour, double scale, float weight) {
        bins[bin(colour[0] * scale) * BINS * BINS + bin(colour[1] * scale) * BINS + bin(colour[2] * scale)] += weight;
    }

    private static int bin(double value) {
        return Math.max(0, Math.min(BINS - 1, (int) (value / BIN)));
    }

    /**
     * Spreads counts over neighbouring bins with weights 1 4 6 4 1 along each axis; lines of bins without a count are
     * skipped.
     */
    private static float[] blurred(float[] bins) {
        float[] line = new float[BINS];
        for (int axis = 1; axis <= BINS * BINS; axis *= BINS) {
            for (int plane = 0; plane < bins.length; plane += axis * BINS) {
                for (int from = plane; from < plane + axis; from++) {
                    blur(bins, from, axis, line);
                }
            }
        }
        return bins;
    }

    private static void blur(float[] bins, int from, int axis, float[] line) {
        float sum = 0;
        for (int i = 0; i < BINS; i++) {
            line[i] = bins[from + i * axis];
            sum += line[i];
        }
        for (int i = 0; i < BINS && sum > 0; i++) {
            bins[from + i * axis] = (line[Math.max(0, i - 2)]
                            + line[Math.min(BINS - 1, i + 2)]
                            + 4 * (line[Math.max(0, i - 1)] + line[Math.min(BINS - 1, i + 1)])
                            + 6 * line[i])
                    / 16;
        }
    }

    /** Whether a raw place lies in the picture. */
    boolean holds(Point at) {
        return light.holds(at);
    }

    /** Whether another piece lies at a raw place. */
    boolean isOthers(double x, double y) {
        return occupied.byOther(x, y, own);
    }

    /** The probability that a raw place shows the piece, from 0 to 1; {@code colour} is overwritten. */
    double at(double x, double y, double[] colour) {
        light.at(x, y, colour);
        double r = Math.max(0, Math.min(BINS - 1.001, colour[0] / BIN - 0.5));
        double g = Math.max(0, Math.min(BINS - 1.001, colour[1] / BIN - 0.5));
        double b = Math.max(0, Math.min(BINS - 1.001, colour[2] / BIN - 0.5));
        int r0 = (int) r;
        int g0 = (int) g;
        int b0 = (int) b;
        int i = (r0 * BINS + g0) * BINS + b0;
        double fr = r - r0;
        double fg = g - g0;
        double fb = b - b0;
        return (1 - fr) * ((1 - fg) * pair(i, fb) + fg * pair(i + BINS, fb))
                + fr * ((1 - fg) * pair(i + BINS * BINS, fb) + fg * pair(i + BINS * BINS + BINS, fb));
    }

    private double pair(int i, double f) {
        return cloth[i] * (1 - f) + cloth[i + 1] * f;
    }
}
