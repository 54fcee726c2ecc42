package hearthcloth.work;

import java.util.Set;

/**
 * One thing the maker did, under the name she would give it. It may touch several things at once, such as a cloth and
 * the pieces it was cut from, and is taken back wholly or not at all.
 *
 * @param number its place in the journal; never given twice while the change is kept
 * @param label what was done, for "Undo …"
 * @param touched everything it touches
 * @param undone 0 while it is in force; else the number of the undo that took it back, which counts upwards
 */
public record Change(long number, String label, Set<Thing> touched, long undone) {

    public Change {
        touched = Set.copyOf(touched);
    }

    boolean isInForce() {
        return undone == 0;
    }
}
