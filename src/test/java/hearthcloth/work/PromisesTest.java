package hearthcloth.work;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.Language;
import hearthcloth.words.designing.DesigningWords;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PromisesTest {

    private static final DesigningWords WORDS = DesigningWords.in(Language.ENGLISH);

    private static final Fabric OAT = new Fabric("Oat", Colour.of(0xd9c7a0), Fabric.Faces.SAME, Fabric.Nap.ANY);
    private static final Piece ONE = piece(1, 30);
    private static final Piece TWO = piece(2, 20);
    private static final Piece THREE = piece(3, 10);

    private final Promises promises = new Promises(List.of(
            new Promises.Counting("a", "Dawn", List.of(ONE, TWO)),
            new Promises.Counting("b", "Dusk", List.of(TWO, THREE))));

    private static Piece piece(int number, int cm) {
        return new Piece(String.valueOf(number), OAT, Size.square(Length.cm(cm)), Piece.Washed.YES, number);
    }

    @Test
    void both_cloths_say_that_they_count_on_the_same_piece() {
        Stash stash = new Stash(List.of(ONE, TWO, THREE));

        assertThat(promises.warnings("a", stash, List.of(), WORDS))
                .singleElement()
                .asString()
                .startsWith("Dusk counts on piece 2 (Oat)");
        assertThat(promises.warnings("b", stash, List.of(), WORDS))
                .singleElement()
                .asString()
                .startsWith("Dawn counts on piece 2 (Oat)");
    }

    @Test
    void a_piece_that_is_used_up_or_cut_smaller_is_missed_by_every_cloth_that_counts_on_it() {
        Stash stash = new Stash(List.of(ONE, piece(2, 19)));

        assertThat(promises.missing("a", stash)).containsExactly(TWO);
        assertThat(promises.missing("b", stash)).containsExactly(TWO, THREE);
        assertThat(promises.warnings("b", stash, List.of(), WORDS))
                .containsExactly("This cloth counts on pieces 2 (Oat), 3 (Oat), which are no longer in the stash as"
                        + " planned. It cannot be cut so; plan it again.");
    }

    @Test
    void a_cloth_that_counts_on_nothing_has_nothing_to_say() {
        assertThat(promises.warnings("c", new Stash(List.of()), List.of(), WORDS))
                .isEmpty();
    }

    /** Five numbers would say nothing of pieces that are all there still; how many, and of which fabrics, does. */
    @Test
    void many_pieces_that_two_cloths_count_on_are_counted() {
        List<Piece> five =
                IntStream.rangeClosed(1, 5).mapToObj(i -> piece(i, 10 * i)).toList();
        Promises shared = new Promises(
                List.of(new Promises.Counting("a", "Dawn", five), new Promises.Counting("b", "Dusk", five)));

        assertThat(shared.warnings("a", new Stash(five), List.of(), WORDS))
                .containsExactly(
                        "Dusk counts on 5 pieces (Oat) too. The cloth that is cut first gets them; the other is"
                                + " then planned again.");
    }
}
