package hearthcloth.draw.picture;

import hearthcloth.draw.letters.SafeText;
import java.util.ArrayList;
import java.util.List;

/** Sets running text in lines no wider than its column. */
public final class Paragraph {

    private static final String CUT = "…";

    private Paragraph() {}

    /** The lines of {@code text} set in {@code type} within {@code width} millimetres; a word too long is broken. */
    public static List<String> lines(String text, double width, Type type) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : joined(text).split(" +", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (type.width(longer) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (type.width(line) > width) {
                int letters = fitting(line, width, type);
                lines.add(line.substring(0, letters));
                line = line.substring(letters);
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return List.copyOf(lines);
    }

    /** The text with measures kept on one line: no break beside × or between a number and its unit. */
    private static String joined(String text) {
        return SafeText.clean(text)
                .strip()
                .replace(" × ", "\u00a0×\u00a0")
                .replaceAll("([0-9¼½¾⅛⅜⅝⅞₆]) (in|cm|mm|m|yd|%)(?![a-z])", "$1\u00a0$2");
    }

    /** At most {@code most} lines, the last one ended with … where text is left over. */
    public static List<String> lines(String text, double width, Type type, int most) {
        List<String> lines = lines(text, width, type);
        if (lines.size() <= most) {
            return lines;
        }
        List<String> kept = new ArrayList<>(lines.subList(0, most));
        kept.set(most - 1, cut(kept.get(most - 1) + " " + lines.get(most), width, type));
        return List.copyOf(kept);
    }

    /** {@code text} on one line, its end replaced by … where it does not fit. */
    public static String cut(String text, double width, Type type) {
        String clean = SafeText.clean(text).strip();
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
