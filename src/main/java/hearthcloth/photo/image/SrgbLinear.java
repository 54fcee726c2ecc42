package hearthcloth.photo.image;


/**
 * From a picture's steps to light (IEC 61966-2-1, sRGB). A lens blurs light: half way across a blurred edge half of the
 * light has changed, but not half of the steps, so by steps a pale cloth on a dark floor seems larger than it is and a
 * dark one on a pale floor smaller.
 */
public final class SrgbLinear {

    private static final int FINE = 16;
    private static final double[] LIGHT = new double[255 * FINE + 2];

    static {
        for (int i = 0; i < LIGHT.length; i++) {
            LIGHT[i] = light(i / (255.0 * FINE));
        }
    }

    private SrgbLinear() {}

    /** @param steps of one colour, 0 to 255, read between pixels; the light is 0 to 1 */
    public static double ofSteps(double steps) {
        return LIGHT[(int) (steps * FINE + 0.5)];
    }

    private static double light(double v) {
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }
}
