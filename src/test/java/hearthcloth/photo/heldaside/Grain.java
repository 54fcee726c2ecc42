package hearthcloth.photo.heldaside;

/** Seeded chance as a function of a place: hashes and smooth gradient noise. */
final class Grain {

    private Grain() {}

    /** A well mixed number of 64 bits (the finaliser of SplitMix64, Steele, Lea and Flood 2014). */
    static long mixed(long value) {
        long z = value + 0x9E3779B97F4A7C15L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** From 0 to 1, for a cell. */
    static double share(long seed, long i, long j) {
        return (mixed(seed ^ mixed(i * 0x632BE59BD9B4E019L + j)) >>> 11) * 0x1p-53;
    }

    /** Gradient noise, about -1 to 1, features of size 1. After Perlin, <i>Improving noise</i>, 2002, from memory. */
    static double smooth(int seed, double x, double y) {
        double fx = Math.floor(x);
        double fy = Math.floor(y);
        int i = (int) fx;
        int j = (int) fy;
        double u = x - fx;
        double v = y - fy;
        double a = slope(seed, i, j, u, v);
        double b = slope(seed, i + 1, j, u - 1, v);
        double c = slope(seed, i, j + 1, u, v - 1);
        double d = slope(seed, i + 1, j + 1, u - 1, v - 1);
        double su = u * u * u * (u * (u * 6 - 15) + 10);
        double sv = v * v * v * (v * (v * 6 - 15) + 10);
        double top = a + su * (b - a);
        return 1.5 * (top + sv * (c + su * (d - c) - top));
    }

    /** Noise of features {@code size} long, faded out where a sample is too wide to see them. */
    static double seen(int seed, double x, double y, double size, double footprint) {
        double fade = seenShare(size, footprint);
        return fade == 0 ? 0 : fade * smooth(seed, x / size, y / size);
    }

    /** Several octaves, each half the size and half as strong. */
    static double rough(int seed, double x, double y, double size, int octaves, double footprint) {
        double sum = 0;
        double strength = 0.6;
        double s = size;
        for (int k = 0; k < octaves; k++) {
            sum += strength * seen(seed + 101 * k, x, y, s, footprint);
            strength /= 2;
            s /= 2;
        }
        return sum;
    }

    /** What a sample of width {@code footprint} keeps of a ripple of period {@code size}: 1 to 0. */
    static double seenShare(double size, double footprint) {
        double r = footprint / size;
        return r > 1.2 ? 0 : Math.exp(-2.2 * r * r);
    }

    /** 0 below {@code from}, 1 above {@code to}, smooth between. */
    static double step(double from, double to, double x) {
        double t = Math.max(0, Math.min(1, (x - from) / (to - from)));
        return t * t * (3 - 2 * t);
    }

    /** How much of a sample as wide as {@code footprint}, {@code inside} deep within an edge, is covered. */
    static double cover(double inside, double footprint) {
        return Math.max(0, Math.min(1, 0.5 + inside / footprint));
    }

    private static double slope(int seed, int i, int j, double u, double v) {
        int h = seed + i * 0x27d4eb2d + j * 0x165667b1;
        h ^= h >>> 15;
        h *= 0x85ebca6b;
        h ^= h >>> 13;
        h *= 0xc2b2ae35;
        h ^= h >>> 16;
        double gx = ((h & 0xffff) - 32767.5) / 32767.5;
        double gy = ((h >>> 16) - 32767.5) / 32767.5;
        return gx * u + gy * v;
    }
}
