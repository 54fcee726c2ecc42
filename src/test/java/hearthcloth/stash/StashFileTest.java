package hearthcloth.stash;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StashFileTest {

    private static StashFile.Read read(String text) {
        StashFile.Reading reading = StashFile.read(text, Optional.empty());
        assertThat(reading).isInstanceOf(StashFile.Read.class);
        return (StashFile.Read) reading;
    }

    private static Piece only(String text) {
        assertThat(read(text).stash().pieces()).hasSize(1);
        return read(text).stash().pieces().get(0);
    }

    @Test
    void every_column_of_the_contract() {
        Piece piece = only("""
                    fabric,width,length,count,colour,faces,nap,washed,note
                    Oat linen,6 1/2 in,20 in,1,#C8B99A,right,lengthwise,yes,from the old curtain
                    """);
        assertThat(piece.id()).isEqualTo("2");
        assertThat(piece.row()).isEqualTo(2);
        assertThat(piece.size()).isEqualTo(new Size(Length.inches(13, 2), Length.inches(20)));
        assertThat(piece.washed()).isEqualTo(Piece.Washed.YES);
        assertThat(piece.fabric())
                .isEqualTo(new Fabric("Oat linen", Colour.of(0xc8b99a), Fabric.Faces.RIGHT, Fabric.Nap.LENGTHWISE));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "6 1/2 in | 165100000",
                "6½\" | 165100000",
                "6 1/2\" | 165100000",
                "16.5 cm | 165000000",
                "165 mm | 165000000"
            })
    void lengths_as_makers_write_them_even_with_a_bare_inch_sign(String written, long nm) {
        assertThat(only("fabric,width,length\nkelp," + written + ",1 yd")
                        .size()
                        .width()
                        .nm())
                .isEqualTo(nm);
    }

    @Test
    void any_column_order_any_case_a_byte_order_mark_and_windows_line_ends() {
        Piece piece = only("\ufeffLENGTH,Note,Width,FABRIC\r\n50 cm,,20 cm,kelp\r\n");
        assertThat(piece.size()).isEqualTo(new Size(Length.cm(20), Length.cm(50)));
    }

    @Test
    void semicolons_with_decimal_commas_and_tabs() {
        Size size = new Size(Length.mm(165), Length.cm(40));
        assertThat(only("fabric;width;length\nkelp;16,5 cm;40 cm").size()).isEqualTo(size);
        assertThat(only("fabric\twidth\tlength\nkelp\t16,5 cm\t40 cm").size()).isEqualTo(size);
    }

    @Test
    void quoted_cells_hold_commas_quotes_and_line_breaks_and_lines_are_still_counted_as_an_editor_does() {
        List<Piece> pieces =
                read("fabric,width,length,note\n\"kelp, \"\"dark\"\"\nand salty\",\"16,5 cm\",40 cm,\"a\nb\nc\"\n\nfog,1 in,2 in,")
                        .stash()
                        .pieces();
        assertThat(pieces.get(0).fabric().name()).isEqualTo("kelp, \"dark\" and salty");
        assertThat(pieces.get(1).row()).isEqualTo(7);
    }

    @Test
    void count_makes_separate_pieces() {
        assertThat(read("fabric,width,length,count\nkelp,2 in,9 in,3\nfog,2 in,9 in,")
                        .stash()
                        .pieces())
                .extracting(Piece::id)
                .containsExactly("2-1", "2-2", "2-3", "3");
    }

    @Test
    void bare_numbers_take_the_unit_column_first_and_the_assumed_unit_else() {
        assertThat(only("fabric,width,length,unit\nkelp,2,9,cm").size().width()).isEqualTo(Length.cm(2));
        StashFile.Read assumed =
                (StashFile.Read) StashFile.read("fabric,width,length\nkelp,2,9", Optional.of(Unit.INCH));
        assertThat(assumed.stash().pieces().get(0).size().height()).isEqualTo(Length.inches(9));
    }

    @Test
    void the_unit_mostly_written_is_told() {
        assertThat(read("fabric,width,length\na,2 in,9 cm\nb,3 cm,4 cm").unit()).contains(Unit.CENTIMETRE);
        assertThat(read("fabric,width,length,unit\na,2,9,in").unit()).contains(Unit.INCH);
    }

    @Test
    void a_fabric_is_one_however_it_is_spelt_and_what_one_line_says_holds_for_all() {
        Stash stash = read("""
                            fabric,width,length,colour,faces,nap
                            Kelp,2 in,9 in,,,
                            kelp ,2 in,8 in,#335544,right,
                            KELP,2 in,7 in,,,lengthwise
                            """).stash();
        assertThat(stash.fabrics())
                .containsExactly(new Fabric("Kelp", Colour.of(0x335544), Fabric.Faces.RIGHT, Fabric.Nap.LENGTHWISE));
        assertThat(stash.of(stash.fabrics().get(0))).hasSize(3);
    }

    @Test
    void columns_we_do_not_know_are_kept() {
        StashFile.Read read = read("fabric,width,length,shelf,note\nkelp,2 in,9 in,B3,\nfog,2 in,9 in,,soft");
        assertThat(read.kept()).isEqualTo(Map.of(2, Map.of("shelf", "B3"), 3, Map.of("note", "soft")));
    }

    @Test
    void two_colours_for_one_fabric_are_a_warning_and_the_first_is_used() {
        StashFile.Read read = read("fabric,width,length,colour\nkelp,2 in,9 in,#111111\nkelp,2 in,9 in,#222222");
        assertThat(read.warnings()).hasSize(1);
        assertThat(read.warnings().get(0).english()).contains("line 3", "line 2", "#222222", "#111111");
        assertThat(read.stash().fabrics().get(0).colour()).isEqualTo(Colour.of(0x111111));
    }

    @Test
    void washed_and_unwashed_together_are_a_warning() {
        String start = "fabric,width,length,washed\nkelp,2 in,9 in,yes\n";
        assertThat(read(start + "fog,2 in,9 in,no").warnings())
                .singleElement()
                .asString()
                .contains("shrink differently", "kelp", "fog");
        assertThat(read(start + "fog,2 in,9 in,").warnings()).isEmpty();
    }

    @Test
    void a_fabric_without_a_colour_takes_one_from_its_name() {
        Stash stash = read("fabric,width,length\nNavy twill,2 in,9 in\nnavy lawn,2 in,9 in")
                .stash();
        Colour navy = Colour.named("navy").orElseThrow();
        assertThat(stash.fabrics()).extracting(Fabric::colour).containsExactly(navy, navy.shaded(4));
    }

    @Test
    void a_name_that_says_no_colour_is_undyed_and_stays_unknown_when_written() {
        StashFile.Read read = read("fabric,width,length\nBirds print,2 in,9 in\nhull,2 in,9 in\ngrey linen,2 in,9 in");
        assertThat(read.stash().fabrics())
                .extracting(Fabric::colour)
                .containsExactly(
                        Colour.UNDYED, Colour.UNDYED, Colour.named("grey").orElseThrow());
        assertThat(StashFile.write(read.stash(), Ruler.EIGHTHS, Map.of())).doesNotContain(Colour.UNDYED.hex());
    }

    @Test
    void a_colour_may_be_written_in_words() {
        assertThat(only("fabric,width,length,colour\nkelp,2 in,9 in,pale green")
                        .fabric()
                        .colour())
                .isEqualTo(Colour.named("pale green").orElseThrow());
    }

    @Test
    void fabrics_of_one_colour_word_are_told_apart_and_all_are_still_that_colour() {
        StringBuilder text = new StringBuilder("fabric,width,length\n");
        for (int i = 0; i < 9; i++) {
            text.append("red cloth ").append((char) ('a' + i)).append(",2 in,9 in\n");
        }
        Colour red = Colour.named("red").orElseThrow();
        assertThat(read(text.toString()).stash().fabrics())
                .extracting(Fabric::colour)
                .doesNotHaveDuplicates()
                .allMatch(colour -> colour.lab().difference(red.lab()) <= 12);
    }

    @Test
    void the_wrong_side_of_a_fabric_has_a_colour_where_it_is_said_and_is_written_again() {
        String text =
                "fabric,width,length,colour,faces,wrong side\nTicking,10 in,12 in,#ffffff,right,#334455\nOat,5 in,6 in,,,\n";
        Stash stash = ((StashFile.Read) StashFile.read(text, Optional.empty())).stash();
        Fabric ticking = stash.fabric("Ticking").orElseThrow();
        assertThat(ticking.wrongSide()).isEqualTo(Colour.of(0x334455));
        assertThat(stash.fabric("Oat").orElseThrow().wrong()).isEmpty();
        String again = StashFile.write(stash, Ruler.EIGHTHS, Map.of());
        assertThat(((StashFile.Read) StashFile.read(again, Optional.empty()))
                        .stash()
                        .fabric("Ticking"))
                .contains(ticking);
    }
}
