package hearthcloth.photo.scene;

import java.util.stream.IntStream;

/**
 * A colour as the scene reflects it, linear light 0 to 1, with its own way to CIELAB (D65), apart from the reader's.
 * Sources: docs/sources.md#srgb, #lab; the four-figure matrix and white are from memory.
 */
record Paint(double r, double g, double b) {

    private static final double[] LINEAR =
            IntStream.range(0, 256).mapToDouble(Paint::linear).toArray();

    static Paint srgb(int hex) {
        return new Paint(LINEAR[hex >> 16 & 255], LINEAR[hex >> 8 & 255], LINEAR[hex & 255]);
    }

    Paint times(double light) {
        return new Paint(r * light, g * light, b * light);
    }

    Paint mixed(Paint other, double share) {
        return new Paint(r + (other.r - r) * share, g + (other.g - g) * share, b + (other.b - b) * share);
    }

    double[] lab() {
        double fx = root((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
        double fy = root(0.2126 * r + 0.7152 * g + 0.0722 * b);
        double fz = root((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
        return new double[] {116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)};
    }

    /** CIE 1976 difference. */
    double differenceFrom(Paint other) {
        double[] mine = lab();
        double[] theirs = other.lab();
        return Math.sqrt(
                Math.pow(mine[0] - theirs[0], 2) + Math.pow(mine[1] - theirs[1], 2) + Math.pow(mine[2] - theirs[2], 2));
    }

    static double encoded(double linear) {
        double v = Math.max(0, Math.min(1, linear));
        return 255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055);
    }

    private static double linear(int value) {
        double v = value / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }

    private static double root(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }
}
