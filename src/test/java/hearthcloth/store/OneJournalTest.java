package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
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
import hearthcloth.stash.Piece;
import hearthcloth.store.journal.ClothFact;
import hearthcloth.store.json.BenchText;
import hearthcloth.store.json.KeptCloth;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.BenchFact;
import hearthcloth.work.Project;
import hearthcloth.work.Purpose;
import hearthcloth.work.deed.AllCut;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Stash and cloths have one journal: what touches both is taken back from both, wherever undo is asked for. */
class OneJournalTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);

    private final Path file;
    private final Store store;
    private final Plan plan;
    private final Project begun;

    OneJournalTest(@TempDir Path folder) {
        file = folder.resolve("work.db");
        store = Store.open(file, CLOCK);
        store.stash()
                .edit(new StashEdit("add 60", List.of(), Stashes.scraps(60, 3).pieces()));
        Wish wish = new Wish(
                new Wish.Target(Optional.of(Size.square(Length.inches(30))), false),
                OpenShape.shape(),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(List.of(), 1, 1, Ruler.EIGHTHS));
        plan = ((PlanOutcome.Proposals)
                        Planner.plan(store.stash().whole(), wish, 1, Budget.steps(2_000), progress -> {}))
                .plans()
                .get(0);
        begun = Project.of(DesignEdits.settled(plan, Order.ROUND), plan, Purpose.NOTHING);
        store.cloths().keep("dawn", "Dawn", begun);
    }

    private SavedCloth cloth(String id) {
        return store.cloths().find(id).orElseThrow();
    }

    private List<Piece> pieces() {
        return store.stash().whole().pieces();
    }

    private void cut(String id) {
        SavedCloth was = cloth(id);
        store.book(
                was,
                new AllCut(was.document(), store.stash().nextPiece()).of(was.name()),
                Voice.english(Ruler.EIGHTHS));
    }

    private void sew(String id, int steps) {
        SavedCloth was = cloth(id);
        Project.Bench bench = was.document().bench();
        Project.Bench sewn = new Project.Bench(bench.locked(), bench.ticked(), steps, bench.measures(), bench.done());
        store.cloths().save(was, "step " + steps + " sewn", was.document().with(sewn));
    }

    @Test
    void undo_on_the_cloth_after_all_is_cut_brings_its_pieces_back() {
        List<Piece> before = pieces();
        cut("dawn");

        assertThat(store.cloths().undo("dawn")).contains("cut Dawn");

        assertThat(pieces()).isEqualTo(before);
        assertThat(cloth("dawn").document()).isEqualTo(begun);
        assertThat(store.stash().redoable()).contains("cut Dawn");
    }

    @Test
    void undo_on_the_stash_takes_the_cloth_back_with_what_was_sewn_and_names_it() {
        List<Piece> before = pieces();
        cut("dawn");
        sew("dawn", 1);
        sew("dawn", 2);
        List<Piece> after = pieces();
        Project sewn = cloth("dawn").document();

        assertThat(store.stash().undoable()).contains("cut Dawn (step 1 sewn, step 2 sewn)");
        store.stash().undo();
        assertThat(pieces()).isEqualTo(before);
        assertThat(cloth("dawn").document()).isEqualTo(begun);

        assertThat(store.cloths().redo("dawn")).contains("cut Dawn (step 1 sewn, step 2 sewn)");
        assertThat(pieces()).isEqualTo(after);
        assertThat(cloth("dawn").document()).isEqualTo(sewn);
    }

    @Test
    void a_cloth_that_is_removed_comes_back_with_one_undo_as_it_was() {
        List<Piece> before = pieces();
        cut("dawn");
        Project cut = cloth("dawn").document();
        store.cloths().rename("dawn", "Morning");
        store.cloths().remove("dawn");
        assertThat(store.cloths().find("dawn")).isEmpty();

        assertThat(store.cloths().undo()).contains("removed Morning");
        assertThat(cloth("dawn").document()).isEqualTo(cut);
        assertThat(cloth("dawn").name()).isEqualTo("Morning");
        assertThat(store.cloths().undo("dawn")).contains("Dawn → Morning");
        assertThat(cloth("dawn").name()).isEqualTo("Dawn");
        store.cloths().remove("dawn");
        assertThat(store.stash().undo()).contains("cut Dawn (removed Dawn)");
        assertThat(pieces()).isEqualTo(before);
        assertThat(cloth("dawn").document()).isEqualTo(begun);
    }

    @Test
    void a_cloth_that_was_kept_leaves_with_all_that_rests_on_it_and_only_from_the_shelf() {
        List<Piece> before = pieces();
        assertThat(store.cloths().undoable("dawn")).isEmpty();
        cut("dawn");
        sew("dawn", 1);

        assertThat(store.cloths().undo()).contains("kept Dawn (cut Dawn, step 1 sewn)");
        assertThat(store.cloths().all()).isEmpty();
        assertThat(pieces()).isEqualTo(before);
        assertThat(store.cloths().redo()).isPresent();
        assertThat(cloth("dawn").document().bench().sewn()).isEqualTo(1);
    }

    @Test
    void random_makers_find_the_tables_equal_to_the_journal_and_undo_then_redo_without_a_trace() {
        Random random = new Random(20_261_130);
        store.cloths().keep("dusk", "Dusk", begun);
        for (int step = 0; step < 120; step++) {
            String id = random.nextBoolean() ? "dawn" : "dusk";
            switch (random.nextInt(6)) {
                case 0 -> cutIfItCan(id);
                case 1, 2 -> sew(id, random.nextInt(30));
                case 3 -> useUpOne(random);
                case 4 -> backAndForth(id);
                default -> store.cloths().undo(id);
            }
            folded();
        }
    }

    private void cutIfItCan(String id) {
        boolean there = new HashSet<>(pieces())
                .containsAll(plan.cuts().stream().map(one -> one.piece()).toList());
        if (there && cloth(id).document().life().stage() == Project.Stage.DESIGNED) {
            cut(id);
        }
    }

    private void useUpOne(Random random) {
        Piece piece = pieces().get(random.nextInt(pieces().size()));
        store.stash().edit(new StashEdit("use up " + piece.id(), List.of(piece), List.of()));
    }

    private void backAndForth(String id) {
        List<Piece> before = pieces();
        Project dawn = cloth("dawn").document();
        Project dusk = cloth("dusk").document();
        if (store.cloths().undo(id).isPresent()) {
            assertThat(store.cloths().redo(id)).isPresent();
        }
        assertThat(pieces()).isEqualTo(before);
        assertThat(cloth("dawn").document()).isEqualTo(dawn);
        assertThat(cloth("dusk").document()).isEqualTo(dusk);
    }

    /** The tables made anew from the journal are those that are kept. */
    private void folded() {
        Map<String, Piece> heap = new TreeMap<>();
        Map<String, String> documents = new TreeMap<>();
        for (Map<String, Object> row : rows("select book, what from fact join change on number = fact.change"
                + " where undone = 0 order by number, place")) {
            String book = String.valueOf(row.get("book"));
            String what = String.valueOf(row.get("what"));
            if (book.equals("stash")) {
                StashEdit edit = StashEdit.read("", what);
                edit.gone().forEach(piece -> assertThat(heap.remove(piece.id())).isEqualTo(piece));
                edit.come().forEach(piece -> heap.put(piece.id(), piece));
            } else {
                ClothFact fact = ClothFact.read(what);
                if (fact instanceof ClothFact.Stands stands) {
                    documents.put(book, stands.document());
                } else if (fact instanceof ClothFact.Edited edited) {
                    documents.computeIfPresent(
                            book, (name, text) -> edited.edit().appliedTo(text));
                } else if (fact instanceof ClothFact.Worked worked) {
                    documents.computeIfPresent(book, (name, text) -> {
                        BenchText bench = BenchText.of(text);
                        worked.on(bench);
                        return bench.text();
                    });
                }
            }
        }
        assertThat(pieces()).containsExactlyInAnyOrderElementsOf(heap.values());
        for (String id : List.of("dawn", "dusk")) {
            assertThat(KeptCloth.text(cloth(id).document())).isEqualTo(documents.get("cloth:" + id));
        }
    }

    private List<Map<String, Object>> rows(String query) {
        return Jdbi.create("jdbc:sqlite:" + file)
                .withHandle(handle -> handle.createQuery(query).mapToMap().list());
    }

    private long bytes() throws IOException {
        rows("pragma wal_checkpoint(truncate)");
        return Files.size(file);
    }

    @Test
    void twenty_ticks_add_what_changed_and_not_copies_of_the_cloth() throws IOException {
        long before = bytes();
        for (int i = 0; i < 20; i++) {
            store.cloths()
                    .happened(cloth("dawn"), "cut " + i + " of piece 30", new BenchFact.Cut(List.of("30:" + i), true));
        }
        long grown = bytes() - before;
        System.out.println("20 ticks on a cloth of " + KeptCloth.text(begun).length() + " characters: the file grew by "
                + grown + " bytes.");
        assertThat(KeptCloth.text(begun).length()).isGreaterThan(4_000);
        assertThat(grown).isLessThanOrEqualTo(60_000);
    }

    @Test
    void a_cloth_as_it_was_on_a_page_that_is_out_of_date_is_made_from_what_changed_since() {
        List<Project> states = new ArrayList<>(List.of(begun));
        for (int i = 1; i <= 25; i++) {
            sew("dawn", i);
            states.add(cloth("dawn").document());
        }
        for (int version = 7; version <= 26; version++) {
            Project then = states.get(version - 1);
            assertThat(store.cloths().as("dawn", version))
                    .hasValueSatisfying(was -> assertThat(was.document()).isEqualTo(then));
        }
        assertThat(store.cloths().as("dawn", 6)).isEmpty();
        assertThat(store.cloths().as("dawn", 27)).isEmpty();
    }
}
