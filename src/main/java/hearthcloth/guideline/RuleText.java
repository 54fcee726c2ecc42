package hearthcloth.guideline;

import hearthcloth.measure.Length;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RulingSentences;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the texts of rules have in common: ranges, shares, and measures that lose nothing when written. */
final class RuleText {

    /** The word for what the heap decides. */
    static final String OPEN = "open";

    /** Measures outside these limits are slips of the unit (docs/sources.md#input-limits). */
    private static final Length MOST = Length.cm(500);

    private static final Pattern RANGE = Pattern.compile("(.+?)\\s+(?:to|–)\\s+(.+)");
    private static final Pattern SHARE = Pattern.compile("(\\d{1,3})(?:\\s*%)?(?:\\s*(?:to|–|-)\\s*(\\d{1,3}))?\\s*%");

    private RuleText() {}

    /** A measure with whether it is meant as it finishes. */
    record Meant(String measure, boolean finished) {

        static Meant of(String written) {
            String plain = written.strip();
            for (String word : List.of("finished", "cut")) {
                if (plain.toLowerCase(Locale.ROOT).endsWith(" " + word)) {
                    String measure = plain.substring(0, plain.length() - word.length());
                    return new Meant(measure.strip(), word.equals("finished"));
                }
            }
            return new Meant(plain, false);
        }
    }

    /** Which rule a measure is asked for by. */
    enum Asked {
        SIZE,
        HEARTH,
        BARS
    }

    /** Refuses words without a number, which are no measure. */
    static void numbered(String written, Asked rule) {
        if (!written.matches("(?s).*[\\d½¼¾⅛⅜⅝⅞⅓⅔].*")) {
            throw new RefusedException(RulingSentences.ruleMeasure(rule.name(), Argument.written(written)));
        }
    }

    static boolean isOpen(String written) {
        return plain(written).equals(OPEN);
    }

    static String plain(String written) {
        return written.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    }

    /** The two ends of a range such as {@code 2 to 3 in}; the unit after the second holds for both. */
    static Optional<List<Length>> range(String written, Unit bare) {
        Matcher matcher = RANGE.matcher(written.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        List<Length> ends = Measures.lengths(matcher.group(1) + " x " + matcher.group(2), bare);
        if (ends.size() != 2 || ends.get(0).isMoreThan(ends.get(1))) {
            throw new RefusedException(RulingSentences.ruleRange(Argument.written(written)));
        }
        ends.forEach(end -> within(written, end));
        return Optional.of(ends);
    }

    /** Two whole shares in per cent, such as {@code 30 to 40 %}; {@code 35 %} alone is from 32 to 38. */
    static Optional<Share> share(String written) {
        Matcher matcher = SHARE.matcher(written.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int first = Integer.parseInt(matcher.group(1));
        int least = matcher.group(2) == null ? Math.max(1, first - Share.ABOUT) : first;
        int most = matcher.group(2) == null ? Math.min(99, first + Share.ABOUT) : Integer.parseInt(matcher.group(2));
        if (least < 1 || most > 99 || least > most) {
            throw new RefusedException(RulingSentences.ruleShare(Argument.written(written)));
        }
        return Optional.of(new Share(least, most));
    }

    static Length length(String written, Unit bare) {
        Length length = Measures.length(written, bare);
        within(written, length);
        return length;
    }

    static Size size(String written, Unit bare) {
        Size size = Measures.size(written, bare);
        within(written, size.width());
        within(written, size.height());
        return size;
    }

    private static void within(String written, Length length) {
        if (!length.isPositive() || length.isMoreThan(MOST)) {
            throw new RefusedException(RulingSentences.ruleReach(Argument.written(written)));
        }
    }

    /** A length so that reading it again gives the same: on the ruler's marks in its unit, else in millimetres. */
    static String exact(Length length, Ruler ruler) {
        boolean onMark = ruler.mark(length, Rounding.NEAREST).equals(length) && ruler != Ruler.SIXTEENTHS;
        return onMark ? ruler.write(length, Rounding.NEAREST) : length.toString();
    }

    static String exact(Size size, Ruler ruler) {
        return size.isSquare()
                ? exact(size.width(), ruler)
                : exact(size.width(), ruler) + " x " + exact(size.height(), ruler);
    }

    static String range(Length least, Length most, Ruler ruler) {
        return exact(least, ruler) + " to " + exact(most, ruler);
    }
}
