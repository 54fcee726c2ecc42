package hearthcloth.stash;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths in words: {@code two yards}, {@code half a metre}, {@code half yard}, {@code a yard and a half}. */
final class SpokenNumbers {

    private static final List<String> WORDS = List.of(
            "a", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");
    private static final String UNIT = "(yards?|yds?|metres?|meters?|inch(?:es)?|feet|foot)\\b";
    /** A number past twelve ("twenty-two") is not heard, and so never taken for its last word. */
    private static final String ALONE = "(?<!(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)[ -])";

    private static final String NUMBER =
            ALONE + "\\b(an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve) ";

    private static final Pattern HALF = pattern("(?<!\\band )(?<!\\band an? )\\b(?:an? )?half(?:[ -]| an? )" + UNIT);
    private static final Pattern QUARTER = pattern("\\b(?:an? |one )?quarter(?:[ -]| of an? )" + UNIT);
    private static final Pattern THREE_QUARTERS = pattern("\\bthree[ -]quarters?(?:[ -]| of an? )" + UNIT);
    private static final Pattern AND_A_HALF = pattern(NUMBER + "and a half " + UNIT);
    private static final Pattern UNIT_AND_A_HALF = pattern(NUMBER + UNIT + " and a half\\b");
    private static final Pattern WHOLE = pattern(NUMBER + UNIT);

    private SpokenNumbers() {}

    private static Pattern pattern(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
    }

    /** The same line with such lengths in figures; words that count anything else are left alone. */
    static String inFigures(String line) {
        String three = THREE_QUARTERS.matcher(line).replaceAll("3/4 $1");
        String quarters = QUARTER.matcher(three).replaceAll("1/4 $1");
        String halves = HALF.matcher(quarters).replaceAll("1/2 $1");
        String more = replaced(AND_A_HALF, halves, " 1/2 ");
        return replaced(WHOLE, replaced(UNIT_AND_A_HALF, more, " 1/2 "), " ");
    }

    /** The line with the number in figures, what follows it, and the unit, wherever the pattern is found. */
    private static String replaced(Pattern pattern, String line, String between) {
        StringBuilder out = new StringBuilder();
        Matcher found = pattern.matcher(line);
        int from = 0;
        while (found.find()) {
            out.append(line, from, found.start())
                    .append(number(found.group(1)))
                    .append(between)
                    .append(found.group(2));
            from = found.end();
        }
        return out.append(line.substring(from)).toString();
    }

    private static int number(String word) {
        return Math.max(1, WORDS.indexOf(word.toLowerCase(Locale.ROOT)));
    }
}
