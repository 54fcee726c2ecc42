package hearthcloth.draw.letters;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;

/** The few letters that a picture uses, as a small font to embed in it. */
public final class FontSubset {

    /**
     * The tables a browser needs to draw letters; kerning is left out, so that words are as wide as {@link Typeface}
     * says.
     */
    private static final List<String> TABLES =
            List.of("head", "hhea", "maxp", "OS/2", "name", "post", "cmap", "loca", "glyf", "hmtx");

    private FontSubset() {}

    /** The three weights with the letters of Western Europe, as style rules for a page that shows bare pictures. */
    public static String pageFaces() {
        Set<Integer> letters = new TreeSet<>();
        for (int letter = 0x20; letter < 0x2300; letter++) {
            if (letter < 0x100 || letter >= 0x2000) {
                letters.add(letter);
            }
        }
        StringBuilder faces = new StringBuilder();
        for (Weight weight : Weight.values()) {
            faces.append("@font-face{font-family:'Source Sans 3';font-weight:")
                    .append(weight.number())
                    .append(";src:url(data:font/ttf;base64,")
                    .append(base64(Script.WESTERN, weight, letters))
                    .append(")}\n");
        }
        return faces.toString();
    }

    /** A small font with those of the letters that the font of this writing has. */
    public static String base64(Script script, Weight weight, Set<Integer> letters) {
        TrueTypeFont font = FontFile.shared(script, weight);
        synchronized (font) {
            return encoded(font, letters);
        }
    }

    private static String encoded(TrueTypeFont font, Set<Integer> letters) {
        try {
            TTFSubsetter subset = new TTFSubsetter(font, TABLES);
            subset.setPrefix("HRTHCL");
            letters.stream().filter(FontFile::has).forEach(subset::add);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            subset.writeToStream(out);
            return Base64.getEncoder().encodeToString(out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
