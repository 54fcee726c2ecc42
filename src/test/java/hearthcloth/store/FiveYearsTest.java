package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What grows with use is bounded: five years of changes, and five more, leave a file of the same size. */
class FiveYearsTest {

    /** A dozen changes on two hundred days of each of five years. */
    private static final int CHANGES = 12_000;

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);
    private static final Fabric OAT = new Fabric("Oat", Colour.of(0xd9c7a0), Fabric.Faces.RIGHT, Fabric.Nap.LENGTHWISE);

    private final Path file;

    FiveYearsTest(@TempDir Path folder) {
        file = folder.resolve("work.db");
    }

    /** Pieces come and go, forty of them lie there at a time. */
    private static void years(Store store, int from, int to) {
        store.atOnce(() -> {
            for (int change = from; change < to; change++) {
                List<Piece> gone = change < 40 ? List.of() : List.of(piece(change - 40));
                store.stash().edit(new StashEdit("change " + change, gone, List.of(piece(change))));
            }
            return true;
        });
    }

    private static Piece piece(int number) {
        return new Piece(
                String.valueOf(1 + number),
                OAT,
                Size.square(Length.mm(100 + number % 400)),
                Piece.Washed.YES,
                1 + number);
    }

    @Test
    void beyond_ten_thousand_changes_the_file_stops_growing() throws IOException {
        grows(10_100, 11_300, 102);
    }

    @Test
    @Tag("long")
    void five_more_years_leave_a_file_of_the_same_size() throws IOException {
        grows(CHANGES, 2 * CHANGES, 110);
    }

    private void grows(int first, int second, int percent) throws IOException {
        Store store = Store.open(file, CLOCK);
        years(store, 0, first);
        SafetyCopy early = store.copies().orElseThrow().make(SafetyCopy.Reason.ASKED);
        years(store, first, second);
        SafetyCopy late = store.copies().orElseThrow().make(SafetyCopy.Reason.ASKED);

        assertThat(store.stash().whole().pieces()).hasSize(40);
        assertThat(store.stash().undo()).contains("change " + (second - 1));
        System.out.println("After " + first + " changes " + early.bytes() / 1_000 + " kB, after " + second + " "
                + late.bytes() / 1_000 + " kB, the file itself " + Files.size(file) / 1_000 + " kB.");
        assertThat(late.bytes()).isLessThan(early.bytes() * percent / 100).isLessThan(20_000_000);
    }
}
