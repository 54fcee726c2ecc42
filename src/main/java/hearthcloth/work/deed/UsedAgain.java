package hearthcloth.work.deed;

import hearthcloth.work.Keepsake;
import hearthcloth.work.Project;

/** A cloth wrapped something again. */
public record UsedAgain(Project cloth, Keepsake.Use use) {

    /** The change, under this name. */
    public Deed told(String label) {
        return Deed.edited(label, cloth.with(cloth.life().usedAgain(use)));
    }
}
