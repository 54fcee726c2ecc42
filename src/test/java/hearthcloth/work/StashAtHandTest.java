package hearthcloth.work;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.Language;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class StashAtHandTest {

    private static final Fabric OAT = new Fabric("Oat", Colour.of(0xd9c7a0), Fabric.Faces.SAME, Fabric.Nap.ANY);
    private static final Piece ONE = piece(1);
    private static final Piece TWO = piece(2);
    private static final Piece THREE = piece(3);
    private static final Piece FOUR = piece(4);
    private static final Promises PROMISES = new Promises(List.of(
            new Promises.Counting("a", "Dawn", List.of(ONE, TWO)),
            new Promises.Counting("b", "Dusk", List.of(TWO, THREE))));

    private static Piece piece(int number) {
        return new Piece(String.valueOf(number), OAT, Size.square(Length.cm(20)), Piece.Washed.YES, number);
    }

    private static StashAtHand heap(String... aside) {
        return new StashAtHand(new Stash(List.of(ONE, TWO, THREE, FOUR)), Set.of(aside), PROMISES);
    }

    @Test
    void a_new_cloth_leaves_others_what_they_count_on_unless_she_says_so() {
        assertThat(heap().free(Set.of()).pieces()).containsExactly(FOUR);
        assertThat(heap().free(Set.of("a")).pieces())
                .as("piece 2 is still counted on by Dusk")
                .containsExactly(ONE, FOUR);
        assertThat(heap().free(Set.of("a", "b")).pieces()).containsExactly(ONE, TWO, THREE, FOUR);
    }

    @Test
    void a_cloth_planned_again_keeps_its_own_pieces_even_where_another_counts_on_them() {
        assertThat(heap().freeFor("a").pieces()).containsExactly(ONE, TWO, FOUR);
    }

    @Test
    void what_is_set_aside_is_never_planned_with_and_its_cloth_says_so() {
        StashAtHand heap = heap("1", "4");

        assertThat(heap.free(Set.of("a", "b")).pieces()).containsExactly(TWO, THREE);
        assertThat(heap.freeFor("a").pieces()).containsExactly(TWO);
        assertThat(heap.canBeCut("a")).isFalse();
        assertThat(heap.canBeCut("b")).isTrue();
        assertThat(heap.warnings("a", Language.ENGLISH).get(0))
                .isEqualTo("This cloth counts on piece 1 (Oat), which you have set aside. Give it back in the stash, or"
                        + " plan the cloth again.");
    }

    @Test
    void only_cloths_that_hold_something_back_are_offered_to_be_shared_with() {
        assertThat(heap("1", "2").rivals()).extracting(Promises.Counting::name).containsExactly("Dusk");
    }

    @Test
    void what_holds_pieces_back_is_said_with_how_many_unless_there_is_only_one() {
        StashAtHand heap = heap("1", "4");

        assertThat(heap.held(List.of(ONE, TWO, THREE, FOUR), Language.ENGLISH))
                .isEqualTo("2 set aside; 2 for Dawn; 2 for Dusk");
        assertThat(heap.held(List.of(TWO, THREE), Language.ENGLISH)).isEqualTo("1 for Dawn; 2 for Dusk");
        assertThat(heap.held(List.of(THREE), Language.ENGLISH)).isEqualTo("for Dusk");
        assertThat(heap.held(List.of(FOUR), Language.ENGLISH)).isEqualTo("set aside");
        assertThat(heap().held(List.of(FOUR), Language.ENGLISH)).isEmpty();
    }
}
