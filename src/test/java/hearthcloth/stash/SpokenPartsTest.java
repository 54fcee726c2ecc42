package hearthcloth.stash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The three parts that hear a line of pieces: numbers in words, the size, and the words beside it. */
class SpokenPartsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            half a yard of oat                | 1/2 yard of oat
            Half an inch wide                 | 1/2 inch wide
            a yard                            | 1 yard
            an inch                           | 1 inch
            one metre                         | 1 metre
            Twelve feet                       | 12 feet
            eleven yds and a half             | 11 1/2 yds
            a yard and a half of 44 in        | 1 1/2 yard of 44 in
            two and a half metres             | 2 1/2 metres
            nine inches by ten inches         | 9 inches by 10 inches
            twelve scraps                     | twelve scraps
            a yardstick                       | a yardstick
            often yards                       | often yards
            """)
    void lengths_in_words_become_figures_and_nothing_else_does(String line, String figures) {
        assertThat(SpokenNumbers.inFigures(line)).isEqualTo(figures);
    }

    @ParameterizedTest
    @ValueSource(strings = {"twenty two yards", "twenty-two yards", "thirty one metres", "sixty-five inches"})
    void a_number_past_twelve_is_never_read_as_its_last_word(String line) {
        assertThat(SpokenNumbers.inFigures(line)).isEqualTo(line);
    }

    private static Size inches(long width, long height) {
        return new Size(Length.inches(width, 8), Length.inches(height, 8));
    }

    /** Sides in eighths of an inch, by hand; what is left has a comma where the size was. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            oat 4 x 8 red            | 32 | 64  | oat ,  red
            12 x 4 x 8 oat           | 32 | 64  | , 12 of them,  oat
            4 x 8 in x 12            | 32 | 64  | ,  x 12
            8 in long, 4 in wide     | 32 | 64  | ,
            4 in wide by 8 in long   | 32 | 64  | ,
            1½ yd of 44 in wide bolt | 352 | 432 | ,
            1/2 yd off a 44" cloth   | 352 | 144 | ,
            6 square                 | 48 | 48  | ,
            6 in squares of red      | 48 | 48  | ,  red
            12 squares of 6 in       | 48 | 48  | 12 ,
            fat quarter of red       | 144 | 176 | ,  red
            4 x 1 ft                 | 384 | 96 | ,
            4 in x 1 ft              | 32 | 96  | ,
            4-in x 8-in              | 32 | 64  | ,
            6'' x 7''                | 48 | 56  | ,
            """)
    void a_size_is_found_in_every_way_of_writing_one(String line, long width, long height, String rest) {
        SpokenSize.Found found = SpokenSize.find(line, Unit.INCH);

        assertThat(found.size()).isEqualTo(inches(width, height));
        assertThat(found.rest().strip()).isEqualTo(rest);
    }

    /** No bolt is longer than 100 m, none wider than 5 m; a size may lie either way (docs/sources.md#input-limits). */
    @Test
    void a_size_is_taken_up_to_what_a_bolt_holds() {
        assertThat(SpokenSize.find("5 m x 100 m", null).size())
                .isEqualTo(new Size(Length.of(5, Unit.METRE), Length.of(100, Unit.METRE)));
        assertThat(SpokenSize.find("100 m x 5 m", null).size().height()).isEqualTo(Length.of(5, Unit.METRE));
        for (String over : List.of("5001 mm x 5001 mm", "1 m x 100001 mm", "100001 mm x 1 m", "6 m square")) {
            assertThatThrownBy(() -> SpokenSize.find(over, null))
                    .as(over)
                    .isInstanceOf(MeasureException.class)
                    .hasMessageContaining("more than any bolt holds");
        }
        for (String nothing : List.of("0 cm x 4 cm", "4 cm x 0 cm")) {
            assertThatThrownBy(() -> SpokenSize.find(nothing, null))
                    .as(nothing)
                    .isInstanceOf(MeasureException.class)
                    .hasMessageContaining("one side is nothing");
        }
    }

    @Test
    void one_side_alone_asks_for_the_other_and_none_asks_for_a_size() {
        assertThatThrownBy(() -> SpokenSize.find("oat 4 cm", null))
                .hasMessage(
                        "4 cm is one side; and the other? write \"4 cm x 8 in\", \"4 cm square\" or \"1 yd of 44 in\"");
        assertThatThrownBy(() -> SpokenSize.find("oat 501", Unit.INCH)).hasMessageStartingWith("how large is it? ");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            oat                       | 1
            three of them, oat        | 3
            a dozen strips of oat     | 12
            half a dozen oat          | 6
            dozen pieces, oat         | 12
            one dozen, oat            | 12
            twenty dozen bits, oat    | 240
            a pair of oat             | 2
            a couple, oat             | 2
            a single scrap, oat       | 1
            nineteen offcuts of oat   | 19
            oat x 7                   | 7
            8× oat                    | 8
            oat, 9                    | 9
            10 oat                    | 10
            4 off, oat                | 4
            oat 501 shirt             | 1
            """)
    void how_many_is_heard_in_figures_and_in_words(String line, int count) {
        assertThat(new SpokenWords(line).count()).isEqualTo(count);
    }

    @Test
    void every_number_word_to_twenty_counts_as_itself() {
        String[] words = ("one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen"
                        + " sixteen seventeen eighteen nineteen twenty")
                .split(" ", -1);
        for (int i = 0; i < words.length; i++) {
            assertThat(new SpokenWords(words[i] + " pieces of oat").count())
                    .as(words[i])
                    .isEqualTo(i + 1);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            oat, reversible      | SAME
            oat, two-sided       | SAME
            oat, no right side   | SAME
            oat, the same on both sides | SAME
            oat, with a right side | RIGHT
            oat, one-sided       | RIGHT
            oat, a wrong side    | RIGHT
            brightside oat       |
            """)
    void the_faces_are_heard_and_a_word_that_holds_such_a_word_is_not(String line, Fabric.Faces faces) {
        SpokenWords words = new SpokenWords(line);

        assertThat(words.first(SpokenWords.FACES).orElse(null)).isEqualTo(faces);
        assertThat(words.name()).isEqualTo(faces == null ? line : "oat");
    }

    @Test
    void nap_and_washing_are_heard_no_before_yes() {
        assertThat(new SpokenWords("oat, without a nap").first(SpokenWords.NAP)).contains(Fabric.Nap.ANY);
        assertThat(new SpokenWords("oat, one way").first(SpokenWords.NAP)).contains(Fabric.Nap.LENGTHWISE);
        assertThat(new SpokenWords("napkin").first(SpokenWords.NAP)).isEmpty();
        assertThat(new SpokenWords("oat, not yet washed").first(SpokenWords.WASHED))
                .contains(Piece.Washed.NO);
        assertThat(new SpokenWords("oat, prewashed").first(SpokenWords.WASHED)).contains(Piece.Washed.YES);
        assertThat(new SpokenWords("washcloth").first(SpokenWords.WASHED)).isEmpty();
    }

    @Test
    void a_colour_in_figures_is_taken_out_of_the_line() {
        SpokenWords words = new SpokenWords("oat #8a9A5b linen");
        assertThat(words.hex()).contains("#8a9A5b");
        assertThat(words.name()).isEqualTo("oat linen");
        assertThat(new SpokenWords("oat #fff").hex()).contains("#fff");
        assertThat(new SpokenWords("lot #12").hex()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            , of the oat and, ;    | the oat
            a sand, with           | sand
            oat; linen             | oat linen
            – oat: .               | oat
            Oxford, each           | Oxford
            and                    | ''
            """)
    void what_is_left_is_the_name_without_the_small_words_at_its_ends(String line, String name) {
        assertThat(new SpokenWords(line).name()).isEqualTo(name);
    }
}
