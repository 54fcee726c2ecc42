package hearthcloth.web.cloth;

import hearthcloth.web.kit.PageView;
import java.util.List;

/**
 * A cloth on the bench: its pictures, everything that can be changed about it, and what a change did.
 *
 * @param token proves that a form came from one of our own pages
 * @param said what was just done; may be empty
 * @param warnings what has become of the pieces it counts on, a sentence each
 */
@PageView.Template("part/bench.jte")
public record ClothBench(ClothView cloth, String token, History history, String said, List<String> warnings)
        implements PageView {

    /** What can be taken back and what done again, in words; empty where there is nothing. */
    public record History(String undo, String redo) {}

    /**
     * The fields that every form of the bench carries.
     *
     * @param what the form changes
     */
    public record Change(ClothBench bench, String what) {}

    public Change change(String what) {
        return new Change(this, what);
    }
}
