package hearthcloth.store.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cloth.layout.Order;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.StashEdit;
import hearthcloth.store.Store;
import hearthcloth.store.SwatchBook.Swatch;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Project;
import hearthcloth.work.Purpose;
import hearthcloth.work.deed.AllCut;
import hearthcloth.work.deed.Deed;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Everything out and in again: the same where there was nothing, its own numbers and plans where there was something. */
public class ArchiveTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private Store open(String name) {
        return Store.open(folder.resolve(name), CLOCK);
    }

    /** A store with sixty scraps, a picture and two cloths planned from them. */
    public static Store filled(Store store) {
        Stash stash = Stashes.scraps(60, 3);
        store.stash().edit(new StashEdit("add", List.of(), stash.pieces()));
        byte[] picture = {(byte) 0xff, (byte) 0xd8, (byte) 0xff, 1, 2, 3};
        store.swatches()
                .keep("Oat", new Swatch("image/jpeg", Base64.getEncoder().encodeToString(picture), Length.cm(7)));
        for (Plan plan : Planned.plans(stash, 27, 2)) {
            Project document =
                    Project.of(DesignEdits.settled(plan, Order.ROUND), plan, new Purpose("ball 22 cm", "", ""));
            String cut = plan.cuts().get(0).piece().id();
            store.cloths()
                    .keep(
                            "c" + Math.floorMod(plan.hashCode(), 100_000),
                            "<b>" + plan.story().title() + "</b>",
                            document.with(
                                    new Project.Bench(Set.of("1A"), Set.of(cut + ":1"), 0, List.of(), List.of())));
        }
        return store;
    }

    @Test
    void out_in_and_out_again_is_the_same() {
        byte[] out = Archive.of(filled(open("one.db"))).bytes();
        Store other = open("two.db");

        Archive.read(out).into(other, false, Voice.english(Ruler.EIGHTHS));

        assertThat(Archive.of(other).bytes()).isEqualTo(out);
        assertThat(Archive.of(other).cloths()).hasSize(2);
        assertThat(other.swatches().find("Oat")).isPresent();
    }

    @Test
    void pieces_that_join_a_stash_get_free_numbers_and_their_plans_can_still_be_cut() {
        Archive archive = Archive.read(Archive.of(filled(open("one.db"))).bytes());
        Store other = open("two.db");
        List<Piece> there = Stashes.scraps(40, 9).pieces();
        other.stash().edit(new StashEdit("add", List.of(), there));

        assertThat(archive.into(other, false, Voice.english(Ruler.EIGHTHS))).isEqualTo(2);

        List<Piece> all = other.stash().whole().pieces();
        assertThat(all).hasSize(there.size() + archive.pieces().size()).containsAll(there);
        assertThat(all.stream().map(Piece::id)).doesNotHaveDuplicates();
        SavedCloth cloth = other.cloths().all().get(0);
        Plan plan = cloth.document().plan().orElseThrow();
        Set<String> used = plan.cuts().stream().map(cut -> cut.piece().id()).collect(Collectors.toSet());
        assertThat(cloth.document().bench().ticked())
                .allSatisfy(tick -> assertThat(used).contains(tick.replaceFirst(":.*", "")));
        other.book(
                cloth, new AllCut(cloth.document(), other.stash().nextPiece()).of("it"), Voice.english(Ruler.EIGHTHS));
        assertThat(other.stash().whole().pieces()).containsAll(there);
    }

    @Test
    void replacing_takes_the_place_of_stash_and_cloths_and_undo_brings_both_back() {
        Store store = filled(open("one.db"));
        Archive archive = Archive.read(Archive.of(store).bytes());
        SavedCloth cloth = store.cloths().all().get(0);
        Deed.Pieces cut =
                new AllCut(cloth.document(), store.stash().nextPiece()).of("it").pieces();
        store.stash().edit(new StashEdit("cut it", cut.gone(), cut.come()));
        Project.Life life = new Project.Life(Project.Stage.CUT, "", "tea", "Mo", 2, Purpose.NOTHING, "letter", null);
        store.cloths().save(cloth, "cut", cloth.document().with(life));
        List<Piece> before = store.stash().whole().pieces();

        assertThat(archive.into(store, false, Voice.english(Ruler.EIGHTHS)))
                .as("what is there stays")
                .isZero();
        store.stash().undo();
        assertThat(archive.into(store, true, Voice.english(Ruler.EIGHTHS))).isEqualTo(1);

        assertThat(Archive.of(store)).isEqualTo(archive);
        store.stash().undo();
        assertThat(store.stash().whole().pieces()).isEqualTo(before);
        assertThat(store.cloths().find(cloth.id()).orElseThrow().document().life())
                .isEqualTo(life);
    }

    @Test
    void what_is_set_aside_travels_with_its_pieces_whatever_number_they_get() {
        Store store = filled(open("one.db"));
        Piece kept = store.stash().whole().pieces().get(3);
        store.stash().edit(StashEdit.aside("keep it", List.of(kept.id()), true));
        Archive archive = Archive.read(Archive.of(store).bytes());
        Store other = open("two.db");
        other.stash().edit(new StashEdit("add", List.of(), List.of(kept)));

        archive.into(other, false, Voice.english(Ruler.EIGHTHS));

        String id = other.stash().aside().iterator().next();
        assertThat(other.stash().aside()).hasSize(1).doesNotContain(kept.id());
        Piece piece = other.stash().whole().pieces().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
        assertThat(piece.size()).isEqualTo(kept.size());
        other.stash().undo();
        assertThat(other.stash().aside()).isEmpty();
        assertThat(other.cloths().all()).isEmpty();
        archive.into(other, true, Voice.english(Ruler.EIGHTHS));
        assertThat(Archive.of(other)).isEqualTo(archive);
    }

    @Test
    void what_is_the_examples_in_an_archive_is_hers_where_it_comes_in() {
        Piece oat = Stashes.scraps(1, 1).pieces().get(0);
        Piece marked = new Piece("example-7", oat.fabric(), oat.size(), oat.washed(), 7);
        Store store = open("one.db");
        store.stash().edit(new StashEdit("add", List.of(), List.of(marked)));
        Store other = open("two.db");

        Archive.read(Archive.of(store).bytes()).into(other, false, Voice.english(Ruler.EIGHTHS));

        assertThat(other.stash().whole().pieces())
                .singleElement()
                .satisfies(piece -> assertThat(piece.id()).isEqualTo("8"));
    }

    @Test
    void several_changes_at_once_are_kept_all_or_none() {
        Store store = filled(open("one.db"));
        Archive before = Archive.of(store);

        assertThatThrownBy(() -> store.atOnce(() -> {
                    store.stash().edit(new StashEdit("use up", before.pieces(), List.of()));
                    store.cloths().rename(before.cloths().get(0).id(), "other");
                    throw new StoreException("no");
                }))
                .isInstanceOf(StoreException.class);

        assertThat(Archive.of(store)).isEqualTo(before);
        assertThat(store.stash().undoable()).contains("add");
    }
}
