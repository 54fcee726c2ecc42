package hearthcloth.wrap.drape;

/**
 * Which points lie near which triangles, and which sides of triangles near which others: found anew every few steps on
 * an even grid in space, in a fixed order. Each pair remembers on which side it lies.
 */
final class Neighbours {

    private final Grid grid;

    /** Four points a pair: a triangle's three and the point; then two sides' two each. */
    private final Ints pairs = new Ints();

    /** How many of the pairs are a point and a triangle; they come first. */
    private int faces;

    private byte[] side = new byte[1024];
    private final Buckets buckets = new Buckets();
    private double[] middles = new double[0];

    Neighbours(Grid grid) {
        this.grid = grid;
    }

    int count() {
        return pairs.count() / 4;
    }

    int faces() {
        return faces;
    }

    int[] points() {
        return pairs.held();
    }

    /** For each pair the sign of {@link #volume} where cloth lies through no cloth. */
    byte[] side() {
        return side;
    }

    /** Finds all pairs that come nearer than this before the next search. */
    void find(Sheet sheet, double within) {
        pairs.clear();
        faces(sheet, within);
        faces = pairs.count() / 4;
        sides(sheet, within);
        int all = count();
        if (side.length < all) {
            side = new byte[2 * all];
        }
        for (int i = 0; i < all; i++) {
            side[i] = (byte) (volume(sheet.x, i) < 0 ? -1 : 1);
        }
    }

    private void faces(Sheet sheet, double within) {
        double[] x = sheet.x;
        buckets.fill(x, sheet.points(), 1.5 * grid.gap);
        int[] corners = grid.triangles;
        Buckets.Box box = new Buckets.Box();
        for (int t = 0; t < corners.length; t += 3) {
            int a = corners[t];
            int b = corners[t + 1];
            int c = corners[t + 2];
            if (sheet.loose[a] || sheet.loose[b] || sheet.loose[c]) {
                continue;
            }
            box.of(x, a, b);
            box.with(x, c);
            box.grow(within);
            double[] plane = plane(x, a, b, c);
            int found = buckets.gather(box);
            for (int q = 0; q < found; q++) {
                int k = buckets.gathered[q];
                if (!sheet.loose[k] && !isInCell(k, a, b, c) && box.holds(x, k)) {
                    double off = (x[3 * k] - x[3 * a]) * plane[0]
                            + (x[3 * k + 1] - x[3 * a + 1]) * plane[1]
                            + (x[3 * k + 2] - x[3 * a + 2]) * plane[2];
                    if (off < within && off > -within) {
                        pairs.add(a, b, c, k);
                    }
                }
            }
        }
    }

    /** Whether a point is a corner of the cell that a triangle is half of; that one cannot come through it. */
    private boolean isInCell(int k, int a, int b, int c) {
        int n = grid.columns;
        int left = Math.min(a % n, Math.min(b % n, c % n));
        int low = Math.min(a / n, Math.min(b / n, c / n));
        int i = k % n - left;
        int j = k / n - low;
        return i >= 0 && i <= 1 && j >= 0 && j <= 1;
    }

    private static double[] plane(double[] x, int a, int b, int c) {
        double ux = x[3 * b] - x[3 * a];
        double uy = x[3 * b + 1] - x[3 * a + 1];
        double uz = x[3 * b + 2] - x[3 * a + 2];
        double vx = x[3 * c] - x[3 * a];
        double vy = x[3 * c + 1] - x[3 * a + 1];
        double vz = x[3 * c + 2] - x[3 * a + 2];
        double mx = uy * vz - uz * vy;
        double my = uz * vx - ux * vz;
        double mz = ux * vy - uy * vx;
        double length = Math.sqrt(mx * mx + my * my + mz * mz) + 1e-12;
        return new double[] {mx / length, my / length, mz / length};
    }

    private void sides(Sheet sheet, double within) {
        int[] ends = grid.sides;
        int all = ends.length / 2;
        double[] x = sheet.x;
        if (middles.length == 0) {
            middles = new double[3 * all];
        }
        double longest = 0;
        for (int e = 0; e < all; e++) {
            double length = 0;
            for (int i = 0; i < 3; i++) {
                double p = x[3 * ends[2 * e] + i];
                double q = x[3 * ends[2 * e + 1] + i];
                middles[3 * e + i] = (p + q) / 2;
                length += (p - q) * (p - q);
            }
            longest = Math.max(longest, length);
        }
        double half = Math.sqrt(longest) / 2;
        buckets.fill(middles, all, grid.gap);
        Buckets.Box box = new Buckets.Box();
        Buckets.Box other = new Buckets.Box();
        Segments segments = new Segments();
        for (int e = 0; e < all; e++) {
            int a = ends[2 * e];
            int b = ends[2 * e + 1];
            if (sheet.loose[a] || sheet.loose[b]) {
                continue;
            }
            box.of(x, a, b);
            box.grow(within);
            other.of(x, a, b);
            other.grow(within + half);
            int found = buckets.gather(other);
            for (int q = 0; q < found; q++) {
                int f = buckets.gathered[q];
                int c = ends[2 * f];
                int d = ends[2 * f + 1];
                if (f > e
                        && box.meets(x, c, d)
                        && c != a
                        && c != b
                        && d != a
                        && d != b
                        && !sheet.loose[c]
                        && !sheet.loose[d]) {
                    if (segments.square(x, a, b, c, d) < within * within) {
                        pairs.add(a, b, c, d);
                    }
                }
            }
        }
    }

    /** Six times the volume of the pair's four points; it changes sign where they pass through each other. */
    double volume(double[] x, int pair) {
        int[] of = pairs.held();
        return volume(x, of[4 * pair], of[4 * pair + 1], of[4 * pair + 2], of[4 * pair + 3], pair < faces);
    }

    private static double volume(double[] x, int a, int b, int c, int d, boolean face) {
        int s = face ? a : c;
        int o = face ? c : d;
        double ux = x[3 * b] - x[3 * a];
        double uy = x[3 * b + 1] - x[3 * a + 1];
        double uz = x[3 * b + 2] - x[3 * a + 2];
        double vx = x[3 * o] - x[3 * s];
        double vy = x[3 * o + 1] - x[3 * s + 1];
        double vz = x[3 * o + 2] - x[3 * s + 2];
        int from = face ? d : a;
        int to = face ? a : c;
        return (uy * vz - uz * vy) * (x[3 * from] - x[3 * to])
                + (uz * vx - ux * vz) * (x[3 * from + 1] - x[3 * to + 1])
                + (ux * vy - uy * vx) * (x[3 * from + 2] - x[3 * to + 2]);
    }

    /** The nearest points of two straight lines between points. */
    private static final class Segments {

        /** Where on the first line, from 0 to 1. */
        double s;

        /** Where on the second. */
        double t;

        /** The square of the least distance between a–b and c–d. */
        double square(double[] x, int a, int b, int c, int d) {
            double aa = 0;
            double bb = 0;
            double ab = 0;
            double ar = 0;
            double br = 0;
            for (int i = 0; i < 3; i++) {
                double u = x[3 * b + i] - x[3 * a + i];
                double v = x[3 * d + i] - x[3 * c + i];
                double r = x[3 * a + i] - x[3 * c + i];
                aa += u * u;
                bb += v * v;
                ab += u * v;
                ar += u * r;
                br += v * r;
            }
            double det = aa * bb - ab * ab;
            s = det > 1e-9 * aa * bb ? clamp((ab * br - ar * bb) / det) : 0;
            t = clamp((ab * s + br) / bb);
            s = clamp((ab * t - ar) / aa);
            double sum = 0;
            for (int i = 0; i < 3; i++) {
                double p = x[3 * a + i] + s * (x[3 * b + i] - x[3 * a + i]);
                double q = x[3 * c + i] + t * (x[3 * d + i] - x[3 * c + i]);
                sum += (p - q) * (p - q);
            }
            return sum;
        }

        private static double clamp(double share) {
            return Math.max(0, Math.min(1, share));
        }
    }
}
