package hearthcloth.store.studio;

import hearthcloth.store.Person;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;

/**
 * Who is in the studio, known to every workroom on the same database. A visit is identified by a secret that only her
 * browser has; the database holds its hash. Thread-safe.
 */
public final class VisitBook {

    /** A visit ends by itself after this time. */
    private static final Duration LONGEST = Duration.ofDays(14);

    private static final SecureRandom RANDOM = new SecureRandom();

    private final Jdbi jdbi;
    private final Clock clock;

    VisitBook(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    /** Begins a visit; returns the secret for her browser. */
    public String begin(Person person) {
        byte[] bytes = new byte[32];
        RANDOM.nextBytes(bytes);
        String secret = HexFormat.of().formatHex(bytes);
        jdbi.useTransaction(handle -> {
            handle.createUpdate("delete from visit where begun < :oldest")
                    .bind("oldest", oldest())
                    .execute();
            handle.createUpdate("insert into visit (mark, person, begun) values (:mark, :person, :now)")
                    .bind("mark", hashed(secret))
                    .bind("person", person.id())
                    .bind("now", clock.instant().truncatedTo(ChronoUnit.SECONDS).toString())
                    .execute();
        });
        return secret;
    }

    /** The oldest time of a visit still valid. Instants are cut to seconds so that they compare as texts. */
    private String oldest() {
        return text(clock.instant().minus(LONGEST));
    }

    private static String text(Instant moment) {
        return moment.truncatedTo(ChronoUnit.SECONDS).toString();
    }

    public Optional<Person> whose(String secret) {
        return jdbi.withHandle(handle -> handle.createQuery(
                        "select person.id, person.name, person.part from visit join person on person.id = visit.person"
                                + " where visit.mark = :mark and visit.begun >= :oldest and visit.begun <= :latest")
                .bind("mark", hashed(secret))
                .bind("oldest", oldest())
                // Clocks of several workrooms differ a little; one years ahead must not make visits that never end.
                .bind("latest", text(clock.instant().plus(Duration.ofDays(1))))
                .map((row, context) -> new Person(
                        row.getLong("id"), row.getString("name"), Person.Part.valueOf(row.getString("part"))))
                .findOne());
    }

    public void end(String secret) {
        jdbi.useTransaction(handle -> handle.createUpdate("delete from visit where mark = :mark")
                .bind("mark", hashed(secret))
                .execute());
    }

    /** A token for the visit's pages, by which every workroom knows that a form comes from one of them. */
    public static String token(String secret) {
        return hashed("page " + secret);
    }

    private static String hashed(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
