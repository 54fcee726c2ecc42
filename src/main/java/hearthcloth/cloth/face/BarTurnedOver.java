package hearthcloth.cloth.face;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Seam;

/**
 * The same work with every part of one bar turned to its other side.
 *
 * @param bar its name, such as {@code 2B}; {@code hearth} for the hearth
 */
public record BarTurnedOver(String bar) implements Assembly.Fold<Assembly> {

    @Override
    public Assembly patch(Patch patch) {
        String name = patch.place() instanceof Place.Bar place
                ? place.bar()
                : patch.place().id();
        return name.equals(bar)
                ? new Patch(
                        patch.place(),
                        patch.fabric(),
                        patch.size(),
                        patch.showing().turnedOver())
                : patch;
    }

    @Override
    public Assembly seam(Seam seam, Assembly first, Assembly second) {
        return Seam.of(seam.join(), seam.wraps(), first, second);
    }
}
