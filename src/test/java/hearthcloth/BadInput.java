package hearthcloth;

import hearthcloth.cli.CommandLineTool;
import hearthcloth.measure.Ruler;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Photograph;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.stash.StashFile;
import hearthcloth.store.archive.Archive;
import hearthcloth.store.journal.DocumentEdit;
import hearthcloth.store.json.KeptCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.speech.Voice;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * Where bytes from outside enter the program. Each taker gets any bytes and ends well or refuses in its own way; whatever else
 * it throws is a fault. {@code checks/long-run/fuzz} leads a coverage-guided fuzzer to them, one at a time, by the property
 * {@code hearthcloth.taker}.
 */
public final class BadInput {

    /** All of them, by name. */
    public static final Map<String, Consumer<byte[]>> TAKERS = new TreeMap<>(Map.of(
            "stash", BadInput::stash,
            "archive", BadInput::archive,
            "wish", BadInput::wish,
            "cloth", BadInput::cloth,
            "photograph", BadInput::photograph,
            "image", BadInput::image,
            "journal", BadInput::journal));

    private BadInput() {}

    /** What the fuzzer calls. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        Consumer<byte[]> taker = TAKERS.get(System.getProperty("hearthcloth.taker", "stash"));
        if (taker != null) {
            taker.accept(bytes);
        }
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static void stash(byte[] bytes) {
        if (StashFile.read(text(bytes), Optional.empty()) instanceof StashFile.Faulty faulty) {
            said(String.join("\n", faulty.lines(20, Voice.english(Ruler.EIGHTHS))));
        }
    }

    private static void archive(byte[] bytes) {
        try {
            Archive.read(bytes).bytes();
        } catch (StoreException e) {
            said(String.valueOf(e.getMessage()));
        }
    }

    private static void wish(byte[] bytes) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
        int code = new CommandLineTool((asked, shell) -> 0)
                .run(
                        new String[] {"size", "--gift", text(bytes).replace("\0", "")},
                        new ByteArrayInputStream(new byte[0]),
                        stream,
                        stream);
        said(out.toString(StandardCharsets.UTF_8));
        if (code < 0 || code > 2) {
            throw new AssertionError("it ended with " + code);
        }
    }

    private static void cloth(byte[] bytes) {
        try {
            KeptCloth.read(KeptCloth.text(KeptCloth.read(text(bytes))));
        } catch (IllegalArgumentException | ArithmeticException e) {
            // Refused; who reads one out of a file says in which.
        }
    }

    private static void photograph(byte[] bytes) {
        PhotoReader.read(bytes, ReferenceSheet.parse("a4"), (share, what) -> {});
    }

    private static void image(byte[] bytes) {
        if (Photograph.refusal(bytes).isEmpty()) {
            try {
                Photograph.of(bytes).small(64);
            } catch (RefusedException e) {
                said(String.valueOf(e.getMessage()));
            }
        }
    }

    private static void journal(byte[] bytes) {
        try {
            DocumentEdit edit = DocumentEdit.read(text(bytes));
            edit.reversed().appliedTo(edit.appliedTo(text(bytes)));
        } catch (StoreException e) {
            said(String.valueOf(e.getMessage()));
        }
    }

    private static void said(String words) {
        if (words.contains("went wrong inside Hearthcloth") || words.contains("\tat hearthcloth.")) {
            throw new AssertionError(words);
        }
    }
}
