package hearthcloth.web;

import hearthcloth.store.OwnerOnly;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Says that a workroom is open on a file, and where: beside the file lies NAME.open, locked for as long as the workroom is
 * open, with its address. The system takes the lock back when a program ends in any way, so that the mark is never stale.
 * Where a disk knows no locks, nothing is marked.
 */
final class OpenMark implements AutoCloseable {

    /** Far behind the address, which stays readable for others where a lock keeps readers out. */
    private static final long LOCKED_PLACE = 1L << 40;

    private final @Nullable FileChannel channel;

    private OpenMark(@Nullable FileChannel channel) {
        this.channel = channel;
    }

    /** Marks the work as open; empty where another workroom has marked it. */
    static Optional<OpenMark> set(Path data) {
        try {
            OwnerOnly.file(beside(data));
            FileChannel channel = FileChannel.open(beside(data), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock lock = locked(channel);
            if (lock == null) {
                channel.close();
                return Optional.empty();
            }
            return Optional.of(new OpenMark(channel));
        } catch (IOException e) {
            return Optional.of(new OpenMark(null));
        }
    }

    private static @Nullable FileLock locked(FileChannel channel) throws IOException {
        try {
            return channel.tryLock(LOCKED_PLACE, 1, false);
        } catch (OverlappingFileLockException e) {
            return null; // Held by this very program.
        }
    }

    /** Where the workroom that marked it is; empty where it has not said so yet. */
    static Optional<String> address(Path data) {
        try {
            return Optional.of(Files.readString(beside(data)).strip()).filter(text -> text.startsWith("http://"));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Whether a workroom was ever open on the file; asked before this one has said so. */
    static boolean wasOpened(Path data) {
        try {
            return Files.size(beside(data)) > 0;
        } catch (IOException e) {
            return false;
        }
    }

    void say(String address) {
        if (channel != null) {
            try {
                write(channel, address);
            } catch (IOException e) {
                // A second start then says only that it is open.
            }
        }
    }

    private static void write(FileChannel channel, String line) throws IOException {
        channel.truncate(0);
        channel.write(ByteBuffer.wrap((line + "\n").getBytes(StandardCharsets.UTF_8)), 0);
    }

    @Override
    public void close() {
        if (channel != null) {
            try {
                // Not deleted: whoever waits for the lock of a deleted file would hold it beside the lock of a new one.
                if (channel.size() > 0) {
                    write(channel, "closed");
                }
                channel.close();
            } catch (IOException e) {
                // The lock goes with the program.
            }
        }
    }

    private static Path beside(Path data) {
        return data.resolveSibling(data.getFileName() + ".open");
    }
}
