package hearthcloth.sew;

import hearthcloth.sew.thread.ThreadNeed;
import java.util.List;

/**
 * What goes with the steps.
 *
 * @param thread how much, and for which rows
 * @param thick where the cloth is thick and what to do there
 * @param washing of the finished cloth
 */
public record Notes(
        ThreadNeed thread, String threadWords, List<String> thick, List<Caution> cautions, List<String> washing) {

    public Notes {
        thick = List.copyOf(thick);
        cautions = List.copyOf(cautions);
        washing = List.copyOf(washing);
    }
}
