package hearthcloth.web.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** {@link Guesses} and {@link Knocks} by a clock of the tests' own. */
class GuessesTest {

    /** A clock that stands still until it is moved. */
    private static final class Still extends Clock {

        private Instant now = Instant.parse("2026-01-01T10:00:00Z");

        void pass(Duration duration) {
            now = now.plus(duration);
        }

        @Override
        public ZoneOffset getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(java.time.ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    private final Still clock = new Still();

    @Test
    void after_five_wrong_guesses_an_address_waits_and_others_do_not() {
        Guesses guesses = new Guesses(clock);
        for (int i = 0; i < 5; i++) {
            assertThat(guesses.isTooMany("a")).isFalse();
            guesses.wrong("a");
        }
        assertThat(guesses.isTooMany("a")).isTrue();
        assertThat(guesses.isTooMany("b")).isFalse();
    }

    @Test
    void after_a_hundred_of_all_everybody_waits() {
        Guesses guesses = new Guesses(clock);
        for (int i = 0; i < 100; i++) {
            assertThat(guesses.isTooMany("new")).isFalse();
            guesses.wrong("from " + i);
        }
        assertThat(guesses.isTooMany("new")).isTrue();
    }

    @Test
    void ten_minutes_later_all_is_forgotten_and_not_a_second_before() {
        Guesses guesses = new Guesses(clock);
        for (int i = 0; i < 5; i++) {
            guesses.wrong("a");
        }
        clock.pass(Duration.ofMinutes(10).minusSeconds(1));
        assertThat(guesses.isTooMany("a")).isTrue();
        clock.pass(Duration.ofSeconds(1));
        assertThat(guesses.isTooMany("a")).isFalse();
    }

    @Test
    void a_clock_that_went_back_locks_nobody_out_for_longer() {
        Guesses guesses = new Guesses(clock);
        for (int i = 0; i < 5; i++) {
            guesses.wrong("a");
        }
        clock.pass(Duration.ofDays(-365));
        assertThat(guesses.isTooMany("a")).isFalse();
    }

    @Test
    void a_device_that_asks_is_known_by_its_mark_and_comes_in_once_it_is_allowed() {
        Knocks knocks = new Knocks(clock);
        String secret = knocks.ask("tablet", "10.0.0.2").orElseThrow();
        Devices.Asking asking = knocks.all().get(0);
        assertThat(knocks.mark(secret)).contains(asking.mark());
        assertThat(asking.mark()).matches("[◆●▲■★♥] [1-9][0-9]");
        assertThat(knocks.allowed(secret)).isEmpty();
        knocks.answer(asking.id(), true);
        assertThat(knocks.all()).isEmpty();
        assertThat(knocks.allowed(secret)).contains("tablet");
        assertThat(knocks.allowed(secret)).as("only once").isEmpty();
    }

    @Test
    void a_device_that_is_told_no_is_not_let_in_and_asks_no_longer() {
        Knocks knocks = new Knocks(clock);
        String secret = knocks.ask("tablet", "10.0.0.2").orElseThrow();
        knocks.answer(knocks.all().get(0).id(), false);
        assertThat(knocks.all()).isEmpty();
        assertThat(knocks.allowed(secret)).isEmpty();
        assertThat(knocks.mark(secret)).isEmpty();
    }

    /** Twenty may wait; each mark is another, and who asks again takes the place of what asked from there before. */
    @Test
    void no_more_than_twenty_ask_at_a_time_each_under_a_mark_of_its_own() {
        Knocks knocks = new Knocks(clock);
        List<String> secrets = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            secrets.add(knocks.ask("device " + i, "10.0.0." + i).orElseThrow());
        }
        assertThat(knocks.all()).extracting(Devices.Asking::mark).doesNotHaveDuplicates();
        assertThat(knocks.ask("one more", "10.0.1.1")).isEmpty();
        Optional<String> again = knocks.ask("device 3", "10.0.0.3");
        assertThat(again).isPresent();
        assertThat(knocks.mark(secrets.get(3))).isEmpty();
        assertThat(knocks.all()).hasSize(20);
    }

    @Test
    void who_waited_longer_than_ten_minutes_asks_anew() {
        Knocks knocks = new Knocks(clock);
        String secret = knocks.ask("tablet", "10.0.0.2").orElseThrow();
        clock.pass(Duration.ofMinutes(10));
        assertThat(knocks.mark(secret)).isPresent();
        clock.pass(Duration.ofSeconds(1));
        assertThat(knocks.mark(secret)).isEmpty();
        assertThat(knocks.all()).isEmpty();
    }
}
