package hearthcloth;

import java.util.Map;
import java.util.function.BiConsumer;

/** The rows of an ablation: of each stage, or of one set of changes that is asked for. */
public final class Ablation {

    private Ablation() {}

    /**
     * Makes the rows.
     *
     * @param stages by name, each with the changes that leave it out
     * @param asked changes to try instead; none for all stages
     * @param end when to stop, by {@link System#nanoTime}
     * @param row of a name and its changes
     */
    public static void rows(Map<String, String[]> stages, String[] asked, long end, BiConsumer<String, String[]> row) {
        if (asked.length > 0) {
            row.accept(String.join(", ", asked), asked);
            return;
        }
        for (Map.Entry<String, String[]> stage : stages.entrySet()) {
            if (System.nanoTime() > end) {
                System.out.println("The time is over; the stages from \"" + stage.getKey() + "\" on were left out.");
                return;
            }
            row.accept(stage.getKey(), stage.getValue());
        }
    }
}
