package hearthcloth.stash;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The limits of what a line may say, each at its very edge, and the sentences about it. */
class StashReaderTest {

    private static StashFile.Reading read(String text) {
        return new StashReader(Optional.empty()).read(text);
    }

    private static List<String> faults(String text) {
        return read(text) instanceof StashFile.Faulty faulty
                ? faulty.lines(100, Voice.english(Ruler.EIGHTHS))
                : List.of();
    }

    /** No loom is wider than 5 m and no bolt longer than 100 m (docs/sources.md#input-limits). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            a,5 m,100 m,1                    | true
            a,5001 mm,1 m,1                  | false
            a,1 m,100001 mm,1                | false
            a,1 mm,1 mm,20000                | true
            a,1 mm,1 mm,20001                | false
            a,1 mm,1 mm,0                    | false
            a,0 cm,1 m,1                     | false
            a,1 m,0 cm,1                     | false
            a,1 m,1 m,1.5                    | false
            a,1 m,1 m,one                    | false
            """)
    void a_piece_is_taken_up_to_its_limits_and_no_further(String line, boolean taken) {
        String text = "fabric,width,length,count\n" + line;

        assertThat(read(text) instanceof StashFile.Read).isEqualTo(taken);
        assertThat(faults(text)).hasSize(taken ? 0 : 1).allMatch(fault -> fault.startsWith("line 2, "));
    }

    @Test
    void a_name_may_have_eighty_letters_even_where_a_letter_takes_two_characters() {
        assertThat(faults("fabric,width,length\n" + "𝒜".repeat(80) + ",1 m,1 m"))
                .isEmpty();
        assertThat(faults("fabric,width,length\n" + "a".repeat(81) + ",1 m,1 m"))
                .singleElement()
                .asString()
                .contains("is 81 letters long; 80 fit on a label");
    }

    @Test
    void counts_of_several_lines_may_not_pass_the_limit_together() {
        String full = "fabric,width,length,count\na,1 m,1 m,19999\nb,1 m,1 m,";
        assertThat(faults(full + "1")).isEmpty();
        assertThat(faults(full + "2")).singleElement().asString().startsWith("line 3, count: here the stash passes");
    }

    @Test
    void a_file_of_nothing_and_a_file_of_a_header_say_what_is_missing() {
        assertThat(faults("")).singleElement().asString().startsWith("the stash file is empty; ");
        assertThat(faults("\nfabric,width,length"))
                .containsExactly("line 2: the columns are named but no piece follows; add a line for each piece");
        assertThat(faults("fabric,width\n1,2"))
                .singleElement()
                .asString()
                .startsWith("line 1, length: no column has this name");
    }

    @Test
    void every_fault_of_every_line_is_told_at_once_in_the_order_of_lines() {
        assertThat(faults("""
                        fabric,width,length,unit,colour,faces,nap,washed
                        ,1,2,in,,,,
                        a,1,2,ell,,,,
                        a,1,2,in,no such hue,,,
                        a,1,2,in,,both,,
                        a,1,2,in,,,up,
                        a,1,2,in,,,,maybe
                        a,1,2,in,,,,,,x
                        """))
                .satisfiesExactly(
                        fault -> assertThat(fault).startsWith("line 2, fabric: the fabric has no name;"),
                        fault -> assertThat(fault).startsWith("line 3, unit: \"ell\" is not a unit;"),
                        fault -> assertThat(fault).startsWith("line 4, colour: \"no such hue\" is not a colour;"),
                        fault -> assertThat(fault)
                                .startsWith("line 5, faces: \"both\" means nothing here; write same or right,"),
                        fault -> assertThat(fault)
                                .startsWith("line 6, nap: \"up\" means nothing here; write any or lengthwise,"),
                        fault -> assertThat(fault)
                                .startsWith("line 7, washed: \"maybe\" means nothing here; write yes or no,"),
                        fault -> assertThat(fault).startsWith("line 8: there are 10 cells but 8 columns;"));
    }

    @Test
    void sizes_without_a_unit_are_one_fault_that_counts_their_lines() {
        assertThat(faults("fabric,width,length\na,1,2\na,3 cm,2½\na,4 cm,5 cm\na,6 1/2,7"))
                .singleElement()
                .asString()
                .startsWith("line 2: the size has no unit (nor has it on 2 other lines); ");
        assertThat(faults("fabric,width,length\na,1,2"))
                .singleElement()
                .asString()
                .startsWith("line 2: the size has no unit; ");
    }

    @Test
    void a_problem_names_its_place_keeps_to_one_line_and_is_cut_short() {
        assertThat(new Problem(4, "width", Sentence.itself("too\nwide"))).hasToString("line 4, width: too wide");
        assertThat(new Problem(4, "", Sentence.itself("odd"))).hasToString("line 4: odd");
        assertThat(new Problem(0, "", Sentence.itself("empty"))).hasToString("empty");
        assertThat(new Problem(0, "", Sentence.itself("x".repeat(300)))).hasToString("x".repeat(300));
        assertThat(new Problem(0, "", Sentence.itself("x".repeat(301)))).hasToString("x".repeat(300) + "…");
        assertThat(new Problem(1, "a\tb", Sentence.itself("x")).column()).isEqualTo("a b");
    }

    @Test
    void fabrics_without_a_colour_do_not_take_one_that_a_later_line_gives() {
        StashFile.Read read =
                (StashFile.Read) read("fabric,width,length,colour\n" + "green a,1 m,1 m,\ngreen b,1 m,1 m,"
                        + Colour.named("green").orElseThrow().hex());

        List<Fabric> fabrics = read.stash().fabrics();
        assertThat(fabrics.get(0).colour()).isNotEqualTo(fabrics.get(1).colour());
        assertThat(fabrics.get(1).colour()).isEqualTo(Colour.named("green").orElseThrow());
    }

    @Test
    void the_unit_of_a_file_is_the_one_most_sizes_are_written_in() {
        StashFile.Read read =
                (StashFile.Read) read("fabric,width,length\na,1 in,2\"\na,3 cm,4 mm\na,5½ in,6 mm\na,7 mm,8 mm");
        assertThat(read.unit()).contains(Unit.MILLIMETRE);
        assertThat(((StashFile.Read) new StashReader(Optional.of(Unit.INCH)).read("fabric,width,length\na,1,2")).unit())
                .isEmpty();
    }

    @Test
    void washed_and_unwashed_pieces_together_bring_the_caution() {
        StashFile.Read read = (StashFile.Read) read("fabric,width,length,washed\na,1 m,1 m,Yes\nb,1 m,1 m,NO");
        assertThat(read.warnings()).singleElement().asString().contains("shrink differently");
    }
}
