package hearthcloth.store.studio;

import hearthcloth.store.Person;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.StoringSentences;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** The people of a studio, each with a name and a passphrase. Thread-safe. */
public final class PeopleBook {

    private static final int SHORTEST = 12;
    private static final int LONGEST = 200;
    private static final int LONGEST_NAME = 60;

    /** After this many wrong passphrases in a row a name has to wait. */
    private static final int MOST_WRONG = 5;

    private static final Duration WAIT = Duration.ofMinutes(1);

    private final Jdbi jdbi;
    private final Clock clock;

    PeopleBook(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    private record Kept(Person person, String passphrase) {}

    /** True until the first teacher has been added. */
    public boolean isEmpty() {
        return jdbi.withHandle(PeopleBook::isEmpty);
    }

    private static boolean isEmpty(Handle handle) {
        return handle.createQuery("select count(*) from person")
                        .mapTo(Integer.class)
                        .one()
                == 0;
    }

    /** All people, by name. */
    public List<Person> all() {
        return jdbi.withHandle(handle -> handle.createQuery("select * from person order by called")
                .map((row, context) -> new Person(
                        row.getLong("id"), row.getString("name"), Person.Part.valueOf(row.getString("part"))))
                .list());
    }

    public Optional<Person> find(long id) {
        return all().stream().filter(person -> person.id() == id).findFirst();
    }

    /**
     * Adds the first teacher of a studio that has nobody yet.
     *
     * @throws StoreException where somebody else was first, or name or passphrase is not acceptable
     */
    public Person begin(String name, String passphrase) {
        String hashed = hashed(name, passphrase);
        return jdbi.inTransaction(handle -> {
            if (!isEmpty(handle)) {
                throw new StoreException(person("BEGUN", 0));
            }
            return insert(handle, name, hashed, Person.Part.TEACHER);
        });
    }

    /**
     * Adds a person.
     *
     * @throws StoreException where the name is taken, or name or passphrase is not acceptable
     */
    public Person add(String name, String passphrase, Person.Part part) {
        String hashed = hashed(name, passphrase);
        return jdbi.inTransaction(handle -> insert(handle, name, hashed, part));
    }

    private static String hashed(String name, String passphrase) {
        if (name.isBlank() || name.length() > LONGEST_NAME || name.codePoints().anyMatch(Character::isISOControl)) {
            throw new StoreException(person("NAME", LONGEST_NAME));
        }
        int letters = passphrase.codePointCount(0, passphrase.length());
        if (letters < SHORTEST || letters > LONGEST || called(passphrase).contains(called(name))) {
            throw new StoreException(person("PASSPHRASE", SHORTEST));
        }
        return Passphrase.hashed(passphrase);
    }

    /** The form of a name by which names are compared: those that differ only in capitals or blanks are one. */
    private static String called(String name) {
        return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    private static Person insert(Handle handle, String name, String hashed, Person.Part part) {
        boolean taken = handle.createQuery("select count(*) from person where called = :called")
                        .bind("called", called(name))
                        .mapTo(Integer.class)
                        .one()
                > 0;
        if (taken) {
            throw new StoreException(person("TAKEN", 0));
        }
        long id = handle.createQuery("select coalesce(max(id), 0) + 1 from person")
                .mapTo(Long.class)
                .one();
        handle.createUpdate("insert into person (id, name, called, passphrase, part, wrong, waits) values"
                        + " (:id, :name, :called, :passphrase, :part, 0, '')")
                .bind("id", id)
                .bind("name", name.strip())
                .bind("called", called(name))
                .bind("passphrase", hashed)
                .bind("part", part.name())
                .execute();
        return new Person(id, name.strip(), part);
    }

    /**
     * The person with this name and passphrase; empty where they do not belong together. The answer takes as long for a
     * name that nobody has. A try is counted before it is compared, so that many at once are no more than one after another.
     *
     * @throws StoreException where this name has to wait after too many wrong passphrases, or where too many come at once
     */
    public Optional<Person> enter(String name, String passphrase) {
        Optional<Kept> kept = kept(name);
        if (kept.isEmpty()) {
            Passphrase.hashed(passphrase);
            return Optional.empty();
        }
        Kept found = kept.get();
        if (!Passphrase.hasRoom()) {
            throw Passphrase.crowded();
        }
        if (!isCounted(found.person())) {
            throw new StoreException(person("WRONG", 0));
        }
        if (!Passphrase.matches(passphrase, found.passphrase())) {
            return Optional.empty();
        }
        if (Passphrase.isOld(found.passphrase())) {
            keep(found.person(), Passphrase.hashed(passphrase));
        } else {
            proved(found.person());
        }
        return Optional.of(found.person());
    }

    /** Counts a try as wrong until it proves right; false where the name has to wait. One statement, hence one at a time. */
    private boolean isCounted(Person person) {
        Instant now = clock.instant();
        return jdbi.inTransaction(handle -> handle.createUpdate("update person set wrong = wrong + 1,"
                                + " waits = case when wrong + 1 >= :most then :until else '' end"
                                // A wait that ends later than one from now was set by a clock that was ahead.
                                + " where id = :id and (waits = '' or waits <= :now or waits > :until)")
                        .bind("most", MOST_WRONG)
                        .bind("now", text(now))
                        .bind("until", text(now.plus(WAIT)))
                        .bind("id", person.id())
                        .execute())
                > 0;
    }

    private void proved(Person person) {
        jdbi.useTransaction(handle -> handle.createUpdate("update person set wrong = 0, waits = '' where id = :id")
                .bind("id", person.id())
                .execute());
    }

    /** Cut to seconds, so that moments compare as texts. */
    private static String text(Instant moment) {
        return moment.truncatedTo(ChronoUnit.SECONDS).toString();
    }

    private Optional<Kept> kept(String name) {
        return jdbi.withHandle(handle -> handle.createQuery("select * from person where called = :called")
                .bind("called", called(name))
                .map((row, context) -> new Kept(
                        new Person(
                                row.getLong("id"), row.getString("name"), Person.Part.valueOf(row.getString("part"))),
                        row.getString("passphrase")))
                .findOne());
    }

    /**
     * Changes a passphrase; all visits of the person end, so that she has to enter again everywhere.
     *
     * @throws StoreException where it is not acceptable
     */
    public void change(Person person, String passphrase) {
        keep(person, hashed(person.name(), passphrase));
        jdbi.useTransaction(handle -> handle.createUpdate("delete from visit where person = :id")
                .bind("id", person.id())
                .execute());
    }

    private void keep(Person person, String hashed) {
        jdbi.useTransaction(handle -> handle.createUpdate(
                        "update person set passphrase = :passphrase, wrong = 0, waits = '' where id = :id")
                .bind("passphrase", hashed)
                .bind("id", person.id())
                .execute());
    }

    private static Sentence person(String why, int most) {
        return StoringSentences.person(Argument.number(most), why);
    }
}
