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
    private static void years(Store store, int from) {
        store.atOnce(() -> {
            for (int change = from; change < from + CHANGES; change++) {
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
    void the_journal_keeps_the_last_ten_thousand_changes_and_the_file_stops_growing() throws IOException {
        Store store = Store.open(file, CLOCK);
        years(store, 0);
        SafetyCopy five = store.copies().orElseThrow().make(SafetyCopy.Reason.ASKED);
        years(store, CHANGES);
        SafetyCopy ten = store.copies().orElseThrow().make(SafetyCopy.Reason.ASKED);

        assertThat(store.stash().whole().pieces()).hasSize(40);
        assertThat(store.stash().undo()).contains("change " + (2 * CHANGES - 1));
        System.out.println("After " + CHANGES + " changes " + five.bytes() / 1_000 + " kB, after twice as many "
                + ten.bytes() / 1_000 + " kB, the file itself " + Files.size(file) / 1_000 + " kB.");
        assertThat(ten.bytes()).isLessThan(five.bytes() * 11 / 10).isLessThan(20_000_000);
    }
}
