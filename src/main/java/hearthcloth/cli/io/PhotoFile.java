package hearthcloth.cli.io;

import hearthcloth.wish.BadInputException;
import hearthcloth.wish.ListWords;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** A photograph that the maker hands in, from a file or standard input; the reader refuses what is too large. */
public final class PhotoFile {

    /**
     * The most bytes read: one more than the reader accepts, so that the reader can refuse the photograph as too large.
     */
    private static final int MOST = (80 << 20) + 1;

    private PhotoFile() {}

    /**
     * All bytes of {@code name}; {@code -} is standard input.
     *
     * @throws BadInputException when it is missing, a folder, unreadable or empty
     */
    public static byte[] read(String name, InputStream in) {
        String shown = ListWords.plain(name);
        try {
            byte[] bytes = name.equals("-") ? in.readNBytes(MOST) : bytes(shown, Path.of(name));
            if (bytes.length == 0) {
                throw new BadInputException((name.equals("-") ? "Standard input" : shown)
                        + " is empty; give the photograph as the camera or phone took it.");
            }
            return bytes;
        } catch (InvalidPathException e) {
            throw new BadInputException("\"" + shown + "\" is not the name of a file; check how it is written.");
        } catch (AccessDeniedException e) {
            throw new BadInputException(shown + " may not be read by you; change its permissions or copy it.");
        } catch (IOException e) {
            throw new BadInputException(shown + " could not be read to its end; check the disk and try again.");
        }
    }

    private static byte[] bytes(String shown, Path path) throws IOException {
        if (Files.isDirectory(path)) {
            throw new BadInputException(shown + " is a folder; give the photograph inside it.");
        }
        if (!Files.exists(path)) {
            throw new BadInputException("There is no file " + shown + "; check its name and where you are ("
                    + ListWords.plain(Path.of("").toAbsolutePath().toString()) + ").");
        }
        try (InputStream file = Files.newInputStream(path)) {
            return file.readNBytes(MOST);
        }
    }
}
