package hearthcloth.cli.io;

import hearthcloth.wish.BadInputException;
import hearthcloth.wish.ListWords;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusingSentences;
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
                throw new BadInputException(RefusingSentences.givenPhotoEmpty(
                        name.equals("-")
                                ? new Argument.Capital(RefusingSentences.givenInput())
                                : Argument.text(shown)));
            }
            return bytes;
        } catch (InvalidPathException e) {
            throw InputText.refused(shown, "NAME");
        } catch (AccessDeniedException e) {
            throw InputText.refused(shown, "LOCKED");
        } catch (IOException e) {
            throw InputText.refused(shown, "BROKEN");
        }
    }

    private static byte[] bytes(String shown, Path path) throws IOException {
        if (Files.isDirectory(path)) {
            throw new BadInputException(RefusingSentences.givenPhoto(Argument.text(shown)));
        }
        if (!Files.exists(path)) {
            throw InputText.gone(shown);
        }
        try (InputStream file = Files.newInputStream(path)) {
            return file.readNBytes(MOST);
        }
    }
}
