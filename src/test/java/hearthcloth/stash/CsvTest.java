package hearthcloth.stash;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The form of a file, against RFC 4180 (docs/sources.md#csv) and the liberties that makers' files need. */
class CsvTest {

    private static List<Csv.Row> rows(String text) {
        List<Problem> problems = new ArrayList<>();
        List<Csv.Row> rows = Csv.rows(text, 100, problems);
        assertThat(problems).as(text).isEmpty();
        return rows;
    }

    private static Csv.Row row(int line, String... cells) {
        return new Csv.Row(line, List.of(cells));
    }

    private static List<Problem> problems(String text) {
        List<Problem> problems = new ArrayList<>();
        Csv.rows(text, 100, problems);
        return problems;
    }

    /** The RFC's own examples: section 2, rules 1, 2, 5, 6 and 7. */
    @Test
    void the_examples_of_the_standard_are_read_as_it_says() {
        assertThat(rows("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"))
                .containsExactly(row(1, "aaa", "bbb", "ccc"), row(2, "zzz", "yyy", "xxx"));
        assertThat(rows("aaa,bbb,ccc\r\nzzz,yyy,xxx"))
                .containsExactly(row(1, "aaa", "bbb", "ccc"), row(2, "zzz", "yyy", "xxx"));
        assertThat(rows("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"))
                .containsExactly(row(1, "aaa", "b\nbb", "ccc"), row(3, "zzz", "yyy", "xxx"));
        assertThat(rows("\"aaa\",\"b\"\"bb\",\"ccc\"")).containsExactly(row(1, "aaa", "b\"bb", "ccc"));
    }

    /** A writer of its own, with every cell quoted that needs it and some that do not. */
    @Test
    void whatever_a_cell_holds_it_is_read_back_and_lines_are_counted_as_an_editor_does() {
        Random random = new Random(4180);
        for (int i = 0; i < 400; i++) {
            char separator = ",;\t".charAt(random.nextInt(3));
            String head = "a" + separator + "b" + separator + "c";
            StringBuilder text = new StringBuilder(random.nextBoolean() ? "\ufeff" : "").append(head);
            List<Csv.Row> wanted = new ArrayList<>(List.of(row(1, "a", "b", "c")));
            int line = 1;
            for (int r = 0; r < 4; r++) {
                text.append(lineEnd(random));
                line++;
                List<String> cells = new ArrayList<>();
                int begins = line;
                for (int c = 0; c < 3; c++) {
                    String cell = cell(random);
                    cells.add(cell);
                    text.append(c == 0 ? "" : separator).append(written(cell, random));
                    line += (int) cell.chars().filter(one -> one == '\n').count();
                }
                wanted.add(new Csv.Row(begins, cells));
            }

            assertThat(rows(text.toString())).as(text.toString()).isEqualTo(wanted);
        }
    }

    private static String lineEnd(Random random) {
        return List.of("\n", "\r\n", "\r").get(random.nextInt(3));
    }

    /** Begins and ends with a letter, so that nothing is stripped. */
    private static String cell(Random random) {
        StringBuilder cell = new StringBuilder("k");
        for (int i = random.nextInt(5); i > 0; i--) {
            cell.append("\",;\t\n ½'".charAt(random.nextInt(8))).append((char) ('a' + random.nextInt(26)));
        }
        return cell.toString();
    }

    private static String written(String cell, Random random) {
        boolean bare = cell.chars().noneMatch(c -> ",;\t\n".indexOf(c) >= 0) && random.nextBoolean();
        return bare ? cell : "\"" + cell.replace("\"", "\"\"").replace("\n", lineEnd(random)) + "\"";
    }

    @Test
    void the_separator_is_what_the_first_line_uses_most_and_a_comma_where_two_are_even() {
        assertThat(rows("a;b;c,d")).containsExactly(row(1, "a", "b", "c,d"));
        assertThat(rows("a\tb\tc;d")).containsExactly(row(1, "a", "b", "c;d"));
        assertThat(rows("a,b;c")).containsExactly(row(1, "a", "b;c"));
        assertThat(rows("\n  \na;b\nc,d,e")).containsExactly(row(3, "a", "b"), row(4, "c,d,e"));
    }

    @Test
    void blank_lines_and_lines_of_empty_cells_are_passed_over_but_counted() {
        assertThat(rows("a,b\n\n , \n\r\nc,")).containsExactly(row(1, "a", "b"), row(5, "c", ""));
        assertThat(rows("")).isEmpty();
        assertThat(rows("\n\n")).isEmpty();
    }

    @Test
    void a_sign_of_inches_stands_for_itself_unless_it_begins_the_cell() {
        assertThat(rows("a,6 1/2\", 7\" ,  \" x \"")).containsExactly(row(1, "a", "6 1/2\"", "7\"", "x"));
    }

    @Test
    void no_more_rows_are_read_than_are_asked_for() {
        List<Problem> problems = new ArrayList<>();
        assertThat(Csv.rows("a\n\nb\nc\nd", 3, problems)).containsExactly(row(1, "a"), row(3, "b"), row(4, "c"));
    }

    @Test
    void a_quote_that_never_closes_names_the_line_where_it_opens() {
        assertThat(problems("a,b\nc,\"d\ne\nf"))
                .singleElement()
                .satisfies(problem -> assertThat(problem.toString()).startsWith("line 2: a quote \" opens here"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a,b\nc,\"6 1/2\" wide\"", "a,b\n\"c\"d,e"})
    void text_after_a_closing_quote_is_a_fault_of_its_line(String text) {
        assertThat(problems(text))
                .singleElement()
                .satisfies(problem -> assertThat(problem.toString())
                        .startsWith("line 2: there is text after a closing quote: ")
                        .contains("double a quote"));
    }

    @Test
    void blanks_after_a_closing_quote_are_no_fault() {
        assertThat(rows("\"a\" ,b")).containsExactly(row(1, "a", "b"));
    }
}
