package hearthcloth.photo.scene;

/** Repeatable value noise: the same place always gives the same number, between −1 and 1. */
final class Noise {

    private Noise() {}

    static double at(long seed, long x, long y) {
        long h = seed * 0x9E3779B97F4A7C15L + x * 0xC2B2AE3D27D4EB4FL + y * 0x165667B19E3779F9L;
        h ^= h >>> 31;
        h *= 0x94D049BB133111EBL;
        h ^= h >>> 29;
        h *= 0xBF58476D1CE4E5B9L;
        h ^= h >>> 32;
        return (h >>> 11) * 0x1.0p-52 - 1;
    }

    /** Smooth noise whose grain is one unit. */
    static double smooth(long seed, double x, double y) {
        long x0 = (long) Math.floor(x);
        long y0 = (long) Math.floor(y);
        double fx = eased(x - x0);
        double fy = eased(y - y0);
        double top = at(seed, x0, y0) * (1 - fx) + at(seed, x0 + 1, y0) * fx;
        double low = at(seed, x0, y0 + 1) * (1 - fx) + at(seed, x0 + 1, y0 + 1) * fx;
        return top * (1 - fy) + low * fy;
    }

    private static double eased(double t) {
        return t * t * (3 - 2 * t);
    }
}
