package hearthcloth.colour;

import hearthcloth.colour.Matrix.Row;
import hearthcloth.number.Elementary;

/**
 * A colour by CIE 1976 L*a*b* under daylight D65; distances in it are about as large as they look.
 *
 * <p>{@code lightness} runs from 0 (black) to 100 (white); {@code a} from green to red, {@code b} from blue to yellow.
 * Not every Lab is a colour that a screen has. Sources: docs/sources.md#srgb, #lab.
 */
public record Lab(double lightness, double a, double b) {

    public static final Lab BLACK = new Lab(0, 0, 0);
    public static final Lab WHITE = new Lab(100, 0, 0);

    private static final Matrix SRGB_TO_XYZ = new Matrix(
            new Row(506752.0 / 1228815, 87881.0 / 245763, 12673.0 / 70218),
            new Row(87098.0 / 409605, 175762.0 / 245763, 12673.0 / 175545),
            new Row(7918.0 / 409605, 87881.0 / 737289, 1001167.0 / 1053270));
    private static final Matrix XYZ_TO_SRGB = SRGB_TO_XYZ.inverted();
    private static final Row D65 = new Row(0.3127 / 0.3290, 1, (1 - 0.3127 - 0.3290) / 0.3290);
    private static final double EPSILON = 216.0 / 24389;
    private static final double KAPPA = 24389.0 / 27;

    public Lab {
        if (!Double.isFinite(lightness) || !Double.isFinite(a) || !Double.isFinite(b)) {
            throw new IllegalArgumentException("a colour is made of numbers: " + lightness + ", " + a + ", " + b);
        }
    }

    public static Lab of(Colour colour) {
        Row xyz = SRGB_TO_XYZ.times(Light.of(colour));
        double fx = root(xyz.x() / D65.x());
        double fy = root(xyz.y() / D65.y());
        double fz = root(xyz.z() / D65.z());
        return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
    }

    /** The sRGB colour; each channel that a screen cannot show is clipped to its end. */
    public Colour toColour() {
        double fy = (lightness + 16) / 116;
        return Light.toColour(XYZ_TO_SRGB.times(
                new Row(D65.x() * cube(fy + a / 500), D65.y() * cube(fy), D65.z() * cube(fy - b / 200))));
    }

    /** Colour difference by CIE 1976: the Euclidean distance in Lab. */
    public double apart(Lab other) {
        return Elementary.hypot(lightness - other.lightness, Elementary.hypot(a - other.a, b - other.b));
    }

    /** How colourful: 0 for greys, above 100 for the strongest colours of a screen. */
    public double chroma() {
        return Elementary.hypot(a, b);
    }

    /** Where on the colour circle, in degrees from 0 up to 360: red near 40, yellow 103, green 136, blue 306; 0 for grey. */
    public double hue() {
        double degrees = Elementary.atan2(b, a) / Elementary.DEGREE;
        double positive = degrees < 0 ? degrees + 360 : degrees;
        return positive < 360 ? positive : 0; // a whisker below zero rounds up to a full turn
    }

    /**
     * How different two colours look, by CIEDE2000: below 1 the difference is not seen, above 5 there are two colours
     * (docs/sources.md#just-noticed).
     *
     * <p>Symmetric and never negative, but no metric: it is made for small differences and may break the triangle
     * inequality. Source: docs/sources.md#ciede2000.
     */
    public double difference(Lab other) {
        return Ciede2000.between(this, other);
    }

    /** The colour on the straight line from this one to {@code other}: share 0 is this one, 1 the other. */
    public Lab mixed(Lab other, double share) {
        double rest = 1 - share;
        return new Lab(
                rest * lightness + share * other.lightness, rest * a + share * other.a, rest * b + share * other.b);
    }

    /** Y of the colours with this lightness, 0 (black) to 1 (white). */
    static double luminance(double lightness) {
        return cube((lightness + 16) / 116);
    }

    private static double root(double t) {
        return t > EPSILON ? Elementary.cbrt(t) : (KAPPA * t + 16) / 116;
    }

    private static double cube(double f) {
        double cubed = f * f * f;
        return cubed > EPSILON ? cubed : (116 * f - 16) / KAPPA;
    }
}
