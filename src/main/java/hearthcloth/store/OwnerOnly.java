package hearthcloth.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** Files and folders that nobody reads but their owner, where the system knows such a thing; Windows keeps them in her profile. */
public final class OwnerOnly {

    private static final Set<PosixFilePermission> FILE = PosixFilePermissions.fromString("rw-------");
    private static final Set<PosixFilePermission> FOLDER = PosixFilePermissions.fromString("rwx------");

    private OwnerOnly() {}

    /** Makes the file where there is none, and closes it to others; one that belongs to somebody else is left as it is. */
    public static void file(Path file) throws IOException {
        if (!isPosix(file)) {
            return;
        }
        if (!Files.exists(file)) {
            Files.createFile(file, PosixFilePermissions.asFileAttribute(FILE));
        }
        close(file, FILE);
    }

    /** Makes the folder where there is none, and closes it to others. */
    public static void folder(Path folder) throws IOException {
        Files.createDirectories(folder);
        if (isPosix(folder)) {
            close(folder, FOLDER);
        }
    }

    private static void close(Path path, Set<PosixFilePermission> most) throws IOException {
        Set<PosixFilePermission> now = Files.getPosixFilePermissions(path);
        if (!most.containsAll(now)) {
            now.retainAll(most);
            try {
                Files.setPosixFilePermissions(path, now);
            } catch (IOException e) {
                // Somebody else's, shared on purpose, or a disk that can only be read.
            }
        }
    }

    private static boolean isPosix(Path path) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix");
    }
}
