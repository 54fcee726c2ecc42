package hearthcloth.store.journal;

import static org.assertj.core.api.Assertions.assertThat;

import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.SqlStatements;
import org.junit.jupiter.api.Test;

/** {@link ReadOnce}: what one workroom has read of a statement, the next one knows. */
class ReadOnceTest {

    @Test
    void two_databases_read_their_statements_together_and_answer_each_for_itself() {
        Jdbi one = ReadOnce.of(Jdbi.create("jdbc:sqlite::memory:"));
        Jdbi other = ReadOnce.of(Jdbi.create("jdbc:sqlite::memory:"));

        assertThat(one.getConfig(SqlStatements.class).getSqlParser())
                .isSameAs(other.getConfig(SqlStatements.class).getSqlParser());
        assertThat(tripled(one, 4)).isEqualTo(12);
        assertThat(tripled(other, 5)).isEqualTo(15);
    }

    private static int tripled(Jdbi jdbi, int number) {
        return jdbi.withHandle(handle -> handle.createQuery("select 3 * :number")
                .bind("number", number)
                .mapTo(Integer.class)
                .one());
    }
}
