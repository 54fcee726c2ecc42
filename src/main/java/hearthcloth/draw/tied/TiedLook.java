package hearthcloth.draw.tied;

import hearthcloth.colour.Colour;
import java.util.Map;

/**
 * How cloth is coloured in pictures.
 *
 * @param fabrics colours by the fabrics' names
 * @param thread colour of the rows of stitches
 */
public record TiedLook(Map<String, Colour> fabrics, Colour thread) {

    private static final Colour UNKNOWN = Colour.of(0x8a8f98);

    public TiedLook {
        fabrics = Map.copyOf(fabrics);
    }

    Colour fabric(String name) {
        return fabrics.getOrDefault(name, UNKNOWN);
    }
}
