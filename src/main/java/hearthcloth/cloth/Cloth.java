package hearthcloth.cloth;

import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Size;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A whole cloth: the assembly tree and how it is made up. It is the root from which every fold starts. No two patches
 * share a name. Immutable.
 */
public record Cloth(Assembly work, Making making) {

    public Cloth {
        Set<String> seen = new HashSet<>();
        for (Patch patch : work.fold(new Patches())) {
            if (!seen.add(patch.place().id())) {
                throw new IllegalArgumentException(
                        "two patches are called " + patch.place().label());
            }
        }
    }

    /** Whether it is free patchwork: no hearth and no bars. */
    public boolean isFree() {
        return patches().stream().allMatch(patch -> patch.place() instanceof Place.Free);
    }

    /** The finished size, hemmed. */
    public Size finished() {
        return work.size();
    }

    /** Every patch, first halves before second. */
    public List<Patch> patches() {
        return work.fold(new Patches());
    }

    /** Every patch at its place with its allowances. */
    public List<Laid> laid() {
        return Laid.of(this);
    }

    /** Every seam in sewing order, with the size the work has after it. */
    public List<Step> steps() {
        return Step.of(this);
    }

    /** The same cloth seen from its other face: left and right trade places. */
    public Cloth turnedOver() {
        return new Cloth(
                work.fold(new TurnedOver()), making.felledOn(making.fell().other()));
    }
}
