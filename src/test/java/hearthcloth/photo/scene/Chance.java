package hearthcloth.photo.scene;

/** The numbers of {@link java.util.Random}, for one thread alone and so in half the time. */
final class Chance {

    private static final long FACTOR = 0x5DEECE66DL;
    private static final long MASK = (1L << 48) - 1;

    private long state;
    private double spare;
    private boolean isSpare;

    Chance(long seed) {
        state = (seed ^ FACTOR) & MASK;
    }

    private int next(int bits) {
        state = (state * FACTOR + 0xBL) & MASK;
        return (int) (state >>> (48 - bits));
    }

    /** From 0 to below 1, all alike. */
    double nextDouble() {
        return (((long) next(26) << 27) + next(27)) * 0x1.0p-53;
    }

    /** About 0, with standard deviation 1. */
    double nextGaussian() {
        if (isSpare) {
            isSpare = false;
            return spare;
        }
        double a;
        double b;
        double square;
        do {
            a = 2 * nextDouble() - 1;
            b = 2 * nextDouble() - 1;
            square = a * a + b * b;
        } while (square >= 1 || square == 0);
        double stretch = Math.sqrt(-2 * Math.log(square) / square);
        spare = b * stretch;
        isSpare = true;
        return a * stretch;
    }
}
