package hearthcloth.store;

import hearthcloth.store.SafetyCopy.Reason;
import hearthcloth.store.json.DatabaseTroubles;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.StoringSentences;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConnection;

/**
 * Whole copies of the maker's file in a folder beside it: one a day, one before each change of the file's form, one
 * before an older copy is restored. A copy appears under its name only when it is complete, checked and on the disk.
 * Thread-safe.
 */
public final class SafetyCopies {

    /** How long after a failure the next copy is tried. */
    private static final Duration AGAIN = Duration.ofHours(1);

    private final SqliteFile file;
    private final Clock clock;
    private Optional<LocalDate> looked = Optional.empty();
    private Instant notBefore = Instant.MIN;
    private Optional<Sentence> trouble = Optional.empty();

    SafetyCopies(SqliteFile file, Clock clock) {
        this.file = file;
        this.clock = clock;
    }

    /** The folder that holds the copies of {@code file}. */
    static Path folder(Path file) {
        return file.resolveSibling(file.getFileName() + ".copies");
    }

    SqliteFile file() {
        return file;
    }

    public Path folder() {
        return folder(file.path());
    }

    /** All copies, the newest first: the one made last, whatever the clocks said. */
    public List<SafetyCopy> all() {
        return all(file.path());
    }

    static List<SafetyCopy> all(Path file) {
        if (!Files.isDirectory(folder(file))) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(folder(file))) {
            List<SafetyCopy> copies = new ArrayList<>();
            for (Path entry : (Iterable<Path>) entries::iterator) {
                SafetyCopy.of(entry.getFileName().toString(), Files.size(entry)).ifPresent(copies::add);
            }
            copies.sort(SafetyCopy.NEWEST_FIRST);
            return List.copyOf(copies);
        } catch (IOException e) {
            throw new StoreException(
                    StoringSentences.copy(Argument.text(folder(file).toString()), "FOLDER"), e);
        }
    }

    /** Makes the day's copy unless there is one. A failure keeps nobody from working; {@link #trouble} returns it. */
    public synchronized void daily() {
        Instant now = clock.instant();
        LocalDate today = day(now);
        if (!file.why().isEmpty()) {
            return;
        }
        boolean waits = now.isBefore(notBefore) && notBefore.minus(AGAIN).isBefore(now);
        if (looked.equals(Optional.of(today)) || waits) {
            return;
        }
        try {
            boolean made = all().stream()
                    .anyMatch(copy ->
                            copy.reason() == Reason.DAILY && day(copy.made()).equals(today));
            if (!made) {
                make(Reason.DAILY);
            }
            looked = Optional.of(today);
        } catch (StoreException e) {
            trouble = Optional.of(e.sentence());
            // A copy late is better than none.
            notBefore = now.plus(AGAIN);
        }
    }

    /** Begins the day without a copy, since everything there is was made just now. */
    synchronized void beginEmpty() {
        looked = Optional.of(day(clock.instant()));
    }

    /** Why nothing may be changed in the file, or the last copy could not be made; empty while all is well. */
    public synchronized Optional<Sentence> trouble() {
        Sentence refused = file.why();
        return refused.isEmpty() ? trouble : Optional.of(refused);
    }

    private LocalDate day(Instant moment) {
        return LocalDate.ofInstant(moment, clock.getZone());
    }

    /**
     * Makes a copy of what is stored at this moment.
     *
     * @throws StoreException with a sentence, where no complete copy could be made
     */
    public SafetyCopy make(Reason reason) {
        return make(reason, "");
    }

    /**
     * Makes a copy.
     *
     * @param spared name of a copy that is not deleted, whatever its age
     */
    private synchronized SafetyCopy make(Reason reason, String spared) {
        Path part = folder().resolve("part");
        try {
            OwnerOnly.folder(folder());
            Files.deleteIfExists(part);
            file.jdbi()
                    .useHandle(handle -> handle.execute(
                            "vacuum into ?", part.toAbsolutePath().toString()));
            SqliteFile.refuseDamaged(part);
            OwnerOnly.file(part);
            toDisk(part);
            Path whole = folder().resolve(freeName(reason));
            Files.move(part, whole, StandardCopyOption.ATOMIC_MOVE);
            toDisk(folder());
            thin(reason, spared);
            trouble = Optional.empty();
            return SafetyCopy.of(whole.getFileName().toString(), Files.size(whole))
                    .orElseThrow();
        } catch (IOException | JdbiException | StoreException e) {
            drop(part);
            Sentence why = e instanceof StoreException
                    ? Refusal.of(e)
                    : DatabaseTroubles.words(e).orElseGet(() -> StoringSentences.copy(Argument.text(""), "FULL"));
            throw new StoreException(
                    StoringSentences.copy(Argument.text(folder().toString()), "MAKE")
                            .then(why),
                    e);
        }
    }

    private static void drop(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            // It lies where the next copy begins, which takes it away.
        }
    }

    /** One place after the last, so that a clock that goes back makes no copy older than it is. */
    private String freeName(Reason reason) {
        int place = 1 + all().stream().mapToInt(SafetyCopy::place).max().orElse(0);
        return SafetyCopy.name(place, clock.instant(), reason);
    }

    /** Deletes what is too old of its kind, and only complete copies with names of our own. */
    private void thin(Reason reason, String spared) throws IOException {
        for (SafetyCopy old : CopyAge.tooOld(all(), reason)) {
            if (!old.name().equals(spared)) {
                Files.deleteIfExists(folder().resolve(old.name()));
            }
        }
    }

    static void toDisk(Path path) throws IOException {
        if (Files.isDirectory(path)) {
            try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ)) {
                channel.force(true);
            } catch (IOException e) {
                // Not every system lets a folder be opened; there the move itself has to do.
            }
            return;
        }
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /**
     * Restores a copy in place of what is stored now, of which a copy is made first.
     *
     * @param name of one of {@link #all}
     * @throws StoreException with a sentence, where that cannot be done; what is stored is then unchanged
     */
    public synchronized SafetyCopy restore(String name) {
        SafetyCopy copy = all().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new StoreException(StoringSentences.gone("COPY")));
        Path from = folder().resolve(copy.name());
        refuseUnfit(from);
        make(Reason.RESTORE, name);
        try {
            file.jdbi().useHandle(handle -> over(handle.getConnection().unwrap(SQLiteConnection.class), from));
        } catch (JdbiException | SQLException e) {
            throw DatabaseTroubles.told(e, StoringSentences.copy(Argument.text(""), "BACK"));
        }
        file.restored();
        return copy;
    }

    private static void refuseUnfit(Path copy) {
        Sentence words = StoringSentences.copy(Argument.text(String.valueOf(copy.getFileName())), "DAMAGED");
        try {
            if (SqliteFile.look(copy) == SqliteFile.Found.NEW) {
                throw new StoreException(words);
            }
        } catch (StoreException e) {
            throw new StoreException(words, e);
        }
    }

    /** SQLite's own online backup in the opposite direction: one transaction, wholly or not at all. */
    private static void over(SQLiteConnection connection, Path from) throws SQLException {
        int code =
                connection.getDatabase().restore("main", from.toAbsolutePath().toString(), null);
        if (code != 0) {
            throw new SQLException("restoring answered " + code);
        }
    }

    /**
     * Puts a copy in the place of a file that cannot be opened any more; the file is kept under another name beside it.
     *
     * @param name of a copy, or {@code last} for the newest
     * @return the copy
     * @throws StoreException with a sentence, where that cannot be done
     */
    public static SafetyCopy putBack(Path file, String name, Clock clock) {
        SafetyCopy copy = (name.equals("last") ? last(file, clock.instant()) : named(file, name))
                .orElseThrow(() -> new StoreException(StoringSentences.missing(
                        name, Argument.text(folder(file).toString()))));
        Path from = folder(file).resolve(copy.name());
        refuseUnfit(from);
        try {
            Path part = folder(file).resolve("part");
            Files.copy(from, part, StandardCopyOption.REPLACE_EXISTING);
            OwnerOnly.file(part);
            toDisk(part);
            aside(file, SafetyCopy.stamp(clock.instant()));
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
            toDisk(folder(file).resolveSibling(""));
            return copy;
        } catch (IOException e) {
            throw new StoreException(StoringSentences.copy(Argument.text(file.toString()), "UNWRITABLE"), e);
        }
    }

    private static Optional<SafetyCopy> named(Path file, String name) {
        return all(file).stream().filter(each -> each.name().equals(name)).findFirst();
    }

    /** The one made last. One without a place whose date is still to come may be of any time and is taken for want of others. */
    private static Optional<SafetyCopy> last(Path file, Instant now) {
        List<SafetyCopy> all = all(file);
        return all.stream()
                .filter(copy -> copy.place() > 0 || !copy.isAhead(now))
                .findFirst()
                .or(() -> all.stream().findFirst());
    }

    /** Moves a file aside with its journal, which belongs to the file it was written for. */
    private static void aside(Path file, String stamp) throws IOException {
        for (String part : List.of("-wal", "-shm", "")) {
            Path there = file.resolveSibling(file.getFileName() + part);
            if (Files.exists(there)) {
                Files.move(there, file.resolveSibling(file.getFileName() + ".aside-" + stamp + part));
            }
        }
    }
}
