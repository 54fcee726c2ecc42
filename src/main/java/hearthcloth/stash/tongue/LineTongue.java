package hearthcloth.stash.tongue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The words of one language in a line of pieces. First its number words become figures, where a unit or a word for pieces
 * follows; then its rules are applied, one after another.
 */
final class LineTongue {

    private static final int FLAGS = Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;

    /** A number as a maker writes it, and a unit as it stands after the rules for units. */
    private static final String NUMBER = "(?:\\d+ \\d+/\\d+|\\d+/\\d+|\\d+[.,]\\d+|\\d*[½¼¾⅛⅜⅝⅞]|\\d+)";

    private static final String UNIT = "(?:mm|cm|m|in|ft|yd|\")";

    /** Whether this sign stands apart from the letters around it. */
    private static final String BEFORE = "(?<![\\p{L}\\d-])";

    private static final String AFTER = "(?![\\p{L}\\d-])";

    private record Rule(Pattern pattern, String english) {}

    /** What is asked of a line that has a sign of the language. */
    private record Grammar(Pattern counted, Pattern first, List<Rule> rules) {}

    private final Pattern signs;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final Supplier<Grammar> source;
    /** Made when a line first needs it, since few lines do; made twice by two threads it is the same. */
    private volatile @Nullable Grammar grammar;

    /**
     * Reads the tables of a language.
     *
     * @param signs beginnings of words, one of which stands in every line that the rules change; a line without is passed by
     * @param numbers words, each with = and its number; those with a star also count at the beginning of a line
     * @param counts what a number word must stand before, as alternatives of a pattern
     * @param rules on each line a pattern, an arrow, and the English; {n} is a number, {u} a unit, {l} a number with or
     *     without a unit, { and } the bounds of a word
     */
    LineTongue(String signs, String numbers, String counts, String rules) {
        List<String> all = new ArrayList<>();
        List<String> leading = new ArrayList<>();
        for (String entry : numbers.isEmpty() ? new String[0] : numbers.strip().split("\\s+", -1)) {
            int equals = entry.indexOf('=');
            String word = entry.substring(0, equals).replace("*", "").replace('_', ' ');
            this.numbers.put(word, Integer.parseInt(entry.substring(equals + 1)));
            all.add(word);
            if (entry.contains("*")) {
                leading.add(word);
            }
        }
        this.signs = pattern(signs + "|(?<!\\p{L})(?:" + anyOf(all) + ")");
        // A Japanese number may stand directly behind a word.
        String apart = all.contains("一") ? "(?<![\\d一二三四五六七八九十])" : "(?<![\\p{L}\\d])";
        source = () -> new Grammar(
                pattern(apart + "(" + anyOf(all) + ")(?=\\s*(?:" + counts + "))"),
                pattern("(?<=^|[,;])\\s*(" + anyOf(leading) + ")(?=\\s+\\p{L})"),
                Arrays.stream(rules.strip().split("\n", -1))
                        .map(LineTongue::rule)
                        .toList());
    }

    private static Rule rule(String line) {
        int arrow = line.indexOf("->");
        return new Rule(
                pattern(filled(line.substring(0, arrow).strip())),
                line.substring(arrow + 2).strip().replace('_', ' '));
    }

    private Grammar grammar() {
        Grammar known = grammar;
        if (known == null) {
            known = source.get();
            grammar = known;
        }
        return known;
    }

    private static Pattern pattern(String text) {
        return Pattern.compile(text, FLAGS);
    }

    private static String filled(String rule) {
        return rule.replace("{l}", "(" + NUMBER + "(?:\\s?-?" + UNIT + ")?)")
                .replace("{n}", "(" + NUMBER + ")")
                .replace("{u}", UNIT)
                .replace("{{", BEFORE + "(?:")
                .replace("}}", ")" + AFTER);
    }

    /** The words as alternatives, the longest first; nothing at all where there are none. */
    private static String anyOf(List<String> words) {
        List<String> sorted = new ArrayList<>(words);
        sorted.sort((one, other) -> other.length() - one.length());
        return words.isEmpty() ? "(?!)" : String.join("|", sorted);
    }

    String english(String line) {
        if (!signs.matcher(line).find()) {
            return line;
        }
        Grammar known = grammar();
        String plain = figures(known.first(), figures(known.counted(), line));
        for (Rule rule : known.rules()) {
            plain = rule.pattern().matcher(plain).replaceAll(rule.english());
        }
        return plain;
    }

    private String figures(Pattern words, String line) {
        Matcher found = words.matcher(line);
        StringBuilder out = new StringBuilder();
        int from = 0;
        while (found.find()) {
            int number = numbers.getOrDefault(found.group(1).toLowerCase(Locale.ROOT), 0);
            out.append(line, from, found.start(1)).append(number);
            from = found.end(1);
        }
        return from == 0 ? line : out.append(line.substring(from)).toString();
    }
}
