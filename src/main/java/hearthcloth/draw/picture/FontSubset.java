package hearthcloth.draw.picture;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;

/** The few letters that a picture uses, as a small font to embed in it. */
final class FontSubset {

    /**
     * The tables a browser needs to draw letters; kerning is left out, so that words are as wide as {@link Typeface}
     * says.
     */
    private static final List<String> TABLES =
            List.of("head", "hhea", "maxp", "OS/2", "name", "post", "cmap", "loca", "glyf", "hmtx");

    private FontSubset() {}

    static String base64(Weight weight, Set<Integer> letters) {
        TrueTypeFont font = Typeface.shared(weight);
        synchronized (font) {
            return encoded(font, letters);
        }
    }

    private static String encoded(TrueTypeFont font, Set<Integer> letters) {
        try {
            TTFSubsetter subset = new TTFSubsetter(font, TABLES);
            subset.setPrefix("HRTHCL");
            letters.stream().filter(Typeface::has).forEach(subset::add);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            subset.writeToStream(out);
            return Base64.getEncoder().encodeToString(out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
