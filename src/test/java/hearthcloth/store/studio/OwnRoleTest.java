package hearthcloth.store.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.TestServer;
import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.store.Person;
import hearthcloth.store.StashEdit;
import hearthcloth.store.Store;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * Who may read what in a studio's database, tried by statements sent past the program on connections of their own. The codes
 * are those of PostgreSQL's manual, appendix <em>Error Codes</em>: 42501 is insufficient privilege.
 */
class OwnRoleTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T12:00:00Z"), ZoneOffset.UTC);
    private static final String PHRASE = "kelp and plum by lamplight";
    private static final String DENIED = "42501";
    private static final Fabric OAT = new Fabric("Oat", Colour.of(0xd9c7a0), Fabric.Faces.RIGHT, Fabric.Nap.LENGTHWISE);

    private final String address = TestServer.freshDatabaseOfRole("createrole");
    private final List<Studio> open = new ArrayList<>();

    @AfterEach
    void close() {
        open.forEach(Studio::close);
    }

    private Studio opened(String at) {
        Studio studio = Studio.open(StudioAddress.parse(at, Optional.empty()), CLOCK);
        open.add(studio);
        return studio;
    }

    private static void add(Store store) {
        store.atOnce(() -> {
            int next = store.stash().nextPiece();
            Piece piece = new Piece(String.valueOf(next), OAT, Size.square(Length.mm(100)), Piece.Washed.YES, next);
            store.stash().edit(new StashEdit("add", List.of(), List.of(piece)));
            return true;
        });
    }

    /** Two people, each with a piece. */
    private Studio filled(String at) {
        Studio studio = opened(at);
        add(studio.of(studio.people().begin("Ada", PHRASE)));
        add(studio.of(studio.people().add("Mo", PHRASE, Person.Part.MAKER)));
        return studio;
    }

    /** What a connection of the workroom's own name is told, after it became that role. */
    private static List<String> told(String at, String role, String query) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:" + plain(at), user(at), "");
                Statement statement = connection.createStatement()) {
            statement.execute("set role " + role);
            List<String> rows = new ArrayList<>();
            try (ResultSet found = statement.executeQuery(query)) {
                while (found.next()) {
                    rows.add(found.getString(1));
                }
            }
            return rows;
        }
    }

    private static String plain(String at) {
        return at.replaceFirst("//[^@]*@", "//");
    }

    private static String user(String at) {
        return at.replaceFirst(".*//([^:@]*)[:@].*", "$1");
    }

    private String role(int person) throws SQLException {
        return "person_" + person + "_of_"
                + told(address, "none", "select oid from pg_database where datname = current_database()")
                        .get(0);
    }

    private static List<String> tables(String at, String schema) throws SQLException {
        return told(at, "none", "select tablename from pg_tables where schemaname = '" + schema + "'");
    }

    private void denied(String role, String query) {
        assertThatThrownBy(() -> told(address, role, query))
                .as("%s: %s", role, query)
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo(DENIED));
    }

    @Test
    void no_role_reads_a_table_of_another_person_nor_does_the_one_the_workroom_comes_in_by() throws SQLException {
        filled(address);
        assertThat(tables(address, "person_1")).hasSizeGreaterThan(10).contains("piece");
        for (int person = 1; person <= 2; person++) {
            for (String table : tables(address, "person_" + person)) {
                String query = "select count(*) from person_" + person + "." + table;
                assertThat(told(address, role(person), query)).as(query).hasSize(1);
                denied(role(3 - person), query);
                denied("none", query);
            }
        }
    }

    @Test
    void a_person_s_role_reads_no_passphrase_and_writes_nothing_common() throws SQLException {
        filled(address);
        for (String table : tables(address, "studio")) {
            denied(role(1), "select count(*) from studio." + table);
        }
        denied(role(1), "update studio.person set part = 'TEACHER' returning name");
        denied(role(1), "delete from person_2.piece returning id");
        assertThat(told(address, role(2), "select count(*) from person_2.piece"))
                .containsExactly("1");
    }

    @Test
    void what_was_made_before_there_were_such_roles_is_handed_over_at_the_next_opening() throws SQLException {
        filled(address).close();
        String door = user(address);
        for (int person = 1; person <= 2; person++) {
            TestServer.run(address, "reassign owned by \"" + role(person) + "\" to " + door);
            TestServer.run(address, "drop role \"" + role(person) + "\"");
        }
        assertThat(told(address, "none", "select count(*) from person_1.piece")).containsExactly("1");
        opened(address);
        denied("none", "select count(*) from person_1.piece");
        denied("none", "select count(*) from person_2.piece");
        Studio studio = opened(address);
        for (Person person : studio.people().all()) {
            Store store = studio.of(person);
            add(store);
            assertThat(store.stash().whole().pieces()).hasSize(2);
        }
    }

    @Test
    void where_the_workroom_may_make_no_roles_it_works_all_the_same() throws SQLException {
        String poor = TestServer.freshDatabaseOfRole("nocreaterole");
        Studio studio = filled(poor);
        for (Person person : studio.people().all()) {
            assertThat(studio.of(person).stash().whole().pieces()).hasSize(1);
        }
        assertThat(told(poor, "none", "select count(*) from person_2.piece")).containsExactly("1");
    }
}
