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
 * @param few the same in at most five lines of at most 75 signs, for a screen beside the machine
 */
public record Task(String title, List<String> lines, Optional<Check> check, List<String> warnings, List<String> few) {

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
        few = List.copyOf(few);
    }

    public static Task of(String title, List<String> lines) {
        return new Task(title, lines, Optional.empty(), List.of(), FewWords.fitted(lines));
    }

    /** A task that is said in other, fewer words beside the machine. */
    Task inShort(List<String> shorter) {
        return new Task(title, lines, check, warnings, FewWords.fitted(shorter));
    }
}
