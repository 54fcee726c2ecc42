package hearthcloth.colour;

import hearthcloth.number.Elementary;

/**
 * The colour difference of ISO/CIE 11664-6 with all parametric factors 1.
 *
 * <p>Step and equation numbers are those of Sharma, Wu and Dalal, <em>The CIEDE2000 color-difference formula</em>,
 * 2005: docs/sources.md#ciede2000.
 */
final class Ciede2000 {

    private static final double TWENTY_FIVE_TO_THE_SEVENTH = seventh(25);

    /** A colour with its red-green axis stretched near grey (eq. 2 to 7). */
    private record Stretched(double lightness, double chroma, double hue) {

        static Stretched of(Lab lab, double g) {
            Lab stretched = new Lab(lab.lightness(), (1 + g) * lab.a(), lab.b());
            return new Stretched(stretched.lightness(), stretched.chroma(), stretched.hue());
        }
    }

    private Ciede2000() {}

    static double between(Lab one, Lab two) {
        double g = 0.5 * (1 - weight((one.chroma() + two.chroma()) / 2));
        return between(Stretched.of(one, g), Stretched.of(two, g));
    }

    private static double between(Stretched one, Stretched two) {
        boolean grey = one.chroma * two.chroma == 0;
        double turn = grey ? 0 : turn(one.hue, two.hue);
        double deltaHue = 2 * Math.sqrt(one.chroma * two.chroma) * sin(turn / 2); // eq. 11

        double lightness = (one.lightness + two.lightness) / 2;
        double chroma = (one.chroma + two.chroma) / 2;
        double hue = grey ? one.hue + two.hue : meanHue(one.hue, two.hue); // eq. 14
        double t = 1 // eq. 15
                - 0.17 * cos(hue - 30)
                + 0.24 * cos(2 * hue)
                + 0.32 * cos(3 * hue + 6)
                - 0.20 * cos(4 * hue - 63);
        double fromMiddle = squared(lightness - 50);
        double scaledLightness =
                (two.lightness - one.lightness) / (1 + 0.015 * fromMiddle / Math.sqrt(20 + fromMiddle)); // eq. 18
        double scaledChroma = (two.chroma - one.chroma) / (1 + 0.045 * chroma); // eq. 19
        double scaledHue = deltaHue / (1 + 0.015 * chroma * t); // eq. 20
        double sum = scaledLightness * scaledLightness
                + scaledChroma * scaledChroma
                + scaledHue * scaledHue
                + rotation(chroma, hue) * scaledChroma * scaledHue; // eq. 22
        return Math.sqrt(Math.max(0, sum));
    }

    /** The blue region, where lines of equal hue bend (eq. 16, 17, 21). */
    private static double rotation(double chroma, double hue) {
        double theta = 30 * Elementary.exp(-squared((hue - 275) / 25));
        return -2 * weight(chroma) * sin(2 * theta);
    }

    /** From one hue to the other the short way round, in (-180, 180] degrees (eq. 10). */
    private static double turn(double from, double to) {
        double turn = to - from;
        return turn > 180 ? turn - 360 : turn < -180 ? turn + 360 : turn;
    }

    private static double meanHue(double one, double two) {
        double mean = (one + two) / 2;
        if (Math.abs(one - two) <= 180) {
            return mean;
        }
        return one + two < 360 ? mean + 180 : mean - 180;
    }

    private static double weight(double chroma) {
        double seventh = seventh(chroma);
        return Math.sqrt(seventh / (seventh + TWENTY_FIVE_TO_THE_SEVENTH));
    }

    private static double squared(double x) {
        return x * x;
    }

    private static double seventh(double x) {
        double cube = x * x * x;
        return cube * cube * x;
    }

    private static double sin(double degrees) {
        return Elementary.sin(degrees * Elementary.DEGREE);
    }

    private static double cos(double degrees) {
        return Elementary.cos(degrees * Elementary.DEGREE);
    }
}
