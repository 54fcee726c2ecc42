package hearthcloth.draw.picture;

import hearthcloth.draw.letters.LineBreaks;
import hearthcloth.draw.letters.SafeText;
import java.util.ArrayList;
import java.util.List;

/** Sets running text in lines no wider than its column. */
public final class Paragraph {

    private static final String CUT = "…";

    private Paragraph() {}

    /**
     * The lines of {@code text} set in {@code type} within {@code width} millimetres, by {@link LineBreaks}; a word too long
     * is broken.
     */
    public static List<String> lines(String text, double width, Type type) {
        List<String> lines = new ArrayList<>();
        String line = "";
        String ending = "";
        for (LineBreaks.Part part : LineBreaks.parts(joined(text))) {
            String longer = line.isEmpty() ? part.text() : line + part.before() + part.text();
            if (type.width(longer + part.ending()) <= width) {
                line = longer;
                ending = part.ending();
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line + ending);
            }
            line = broken(part.text(), width, type, lines);
            ending = part.ending();
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return List.copyOf(lines);
    }

    /** Adds the full lines of a part that is too long for one, and gives what is left of it. */
    private static String broken(String part, double width, Type type, List<String> lines) {
        String line = part;
        while (type.width(line) > width) {
            int hyphen = hyphen(line, width, type);
            int letters = hyphen > 0 ? hyphen : fitting(line, width, type);
            lines.add(line.substring(0, letters) + (hyphen > 0 ? "-" : ""));
            line = line.substring(letters);
        }
        return line;
    }

    /** The last place between two syllables at which a line still ends in time; 0 where there is none. */
    private static int hyphen(String word, double width, Type type) {
        int last = 0;
        for (int place : LineBreaks.syllables(word)) {
            last = type.width(word.substring(0, place) + "-") <= width ? place : last;
        }
        return last;
    }

    /**
     * The text with measures kept on one line: no break beside × or between a number and its unit, and none before the
     * marks that French sets apart.
     */
    private static String joined(String text) {
        return SafeText.clean(text)
                .strip()
                .replace(" × ", "\u00a0×\u00a0")
                .replaceAll("([\\p{L})»]) ([:;?!»])", "$1\u00a0$2")
                .replace("« ", "«\u00a0")
                .replaceAll("([0-9¼½¾⅛⅜⅝⅞₆]) (in|cm|mm|m|yd|po|pulg|Zoll|인치|야드|%)(?![a-z])", "$1\u00a0$2");
    }

    /** At most {@code most} lines, the last one ended with … where text is left over. */
    public static List<String> lines(String text, double width, Type type, int most) {
        List<String> lines = lines(text, width, type);
        if (lines.size() <= most) {
            return lines;
        }
        List<String> kept = new ArrayList<>(lines.subList(0, most));
        String last = kept.get(most - 1);
        String next = lines.get(most);
        kept.set(most - 1, cut(last + (LineBreaks.needsBlank(last, next) ? " " : "") + next, width, type));
        return List.copyOf(kept);
    }

    /** {@code text} on one line, its end replaced by … where it does not fit. */
    public static String cut(String text, double width, Type type) {
        String clean = SafeText.onOneLine(text).strip();
        if (type.width(clean) <= width) {
            return clean;
        }
        int letters = fitting(clean, width - type.width(CUT), type);
        return clean.substring(0, letters).strip() + CUT;
    }

    /** How many letters of {@code text} fit, at least one, and never half of a surrogate pair. */
    private static int fitting(String text, double width, Type type) {
        int end = text.offsetByCodePoints(0, 1);
        while (end < text.length()) {
            int next = text.offsetByCodePoints(end, 1);
            if (type.width(text.substring(0, next)) > width) {
                break;
            }
            end = next;
        }
        return end;
    }
}
