package hearthcloth.store.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cloth.layout.Order;
import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.StashFile;
import hearthcloth.store.StashEdit;
import hearthcloth.store.Store;
import hearthcloth.store.json.StoreException;
import hearthcloth.work.Project;
import hearthcloth.work.Purpose;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What comes out of an archive into a stash that has pieces already. */
class ArchiveUnpackingTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);
    private static final Fabric OAT = new Fabric("Oat", Colour.of(0xd9c7a0), Fabric.Faces.SAME, Fabric.Nap.ANY);

    private final Store store;

    ArchiveUnpackingTest(@TempDir Path folder) {
        store = Store.open(folder.resolve("work.db"), CLOCK);
    }

    private static Piece piece(String id, int row, Fabric fabric) {
        return new Piece(id, fabric, Size.square(Length.cm(10 + row)), Piece.Washed.YES, row);
    }

    private static Archive of(List<Piece> pieces, Archive.Kept... cloths) {
        return new Archive(pieces, Set.of(), Map.of(), List.of(cloths));
    }

    private void there(Piece... pieces) {
        store.stash().edit(new StashEdit("add", List.of(), List.of(pieces)));
    }

    private List<Piece> pieces() {
        return store.stash().whole().pieces();
    }

    @Test
    void a_number_that_is_free_stays_and_one_that_is_taken_or_marked_becomes_the_next_free() {
        there(piece("1", 1, OAT), piece("2", 2, OAT));
        Archive archive = of(List.of(piece("2", 2, OAT), piece("9", 9, OAT), piece("example-3", 3, OAT)));

        new ArchiveUnpacking(archive, store, false, "archive").lay();

        assertThat(pieces()).extracting(Piece::id).containsExactlyInAnyOrder("1", "2", "9", "10", "11");
        assertThat(pieces()).contains(piece("9", 9, OAT));
        assertThat(store.stash().undo()).isPresent();
        assertThat(pieces()).extracting(Piece::id).containsExactlyInAnyOrder("1", "2");
    }

    @Test
    void a_fabric_that_is_there_stays_as_it_is_there() {
        there(piece("1", 1, OAT));
        Fabric other = new Fabric("Oat", Colour.BLACK, Fabric.Faces.RIGHT, Fabric.Nap.ANY);
        new ArchiveUnpacking(of(List.of(piece("5", 5, other))), store, false, "archive").lay();
        assertThat(pieces()).extracting(Piece::fabric).containsOnly(OAT);
    }

    @Test
    void instead_of_what_is_there_it_takes_its_place() {
        there(piece("1", 1, OAT));
        new ArchiveUnpacking(of(List.of(piece("1", 1, OAT), piece("4", 4, OAT))), store, true, "archive").lay();
        assertThat(pieces()).containsExactlyInAnyOrder(piece("1", 1, OAT), piece("4", 4, OAT));
    }

    @Test
    void plans_are_cut_from_the_pieces_as_they_are_numbered_here_and_so_are_their_ticks() {
        List<Piece> scraps = Stashes.scraps(60, 3).pieces();
        Plan plan = Planned.plans(Stashes.scraps(60, 3), 24, 1).get(0);
        Piece first = plan.cuts().get(0).piece();
        Project document = Project.of(DesignEdits.settled(plan, Order.ROUND), plan, Purpose.NOTHING)
                .with(new Project.Bench(Set.of(), Set.of(first.id() + ":1"), 0, List.of(), List.of()));
        there(piece(first.id(), first.row(), OAT));

        int came = new ArchiveUnpacking(
                        of(scraps, new Archive.Kept("example-dawn", "Dawn", document)), store, false, "archive")
                .lay();

        assertThat(came).isEqualTo(1);
        Project kept = store.cloths().find("dawn").orElseThrow().document();
        Piece now = kept.plan().orElseThrow().cuts().get(0).piece();
        assertThat(now.id()).isNotEqualTo(first.id());
        assertThat(now.size()).isEqualTo(first.size());
        assertThat(pieces()).contains(now);
        assertThat(kept.bench().ticked()).containsExactly(now.id() + ":1");
        // the same once more brings nothing
        assertThat(new ArchiveUnpacking(of(List.of(), new Archive.Kept("dawn", "Dawn", kept)), store, false, "archive")
                        .lay())
                .isZero();
        assertThat(new ArchiveUnpacking(of(List.of(), new Archive.Kept("dawn", "Day", kept)), store, true, "archive")
                        .lay())
                .isEqualTo(1);
        assertThat(store.cloths().find("dawn").orElseThrow().name()).isEqualTo("Day");
    }

    @Test
    void more_pieces_than_a_stash_takes_are_refused_whole() {
        there(piece("1", 1, OAT));
        List<Piece> many = new ArrayList<>();
        for (int i = 0; i < StashFile.MOST_PIECES; i++) {
            many.add(new Piece("" + (i + 10), OAT, Size.square(Length.cm(5)), Piece.Washed.YES, i + 10));
        }
        ArchiveUnpacking unpacking = new ArchiveUnpacking(of(many), store, false, "archive");
        assertThatThrownBy(unpacking::lay)
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("would pass 20000 pieces. Nothing was taken from the archive.");
        assertThat(pieces()).hasSize(1);
    }
}
