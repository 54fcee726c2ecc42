package hearthcloth.store;

import hearthcloth.TestServer;
import hearthcloth.store.json.StoreException;
import hearthcloth.store.studio.Studio;
import hearthcloth.store.studio.StudioAddress;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Thousands of makers at random: whatever they do in whatever order, every part tells the same story. */
class RandomMakersTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);
    private static final int CHANGES = 14;

    /** For each change; the long runs go on from there. */
    private static final int FEW = 60;

    /** After so many makers the long runs tell how far they are. */
    private static final int STRETCH = 20;

    private static final int TRIES = 20;

    @TempDir
    Path folder;

    private Path filled(int from) {
        Path file = folder.resolve("filled-" + from + ".db");
        try (Store store = Store.open(file, CLOCK)) {
            store.stash().edit(new StashEdit("received", List.of(), RandomMaker.HEAP.pieces()));
        }
        return file;
    }

    private Path copy(Path from, String name) {
        try {
            Path to = folder.resolve(name);
            for (String part : List.of("", "-wal")) {
                Path there = from.resolveSibling(from.getFileName() + part);
                if (Files.exists(there)) {
                    Files.copy(there, to.resolveSibling(name + part));
                }
            }
            return to;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Removes what the makers before left, so that ten thousand of them fit on a disk. */
    private void clear(Path kept) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                boolean stays = file.equals(folder)
                        || folder.relativize(file)
                                .toString()
                                .startsWith(kept.getFileName().toString());
                if (!stays) {
                    Files.delete(file);
                }
            }
        }
    }

    private void inFiles(int from, int to) {
        Path filled = filled(from);
        for (int seed = from; seed < to; seed++) {
            try {
                clear(filled);
                Path[] file = {copy(filled, seed + ".db")};
                int[] times = {0};
                int number = seed;
                // What a killed program leaves: the file and what lies beside it, as they are at this moment.
                UnaryOperator<Store> killed = store -> {
                    file[0] = copy(file[0], number + "-" + times[0]++ + ".db");
                    return Store.open(file[0], CLOCK);
                };
                new RandomMaker(Store.open(file[0], CLOCK), new Random(seed), killed).work(CHANGES);
            } catch (AssertionError | RuntimeException | IOException e) {
                throw new AssertionError("maker with seed " + seed, e);
            }
        }
    }

    @Test
    void sixty_makers_find_one_story() {
        inFiles(0, FEW);
    }

    /** How many makers the long runs have; {@code checks/long-run/makers} tells. */
    private static int many() {
        return Integer.getInteger("hearthcloth.makers", 10_000);
    }

    @Test
    @Tag("long")
    void ten_thousand_makers_find_one_story() {
        for (int seed = FEW; seed < FEW + many(); seed += STRETCH) {
            inFiles(seed, Math.min(seed + STRETCH, FEW + many()));
            System.out.println("In files: " + Math.min(seed + STRETCH - FEW, many()) + " makers, no breach.");
        }
    }

    /** The same over PostgreSQL; killed, every line to the database is cut and the studio is opened anew. */
    @Test
    @Tag("long")
    void ten_thousand_makers_of_a_studio_find_one_story() {
        for (int seed = 0; seed < many(); seed += STRETCH) {
            inStudio(seed, Math.min(seed + STRETCH, many()));
            System.out.println("In a studio: " + Math.min(seed + STRETCH, many()) + " makers, no breach.");
        }
    }

    /** Opened once the database answers again; on a busy machine that may take more than the workroom's own patience. */
    private static Studio opened(String address) {
        StoreException last = new StoreException("not tried");
        for (int i = 0; i < TRIES; i++) {
            try {
                return Studio.open(StudioAddress.parse(address, Optional.empty()), CLOCK);
            } catch (StoreException e) {
                last = e;
            }
        }
        throw last;
    }

    private static void inStudio(int from, int to) {
        String address = TestServer.freshDatabase();
        Studio[] studio = {opened(address)};
        studio[0].people().begin("Ada", "kelp and plum by lamplight");
        for (int seed = from; seed < to; seed++) {
            try {
                Person maker = studio[0].people().add("Mo" + seed, "kelp and plum by lamplight", Person.Part.MAKER);
                Store store = studio[0].of(maker);
                store.stash().edit(new StashEdit("received", List.of(), RandomMaker.HEAP.pieces()));
                UnaryOperator<Store> killed = same -> {
                    TestServer.run(
                            address,
                            "select pg_terminate_backend(pid) from pg_stat_activity"
                                    + " where datname = current_database() and pid <> pg_backend_pid()");
                    studio[0].close();
                    studio[0] = opened(address);
                    return studio[0].of(maker);
                };
                new RandomMaker(store, new Random(seed), killed).work(CHANGES);
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("maker of a studio with seed " + seed, e);
            }
        }
        studio[0].close();
    }
}
