package hearthcloth.sew;

import hearthcloth.cloth.Step;
import java.util.List;

/**
 * One seam as something to do.
 *
 * @param brief the same in a few words, for whoever has sewn the first seam by its whole task
 */
public record SeamTask(Step step, Task task, List<String> brief, Glance glance) {

    /**
     * A seam in a table.
     *
     * @param wraps the half that wraps the other
     * @param thick where it is thick, from the top or the left end; empty where it is nowhere
     */
    public record Glance(String wraps, String thick) {}

    public SeamTask {
        brief = List.copyOf(brief);
    }
}
