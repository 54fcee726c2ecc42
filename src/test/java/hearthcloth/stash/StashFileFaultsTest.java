package hearthcloth.stash;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Ruler;
import hearthcloth.words.speech.Voice;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StashFileFaultsTest {

    private static List<String> problems(String text) {
        StashFile.Reading reading = StashFile.read(text, Optional.empty());
        assertThat(reading).isInstanceOf(StashFile.Faulty.class);
        return ((StashFile.Faulty) reading).lines(20, Voice.english(Ruler.EIGHTHS));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "kelp,wide,9 in,,,,, | line 2, width: | write in, cm, mm",
                "kelp,-2 in,9 in,,,,, | line 2, width: | below zero",
                "kelp,0 in,9 in,,,,, | line 2, width: | above zero",
                "kelp,2 in,10 km,,,,, | line 2, length: | write in, cm, mm",
                "kelp,2 in,101 m,,,,, | line 2, length: | 100 m",
                "kelp,2 in,100000 m,,,,, | line 2, length: | longer than a kilometre",
                "kelp,6 m,9 in,,,,, | line 2, width: | 5 m",
                "kelp,,9 in,,,,, | line 2, width: | a length is missing",
                "kelp,1/0 in,9 in,,,,, | line 2, width: | parts by zero",
                "kelp,2 furlongs,9 in,,,,, | line 2, width: | is not a unit",
                "kelp,2,9,furlong,,,, | line 2, unit: | is not a unit",
                ",2 in,9 in,,,,, | line 2, fabric: | write what you call it",
                "kelp,2 in,9 in,,0,,, | line 2, count: | from 1 to 20000",
                "kelp,2 in,9 in,,-1,,, | line 2, count: | from 1 to 20000",
                "kelp,2 in,9 in,,1.5,,, | line 2, count: | from 1 to 20000",
                "kelp,2 in,9 in,,99999999999,,, | line 2, count: | from 1 to 20000",
                "kelp,2 in,9 in,,,both,, | line 2, faces: | write same or right",
                "kelp,2 in,9 in,,,,across, | line 2, nap: | write any or lengthwise",
                "kelp,2 in,9 in,,,,,maybe | line 2, washed: | write yes or no",
                "kelp,16,5 cm,9 in,,,,,yes | line 2: | put quotes",
                "`\"kelp,2 in,9 in,,,,,` | line 2: | never closes",
                "`\"kelp\"x,2 in,9 in,,,,,` | line 2: | after a closing quote"
            })
    void each_fault_names_its_line_its_column_and_a_mend(String line, String where, String mend) {
        List<String> problems = problems("fabric,width,length,unit,count,faces,nap,washed\n" + line);
        assertThat(problems)
                .anySatisfy(problem -> assertThat(problem).startsWith(where).contains(mend));
    }

    @Test
    void a_colour_that_is_none() {
        assertThat(problems("fabric,width,length,colour\nkelp,2 in,9 in,#12zz45"))
                .singleElement()
                .asString()
                .startsWith("line 2, colour: \"#12zz45\" is not a colour");
    }

    @Test
    void all_faults_at_once_the_first_twenty_and_how_many_more() {
        List<String> problems = problems("fabric,width,length\n" + "kelp,wide,9 in\n".repeat(57));
        assertThat(problems).hasSize(21);
        assertThat(problems.get(19)).startsWith("line 21, width");
        assertThat(problems.get(20)).isEqualTo("and 37 more");
    }

    @Test
    void bare_numbers_without_any_unit_are_one_fault() {
        assertThat(problems("fabric,width,length\nkelp,2,9\nkelp,6½,9 1/4\nkelp,2.5,9"))
                .containsExactly("line 2: the size has no unit (nor has it on 2 other lines); write in, cm or mm after"
                        + " the numbers, add a column unit, or say --unit in or --unit cm");
    }

    @Test
    void contradicting_faces_and_nap_name_both_lines() {
        assertThat(problems("fabric,width,length,faces,nap\nkelp,2 in,9 in,same,any\nkelp,2 in,9 in,right,lengthwise"))
                .hasSize(2)
                .allSatisfy(problem -> assertThat(problem).contains("line 3", "line 2", "kelp"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\ufeff", "\n\n\n", "   \n"})
    void an_empty_file(String text) {
        assertThat(problems(text)).singleElement().asString().contains("is empty", "fabric,width,length");
    }

    @Test
    void a_header_that_is_missing_or_names_a_column_twice() {
        assertThat(problems("kelp,2 in,9 in"))
                .hasSize(3)
                .allSatisfy(problem -> assertThat(problem).contains("first line must name the columns"));
        assertThat(problems("fabric,width,length,Width\nkelp,2 in,9 in,3 in"))
                .singleElement()
                .asString()
                .contains("line 1, Width: two columns");
        assertThat(problems("fabric,width,length")).singleElement().asString().contains("no piece follows");
    }

    @Test
    void too_many_pieces() {
        assertThat(problems("fabric,width,length,count\nkelp,2 in,9 in,15000\nkelp,2 in,9 in,5001"))
                .singleElement()
                .asString()
                .startsWith("line 3, count: here the stash passes 20000");
        assertThat(problems("fabric,width,length\n" + "k,1 in,1 in\n".repeat(20_001)))
                .singleElement()
                .asString()
                .contains("20000");
    }

    @Test
    void a_name_too_long_for_a_label() {
        assertThat(problems("fabric,width,length\n" + "n".repeat(81) + ",1 in,1 in"))
                .singleElement()
                .asString()
                .contains("81 letters", "shorten");
    }

    @Test
    void what_is_quoted_cannot_move_the_cursor_or_flood_the_screen() {
        String problem = problems("fabric,width,length\nk,\u001b[2J" + "9".repeat(9_000) + ",1 in")
                .get(0);
        assertThat(problem).doesNotContain("\u001b").hasSizeLessThan(400);
    }
}
