package hearthcloth.idea.answer;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Sentence;
import org.junit.jupiter.api.Test;

/** {@link HeapText}: a heap typed line by line or pasted as a file. */
class HeapTextTest {

    @Test
    void each_line_is_a_kind_of_piece() {
        HeapText heap = HeapText.read("4 x 8 in, 3 of them, green print\n\n  10 x 12, oat linen\r\n", Unit.CENTIMETRE);
        assertThat(heap.faults()).isEmpty();
        assertThat(heap.pieces().pieces()).hasSize(4);
        assertThat(heap.pieces().pieces())
                .extracting(Piece::size)
                .contains(new Size(Length.inches(4), Length.inches(8)), new Size(Length.cm(10), Length.cm(12)));
        assertThat(heap.pieces().fabrics()).hasSize(2);
        assertThat(heap.pieces().pieces()).extracting(Piece::id).doesNotHaveDuplicates();
    }

    @Test
    void a_fabric_said_twice_is_one_fabric_however_it_is_written() {
        HeapText heap = HeapText.read("4 x 8, Oat Linen\n5 x 5, oat linen", Unit.INCH);
        assertThat(heap.faults()).isEmpty();
        assertThat(heap.pieces().fabrics()).hasSize(1);
    }

    @Test
    void a_line_that_is_not_understood_is_told_and_the_others_are_kept() {
        HeapText heap = HeapText.read("4 x 8, oat\nnonsense\n5 x 5, rust", Unit.INCH);
        assertThat(heap.faults()).hasSize(1);
        assertThat(heap.faults().get(0).english()).contains("2");
        assertThat(heap.pieces().pieces()).hasSize(2);
    }

    @Test
    void a_stash_file_that_is_pasted_is_read_as_one() {
        HeapText heap = HeapText.read("fabric,width,length,count\noat,10 cm,20 cm,2\nrust,8 cm,9 cm,1\n", Unit.INCH);
        assertThat(heap.faults()).isEmpty();
        assertThat(heap.pieces().pieces()).hasSize(3);
        HeapText faulty = HeapText.read("fabric,width,length\noat,ten,20 cm\n", Unit.INCH);
        assertThat(faulty.faults()).isNotEmpty();
        assertThat(faulty.pieces().pieces()).isEmpty();
    }

    /** Four hundred pieces are planned with; one more is refused with a mend, and ten thousand do no more harm than one. */
    @Test
    void more_than_a_page_plans_with_is_refused() {
        assertThat(HeapText.read("4 x 8, 400 of them, oat", Unit.INCH).faults()).isEmpty();
        assertThat(HeapText.read("4 x 8, 401 of them, oat", Unit.INCH).faults())
                .extracting(Sentence::english)
                .containsExactly("These are 401 pieces; a page plans with up to 400. Leave some out.");
        assertThat(HeapText.read("4 x 8, 10000 of them, oat\n".repeat(50), Unit.INCH)
                        .faults())
                .hasSize(1);
    }
}
