package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.Length;
import hearthcloth.store.archive.ArchiveTest;
import hearthcloth.store.json.KeptCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.work.BenchFact;
import hearthcloth.work.BenchFact.Cut;
import hearthcloth.work.BenchFact.Measured;
import hearthcloth.work.BenchFact.Seam;
import hearthcloth.work.BenchFact.Sewn;
import hearthcloth.work.BenchFact.Unpicked;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Stage;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What happens on the bench is a fact of the journal: told by what it was, taken back and done again by name. */
class BenchFactTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);
    private static final String NOW = "2026-05-04T10:00:00Z";

    private final Path file;
    private final Store store;
    private final String id;

    BenchFactTest(@TempDir Path folder) {
        file = folder.resolve("work.db");
        store = ArchiveTest.filled(Store.open(file, CLOCK));
        SavedCloth cloth = store.cloths().all().stream()
                .filter(one -> one.document().plan().isPresent())
                .findFirst()
                .orElseThrow();
        id = cloth.id();
        Project was = cloth.document();
        store.cloths()
                .save(
                        cloth,
                        "cut",
                        new Project(
                                was.design(),
                                was.plan(),
                                was.lacking(),
                                Project.Bench.CLEAR,
                                was.life().at(Stage.CUT)));
    }

    private SavedCloth cloth() {
        return store.cloths().find(id).orElseThrow();
    }

    private void happened(String label, BenchFact fact) {
        store.cloths().happened(cloth(), label, fact);
    }

    private static Sewn seam(int step, boolean last) {
        Measured measured =
                new Measured(Length.mm(400), Length.mm(398), List.of(Length.mm(397), Length.mm(399)), List.of());
        return new Sewn(step, new Seam("seam", "1A", "RIGHT"), NOW, measured, last);
    }

    @Test
    void cuts_seams_and_unpicking_are_told_taken_back_and_done_again() {
        List<Project> states = new ArrayList<>(List.of(cloth().document()));
        List<BenchFact> facts = List.of(
                new Cut(List.of("2:1", "10:1"), true),
                new Cut(List.of("2:1"), false),
                new Sewn(0, new Seam("lay", "", ""), NOW, null, false),
                seam(1, false),
                new Sewn(
                        1,
                        new Seam("seam", "1A", "RIGHT"),
                        null,
                        new Measured(Length.mm(400), Length.mm(399), List.of(), List.of(Length.mm(399))),
                        false),
                new Unpicked(1, 2, List.of("1A"), false),
                seam(1, true),
                new Unpicked(0, 2, List.of("1A"), true));
        for (BenchFact fact : facts) {
            happened("fact " + states.size(), fact);
            states.add(cloth().document());
        }
        assertThat(states.get(2).bench().ticked()).containsExactly("10:1");
        assertThat(states.get(4).bench().sewn()).isEqualTo(2);
        assertThat(states.get(5).bench().measures())
                .containsExactly(
                        new Project.Measure(1, Length.mm(400), Length.mm(398)),
                        new Project.Measure(1, Length.mm(400), Length.mm(399)));
        assertThat(states.get(6).bench().sewn()).isEqualTo(1);
        assertThat(states.get(7).life().stage()).isEqualTo(Stage.SEWN);
        assertThat(states.get(8).life().stage()).isEqualTo(Stage.CUT);
        assertThat(states.get(8).bench().done()).hasSize(3);

        for (int at = facts.size() - 1; at >= 0; at--) {
            assertThat(store.cloths().undo(id)).contains("fact " + (at + 1));
            assertThat(cloth().document()).isEqualTo(states.get(at));
            assertThat(store.fault()).isEmpty();
        }
        for (int at = 1; at <= facts.size(); at++) {
            assertThat(store.cloths().redo(id)).contains("fact " + at);
            assertThat(cloth().document()).isEqualTo(states.get(at));
        }
        assertThat(rows()).filteredOn(what -> what.contains("\"bar\":\"1A\"")).hasSize(3);
        assertThat(rows()).filteredOn(what -> what.startsWith("{\"unpicked\"")).hasSize(2);
    }

    private List<String> rows() {
        return Jdbi.create("jdbc:sqlite:" + file)
                .withHandle(handle -> handle.createQuery("select what from fact")
                        .mapTo(String.class)
                        .list());
    }

    @Test
    void what_cannot_have_happened_changes_nothing() {
        Project was = cloth().document();
        List<BenchFact> facts = List.of(
                new Cut(List.of("2:1"), false),
                seam(1, false),
                new Unpicked(1, 2, List.of(), false),
                new Unpicked(0, 0, List.of(), true));
        for (BenchFact fact : facts) {
            assertThatThrownBy(() -> happened("no", fact))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("Nothing was changed");
        }
        assertThat(cloth().document()).isEqualTo(was);
        assertThat(store.fault()).isEmpty();
    }

    @Test
    void a_text_of_an_early_hearthcloth_is_written_anew_once_and_still_comes_back_as_it_was() {
        String text = KeptCloth.text(cloth().document());
        String early = text.replaceAll("\"sewn\":.*?(?=\"life\")", "");
        assertThat(early).isNotEqualTo(text);
        Jdbi.create("jdbc:sqlite:" + file)
                .useHandle(handle -> handle.createUpdate("update cloth set document = :early where id = :id")
                        .bind("early", early)
                        .bind("id", id)
                        .execute());
        happened("sewed 1A on", seam(0, false));
        happened("unpicked", new Unpicked(0, 1, List.of("1A"), false));
        assertThat(cloth().document().bench().done()).hasSize(1);

        store.cloths().undo(id);
        store.cloths().undo(id);

        String now = Jdbi.create("jdbc:sqlite:" + file)
                .withHandle(handle -> handle.createQuery("select document from cloth where id = :id")
                        .bind("id", id)
                        .mapTo(String.class)
                        .one());
        assertThat(now).isEqualTo(early);
    }

    @Test
    void tables_that_do_not_fit_a_fact_are_noticed() {
        happened("sewed 1A on", seam(0, false));
        assertThat(store.fault()).isEmpty();
        Jdbi.create("jdbc:sqlite:" + file)
                .useHandle(handle ->
                        handle.execute("update cloth set document = replace(document, '\"sewn\":1', '\"sewn\":2')"));
        assertThat(store.fault())
                .hasValueSatisfying(told -> assertThat(told.english()).contains("sewed 1A on"));
    }
}
