package hearthcloth.store;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One complete copy of the maker's file, beside it.
 *
 * @param name of the copy's file, which holds its place, when and why it was made
 * @param place in the order of making, from 1, whatever the clock said; 0 for a copy of an earlier Hearthcloth, which
 *     numbered none
 * @param made when, by the clock of that time
 * @param bytes its size
 */
public record SafetyCopy(String name, int place, Instant made, Reason reason, long bytes) {

    /** Why a copy was made, and how many of its kind are kept. */
    public enum Reason {
        DAILY(5),
        UPDATE(3),
        RESTORE(3),
        ASKED(5);

        private final int most;

        Reason(int most) {
            this.most = most;
        }

        int most() {
            return most;
        }
    }

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final Pattern NAME = Pattern.compile(
            "(?:(\\d{6,9})-)?(\\d{4}-\\d\\d-\\d\\dT\\d{6}Z)-(daily|update|restore|asked)(-\\d{2,4})?\\.db");

    /** A clock that is ahead of a copy by less than this may be another machine's; more, and one of them is wrong. */
    private static final Duration LEEWAY = Duration.ofHours(1);

    /** The order of making, newest first: by place, and those of an earlier Hearthcloth before all, by their clock. */
    static final Comparator<SafetyCopy> NEWEST_FIRST = Comparator.comparingInt(SafetyCopy::place)
            .thenComparing(SafetyCopy::made)
            .thenComparing(SafetyCopy::name)
            .reversed();

    static String stamp(Instant moment) {
        return TIME.format(moment);
    }

    /** The name of a copy's file. */
    static String name(int place, Instant made, Reason reason) {
        return String.format(
                Locale.ROOT, "%06d-%s-%s.db", place, stamp(made), reason.name().toLowerCase(Locale.ROOT));
    }

    /** The copy that a file's name describes; empty where the file is not one of ours. */
    static Optional<SafetyCopy> of(String name, long bytes) {
        Matcher matcher = NAME.matcher(name);
        if (!matcher.matches() || (matcher.group(1) == null) == (matcher.group(4) == null)) {
            return Optional.empty();
        }
        try {
            int place = matcher.group(1) == null ? 0 : Integer.parseInt(matcher.group(1));
            Instant made = TIME.parse(matcher.group(2), Instant::from);
            Reason reason = Reason.valueOf(matcher.group(3).toUpperCase(Locale.ROOT));
            return Optional.of(new SafetyCopy(name, place, made, reason, bytes));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** Whether its date is still to come: the clock was wrong when it was made, or is wrong now. */
    public boolean isAhead(Instant now) {
        return made.isAfter(now.plus(LEEWAY));
    }
}
