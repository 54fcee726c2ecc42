package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.Planner;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.store.json.ClothDocument;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Five years of work in one file: 300 cloths, 50 000 changes. What each question to it takes is printed. */
@Tag("long")
class FiveYearsTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);
    private static final int CLOTHS = 300;
    private static final int CHANGES = 50_000;
    private static final int AT_ONCE = 1_000;

    @TempDir
    Path folder;

    private static Plan plan(Store store) {
        Wish wish = new Wish(
                new Wish.Target(Optional.of(Size.square(Length.inches(30))), false),
                Wish.Shape.open(),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(List.of(), 1, 1, Ruler.EIGHTHS));
        return ((PlanOutcome.Proposals)
                        Planner.plan(store.stash().whole(), wish, 1, Budget.steps(2_000), progress -> {}))
                .plans()
                .get(0);
    }

    private static void sew(Store store, int change) {
        SavedCloth was = store.cloths().find("cloth" + change % CLOTHS).orElseThrow();
        store.cloths()
                .save(
                        was,
                        "step " + change + " sewn",
                        was.document().with(was.document().bench().withSewn(change)));
    }

    private Path filled() {
        Path file = folder.resolve("work.db");
        Store store = Store.open(file, CLOCK);
        store.stash()
                .edit(new StashEdit("add 60", List.of(), Stashes.scraps(60, 3).pieces()));
        Plan plan = plan(store);
        ClothDocument begun = ClothDocument.of(DesignEdits.settled(plan, Order.ROUND), plan);
        for (int i = 0; i < CLOTHS; i++) {
            store.cloths().keep("cloth" + i, "Cloth " + i, begun);
        }
        for (int from = 0; from < CHANGES; from += AT_ONCE) {
            int first = from;
            store.atOnce(() -> {
                for (int i = first; i < first + AT_ONCE; i++) {
                    sew(store, i);
                }
                return true;
            });
        }
        return file;
    }

    private static long milliseconds(String what, Runnable work) {
        long begun = System.nanoTime();
        work.run();
        long took = (System.nanoTime() - begun) / 1_000_000;
        System.out.println(what + ": " + took + " ms");
        return took;
    }

    @Test
    void all_of_it_is_there_when_it_is_opened_and_the_last_change_can_be_undone() throws Exception {
        Path file = filled();
        System.out.println("the file: " + Files.size(file) / 1_000_000 + " MB");
        Store[] opened = new Store[1];
        milliseconds("opened", () -> opened[0] = Store.open(file, CLOCK));
        Store store = opened[0];
        milliseconds("what may be planned with, first", store::atHand);
        milliseconds("what may be planned with, again", store::atHand);
        milliseconds("what undo would take back", () -> store.cloths().undoable("cloth7"));
        milliseconds("one step more", () -> sew(store, 7));
        assertThat(store.cloths().all()).hasSize(CLOTHS);
        assertThat(store.cloths().undo("cloth7")).contains("step 7 sewn");
        assertThat(store.cloths().undo("cloth7")).contains("step " + (CHANGES - 1 - (CHANGES - 1 - 7) % CLOTHS) + " sewn");
    }
}
