package hearthcloth.draw.letters;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The font files, for writers that embed letters. */
public final class FontFile {

    /** Stands for a letter that no font has. */
    private static final String MISSING = "□";

    /** Each is read when the first letters are taken from it, and kept. */
    private static final Map<Script, Map<Weight, TrueTypeFont>> SHARED = new EnumMap<>(Script.class);

    private FontFile() {}

    /** The bytes of a font, to be read once and closed. */
    public static InputStream file(Script script, Weight weight) {
        InputStream in = FontFile.class.getResourceAsStream(script.resource(weight));
        if (in == null) {
            throw new IllegalStateException("the font " + script.resource(weight) + " is not on the class path");
        }
        return in;
    }

    /** The font that subsets are taken from. Who reads from it must hold its lock, and must not close it. */
    static TrueTypeFont shared(Script script, Weight weight) {
        synchronized (SHARED) {
            return SHARED.computeIfAbsent(script, each -> new EnumMap<>(Weight.class))
                    .computeIfAbsent(script.cut(weight), each -> open(script, each));
        }
    }

    /** The font read anew, for a writer to embed and close. */
    public static TrueTypeFont open(Script script, Weight weight) {
        try (InputStream in = file(script, weight)) {
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            // Ligatures would make words narrower than measured, and cost a hundred times the rest of writing a page.
            font.setEnableGsub(false);
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@code text} with □ for each letter that no font has: for PDF, where nothing else is embedded. */
    public static String printable(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            if (has(c)) {
                out.appendCodePoint(c);
            } else if (!isJoining(c)) {
                out.append(MISSING);
            }
        });
        return out.toString();
    }

    /** Whether the font of a letter's writing has it. */
    static boolean has(int letter) {
        Script script = Script.of(letter);
        if (script == Script.WESTERN) {
            return LetterWidths.of(letter, Weight.REGULAR) >= 0;
        }
        TrueTypeFont font = shared(script, Weight.REGULAR);
        synchronized (font) {
            try {
                return font.getUnicodeCmapLookup().getGlyphId(letter) != 0;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** Whether a character is a joiner or variation selector, which shows nothing by itself. */
    private static boolean isJoining(int c) {
        return c == 0x200c || c == 0x200d || (c >= 0xfe00 && c <= 0xfe0f);
    }
}
