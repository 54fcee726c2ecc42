package org.teavm.classlib.java.util;

/**
 * What the browser's class library lacks: java.util.SplittableRandom, as far as the planner asks it, with the same numbers
 * (Steele, Lea and Flood, Fast splittable pseudorandom number generators, OOPSLA 2014; the constants of its 64- and 32-bit
 * mixing functions). A test holds the page's plans to the program's.
 */
public final class TSplittableRandom {

    private static final long GOLDEN_GAMMA = 0x9e3779b97f4a7c15L;

    private long seed;
    private final long gamma;

    public TSplittableRandom(long seed) {
        this(seed, GOLDEN_GAMMA);
    }

    private TSplittableRandom(long seed, long gamma) {
        this.seed = seed;
        this.gamma = gamma;
    }

    private long nextSeed() {
        seed += gamma;
        return seed;
    }

    public TSplittableRandom split() {
        return new TSplittableRandom(nextLong(), mixed(nextSeed()));
    }

    private static long mixed(long seed) {
        long z = (seed ^ (seed >>> 33)) * 0xff51afd7ed558ccdL;
        z = (z ^ (z >>> 33)) * 0xc4ceb9fe1a85ec53L;
        z = (z ^ (z >>> 33)) | 1L;
        return Long.bitCount(z ^ (z >>> 1)) < 24 ? z ^ 0xaaaaaaaaaaaaaaaaL : z;
    }

    public int nextInt() {
        long z = nextSeed();
        z = (z ^ (z >>> 33)) * 0x62a9d9ed799705f5L;
        return (int) (((z ^ (z >>> 28)) * 0xcb24d0a5c88c35b3L) >>> 32);
    }

    public long nextLong() {
        long z = nextSeed();
        z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return z ^ (z >>> 31);
    }

    public int nextInt(int bound) {
        if (bound <= 0) {
            throw new IllegalArgumentException("bound must be positive");
        }
        int drawn = nextInt();
        int most = bound - 1;
        if ((bound & most) == 0) {
            return drawn & most;
        }
        int half = drawn >>> 1;
        int rest = half % bound;
        while (half + most - rest < 0) {
            half = nextInt() >>> 1;
            rest = half % bound;
        }
        return rest;
    }

    public int nextInt(int origin, int bound) {
        return origin + nextInt(bound - origin);
    }

    public boolean nextBoolean() {
        return nextInt() < 0;
    }

    public double nextDouble() {
        return (nextLong() >>> 11) * 0x1.0p-53;
    }

    public double nextDouble(double bound) {
        double drawn = nextDouble() * bound;
        return drawn < bound ? drawn : Math.nextDown(bound);
    }

    public double nextDouble(double origin, double bound) {
        double drawn = nextDouble() * (bound - origin) + origin;
        return drawn < bound ? drawn : Math.nextDown(bound);
    }
}
