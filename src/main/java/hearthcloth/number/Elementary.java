package hearthcloth.number;

/**
 * Logarithm, power, root and angle, the same to the last bit wherever Hearthcloth runs.
 *
 * <p>A machine's own functions may differ in the last bit from one processor or browser to the next, and a plan that is chosen
 * among equals may turn on that bit. These ask only for what IEEE 754 decides to the bit: sums, products, quotients and the
 * square root. They lie within four units in the last place of the true value for the arguments the rooms have: angles below a
 * million, results that are normal numbers. Ranges are reduced as W. J. Cody and W. Waite (Software Manual for the Elementary
 * Functions, 1980) do it, in two parts of each constant; then a power series is summed; from memory.
 */
public final class Elementary {

    /** Degrees to radians, as a factor. */
    public static final double DEGREE = Math.PI / 180;

    private static final double LN2 = 0.6931471805599453;
    /** LN2 in two parts, of which the first has trailing zeros, so that small whole multiples of it are exact. */
    private static final double LN2_HIGH = 0.6931471803691238;

    private static final double LN2_LOW = 1.9082149292705877e-10;
    private static final double ROOT_TWO = 1.4142135623730951;
    /** A quarter turn in two parts, of which the first has trailing zeros. */
    private static final double QUARTER_HIGH = 1.5707963267341256;

    private static final double QUARTER_LOW = 6.077100506506192e-11;
    private static final double QUARTER = Math.PI / 2;
    /** What the nearest double lacks of a quarter turn. */
    private static final double QUARTER_REST = 6.123233995736766e-17;
    /** Terms of the arc's series; its argument is at most 7/16. */
    private static final int ARC_TERMS = 24;
    /** Terms of the exponential series; its argument is at most half of LN2. */
    private static final int POWER_TERMS = 14;

    private Elementary() {}

    /** e to the power x; infinite above the largest double, 0 below the smallest normal one. */
    public static double exp(double x) {
        if (x > 709.7) {
            return Double.POSITIVE_INFINITY;
        }
        if (x < -708.3) {
            return 0;
        }
        double turns = Math.floor(x / LN2 + 0.5);
        double rest = (x - turns * LN2_HIGH) - turns * LN2_LOW;
        double sum = 1;
        for (int n = POWER_TERMS; n > 0; n--) {
            sum = 1 + sum * rest / n;
        }
        return sum * powerOfTwo((int) turns);
    }

    private static double powerOfTwo(int exponent) {
        double power = 1;
        double factor = exponent < 0 ? 0.5 : 2;
        for (int i = Math.abs(exponent); i > 0; i--) {
            power *= factor;
        }
        return power;
    }

    /**
     * The natural logarithm.
     *
     * @param x positive and normal; 0 gives negative infinity, below it there is none
     */
    public static double log(double x) {
        if (!(x > 0) || x == Double.POSITIVE_INFINITY) {
            return x == 0 ? Double.NEGATIVE_INFINITY : x > 0 ? x : Double.NaN;
        }
        double m = x;
        int twos = 0;
        for (; m > ROOT_TWO; twos++) {
            m /= 2;
        }
        for (; m < ROOT_TWO / 2; twos--) {
            m *= 2;
        }
        double s = (m - 1) / (m + 1);
        double z = s * s;
        double series = 0;
        for (int n = 11; n > 0; n--) {
            series = z * (1.0 / (2 * n + 1) + series);
        }
        return twos * LN2_HIGH + (2 * s + (2 * s * series + twos * LN2_LOW));
    }

    /**
     * A power.
     *
     * @param x not negative
     */
    public static double pow(double x, double y) {
        if (y == 0 || x == 1) {
            return 1;
        }
        return x == 0 ? (y > 0 ? 0 : Double.POSITIVE_INFINITY) : exp(y * log(x));
    }

    /** The cube root. */
    public static double cbrt(double x) {
        double m = Math.abs(x);
        if (!(m > 0) || m == Double.POSITIVE_INFINITY) {
            return x;
        }
        double scale = x < 0 ? -1 : 1;
        for (; m > 1; scale *= 2) {
            m /= 8;
        }
        for (; m < 0.125; scale /= 2) {
            m *= 8;
        }
        double root = 0.5 + 0.5 * m;
        for (int step = 0; step < 6; step++) {
            root -= (root - m / (root * root)) / 3;
        }
        return scale * root;
    }

    /** The length of the longer side of a right triangle with these others. */
    public static double hypot(double a, double b) {
        return Math.sqrt(a * a + b * b);
    }

    /** The sine of an angle in radians. */
    public static double sin(double angle) {
        return turned(angle, 0);
    }

    /** The cosine of an angle in radians. */
    public static double cos(double angle) {
        return turned(angle, 1);
    }

    /** The tangent of an angle in radians. */
    public static double tan(double angle) {
        return sin(angle) / cos(angle);
    }

    /** The sine of an angle and so many quarter turns. */
    private static double turned(double angle, int more) {
        double quarters = Math.floor(angle / QUARTER + 0.5);
        double rest = (angle - quarters * QUARTER_HIGH) - quarters * QUARTER_LOW;
        int quarter = Math.floorMod((int) quarters + more, 4);
        double sine = quarter % 2 == 0 ? sine(rest) : cosine(rest);
        return quarter < 2 ? sine : -sine;
    }

    private static double sine(double x) {
        double z = x * x;
        return x - x * (z / 6 * series(z, 19));
    }

    private static double cosine(double x) {
        double z = x * x;
        return 1 - z / 2 * series(z, 18);
    }

    /** What the second term of the sine's series (odd) or the cosine's (even) is multiplied with. */
    private static double series(double z, int last) {
        double sum = 1;
        for (int n = last; n > 3; n -= 2) {
            sum = 1 - z / ((n - 1) * n) * sum;
        }
        return sum;
    }

    /** The angle in radians, from -pi to pi, of the way to a point; 0 where it is the origin. */
    public static double atan2(double y, double x) {
        if (x == 0 && y == 0) {
            return 0;
        }
        double arc = atan(Math.abs(y) / Math.abs(x));
        double half = x < 0 ? Math.PI - (arc - 2 * QUARTER_REST) : arc;
        return y < 0 ? -half : half;
    }

    /** The arc in radians, from -pi / 2 to pi / 2, whose tangent this is. */
    public static double atan(double tangent) {
        double t = Math.abs(tangent);
        double arc = t > 1 ? QUARTER - (low(1 / t) - QUARTER_REST) : low(t);
        return tangent < 0 ? -arc : arc;
    }

    /** The arc of a tangent from 0 to 1. */
    private static double low(double t) {
        return t < 7 / 16.0 ? arc(t) : Math.PI / 4 + (arc((t - 1) / (t + 1)) + QUARTER_REST / 2);
    }

    private static double arc(double t) {
        double z = t * t;
        double sum = 0;
        for (int n = ARC_TERMS; n > 0; n--) {
            sum = z * (1.0 / (2 * n + 1) - sum);
        }
        return t - t * sum;
    }

    /** The angle in radians, from 0 to pi, whose cosine this is. */
    public static double acos(double cosine) {
        return atan2(Math.sqrt((1 - cosine) * (1 + cosine)), cosine);
    }
}
