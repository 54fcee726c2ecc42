package hearthcloth.wish;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How long planning may take, as the maker writes it: {@code 2s}, {@code 500 ms}, {@code 1.5 min}.
 *
 * <p>A clock stops a search at a different place each time, so the planner is also given an effort that it counts in
 * steps. As long as the effort is spent before the time is, the same seed gives the same cloths on every machine. A
 * first cloth is searched for without the clock, so however short the time, what can be found is found.
 *
 * @param milliseconds from 1 to ten minutes
 */
public record PlanBudget(long milliseconds) {

    private static final long LEAST = 1;
    private static final long MOST = TimeUnit.MINUTES.toMillis(10);
    private static final Pattern WRITTEN =
            Pattern.compile("(\\d{1,9}(?:[.,]\\d{1,9})?)\\s*(ms|s|sec|seconds?|min|minutes?)");

    /**
     * Milliseconds for one effort of the planner: twice what it usually takes, so that on an ordinary machine the steps
     * end before the clock does.
     */
    private static final long MILLISECONDS_AN_EFFORT = 1_000;

    public static PlanBudget parse(String text) {
        Matcher matcher = WRITTEN.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!matcher.matches()) {
            throw new RefusedException(RefusingSentences.wishTime(Argument.text(text)));
        }
        String unit = matcher.group(2);
        long factor = unit.equals("ms") ? 1 : unit.startsWith("s") ? 1_000 : 60_000;
        long milliseconds = new BigDecimal(matcher.group(1).replace(',', '.'))
                .multiply(BigDecimal.valueOf(factor))
                .longValue();
        if (milliseconds < LEAST || milliseconds > MOST) {
            throw new RefusedException(RefusingSentences.wishTimeReach(Argument.text(text)));
        }
        return new PlanBudget(milliseconds);
    }

    /** Twice the time, as it would be written. */
    public String doubled() {
        long twice = Math.max(1_000, Math.min(MOST, 2 * milliseconds));
        return twice % 1_000 == 0 ? twice / 1_000 + "s" : twice + "ms";
    }

    /** The effort for {@link hearthcloth.plan.propose.Planner}. */
    public int effort() {
        return (int) Math.max(1, milliseconds / MILLISECONDS_AN_EFFORT);
    }

    /** Starts the clock. */
    public Clock begin() {
        return new Clock(System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(milliseconds));
    }

    /** Time that runs out. */
    public static final class Clock implements Budget {

        private final long end;
        private final Budget time;
        private boolean ranOut;

        private Clock(long end) {
            this.end = end;
            this.time = Budget.until(() -> System.nanoTime() - this.end >= 0);
        }

        @Override
        public boolean spent() {
            ranOut = ranOut || time.spent();
            return ranOut;
        }

        /** Whether the search was stopped before it was done. */
        public boolean ranOut() {
            return ranOut;
        }
    }
}
