package hearthcloth.draw.picture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;


/**
 * The letters all pictures are set in: Source Sans 3 (SIL Open Font License 1.1, beside the font files). Knows how wide
 * words are, which is how labels are kept apart.
 */
public final class Typeface {

    /** Height of capitals and figures, of the em (from the font's OS/2 table: 660 of 1000). */
    public static final double CAPS = 0.66;

    /** How far letters reach above and below the baseline, of the em, accents left out. */
    public static final double ABOVE = 0.74;

    public static final double BELOW = 0.22;

    /** Assumed for a letter the typeface lacks: wider than those of most other faces. */
    private static final double UNKNOWN = 1.2;

    /** Stands for a letter that the typeface lacks where no other typeface can step in. */
    private static final String MISSING = "□";

    private Typeface() {}

    /** The width of {@code text} set in {@code size} millimetres, in millimetres; no kerning. */
    public static double width(String text, double size, Weight weight) {
        Metrics metrics = Loaded.of(weight);
        return size
                * SafeText.clean(text)
                        .codePoints()
                        .mapToDouble(metrics::advance)
                        .sum();
    }

    /** {@code text} with □ for each letter the typeface lacks: for PDF, where nothing else is embedded. */
    static String printable(String text) {
        Metrics metrics = Loaded.of(Weight.REGULAR);
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            if (metrics.has(c)) {
                out.appendCodePoint(c);
            } else if (!isJoining(c)) {
                out.append(MISSING);
            }
        });
        return out.toString();
    }

    static boolean has(int codePoint) {
        return Loaded.of(Weight.REGULAR).has(codePoint);
    }

    static InputStream file(Weight weight) {
        InputStream in = Typeface.class.getResourceAsStream(weight.resource());
        if (in == null) {
            throw new IllegalStateException("the font " + weight.resource() + " is not on the class path");
        }
        return in;
    }

    /** The font that words are measured with; whoever reads more than widths from it holds its lock, and does not close it. */
    static TrueTypeFont shared(Weight weight) {
        return Loaded.of(weight).font();
    }

    /** A fresh reading of the font, for a writer to embed and close. */
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

    /** Joiners and variation selectors, which show nothing by themselves. */
    private static boolean isJoining(int c) {
        return c == 0x200c || c == 0x200d || (c >= 0xfe00 && c <= 0xfe0f);
    }

    private record Metrics(TrueTypeFont font, CmapLookup cmap, int em) {

        static Metrics of(Weight weight) {
            try {
                TrueTypeFont font = open(weight);
                font.getAdvanceWidth(0); // reads the table of widths now: several guides may be measured at once later
                return new Metrics(font, font.getUnicodeCmapLookup(), font.getUnitsPerEm());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        boolean has(int c) {
            return cmap.getGlyphId(c) != 0;
        }

        double advance(int c) {
            int glyph = cmap.getGlyphId(c);
            try {
                return glyph == 0 ? UNKNOWN : (double) font.getAdvanceWidth(glyph) / em;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** Read once, when the first word is measured. */
    private static final class Loaded {
        static final Metrics REGULAR = Metrics.of(Weight.REGULAR);
        static final Metrics SEMIBOLD = Metrics.of(Weight.SEMIBOLD);
        static final Metrics BOLD = Metrics.of(Weight.BOLD);

        static Metrics of(Weight weight) {
            return switch (weight) {
                case REGULAR -> REGULAR;
                case SEMIBOLD -> SEMIBOLD;
                case BOLD -> BOLD;
            };
        }
    }
}
