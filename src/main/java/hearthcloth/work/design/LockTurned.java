package hearthcloth.work.design;

import hearthcloth.work.Project;
import hearthcloth.work.deed.Deed;
import java.util.HashSet;
import java.util.Set;

/**
 * A bar, or the hearth, is locked so that planning the colours again leaves it as it is; where it was, it is free again.
 *
 * @param place the bar's name, or {@code hearth}
 */
public record LockTurned(Project cloth, String place) {

    /** Whether it is locked by this. */
    public boolean isOn() {
        return !cloth.bench().locked().contains(place);
    }

    /** The change, under this name. */
    public Deed told(String label) {
        Set<String> locked = new HashSet<>(cloth.bench().locked());
        if (!locked.remove(place)) {
            locked.add(place);
        }
        return Deed.edited(label, cloth.with(cloth.bench().withLocked(locked)));
    }
}
