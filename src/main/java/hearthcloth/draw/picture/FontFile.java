package hearthcloth.draw.picture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The files of the typeface, for writers that embed letters. */
final class FontFile {

    private FontFile() {}

    static InputStream file(Weight weight) {
        InputStream in = FontFile.class.getResourceAsStream(weight.resource());
        if (in == null) {
            throw new IllegalStateException("the font " + weight.resource() + " is not on the class path");
        }
        return in;
    }

    /** The font that subsets are taken from. Who reads from it must hold its lock, and must not close it. */
    static TrueTypeFont shared(Weight weight) {
        return switch (weight) {
            case REGULAR -> Loaded.REGULAR;
            case SEMIBOLD -> Loaded.SEMIBOLD;
            case BOLD -> Loaded.BOLD;
        };
    }

    /** The font read anew, for a writer to embed and close. */
    static TrueTypeFont open(Weight weight) {
        try (InputStream in = file(weight)) {
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            // Ligatures would make words narrower than measured, and cost a hundred times the rest of writing a page.
            font.setEnableGsub(false);
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Read once, when the first letters are embedded. */
    private static final class Loaded {
        static final TrueTypeFont REGULAR = open(Weight.REGULAR);
        static final TrueTypeFont SEMIBOLD = open(Weight.SEMIBOLD);
        static final TrueTypeFont BOLD = open(Weight.BOLD);
    }
}
