package hearthcloth.store.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.store.Person;
import hearthcloth.store.json.StoreException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names, passphrases and visits, in the studio's own tables but without a server. */
class PeopleBookTest {

    private static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");
    private static final String PHRASE = "kelp and plum by lamplight";

    private final Jdbi jdbi;
    private final PeopleBook people;

    PeopleBookTest(@TempDir Path folder) throws IOException {
        jdbi = Jdbi.create("jdbc:sqlite:" + folder.resolve("studio.db"));
        try (InputStream script = PeopleBook.class.getResourceAsStream("/db/studio/V1__studio.sql")) {
            String form = new String(Objects.requireNonNull(script).readAllBytes(), StandardCharsets.UTF_8);
            jdbi.useHandle(handle -> handle.createScript(form).execute());
        }
        people = new PeopleBook(jdbi, at(Duration.ZERO));
    }

    private static Clock at(Duration later) {
        return Clock.fixed(NOON.plus(later), ZoneOffset.UTC);
    }

    @Test
    void the_first_is_the_teacher_and_names_are_compared_without_capitals_and_blanks() {
        assertThat(people.isEmpty()).isTrue();
        Person ada = people.begin(" Ada  B ", PHRASE);
        assertThat(ada).isEqualTo(new Person(1, "Ada  B", Person.Part.TEACHER));
        assertThat(people.isEmpty()).isFalse();
        assertThat(people.find(1)).contains(ada);
        assertThat(people.find(2)).isEmpty();
        assertThatThrownBy(() -> people.begin("Mo", PHRASE))
                .hasMessageStartingWith("Somebody has just begun this studio");
        assertThatThrownBy(() -> people.add("ada b", PHRASE, Person.Part.MAKER))
                .isInstanceOf(StoreException.class)
                .hasMessageStartingWith("There is somebody of this name already");
        assertThat(people.enter("ADA B", PHRASE)).contains(ada);
        assertThat(people.enter("Ada B", PHRASE + "s")).isEmpty();
    }

    @Test
    void a_name_and_a_passphrase_have_their_limits() {
        for (String name : List.of(" ", "x".repeat(61), "A\nda")) {
            assertThatThrownBy(() -> people.begin(name, PHRASE)).hasMessage("Write a name of up to 60 letters.");
        }
        for (String phrase : List.of("elevenchars", "x".repeat(201), "my ADA is here")) {
            assertThatThrownBy(() -> people.begin("Ada", phrase))
                    .hasMessageStartingWith("A passphrase has at least 12 letters");
        }
        assertThat(people.begin("x".repeat(60), "twelve chars").name()).hasSize(60);
    }

    @Test
    void a_visit_is_known_by_its_secret_for_fourteen_days_and_ends_with_a_new_passphrase() {
        Person ada = people.begin("Ada", PHRASE);
        VisitBook visits = new VisitBook(jdbi, at(Duration.ZERO));
        String secret = visits.begin(ada);

        assertThat(secret).matches("[0-9a-f]{64}");
        assertThat(marks()).doesNotContain(secret);
        assertThat(visits.whose(secret)).contains(ada);
        assertThat(visits.whose(secret.replace(secret.charAt(0), 'x'))).isEmpty();
        assertThat(new VisitBook(jdbi, at(Duration.ofDays(14))).whose(secret)).contains(ada);
        assertThat(new VisitBook(jdbi, at(Duration.ofDays(14).plusSeconds(1))).whose(secret))
                .isEmpty();
        // begun by a clock that was ahead: a day of it is borne, and no more
        assertThat(new VisitBook(jdbi, at(Duration.ofDays(-1))).whose(secret)).contains(ada);
        assertThat(new VisitBook(jdbi, at(Duration.ofDays(-1).minusSeconds(1))).whose(secret))
                .isEmpty();

        String other = visits.begin(ada);
        assertThat(other).isNotEqualTo(secret);
        visits.end(other);
        assertThat(visits.whose(other)).isEmpty();
        assertThat(visits.whose(secret)).contains(ada);
        people.change(ada, "another one of four words");
        assertThat(visits.whose(secret)).isEmpty();
        assertThat(people.enter("Ada", PHRASE)).isEmpty();
        assertThat(people.enter("Ada", "another one of four words")).contains(ada);
    }

    @Test
    void the_token_of_a_visits_pages_tells_nothing_of_its_secret_and_is_always_the_same() {
        assertThat(VisitBook.token("a")).isEqualTo(VisitBook.token("a")).matches("[0-9a-f]{64}");
        assertThat(VisitBook.token("a")).isNotEqualTo(VisitBook.token("b"));
        // SHA-256 of "page abc", by sha256sum
        assertThat(VisitBook.token("abc"))
                .isEqualTo("44dacc4d01797ae1bb9bf002695e0498447be566c3402dfd45e50aa8ec057a57");
    }

    @Test
    void old_visits_are_swept_when_one_begins() {
        Person ada = people.begin("Ada", PHRASE);
        new VisitBook(jdbi, at(Duration.ZERO)).begin(ada);
        new VisitBook(jdbi, at(Duration.ofDays(15))).begin(ada);
        assertThat(marks()).hasSize(1);
    }

    private List<String> marks() {
        return jdbi.withHandle(handle ->
                handle.createQuery("select mark from visit").mapTo(String.class).list());
    }
}
