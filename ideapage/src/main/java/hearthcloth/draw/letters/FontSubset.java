package hearthcloth.draw.letters;

import java.util.Set;

/** In the page, letters are embedded once for all pictures; none is embedded in a picture. */
public final class FontSubset {

    private FontSubset() {}

    public static String base64(Script script, Weight weight, Set<Integer> letters) {
        throw new UnsupportedOperationException("a picture of the page embeds no letters");
    }
}
