package hearthcloth.draw.picture;

import java.util.Set;

/** In the page, letters are embedded once for all pictures; none is embedded in a picture. */
final class FontSubset {

    private FontSubset() {}

    static String base64(Weight weight, Set<Integer> letters) {
        throw new UnsupportedOperationException("a picture of the page embeds no letters");
    }
}
