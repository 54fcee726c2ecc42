package hearthcloth.draw.picture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The letters of all pictures: Source Sans 3 (SIL Open Font License 1.1, beside the font files), with the widths of
 * words, by which labels are kept apart.
 */
public final class Typeface {

    /** Height of capitals and figures as a share of the em (from the font's OS/2 table: 660 of 1000). */
    public static final double CAPS = 0.66;

    /**
     * How far letters without accents reach above the baseline, as a share of the em; {@link #BELOW} is the share below
     * it.
     */
    public static final double ABOVE = 0.74;

    public static final double BELOW = 0.22;

    /**
     * The width assumed for a letter that the typeface lacks, as a share of the em; wider than in most other typefaces.
     */
    private static final double UNKNOWN = 1.2;

    /** Stands for a letter that the typeface lacks where no other typeface can be used. */
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

    /**
     * The font that words are measured with. Who reads more than widths from it must hold its lock, and must not close
     * it.
     */
    static TrueTypeFont shared(Weight weight) {
        return Loaded.of(weight).font();
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

    /** Whether a character is a joiner or variation selector, which shows nothing by itself. */
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
