package hearthcloth.store;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One complete copy of the maker's file, beside it.
 *
 * @param name of the copy's file, which holds when and why it was made
 * @param bytes its size
 */
public record SafetyCopy(String name, Instant made, Reason reason, long bytes) {

    /** Why a copy was made, and how many of its kind are kept. */
    public enum Reason {
        DAILY(5, "first opening of the day"),
        UPDATE(3, "before a newer Hearthcloth took the file over"),
        RESTORE(3, "before an older copy was put back"),
        ASKED(5, "asked for");

        private final int most;
        private final String words;

        Reason(int most, String words) {
            this.most = most;
            this.words = words;
        }

        int most() {
            return most;
        }

        public String words() {
            return words;
        }
    }

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final Pattern NAME =
            Pattern.compile("(\\d{4}-\\d\\d-\\d\\dT\\d{6}Z)-(daily|update|restore|asked)-\\d{2,4}\\.db");

    static String stamp(Instant moment) {
        return TIME.format(moment);
    }

    /**
     * The name of a copy's file.
     *
     * @param number distinguishes copies of the same second, from 1, so that names sort in the order of making
     */
    static String name(Instant made, Reason reason, int number) {
        return String.format(
                Locale.ROOT, "%s-%s-%02d.db", stamp(made), reason.name().toLowerCase(Locale.ROOT), number);
    }

    /** The copy that a file's name describes; empty where the file is not one of ours. */
    static Optional<SafetyCopy> of(String name, long bytes) {
        Matcher matcher = NAME.matcher(name);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        try {
            Instant made = TIME.parse(matcher.group(1), Instant::from);
            Reason reason = Reason.valueOf(matcher.group(2).toUpperCase(Locale.ROOT));
            return Optional.of(new SafetyCopy(name, made, reason, bytes));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
