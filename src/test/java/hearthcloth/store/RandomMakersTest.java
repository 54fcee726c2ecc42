package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.TestServer;
import hearthcloth.store.json.StoreException;
import hearthcloth.store.studio.Studio;
import hearthcloth.store.studio.StudioAddress;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.LongConsumer;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Thousands of makers at random: whatever they do in whatever order, every part tells the same story. */
class RandomMakersTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);
    private static final int CHANGES = 14;
    /** After so many makers the long runs tell how far they are. */
    private static final int STRETCH = 100;

    private static final int TRIES = 20;
    private static final String PASSPHRASE = "kelp and plum by lamplight";

    @TempDir
    Path folder;

    private static Store filled(Store store, long seed) {
        store.stash()
                .edit(new StashEdit(
                        "received", List.of(), MakersRoom.Heap.of(seed).stash().pieces()));
        return store;
    }

    /** What a killed program leaves: the file and what lies beside it, as they are at this moment. */
    private static void left(Path from, Path to) {
        try {
            for (String part : List.of("", "-wal", "-shm")) {
                Path there = from.resolveSibling(from.getFileName() + part);
                Path here = to.resolveSibling(to.getFileName() + part);
                Files.deleteIfExists(here);
                if (Files.exists(there) && !part.equals("-shm")) {
                    Files.copy(there, here, StandardCopyOption.REPLACE_EXISTING);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Held, as the workroom holds it: what was changed last then lies beside the file until it is opened again. */
    private static Store held(Path file) {
        Store store = Store.open(file, CLOCK);
        store.hold();
        return store;
    }

    private void inFile(long seed) {
        Path empty = folder.resolve("empty.db");
        if (!Files.exists(empty)) {
            Store.open(empty, CLOCK).close();
        }
        Path[] files = {folder.resolve("one.db"), folder.resolve("other.db")};
        left(empty, files[0]);
        int[] at = {0};
        Store[] open = {filled(held(files[0]), seed)};
        UnaryOperator<Store> killed = store -> {
            Path now = files[1 - at[0]];
            left(files[at[0]], now);
            store.close();
            at[0] = 1 - at[0];
            open[0] = held(now);
            return open[0];
        };
        try {
            new RandomMaker(open[0], seed, killed).work(CHANGES);
        } finally {
            open[0].close();
        }
    }

    @Test
    void three_hundred_makers_find_one_story() {
        for (long seed = 0; seed < 300; seed++) {
            try {
                inFile(seed);
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("maker with seed " + seed, e);
            }
        }
    }

    /**
     * Many makers one after another. A breach is told as it is found and the others go on, so that one run shows them all;
     * how many, and from which seed on, {@code checks/long-run/makers} says.
     */
    private static void many(String where, LongConsumer maker) {
        long from = Long.getLong("hearthcloth.makers.from", 300);
        long to = from + Integer.getInteger("hearthcloth.makers", 10_000);
        List<Long> breaches = new ArrayList<>();
        long began = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        for (long seed = from; seed < to; seed++) {
            try {
                maker.accept(seed);
            } catch (AssertionError | RuntimeException e) {
                breaches.add(seed);
                System.out.println(where + ": BREACH by the maker with seed " + seed);
                e.printStackTrace(System.out);
            }
            if ((seed + 1 - from) % STRETCH == 0 || seed + 1 == to) {
                long workedNs = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - began;
                System.out.printf(
                        Locale.ROOT,
                        "%s: %d makers, seeds %d to %d, %d breaches %s; %.0f ms of work each%n",
                        where,
                        seed + 1 - from,
                        from,
                        seed,
                        breaches.size(),
                        breaches,
                        workedNs / 1e6 / (seed + 1 - from));
            }
        }
        assertThat(breaches).as("seeds of makers who found two stories").isEmpty();
    }

    @Test
    @Tag("long")
    void ten_thousand_makers_find_one_story() {
        many("In files", this::inFile);
    }

    /** The same over PostgreSQL; killed, every line to the database is cut, and one time in three the studio is opened anew. */
    @Test
    @Tag("long")
    void ten_thousand_makers_of_a_studio_find_one_story() {
        String address = TestServer.freshDatabase();
        Studio[] studio = {opened(address)};
        Person maker = studio[0].people().begin("Mo", PASSPHRASE);
        int[] kills = {0};
        many("In a studio", seed -> {
            Store store = studio[0].of(maker);
            TestServer.run(address, emptied(maker.schema()));
            UnaryOperator<Store> killed = same -> {
                TestServer.run(
                        address,
                        "select pg_terminate_backend(pid) from pg_stat_activity"
                                + " where datname = current_database() and pid <> pg_backend_pid()");
                if (kills[0]++ % 3 == 0) {
                    studio[0].close();
                    studio[0] = opened(address);
                }
                return studio[0].of(maker);
            };
            new RandomMaker(filled(store, seed), seed, killed).work(CHANGES);
        });
        studio[0].close();
    }

    /** Empties every table of a schema but the list of its forms. */
    private static String emptied(String schema) {
        return "do $$ begin execute (select 'truncate ' || string_agg(format('%I.%I', table_schema, table_name), ', ')"
                + " from information_schema.tables where table_schema = '" + schema
                + "' and table_name <> 'flyway_schema_history'); end $$";
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
}
