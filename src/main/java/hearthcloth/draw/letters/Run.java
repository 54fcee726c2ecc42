package hearthcloth.draw.letters;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of words in one writing, set from one font.
 *
 * @param text never empty
 */
public record Run(Script script, String text) {

    /** The stretches of a line, in their order; together they are the line. */
    public static List<Run> of(String line) {
        List<Run> runs = new ArrayList<>();
        int from = 0;
        for (int at = 0; at < line.length(); at = line.offsetByCodePoints(at, 1)) {
            if (at > from && Script.of(line.codePointAt(at)) != Script.of(line.codePointAt(from))) {
                runs.add(new Run(Script.of(line.codePointAt(from)), line.substring(from, at)));
                from = at;
            }
        }
        if (from < line.length()) {
            runs.add(new Run(Script.of(line.codePointAt(from)), line.substring(from)));
        }
        return List.copyOf(runs);
    }

    /** Whether all of a line is set from the one western font. */
    public static boolean isWestern(String line) {
        return line.codePoints().allMatch(letter -> Script.of(letter) == Script.WESTERN);
    }
}
