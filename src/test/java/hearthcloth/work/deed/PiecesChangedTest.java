package hearthcloth.work.deed;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.List;
import org.junit.jupiter.api.Test;

class PiecesChangedTest {

    private static final Fabric OAT = new Fabric("Oat", Colour.of(0xd9c7a0), Fabric.Faces.SAME, Fabric.Nap.ANY);
    private static final Fabric KELP =
            new Fabric("Kelp", Colour.of(0x365a44), Fabric.Faces.RIGHT, Fabric.Nap.LENGTHWISE);
    private static final Size SMALL = Size.square(Length.cm(10));
    private static final Size LARGE = Size.square(Length.cm(12));
    private static final List<Piece> TWO = List.of(piece("1", OAT, 1), piece("2", OAT, 2));
    private static final Stash STASH = new Stash(List.of(TWO.get(0), TWO.get(1), piece("3", KELP, 3)));

    private final PiecesChanged changed = new PiecesChanged(TWO, STASH);

    private static Piece piece(String id, Fabric fabric, int row) {
        return new Piece(id, fabric, SMALL, Piece.Washed.YES, row);
    }

    @Test
    void they_keep_numbers_and_places_and_take_a_fabric_that_is_there_with_its_faces_and_nap() {
        Deed.Pieces to = changed.to("kelp", LARGE, Piece.Washed.NO);

        assertThat(to.gone()).isEqualTo(TWO);
        assertThat(to.come())
                .containsExactly(
                        new Piece("1", KELP, LARGE, Piece.Washed.NO, 1),
                        new Piece("2", KELP, LARGE, Piece.Washed.NO, 2));
    }

    @Test
    void a_fabric_that_is_new_gets_a_colour_that_no_other_has() {
        Deed.Pieces to = changed.to("Oat two", SMALL, Piece.Washed.YES);

        assertThat(to.come().get(0).fabric().name()).isEqualTo("Oat two");
        assertThat(to.come().get(0).fabric().colour()).isNotIn(OAT.colour(), KELP.colour());
    }

    @Test
    void what_is_the_same_is_no_change() {
        assertThat(changed.to("Oat", SMALL, Piece.Washed.YES).isNone()).isTrue();
    }
}
