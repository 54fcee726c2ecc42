package hearthcloth.sew;

import hearthcloth.measure.Size;
import java.util.List;
import java.util.Optional;

/**
 * One thing to do, on one screen or in one box of the printed guide: what, how, what it should then measure, and where
 * to take care. Sentences are plain text.
 *
 * @param lines what to do, in order, one or two short sentences each
 * @param check what to measure when it is done
 * @param warnings where to take care while doing it
 */
public record Task(String title, List<String> lines, Optional<Check> check, List<String> warnings) {

    /**
     * A size to check on the way.
     *
     * @param size exact; raw edges included
     * @param sentence the same for the maker, on her ruler
     */
    public record Check(Size size, String sentence) {}

    public Task {
        lines = List.copyOf(lines);
        warnings = List.copyOf(warnings);
    }

    public static Task of(String title, List<String> lines) {
        return new Task(title, lines, Optional.empty(), List.of());
    }
}
