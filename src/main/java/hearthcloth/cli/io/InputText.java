package hearthcloth.cli.io;

import hearthcloth.wish.BadInputException;
import hearthcloth.wish.ListWords;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusingSentences;
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

    private InputText() {}

    /**
     * All text of {@code name}; {@code -} is standard input.
     *
     * @throws BadInputException when it is missing, a folder, unreadable, too large, empty or not text
     */
    public static String read(String name, InputStream in) {
        try {
            if (name.equals(STANDARD_INPUT)) {
                return text(RefusingSentences.givenInput(), in.readNBytes(MOST_MEGABYTES * MEGABYTE + 1));
            }
            Path path = Path.of(name);
            check(name, path);
            try (InputStream file = Files.newInputStream(path)) {
                return text(Argument.text(ListWords.plain(name)), file.readNBytes(MOST_MEGABYTES * MEGABYTE + 1));
            }
        } catch (InvalidPathException e) {
            throw refused(ListWords.plain(name), "NAME");
        } catch (AccessDeniedException e) {
            throw refused(ListWords.plain(name), "LOCKED");
        } catch (IOException e) {
            throw refused(ListWords.plain(name), "BROKEN");
        }
    }

    /** A file that cannot be read, and why: {@code NAME}, {@code LOCKED} or {@code BROKEN}. */
    static BadInputException refused(String shown, String why) {
        return new BadInputException(RefusingSentences.givenNot(Argument.text(shown), why));
    }

    static BadInputException gone(String shown) {
        String here = ListWords.plain(Path.of("").toAbsolutePath().toString());
        return new BadInputException(RefusingSentences.givenGone(Argument.text(shown), Argument.text(here)));
    }

    private static BadInputException noText(Argument shown, int line, String why) {
        return new BadInputException(RefusingSentences.givenNoText(Argument.text(Integer.toString(line)), shown, why));
    }

    private static void check(String name, Path path) throws IOException {
        String shown = ListWords.plain(name);
        if (Files.isDirectory(path)) {
            throw new BadInputException(RefusingSentences.givenCsv(
                    Argument.text(shown),
                    Argument.text(ListWords.plain(path.resolve("stash.csv").toString()))));
        }
        if (!Files.exists(path)) {
            throw gone(shown);
        }
        if (Files.isRegularFile(path)) {
            checkSize(Argument.text(shown), Files.size(path));
        }
    }

    private static void checkSize(Argument shown, long bytes) {
        if (bytes > (long) MOST_MEGABYTES * MEGABYTE) {
            throw new BadInputException(
                    RefusingSentences.givenLarge(Argument.text(Integer.toString(MOST_MEGABYTES)), shown));
        }
    }

    private static String text(Argument shown, byte[] bytes) {
        checkSize(shown, bytes.length);
        if (bytes.length == 0) {
            throw new BadInputException(RefusingSentences.givenEmpty(shown));
        }
        if (starts(bytes, 'P', 'K', 3, 4) || starts(bytes, 0xd0, 0xcf, 0x11, 0xe0)) {
            throw noText(shown, 0, "ARCHIVE");
        }
        if (starts(bytes, 0xff, 0xfe) || starts(bytes, 0xfe, 0xff)) {
            throw noText(shown, 0, "UTF16");
        }
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                throw noText(shown, lineOf(bytes, i), "BYTE");
            }
        }
        return decoded(shown, bytes);
    }

    private static String decoded(Argument shown, byte[] bytes) {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(buffer).toString();
        } catch (CharacterCodingException e) {
            throw noText(shown, lineOf(bytes, buffer.position()), "ENCODING");
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
