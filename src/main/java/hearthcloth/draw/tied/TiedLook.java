package hearthcloth.draw.tied;

import hearthcloth.colour.Colour;
import hearthcloth.draw.fabric.FabricLook;
import java.util.Map;

/**
 * How cloth looks in pictures.
 *
 * @param fabrics by their names
 * @param thread colour of the rows of stitches
 */
public record TiedLook(Map<String, FabricLook> fabrics, Colour thread) {

    private static final FabricLook UNKNOWN = FabricLook.plain(Colour.of(0x8a8f98));

    public TiedLook {
        fabrics = Map.copyOf(fabrics);
    }

    FabricLook look(String name) {
        return fabrics.getOrDefault(name, UNKNOWN);
    }

    Colour fabric(String name) {
        return look(name).ground();
    }
}
