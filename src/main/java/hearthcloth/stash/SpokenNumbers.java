package hearthcloth.stash;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths in words: {@code two yards}, {@code half a metre}, {@code a yard and a half}. */
final class SpokenNumbers {

    private static final List<String> WORDS = List.of(
            "a", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");
    private static final String UNIT = "(yards?|yds?|metres?|meters?|inch(?:es)?|feet|foot)\\b";
    /** A number past twelve ("twenty-two") is not heard, and so never taken for its last word. */
    private static final String ALONE = "(?<!(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)[ -])";
    private static final String NUMBER = ALONE + "\\b(an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve) ";

    private static final Pattern HALF = pattern("\\bhalf an? " + UNIT);
    private static final Pattern AND_A_HALF = pattern(NUMBER + "and a half " + UNIT);
    private static final Pattern UNIT_AND_A_HALF = pattern(NUMBER + UNIT + " and a half\\b");
    private static final Pattern WHOLE = pattern(NUMBER + UNIT);

    private SpokenNumbers() {}

    private static Pattern pattern(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
    }

    /** The same line with such lengths in figures; words that count anything else are left alone. */
    static String inFigures(String line) {
        String halves = HALF.matcher(line).replaceAll("1/2 $1");
        String more = AND_A_HALF.matcher(halves).replaceAll(found -> number(found.group(1)) + " 1/2 " + found.group(2));
        String most =
                UNIT_AND_A_HALF.matcher(more).replaceAll(found -> number(found.group(1)) + " 1/2 " + found.group(2));
        return WHOLE.matcher(most)
                .replaceAll(found -> Matcher.quoteReplacement(number(found.group(1)) + " " + found.group(2)));
    }

    private static int number(String word) {
        return Math.max(1, WORDS.indexOf(word.toLowerCase(Locale.ROOT)));
    }
}
