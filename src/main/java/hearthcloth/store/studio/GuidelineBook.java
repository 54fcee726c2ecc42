package hearthcloth.store.studio;

import hearthcloth.plan.model.Design;
import hearthcloth.store.Person;
import hearthcloth.store.json.KeptCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.work.Project;
import hearthcloth.work.Purpose;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Jdbi;

/** Cloths that teachers have given to everybody as guidelines. Thread-safe. */
public final class GuidelineBook {

    /**
     * A cloth given as a guideline.
     *
     * @param teacher name of the teacher who gave it
     */
    public record Handed(String id, String name, String teacher, Design design) {}

    private final Jdbi jdbi;
    private final Clock clock;

    GuidelineBook(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    /** All guidelines, the newest first. */
    public List<Handed> all() {
        return jdbi.withHandle(handle -> handle.createQuery(
                        "select guideline.id, guideline.name, person.name as teacher, guideline.document from guideline"
                                + " join person on person.id = guideline.teacher order by guideline.handed desc,"
                                + " guideline.id")
                .map((row, context) -> new Handed(
                        row.getString("id"),
                        row.getString("name"),
                        row.getString("teacher"),
                        KeptCloth.read(row.getString("document")).design()))
                .list());
    }

    public Optional<Handed> find(String id) {
        return all().stream().filter(each -> each.id().equals(id)).findFirst();
    }

    /**
     * Gives a cloth as a guideline: its design, not what it is cut from.
     *
     * @throws StoreException where the person is no teacher
     */
    public void hand(Person teacher, String name, Design design) {
        require(teacher);
        Project settled = new Project(
                design, Optional.empty(), List.of(), Project.Bench.CLEAR, Project.Life.begun(Purpose.NOTHING));
        jdbi.useTransaction(
                handle -> handle.createUpdate("insert into guideline (id, name, teacher, document, handed) values"
                                + " (:id, :name, :teacher, :document, :now)")
                        .bind("id", UUID.randomUUID().toString())
                        .bind("name", name)
                        .bind("teacher", teacher.id())
                        .bind("document", KeptCloth.text(settled))
                        .bind("now", clock.instant().toString())
                        .execute());
    }

    /** Withdraws a guideline; cloths made after it stay. */
    public void away(Person teacher, String id) {
        require(teacher);
        jdbi.useTransaction(handle -> handle.createUpdate("delete from guideline where id = :id")
                .bind("id", id)
                .execute());
    }

    private static void require(Person person) {
        if (!person.isTeacher()) {
            throw new StoreException(StoringSentences.person(Argument.text(""), "TEACHER"));
        }
    }
}
