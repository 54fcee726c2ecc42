package hearthcloth.guideline;

import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RulingSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How many rounds of bars: {@code open}, {@code 3}, {@code 2 to 4}.
 *
 * @param least from 1
 * @param most to {@value #MOST}; the least where the number is fixed
 */
public record RoundsRule(int least, int most) {

    /** More rounds than anybody sews (docs/sources.md#input-limits). */
    static final int MOST = 40;

    private static final Pattern SPAN = Pattern.compile("(\\d{1,2})(?:\\s*(?:to|–|-)\\s*(\\d{1,2}))?");

    public RoundsRule {
        if (least < 1 || most > MOST || least > most) {
            throw new IllegalArgumentException("no rounds: " + least + " to " + most);
        }
    }

    /** Any number. */
    static RoundsRule open() {
        return new RoundsRule(1, MOST);
    }

    /**
     * Reads a rule.
     *
     * @throws RefusedException with a sentence, where it is none
     */
    public static RoundsRule parse(String written) {
        if (RuleText.isOpen(written)) {
            return open();
        }
        Matcher matcher = SPAN.matcher(RuleText.plain(written));
        int least = matcher.matches() ? Integer.parseInt(matcher.group(1)) : 0;
        int most = least > 0 && matcher.group(2) != null ? Integer.parseInt(matcher.group(2)) : least;
        if (least < 1 || most > MOST || least > most) {
            throw new RefusedException(RulingSentences.ruleRounds(Argument.number(MOST), Argument.written(written)));
        }
        return new RoundsRule(least, most);
    }

    public boolean isOpen() {
        return least == 1 && most == MOST;
    }

    public boolean isOne() {
        return least == most;
    }

    public boolean holds(int rounds) {
        return least <= rounds && rounds <= most;
    }

    /** As it is read. */
    public String written() {
        return isOpen() ? RuleText.OPEN : isOne() ? Integer.toString(least) : least + " to " + most;
    }

    /** For a reader: how many. */
    public Sentence said() {
        if (isOpen()) {
            return RulingSentences.isRounds("none", 0);
        }
        return RulingSentences.isRounds(isOne() ? "none" : Integer.toString(least), most);
    }
}
