package hearthcloth.colour;

import hearthcloth.colour.Matrix.Row;
import hearthcloth.number.Elementary;

/**
 * The sRGB transfer curve: between the 8 bits of a channel and linear light, from 0 to 1. Source: docs/sources.md#srgb.
 */
final class Light {

    private static final double[] DECODED = new double[256];

    static {
        for (int i = 0; i < DECODED.length; i++) {
            double c = i / 255.0;
            DECODED[i] = c <= 0.04045 ? c / 12.92 : Elementary.pow((c + 0.055) / 1.055, 2.4);
        }
    }

    private Light() {}

    /** Red, green and blue as linear light. */
    static Row of(Colour colour) {
        return new Row(DECODED[colour.red()], DECODED[colour.green()], DECODED[colour.blue()]);
    }

    /** The nearest colour a screen has; each channel that lies outside is clipped to its end. */
    static Colour toColour(Row light) {
        return Colour.of(encoded(light.x()), encoded(light.y()), encoded(light.z()));
    }

    private static int encoded(double light) {
        double clipped = Math.min(1, Math.max(0, light));
        double c = clipped <= 0.0031308 ? clipped * 12.92 : 1.055 * Elementary.pow(clipped, 1 / 2.4) - 0.055;
        return (int) Math.round(c * 255);
    }
}
