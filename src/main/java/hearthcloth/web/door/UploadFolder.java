package hearthcloth.web.door;

import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.StoringSentences;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where photographs and archives lie while they arrive: a folder that only its owner can look into, taken away when the
 * workroom closes, and at the next start where it was killed.
 */
public final class UploadFolder implements AutoCloseable {

    private static final String NAME = "hearthcloth-arriving-";
    private static final String LOCK = "lock";

    private final Path path;
    private final FileChannel lock;

    private UploadFolder(Path path) throws IOException {
        this.path = path;
        this.lock = FileChannel.open(path.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    }

    /**
     * Makes one in the system's folder for such things, and takes away those of killed workrooms.
     *
     * @throws StoreException where none can be made
     */
    public static UploadFolder open() {
        try {
            // Made for its owner only (java.nio.file.Files).
            Path made = Files.createTempDirectory(NAME);
            UploadFolder folder = new UploadFolder(made);
            folder.lock();
            sweep(made);
            return folder;
        } catch (IOException e) {
            throw new StoreException(
                    StoringSentences.placeArriving(Argument.text(String.valueOf(System.getProperty("java.io.tmpdir")))),
                    e);
        }
    }

    private void lock() {
        try {
            lock.tryLock();
        } catch (IOException e) {
            // A disk without locks: nobody can take another's for dead either.
        }
    }

    public Path path() {
        return path;
    }

    private static void sweep(Path own) throws IOException {
        Path parent = own.resolveSibling("");
        try (Stream<Path> entries = Files.list(parent)) {
            for (Path left : entries.filter(entry -> isLeft(entry, own)).toList()) {
                delete(left);
            }
        } catch (UncheckedIOException e) {
            // Somebody else's things change; what is left goes another time.
        }
    }

    private static boolean isLeft(Path entry, Path own) {
        try {
            return String.valueOf(entry.getFileName()).startsWith(NAME)
                    && !entry.equals(own)
                    && Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS)
                    && Files.getOwner(entry).equals(Files.getOwner(own))
                    && isDead(entry.resolve(LOCK));
        } catch (IOException e) {
            return false;
        }
    }

    private static boolean isDead(Path locked) throws IOException {
        try (FileChannel channel = FileChannel.open(locked, StandardOpenOption.WRITE);
                @Nullable FileLock taken = channel.tryLock()) {
            return taken != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    private static void delete(Path tree) {
        try (Stream<Path> entries = Files.walk(tree)) {
            for (Path entry : entries.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(entry);
            }
        } catch (IOException | UncheckedIOException e) {
            // It goes at the next start.
        }
    }

    @Override
    public void close() {
        try {
            lock.close();
        } catch (IOException e) {
            // The lock goes with the program.
        }
        delete(path);
    }
}
