package hearthcloth.photo.image;

/** Fast conversion of whole pictures from sRGB to CIELAB, through tables (D65; docs/sources.md#srgb, #lab). */
public final class LabTables {

    private static final double[] LIGHT = new double[256];
    /** Steps of the table of cube roots between 0 and 1. */
    private static final int ROOTS = 4096;

    private static final double[] ROOT = new double[ROOTS + 2];

    static {
        for (int i = 0; i < 256; i++) {
            double v = i / 255.0;
            LIGHT[i] = v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
        }
        for (int i = 0; i < ROOT.length; i++) {
            ROOT[i] = f((double) i / ROOTS);
        }
    }

    private LabTables() {}

    /** Linear light, from 0 to 1, of an 8-bit sRGB value. */
    public static double light(int value) {
        return LIGHT[value];
    }

    /** Writes the CIELAB of linear light to {@code out}. */
    public static void lab(double r, double g, double b, double[] out) {
        double fx = root((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047);
        double fy = root(0.2126729 * r + 0.7151522 * g + 0.0721750 * b);
        double fz = root((0.0193339 * r + 0.1191920 * g + 0.9503041 * b) / 1.08883);
        out[0] = 116 * fy - 16;
        out[1] = 500 * (fx - fy);
        out[2] = 200 * (fy - fz);
    }

    private static double root(double t) {
        if (t < 0.03 || t >= 1) {
            return f(t);
        }
        double at = t * ROOTS;
        int i = (int) at;
        return ROOT[i] + (ROOT[i + 1] - ROOT[i]) * (at - i);
    }

    private static double f(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }
}
