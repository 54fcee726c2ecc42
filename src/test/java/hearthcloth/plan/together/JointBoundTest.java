package hearthcloth.plan.together;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** {@link JointBound} by hand and against strips sewn end to end until they reach. */
class JointBoundTest {

    private static Stash pieces(int count, Length width, Length length) {
        Fabric fabric = Stashes.fabric(0, Fabric.Faces.SAME, Fabric.Nap.ANY);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            pieces.add(Stashes.piece(i + 2, fabric, new Size(width, length)));
        }
        return new Stash(pieces);
    }

    /** Sews strips of one length together until they reach from hem to hem of a square. */
    private static int joins(Length strip, Length side) {
        Making making = Making.inches();
        Length wanted = side.plus(making.hem().allowance().times(2));
        Length sewn = strip;
        int joins = 0;
        while (sewn.isLessThan(wanted)) {
            sewn = sewn.plus(strip).minus(making.seam().loss());
            joins++;
        }
        return joins;
    }

    /** Squares of 10 to 40 in, of a heap whose longest piece is 3 to 45 in, by halves and by nanometres about what just fits. */
    @Test
    void the_last_bar_has_as_many_joins_as_the_longest_piece_needs_to_reach() {
        for (int side = 10; side <= 40; side += 5) {
            List<Asked> asked = List.of(Wished.square("one", side));
            for (int halves = 8; halves <= 90; halves++) {
                for (long nm = -1; nm <= 1; nm++) {
                    Length longest = Length.inches(halves, 2).plus(new Length(nm));
                    assertThat(JointBound.worstJoins(pieces(30, Length.inches(4), longest), asked))
                            .as(side + " in from pieces of " + longest)
                            .isEqualTo(joins(longest, Length.inches(side)));
                }
            }
        }
    }

    /** Strips of a seam and an edge wide, just long enough: as many as cloths do, one fewer does not. */
    @Test
    void where_fewer_strips_reach_than_there_are_cloths_somebody_joins() {
        Making making = Making.inches();
        Length narrowest = making.seam()
                .wide()
                .plus(making.seam().narrow().min(making.hem().allowance()));
        Length reach = Length.inches(12).plus(making.hem().allowance().times(2));
        List<Asked> three = List.of(Wished.square("a", 12), Wished.square("b", 12), Wished.square("c", 12));
        assertThat(JointBound.worstJoins(pieces(3, narrowest, reach), three)).isZero();
        assertThat(JointBound.worstJoins(pieces(2, narrowest, reach), three)).isOne();
        assertThat(JointBound.worstJoins(pieces(1, narrowest.times(3), reach), three))
                .isZero();
        assertThat(JointBound.worstJoins(pieces(1, narrowest, reach.times(3)), three))
                .isZero();
    }

    @Test
    void only_fabrics_that_are_wished_count() {
        Asked rust = new Asked(
                "Rust", Wished.wish(Optional.of(Size.square(Length.inches(12))), List.of("Rust")), Optional.empty());
        Fabric oat = Stashes.fabric(0, Fabric.Faces.SAME, Fabric.Nap.ANY);
        Fabric other = Stashes.fabric(3, Fabric.Faces.SAME, Fabric.Nap.ANY);
        Stash heap = new Stash(List.of(
                Stashes.piece(2, oat, Size.square(Length.inches(40))),
                Stashes.piece(3, other, Size.square(Length.inches(8)))));
        assertThat(JointBound.worstJoins(heap, List.of(rust))).isEqualTo(joins(Length.inches(8), Length.inches(12)));
    }

    @Test
    void a_size_left_open_and_no_cloth_at_all_need_no_join() {
        Asked open = new Asked("open", Wished.wish(Optional.empty(), List.of()), Optional.empty());
        Stash small = pieces(2, Length.inches(2), Length.inches(3));
        assertThat(JointBound.worstJoins(small, List.of(open))).isZero();
        assertThat(JointBound.worstJoins(small, List.of())).isZero();
    }
}
