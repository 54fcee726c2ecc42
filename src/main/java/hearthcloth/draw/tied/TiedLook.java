package hearthcloth.draw.tied;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Showing;
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

    /** How a patch is drawn with the side that it shows. */
    FabricLook look(Patch patch) {
        FabricLook look = look(patch.fabric());
        return patch.showing() == Showing.WRONG ? look.turnedOver() : look;
    }
}
