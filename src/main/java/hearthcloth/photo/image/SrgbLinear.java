package hearthcloth.photo.image;

/**
 * From 8-bit colour values to light (sRGB, docs/sources.md#srgb). A lens blurs light. Half way across a blurred edge
 * half of the light has changed, but not half of the value, so by values a pale cloth on a dark floor seems larger than
 * it is and a dark one on a pale floor smaller.
 */
public final class SrgbLinear {

    /** Entries of the table for each step of 255. */
    private static final int FINE = 16;

    private static final double[] LIGHT = new double[255 * FINE + 2];

    static {
        for (int i = 0; i < LIGHT.length; i++) {
            LIGHT[i] = light(i / (255.0 * FINE));
        }
    }

    private SrgbLinear() {}

    /**
     * The light of a colour value.
     *
     * @param steps of one colour, from 0 to 255, interpolated between pixels
     * @return light from 0 to 1
     */
    public static double ofSteps(double steps) {
        return LIGHT[(int) (steps * FINE + 0.5)];
    }

    private static double light(double v) {
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }
}
