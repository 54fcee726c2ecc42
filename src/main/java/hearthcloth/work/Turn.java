package hearthcloth.work;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What one undo takes back, or one redo does again: the change that is meant and those that rest on it.
 *
 * @param meant the change she looks at
 * @param changes all of them, in the order they were made
 */
public record Turn(Change meant, List<Change> changes) {

    /** The most changes that are named singly; beyond that they are counted. */
    private static final int NAMED = 3;

    public Turn {
        changes = List.copyOf(changes);
    }

    /**
     * Its name on the button: what is meant, then in brackets what goes with it. Each name is in the language in which it was
     * done, so nothing in any one language stands between them.
     */
    public String label() {
        List<String> others = changes.stream()
                .filter(change -> change.number() != meant.number())
                .map(Change::label)
                .toList();
        if (others.isEmpty()) {
            return meant.label();
        }
        String named = others.stream().limit(NAMED).collect(Collectors.joining(", "));
        String more = others.size() > NAMED ? ", +" + (others.size() - NAMED) : "";
        return meant.label() + " (" + named + more + ")";
    }
}
