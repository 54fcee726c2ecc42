package hearthcloth.work.deed;

import hearthcloth.work.Project;
import hearthcloth.work.Purpose;

/** A cloth is for something else from now on, whatever is planned next. */
public record MeantFor(Project cloth, Purpose purpose) {

    /** The change, under this name. */
    public Deed told(String label) {
        return Deed.edited(label, cloth.with(cloth.life().meantFor(purpose)));
    }
}
