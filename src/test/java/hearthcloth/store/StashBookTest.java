package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.colour.Colour;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.Planner;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.store.json.StoreException;
import hearthcloth.work.Project;
import hearthcloth.work.Purpose;
import hearthcloth.work.deed.AllCut;
import hearthcloth.work.deed.Deed;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StashBookTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);
    private static final Fabric OAT = new Fabric(
            "Oat", Colour.of(0xd9c7a0), Fabric.Faces.RIGHT, Fabric.Nap.LENGTHWISE, Optional.of(Colour.of(0x6a5a44)));

    private final Path file;
    private final StashBook book;

    StashBookTest(@TempDir Path folder) {
        file = folder.resolve("workroom.db");
        book = Store.open(file, CLOCK).stash();
    }

    private static Piece piece(int number, Fabric fabric, Size size) {
        return new Piece(String.valueOf(number), fabric, size, Piece.Washed.YES, number);
    }

    private Piece add(Size size) {
        Piece piece = piece(book.nextPiece(), OAT, size);
        book.edit(new StashEdit("add", List.of(), List.of(piece)));
        return piece;
    }

    @Test
    void what_is_kept_is_read_back_by_another_opening_of_the_file() {
        List<Piece> pieces = Stashes.scraps(60, 7).pieces();
        book.edit(new StashEdit("add sixty", List.of(), pieces));

        assertThat(Store.open(file, CLOCK).stash().whole().pieces()).isEqualTo(pieces);
    }

    @Test
    void any_run_of_edits_is_taken_back_and_done_again_exactly() {
        Random random = new Random(11);
        List<List<Piece>> states = new ArrayList<>();
        states.add(book.whole().pieces());
        for (int i = 0; i < 40; i++) {
            book.edit(edit(random, book.whole().pieces(), i));
            states.add(book.whole().pieces());
        }
        for (int i = 39; i >= 0; i--) {
            assertThat(book.undo()).contains("edit " + i);
            assertThat(book.whole().pieces()).isEqualTo(states.get(i));
        }
        assertThat(book.undo()).isEmpty();
        for (int i = 0; i < 40; i++) {
            assertThat(book.redoable()).contains("edit " + i);
            assertThat(book.redo()).contains("edit " + i);
            assertThat(book.whole().pieces()).isEqualTo(states.get(i + 1));
        }
        assertThat(book.redo()).isEmpty();
    }

    private StashEdit edit(Random random, List<Piece> now, int i) {
        List<Piece> gone = now.stream().filter(piece -> random.nextInt(4) == 0).toList();
        List<Piece> come = new ArrayList<>();
        for (Piece piece : gone) {
            if (random.nextBoolean()) {
                come.add(new Piece(piece.id(), piece.fabric(), piece.size().turned(), Piece.Washed.NO, piece.row()));
            }
        }
        int next = book.nextPiece();
        for (int k = random.nextInt(5); k >= 0; k--) {
            come.add(piece(next + k, OAT, new Size(Length.mm(1 + random.nextInt(900)), Length.mm(50))));
        }
        return new StashEdit("edit " + i, gone, come);
    }

    @Test
    void a_new_edit_forgets_what_had_been_taken_back() {
        add(Size.square(Length.cm(10)));
        book.undo();
        add(Size.square(Length.cm(20)));

        assertThat(book.redoable()).isEmpty();
    }

    @Test
    void an_edit_of_a_piece_as_it_no_longer_is_changes_nothing() {
        Piece seen = add(Size.square(Length.cm(10)));
        Piece other = add(Size.square(Length.cm(30)));
        Fabric redder = new Fabric("Oat", Colour.of(0xaa3322), OAT.faces(), OAT.nap());
        book.edit(new StashEdit(
                "colour",
                List.of(seen),
                List.of(new Piece(seen.id(), redder, seen.size(), seen.washed(), seen.row()))));
        List<Piece> before = book.whole().pieces();

        assertThatThrownBy(() -> book.edit(new StashEdit("use up", List.of(other, seen), List.of())))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("Piece 1 of Oat has meanwhile been changed");
        assertThat(book.whole().pieces()).isEqualTo(before);
        assertThat(book.undoable()).contains("colour");
    }

    @Test
    void a_number_is_given_once_even_if_its_piece_is_gone() {
        Piece first = add(Size.square(Length.cm(10)));
        book.edit(new StashEdit("use up", List.of(first), List.of()));
        Piece second = add(Size.square(Length.cm(10)));

        assertThat(second.id()).isNotEqualTo(first.id());
    }

    private static Plan plan(List<Piece> pieces) {
        Wish wish = new Wish(
                new Wish.Target(Optional.of(Size.square(Length.inches(30))), false),
                OpenShape.shape(),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(List.of(), 1, 1, Ruler.EIGHTHS));
        PlanOutcome outcome = Planner.plan(new hearthcloth.stash.Stash(pieces), wish, 1, Budget.steps(2_000), p -> {});
        return ((PlanOutcome.Proposals) outcome).plans().get(0);
    }

    /** Records that the plan was cut; the offcuts that came. */
    private List<Piece> cut(Plan plan) {
        Project cloth = Project.of(DesignEdits.settled(plan, Order.ROUND), plan, Purpose.NOTHING);
        Deed deed = new AllCut(cloth, book.nextPiece()).of("it");
        book.edit(new StashEdit(
                deed.label().english(), deed.pieces().gone(), deed.pieces().come()));
        return deed.pieces().come();
    }

    @Test
    void a_cut_plan_uses_its_pieces_up_and_brings_its_offcuts_back() {
        book.edit(new StashEdit("add", List.of(), Stashes.scraps(60, 3).pieces()));
        List<Piece> before = book.whole().pieces();
        Plan plan = plan(before);

        List<Piece> offcuts = cut(plan);

        Set<String> used = new HashSet<>();
        plan.cuts().forEach(cut -> used.add(cut.piece().id()));
        List<Piece> expected = new ArrayList<>(
                before.stream().filter(piece -> !used.contains(piece.id())).toList());
        expected.addAll(offcuts);
        assertThat(offcuts).isNotEmpty();
        assertThat(book.whole().pieces()).isEqualTo(expected);
        assertThat(offcuts.stream().mapToDouble(Piece::areaMm2).sum())
                .isCloseTo(plan.figures().areas().offcuts(), within(1e-3));
        assertThat(offcuts)
                .allSatisfy(piece -> assertThat(
                                piece.size().width().min(piece.size().height()).isLessThan(Length.inches(2)))
                        .isFalse());
        assertThat(expected.stream().map(Piece::id)).doesNotHaveDuplicates();
        book.undo();
        assertThat(book.whole().pieces()).isEqualTo(before);
    }

    @Test
    void a_plan_is_cut_once() {
        book.edit(new StashEdit("add", List.of(), Stashes.scraps(60, 3).pieces()));
        Plan plan = plan(book.whole().pieces());
        cut(plan);
        List<Piece> after = book.whole().pieces();

        assertThatThrownBy(() -> cut(plan)).isInstanceOf(StoreException.class);
        assertThat(book.whole().pieces()).isEqualTo(after);
    }
}
