package hearthcloth.colour;

import java.util.List;

/**
 * Fabrics divided into a light and a dark half, each ordered from light to dark.
 *
 * @param gap points of L* between the darkest of the light half and the lightest of the dark half; 0 if they are alike
 */
public record Halves<T>(List<T> light, List<T> dark, double gap) {

    public Halves {
        light = List.copyOf(light);
        dark = List.copyOf(dark);
        if (light.isEmpty() || dark.isEmpty()) {
            throw new IllegalArgumentException("each half holds something");
        }
    }
}
