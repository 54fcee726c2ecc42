package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.plan.model.PlanFigures;
import hearthcloth.stash.Piece;
import hearthcloth.work.Project.Stage;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * "You cut into": whatever was planned again, it is the fabric of the heap that is whole no more, each piece once. Counted
 * here by what is gone of the heap and not by the plan.
 */
class CutIntoTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private static void goOn(RandomMaker maker, SavedCloth cloth) {
        Stage stage = cloth.document().life().stage();
        int chance = maker.room().random.nextInt(3);
        if (stage == Stage.DESIGNED && chance == 0) {
            maker.mishaps().cutShort(cloth);
        } else if (stage.isToCut()) {
            maker.cut(cloth);
        } else if (stage == Stage.CUT && chance == 0) {
            maker.mishaps().findShort(cloth);
        } else if (stage == Stage.CUT) {
            maker.sew(cloth);
        }
    }

    @Test
    void what_was_cut_into_is_what_is_gone_of_the_heap_and_counts_once() {
        int again = 0;
        for (long seed = 1; seed < 25; seed++) {
            List<Piece> heap = MakersRoom.Heap.of(seed).stash().pieces();
            try (Store store = Store.open(folder.resolve(seed + ".db"), CLOCK)) {
                store.stash().edit(new StashEdit("received", List.of(), heap));
                RandomMaker maker = new RandomMaker(store, seed, same -> same);
                for (int i = 0; i < 10; i++) {
                    SavedCloth cloth = maker.room().look().cloths().get(0);
                    goOn(maker, cloth);
                    again += compared(maker.room().look(), heap) ? 1 : 0;
                }
            }
        }
        assertThat(again).as("offcuts that were cut in their turn").isGreaterThan(10);
    }

    /** True where something was cut that is an offcut itself. */
    private static boolean compared(Seen seen, List<Piece> heap) {
        SavedCloth cloth = seen.cloths().get(0);
        if (cloth.document().life().stage().isToCut()) {
            return false;
        }
        Set<Piece> there = new HashSet<>(seen.heap().stash().pieces());
        double gone = heap.stream()
                .filter(piece -> !there.contains(piece))
                .mapToDouble(Piece::areaMm2)
                .sum();
        PlanFigures.Areas areas = Seen.plan(cloth).figures().areas();
        assertThat(areas.touched()).as("cut into").isCloseTo(gone, Offset.offset(1e-6 * gone));
        assertThat(areas.used() + areas.lost() + areas.offcuts()).isCloseTo(gone, Offset.offset(1e-6 * gone));
        return Seen.plan(cloth).cuts().stream().anyMatch(cut -> !heap.contains(cut.piece()));
    }
}
