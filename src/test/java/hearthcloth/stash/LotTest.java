package hearthcloth.stash;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pieces alike shown once. */
class LotTest {

    private static final Fabric OAT = new Fabric("Oat", Colour.of(0xd9c7a0), Fabric.Faces.SAME, Fabric.Nap.ANY);
    private static final Fabric KELP = new Fabric("Kelp", Colour.of(0x1f3d32), Fabric.Faces.RIGHT, Fabric.Nap.ANY);
    private static final Size SMALL = new Size(Length.cm(4), Length.cm(8));

    private static Piece piece(int number, Fabric fabric, Size size, Piece.Washed washed) {
        return new Piece(String.valueOf(number), fabric, size, washed, number);
    }

    private static Piece oat(int number) {
        return piece(number, OAT, SMALL, Piece.Washed.YES);
    }

    private static Lot oats(int... numbers) {
        List<Piece> pieces = new ArrayList<>();
        for (int number : numbers) {
            pieces.add(oat(number));
        }
        return new Lot(pieces);
    }

    @Test
    void pieces_are_alike_in_fabric_size_as_they_lie_and_washing() {
        Piece kelp = piece(3, KELP, SMALL, Piece.Washed.YES);
        Piece turned = piece(4, OAT, SMALL.turned(), Piece.Washed.YES);
        Piece unwashed = piece(5, OAT, SMALL, Piece.Washed.NO);
        List<Piece> pieces = List.of(oat(2), kelp, turned, unwashed, oat(6));

        assertThat(Lot.of(pieces))
                .containsExactly(
                        oats(2, 6), new Lot(List.of(kelp)), new Lot(List.of(turned)), new Lot(List.of(unwashed)));
        assertThat(Lot.around(oat(6), new Stash(pieces))).isEqualTo(oats(2, 6));
        assertThat(Lot.around(kelp, new Stash(pieces)).count()).isEqualTo(1);
        assertThat(Lot.of(List.of())).isEmpty();
    }

    @Test
    void a_lot_tells_its_first_piece_its_size_and_how_many() {
        assertThat(oats(7, 9).first()).isEqualTo(oat(7));
        assertThat(oats(7, 9).size()).isEqualTo(SMALL);
        assertThat(oats(7, 9).count()).isEqualTo(2);
    }

    @Test
    void numbers_in_a_row_are_written_as_a_run_and_no_others() {
        assertThat(oats(14).numbers()).isEqualTo("14");
        assertThat(oats(14, 15).numbers()).isEqualTo("14–15");
        assertThat(oats(14, 15, 16, 17).numbers()).isEqualTo("14–17");
        assertThat(oats(14, 16).numbers()).isEqualTo("14, 16");
        assertThat(oats(3, 7, 9).numbers()).isEqualTo("3, 7, 9");
        assertThat(oats(3, 7, 9, 10).numbers()).isEqualTo("3, 7, 9 …");
    }

    @Test
    void ends_that_lie_as_far_apart_as_a_run_make_none_of_what_is_between() {
        assertThat(oats(1, 9, 3).numbers()).isEqualTo("1, 9, 3");
    }

    @Test
    void pieces_of_one_line_keep_the_numbers_they_are_pinned_with() {
        Piece one = new Piece("4-1", OAT, SMALL, Piece.Washed.NO, 4);
        Piece two = new Piece("4-2", OAT, SMALL, Piece.Washed.NO, 4);
        Piece next = new Piece("N5", OAT, SMALL, Piece.Washed.NO, 5);
        assertThat(new Lot(List.of(one, two)).numbers()).isEqualTo("4-1, 4-2");
        assertThat(new Lot(List.of(new Piece("4", OAT, SMALL, Piece.Washed.NO, 4), next)).numbers())
                .isEqualTo("4, N5");
    }
}
