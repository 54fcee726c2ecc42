package hearthcloth.stash;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which column is where, and what each column is called. */
class HeaderTest {

    private final List<Problem> problems = new ArrayList<>();

    private Header header(String... cells) {
        return Header.of(new Csv.Row(1, List.of(cells)), problems);
    }

    private static Csv.Row row(String... cells) {
        return new Csv.Row(4, List.of(cells));
    }

    /** The columns of the stash file's contract, in its words. */
    @Test
    void a_column_is_named_by_its_word_in_any_case_and_colour_in_both_spellings() {
        assertThat(Arrays.stream(StashColumn.values()).map(StashColumn::word))
                .containsExactly(
                        "fabric", "width", "length", "unit", "count", "colour", "faces", "nap", "washed", "wrong");
        for (StashColumn column : StashColumn.values()) {
            assertThat(StashColumn.named(column.word())).contains(column);
            assertThat(StashColumn.named(" " + column.name() + "\t")).contains(column);
        }
        assertThat(StashColumn.named("Color")).contains(StashColumn.COLOUR);
        assertThat(StashColumn.named("colours")).isEqualTo(Optional.empty());
        assertThat(StashColumn.named("")).isEmpty();
    }

    @Test
    void cells_are_found_by_column_whatever_the_order_and_a_short_line_says_nothing_more() {
        Header header = header("Length", "shelf", " FABRIC ", "width", "note");

        assertThat(problems).isEmpty();
        assertThat(header.isUsable()).isTrue();
        assertThat(header.width()).isEqualTo(5);
        assertThat(header.has(StashColumn.WIDTH)).isTrue();
        assertThat(header.has(StashColumn.NAP)).isFalse();
        Csv.Row row = row("9 in", "B3", "Kelp\nlinen");
        assertThat(header.cell(row, StashColumn.FABRIC)).isEqualTo("Kelp linen");
        assertThat(header.cell(row, StashColumn.LENGTH)).isEqualTo("9 in");
        assertThat(header.cell(row, StashColumn.WIDTH)).isEmpty();
        assertThat(header.cell(row, StashColumn.NAP)).isEmpty();
        assertThat(header.kept(row)).isEqualTo(Map.of("shelf", "B3"));
    }

    @Test
    void what_stands_in_unknown_columns_is_kept_in_their_order_without_the_guard_against_formulas() {
        Header header = header("fabric", "'=sum", "width", "", "length", "note");

        assertThat(header.kept(row("a", "'-1", "2", "lost", "3", "soft")))
                .containsExactly(Map.entry("=sum", "-1"), Map.entry("note", "soft"));
        assertThat(header.kept(row("a", "", "2", "lost", "3", ""))).isEmpty();
        assertThat(header.cell(row("'=kelp"), StashColumn.FABRIC)).isEqualTo("=kelp");
    }

    @Test
    void a_column_that_is_named_twice_is_a_fault_and_the_first_one_stays() {
        Header header = header("fabric", "width", "width", "length");

        assertThat(problems)
                .extracting(Problem::toString)
                .containsExactly("line 1, width: two columns have this name; rename or delete one of them");
        assertThat(header.cell(row("a", "first", "second", "c"), StashColumn.WIDTH))
                .isEqualTo("first");
        assertThat(header.kept(row("a", "first", "second", "c"))).isEmpty();
    }

    @Test
    void each_needed_column_that_is_missing_is_asked_for_with_what_the_line_says_instead() {
        Header header = header("cloth", "width", "unit");

        assertThat(header.isUsable()).isFalse();
        assertThat(problems).extracting(Problem::column).containsExactly("fabric", "length");
        assertThat(problems)
                .extracting(problem -> problem.sentence().english())
                .allSatisfy(sentence -> assertThat(sentence).contains("(it says \"cloth, width, unit\")"));
    }

    @Test
    void no_more_than_a_hundred_columns_are_read() {
        List<String> cells = new ArrayList<>(Collections.nCopies(97, ""));
        cells.addAll(List.of("fabric", "width", "length"));
        assertThat(Header.of(new Csv.Row(1, cells), problems).isUsable()).isTrue();

        cells.add(0, "");
        assertThat(Header.of(new Csv.Row(1, cells), problems).isUsable()).isFalse();
    }
}
