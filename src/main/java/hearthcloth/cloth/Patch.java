package hearthcloth.cloth;

import hearthcloth.measure.Size;

/**
 * A leaf: one rectangle of one fabric.
 *
 * @param fabric its name in the stash
 * @param size finished, both sides more than zero
 * @param showing which side of the fabric lies on the front
 */
public record Patch(Place place, String fabric, Size size, Showing showing) implements Assembly {

    public Patch {
        if (!size.width().isPositive() || !size.height().isPositive()) {
            throw new IllegalArgumentException(place.label() + " would be " + size + ", which is no patch");
        }
        if (fabric.isBlank()) {
            throw new IllegalArgumentException(place.label() + " has no fabric");
        }
    }

    @Override
    public <R> R fold(Fold<R> fold) {
        return fold.patch(this);
    }
}
