package hearthcloth.cli.io;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A hidden folder to write in until all is complete. It is gone when it is closed, when the program is stopped by Ctrl-C or
 * a signal, and at the next run where the program was killed: a lock inside tells who still writes. Holds {@code new},
 * what is being made, and {@code old}, what it takes the place of.
 */
final class HiddenFolder implements AutoCloseable {

    static final String NAME = ".hearthcloth-";
    private static final String LOCK = "lock";

    /** Beside a program that still writes, the folder may need more than one sweep. */
    private static final int SWEEPS = 200;

    /** What is done while the program cannot be stopped half way. */
    @FunctionalInterface
    interface Step {
        void run() throws IOException;
    }

    private final Path folder;
    private final Thread hook = new Thread(this::stopped, "tidying");
    private @Nullable FileChannel lock;
    private boolean stopped;

    private HiddenFolder(Path folder) {
        this.folder = folder;
    }

    /** A new one in {@code parent}, from which those of killed runs are taken away first. */
    static HiddenFolder in(Path parent) throws IOException {
        HiddenFolder hidden = new HiddenFolder(parent.resolve(NAME + UUID.randomUUID()));
        try {
            // Before there is a folder, so that at no moment a signal finds one that nobody takes away.
            Runtime.getRuntime().addShutdownHook(hidden.hook);
        } catch (IllegalStateException e) {
            throw new IOException("stopped", e);
        }
        hidden.wholly(hidden::begin);
        sweep(parent, hidden.folder);
        return hidden;
    }

    private void begin() throws IOException {
        Files.createDirectory(folder);
        FileChannel opened =
                FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        lock = opened;
        try {
            opened.tryLock();
        } catch (IOException e) {
            // A disk without locks: then nobody can take another's for dead either.
        }
    }

    Path made() {
        return folder.resolve("new");
    }

    Path old() {
        return folder.resolve("old");
    }

    /** Runs a step wholly, or not at all where the program is being stopped. */
    synchronized void wholly(Step step) throws IOException {
        if (stopped) {
            throw new IOException("stopped");
        }
        step.run();
    }

    /** Whether somebody stopped the program, so that what fails now fails for that. */
    synchronized boolean isStopped() {
        return stopped;
    }

    private synchronized void stopped() {
        stopped = true;
        for (int i = 0; i < SWEEPS && Files.exists(folder); i++) {
            try {
                delete(folder);
            } catch (IOException e) {
                // Something was just written into it: once more.
            }
        }
    }

    @Override
    public synchronized void close() throws IOException {
        if (!stopped) {
            FileChannel held = lock;
            if (held != null) {
                held.close();
            }
            delete(folder);
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                // It runs just now, and finds nothing to do.
            }
        }
    }

    /** Takes away what killed runs left here; a disk on which that cannot be done keeps it. */
    private static void sweep(Path parent, Path own) {
        try {
            for (Path left : listed(parent)) {
                boolean hidden = String.valueOf(left.getFileName()).startsWith(NAME);
                if (hidden
                        && !left.equals(own)
                        && Files.getOwner(left, LinkOption.NOFOLLOW_LINKS).equals(Files.getOwner(own))) {
                    sweep(left);
                }
            }
        } catch (IOException e) {
            // Left as it is.
        }
    }

    private static void sweep(Path left) throws IOException {
        boolean folder = Files.isDirectory(left, LinkOption.NOFOLLOW_LINKS);
        if (folder && isDead(left.resolve(LOCK))) {
            finish(left);
            delete(left);
        } else if (Files.isRegularFile(left, LinkOption.NOFOLLOW_LINKS)
                && left.toString().endsWith(".part")
                && isDead(left)) {
            Files.deleteIfExists(left);
        }
    }

    /** Whether nobody holds its lock; one that is not there yet is just being made. */
    private static boolean isDead(Path locked) {
        if (!Files.exists(locked)) {
            return false;
        }
        try (FileChannel channel = FileChannel.open(locked, StandardOpenOption.WRITE);
                @Nullable FileLock taken = channel.tryLock()) {
            return taken != null;
        } catch (IOException | OverlappingFileLockException e) {
            return false;
        }
    }

    /**
     * Ends what a kill broke off. Once the first new folder has been put in its place, all old ones are out: the rest
     * follows. Before that, the old ones go back.
     */
    private static void finish(Path left) throws IOException {
        Path made = left.resolve("new");
        Path old = left.resolve("old");
        if (!Files.isDirectory(old)) {
            return;
        }
        Path from = Files.isDirectory(made) && !Files.exists(made.resolve("1")) ? made : old;
        for (Path entry : listed(from)) {
            Path to = left.resolveSibling(entry.getFileName());
            if (OutputFolder.isNamedLikeOurs(entry) && !Files.exists(to)) {
                Files.move(entry, to);
            }
        }
    }

    static List<Path> listed(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.sorted().toList();
        }
    }

    static void delete(Path tree) throws IOException {
        if (!Files.exists(tree, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (Stream<Path> entries = Files.walk(tree)) {
            for (Path entry : entries.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(entry);
            }
        } catch (java.io.UncheckedIOException e) {
            throw new IOException(e);
        }
    }
}
