package hearthcloth.work.deed;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.work.Keepsake;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Stage;
import hearthcloth.work.Purpose;
import hearthcloth.work.Worked;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What is told of a cloth that is made, and of fabric without a plan: {@link SlipWritten}, {@link UsedAgain}, {@link MeantFor},
 * {@link FabricChanged}, {@link PiecesSplit}.
 */
class AfterwardsTest {

    private static final Keepsake.Measured REAL =
            new Keepsake.Measured(Length.inches(24), Length.inches(48, 2), List.of());

    private static final SlipWritten.Slip SLIP =
            new SlipWritten.Slip("in May", "a box", "Ada", Optional.of(REAL), "My first.");

    private static Project at(Stage stage) {
        return Worked.kept().with(Worked.kept().life().at(stage));
    }

    @Test
    void only_a_cloth_that_is_cut_can_be_said_to_be_sewn() {
        for (Stage stage : Stage.values()) {
            Project now =
                    new SlipWritten(at(stage), SLIP, true).told("slip").edited().orElseThrow();
            assertThat(now.life().stage()).as(stage.name()).isEqualTo(stage == Stage.CUT ? Stage.SEWN : stage);
            assertThat(new SlipWritten(at(stage), SLIP, false)
                            .told("slip")
                            .edited()
                            .orElseThrow()
                            .life()
                            .stage())
                    .isEqualTo(stage);
        }
    }

    @Test
    void a_slip_holds_what_she_wrote_and_changes_nothing_else() {
        Deed told = new SlipWritten(at(Stage.SEWN), SLIP, false).told("slip");
        Project now = told.edited().orElseThrow();
        assertThat(told.label().english()).isEqualTo("slip");
        assertThat(told.fact()).isEmpty();
        assertThat(told.pieces().isNone()).isTrue();
        assertThat(now.life().made()).isEqualTo("in May");
        assertThat(now.life().wrapped()).isEqualTo("a box");
        assertThat(now.life().keeper()).isEqualTo("Ada");
        assertThat(now.life().kept().real()).isEqualTo(REAL);
        assertThat(now.life().kept().word()).isEqualTo("My first.");
        assertThat(now.with(at(Stage.SEWN).life())).isEqualTo(at(Stage.SEWN));
    }

    @Test
    void each_use_is_counted_and_told() {
        Keepsake.Use use = new Keepsake.Use("in June", "a book", "Bo");
        Project once = new UsedAgain(at(Stage.SEWN), use).told("used").edited().orElseThrow();
        Project twice = new UsedAgain(once, use).told("used").edited().orElseThrow();
        assertThat(once.life().uses()).isEqualTo(1);
        assertThat(twice.life().uses()).isEqualTo(2);
        assertThat(twice.life().kept().used()).containsExactly(use, use);
    }

    @Test
    void what_a_cloth_is_for_is_its_own() {
        Purpose box = new Purpose("box 30 x 20 x 8 cm", "", "");
        Deed told = new MeantFor(at(Stage.CUT), box).told("for a box");
        assertThat(told.edited().orElseThrow().life().purpose()).isEqualTo(box);
        assertThat(told.edited().orElseThrow().life().stage()).isEqualTo(Stage.CUT);
    }

    @Test
    void a_changed_fabric_changes_all_its_pieces_and_one_of_the_same_name_becomes_the_same() {
        Fabric oat = Stashes.fabric(0, Fabric.Faces.SAME, Fabric.Nap.ANY);
        Fabric kelp = Stashes.fabric(1, Fabric.Faces.SAME, Fabric.Nap.ANY);
        Fabric slate = Stashes.fabric(2, Fabric.Faces.SAME, Fabric.Nap.ANY);
        Size size = Size.square(Length.inches(8));
        Stash stash = new Stash(
                List.of(Stashes.piece(1, oat, size), Stashes.piece(2, kelp, size), Stashes.piece(3, slate, size)));

        Fabric other = new Fabric("KELP", oat.colour(), Fabric.Faces.RIGHT, Fabric.Nap.LENGTHWISE);
        Deed.Pieces changed = new FabricChanged(stash, oat, other).pieces();
        assertThat(changed.gone()).extracting(Piece::id).containsExactly("1", "2");
        assertThat(changed.come()).extracting(Piece::id).containsExactly("1", "2");
        assertThat(changed.come()).allMatch(piece -> piece.fabric().equals(other));
        assertThat(new FabricChanged(stash, oat, oat).pieces().isNone()).isTrue();
    }

    @Test
    void pieces_cut_in_two_are_as_much_fabric_as_before_and_the_first_part_keeps_its_number() {
        Fabric oat = Stashes.fabric(0, Fabric.Faces.SAME, Fabric.Nap.ANY);
        Size size = new Size(Length.inches(8), Length.inches(20));
        List<Piece> two = List.of(Stashes.piece(1, oat, size), Stashes.piece(2, oat, size));
        PiecesSplit along = new PiecesSplit(two, false, 7);
        assertThat(along.whole()).isEqualTo(Length.inches(20));
        Deed.Pieces parts = along.at(Length.inches(5)).orElseThrow();
        assertThat(parts.gone()).isEqualTo(two);
        assertThat(parts.come()).extracting(Piece::id).containsExactly("1", "7", "2", "8");
        assertThat(parts.come().get(0).size()).isEqualTo(new Size(Length.inches(8), Length.inches(5)));
        assertThat(parts.come().get(1).size()).isEqualTo(new Size(Length.inches(8), Length.inches(15)));
        assertThat(parts.come().get(3).row()).isEqualTo(8);

        PiecesSplit across = new PiecesSplit(two, true, 7);
        assertThat(across.whole()).isEqualTo(Length.inches(8));
        assertThat(across.at(Length.inches(3)).orElseThrow().come().get(1).size())
                .isEqualTo(new Size(Length.inches(5), Length.inches(20)));
        assertThat(across.at(Length.inches(8))).as("at its end").isEmpty();
        assertThat(across.at(Length.ZERO)).as("at its beginning").isEmpty();
    }
}
