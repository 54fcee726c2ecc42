package hearthcloth.web.door;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Counts wrong guesses, of each address and of all. Who guessed too often has to wait; a guesser uses up nobody else's guesses
 * but those of all, of which there are many, and nothing that is guessed at changes. Not thread-safe.
 */
final class Guesses {

    /** Wrong guesses of one address within {@link #LASTS}. */
    private static final int OF_ONE = 5;

    /** Wrong guesses of all addresses together: a code of forty bits is then found once in ten thousand million times. */
    private static final int OF_ALL = 100;

    private static final int MOST_ADDRESSES = 500;
    private static final Duration LASTS = Duration.ofMinutes(10);

    private final Clock clock;
    private final Map<String, Integer> wrong = new LinkedHashMap<>();
    private Instant begun = Instant.MIN;
    private int all;

    Guesses(Clock clock) {
        this.clock = clock;
    }

    /** Whether an address has to wait until it may guess again. */
    boolean isTooMany(String address) {
        forget();
        return all >= OF_ALL || wrong.getOrDefault(address, 0) >= OF_ONE;
    }

    void wrong(String address) {
        forget();
        all++;
        if (wrong.size() < MOST_ADDRESSES || wrong.containsKey(address)) {
            wrong.merge(address, 1, Integer::sum);
        }
    }

    /** All are forgotten together, when the time is over or the clock has gone back. */
    private void forget() {
        Instant now = clock.instant();
        if (now.isBefore(begun) || !now.isBefore(later(begun))) {
            begun = now;
            all = 0;
            wrong.clear();
        }
    }

    private static Instant later(Instant moment) {
        return moment.equals(Instant.MIN) ? moment : moment.plus(LASTS);
    }
}
