package hearthcloth.cli.io;

import hearthcloth.wish.BadInputException;
import hearthcloth.wish.ListWords;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/**
 * Text that the maker hands in, from a file or standard input: limited in size, and in UTF-8 or refused with a
 * sentence.
 */
public final class InputText {

    private static final int MEGABYTE = 1 << 20;
    private static final int MOST_MEGABYTES = 16;
    private static final String STANDARD_INPUT = "-";
    private static final String AS_CSV = "save the table as CSV (UTF-8) and give that file";

    private InputText() {}

    /**
     * All text of {@code name}; {@code -} is standard input.
     *
     * @throws BadInputException when it is missing, a folder, unreadable, too large, empty or not text
     */
    public static String read(String name, InputStream in) {
        try {
            if (name.equals(STANDARD_INPUT)) {
                return text("standard input", in.readNBytes(MOST_MEGABYTES * MEGABYTE + 1));
            }
            Path path = Path.of(name);
            check(name, path);
            try (InputStream file = Files.newInputStream(path)) {
                return text(name, file.readNBytes(MOST_MEGABYTES * MEGABYTE + 1));
            }
        } catch (InvalidPathException e) {
            throw new BadInputException(
                    "\"" + ListWords.plain(name) + "\" is not the name of a file; check how it is written.");
        } catch (AccessDeniedException e) {
            throw new BadInputException(
                    ListWords.plain(name) + " may not be read by you; change its permissions or copy it.");
        } catch (IOException e) {
            throw new BadInputException(
                    ListWords.plain(name) + " could not be read to its end; check the disk and try again.");
        }
    }

    private static void check(String name, Path path) throws IOException {
        String shown = ListWords.plain(name);
        if (Files.isDirectory(path)) {
            throw new BadInputException(shown + " is a folder; give the CSV file inside it, such as "
                    + ListWords.plain(path.resolve("stash.csv").toString()) + ".");
        }
        if (!Files.exists(path)) {
            throw new BadInputException("There is no file " + shown + "; check its name and where you are ("
                    + ListWords.plain(Path.of("").toAbsolutePath().toString()) + ").");
        }
        if (Files.isRegularFile(path)) {
            checkSize(shown, Files.size(path));
        }
    }

    private static void checkSize(String shown, long bytes) {
        if (bytes > (long) MOST_MEGABYTES * MEGABYTE) {
            throw new BadInputException(shown + " is larger than " + MOST_MEGABYTES
                    + " MB, far more than a stash file needs; give the file that lists your fabric.");
        }
    }

    private static String text(String name, byte[] bytes) {
        String shown = ListWords.plain(name);
        checkSize(shown, bytes.length);
        if (bytes.length == 0) {
            throw new BadInputException(
                    shown + " is empty; its first line names the columns fabric,width,length and each line"
                            + " after it is a piece.");
        }
        if (starts(bytes, 'P', 'K', 3, 4) || starts(bytes, 0xd0, 0xcf, 0x11, 0xe0)) {
            throw new BadInputException(shown + " is a workbook or an archive, not text; " + AS_CSV + ".");
        }
        if (starts(bytes, 0xff, 0xfe) || starts(bytes, 0xfe, 0xff)) {
            throw new BadInputException(shown + " is text in UTF-16; " + AS_CSV + ".");
        }
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                throw new BadInputException(shown + " is not text (line " + lineOf(bytes, i)
                        + " holds a byte that is no letter); " + AS_CSV + ".");
            }
        }
        return decoded(shown, bytes);
    }

    private static String decoded(String shown, byte[] bytes) {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(buffer).toString();
        } catch (CharacterCodingException e) {
            throw new BadInputException(shown + " is not UTF-8 (line " + lineOf(bytes, buffer.position())
                    + " holds a letter in another encoding); " + AS_CSV + ".");
        }
    }

    private static int lineOf(byte[] bytes, int at) {
        int line = 1;
        for (int i = 0; i < at; i++) {
            line += bytes[i] == '\n' ? 1 : 0;
        }
        return line;
    }

    private static boolean starts(byte[] bytes, int... signature) {
        for (int i = 0; i < signature.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xff) != signature[i]) {
                return false;
            }
        }
        return true;
    }
}
