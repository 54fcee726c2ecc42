package hearthcloth.stash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.words.sentence.Sentence;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pieces that come into a stash that has fabrics already. */
class ArrivalsTest {

    private static final Fabric OAT = new Fabric("Oat", Colour.of(0xd9c7a0), Fabric.Faces.RIGHT, Fabric.Nap.LENGTHWISE);
    private static final Size SIZE = new Size(Length.inches(4), Length.inches(8));
    private static final Piece THERE = new Piece("2", OAT, SIZE, Piece.Washed.NO, 2);

    private final Arrivals arrivals = new Arrivals(new Stash(List.of(THERE)), 7);

    private static SpokenPieces said(String line) {
        return (SpokenPieces) SpokenPieces.hear(line, Unit.INCH);
    }

    @Test
    void each_piece_gets_a_number_of_its_own_from_the_first_that_is_free() {
        arrivals.add(said("2 kelp 4 x 8, washed"));
        arrivals.add(said("oat 6 square"));

        assertThat(arrivals.pieces()).extracting(Piece::id).containsExactly("7", "8", "9");
        assertThat(arrivals.pieces()).extracting(Piece::row).containsExactly(7, 8, 9);
        assertThat(arrivals.pieces().get(0).washed()).isEqualTo(Piece.Washed.YES);
        assertThat(arrivals.pieces().get(2).size()).isEqualTo(Size.square(Length.inches(6)));
        assertThat(arrivals.notes()).isEmpty();
    }

    @Test
    void a_fabric_that_is_there_stays_as_it_is_and_a_line_that_says_otherwise_is_noted_once() {
        arrivals.add(said("OAT 4 x 8, same both sides"));
        arrivals.add(said("oat 4 x 8, no nap"));

        assertThat(arrivals.pieces()).extracting(Piece::fabric).containsOnly(OAT);
        assertThat(arrivals.notes())
                .extracting(Sentence::english)
                .containsExactly(
                        "OAT was here already; its colour, faces and nap stay as they are here.",
                        "oat was here already; its colour, faces and nap stay as they are here.");
    }

    @Test
    void a_line_differs_only_by_what_it_says_and_only_from_a_fabric_that_is_there() {
        assertThat(arrivals.differs(said("oat 4 x 8"))).isFalse();
        assertThat(arrivals.differs(said("oat 4 x 8, right side, nap, #d9c7a0")))
                .isFalse();
        assertThat(arrivals.differs(said("oat 4 x 8, same both sides"))).isTrue();
        assertThat(arrivals.differs(said("oat 4 x 8, no nap"))).isTrue();
        assertThat(arrivals.differs(said("oat 4 x 8, #000000"))).isTrue();
        assertThat(arrivals.differs(said("kelp 4 x 8, #000000"))).isFalse();
    }

    @Test
    void two_new_fabrics_of_one_colour_word_are_told_apart_and_one_is_told_only_once() {
        arrivals.add(said("green check 4 x 8"));
        arrivals.add(said("green stripe 4 x 8"));
        arrivals.add(said("Green check 5 x 8"));

        List<Fabric> fabrics = arrivals.pieces().stream().map(Piece::fabric).toList();
        assertThat(fabrics.get(0).colour()).isNotEqualTo(fabrics.get(1).colour());
        assertThat(fabrics.get(2)).isEqualTo(fabrics.get(0));
        assertThat(arrivals.fabric(said("green check 9 x 9"))).isEqualTo(fabrics.get(0));
    }

    @Test
    void a_file_keeps_its_fabrics_except_those_that_are_there() {
        Fabric other = new Fabric("oat", Colour.BLACK, Fabric.Faces.SAME, Fabric.Nap.ANY);
        Fabric kelp = new Fabric("Kelp", Colour.WHITE, Fabric.Faces.SAME, Fabric.Nap.ANY);
        arrivals.add(new Stash(List.of(
                new Piece("2", kelp, SIZE, Piece.Washed.UNKNOWN, 2),
                new Piece("3-1", other, SIZE.turned(), Piece.Washed.YES, 3),
                new Piece("3-2", OAT, SIZE, Piece.Washed.YES, 3))));

        assertThat(arrivals.pieces())
                .containsExactly(
                        new Piece("7", kelp, SIZE, Piece.Washed.UNKNOWN, 7),
                        new Piece("8", OAT, SIZE.turned(), Piece.Washed.YES, 8),
                        new Piece("9", OAT, SIZE, Piece.Washed.YES, 9));
        assertThat(arrivals.notes())
                .extracting(Sentence::english)
                .containsExactly("Oat was here already; its colour, faces and nap stay as they are here.");
    }

    @Test
    void the_stash_takes_exactly_as_many_pieces_as_it_says() {
        Stash nearly = new Stash(Collections.nCopies(StashFile.MOST_PIECES - 2, THERE));
        Arrivals full = new Arrivals(nearly, 1);
        full.add(said("2 oat 4 x 8"));
        assertThat(full.pieces()).hasSize(2);

        SpokenPieces more = said("oat 4 x 8");
        assertThatThrownBy(() -> full.add(more))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("would pass 20000 pieces")
                .hasMessageEndingWith("Nothing was added");
    }
}
