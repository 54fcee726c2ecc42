package hearthcloth.draw.letters;

/**
 * Makes any text fit to be written down: names in a stash file may hold anything.
 *
 * <p>Control characters, unpaired surrogates and characters that XML forbids become blanks; characters that turn the
 * direction of what follows are dropped, so that a name cannot reverse the numbers beside it.
 */
public final class SafeText {

    private SafeText() {}

    public static String clean(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            if (isDirection(c)) {
                return;
            }
            out.appendCodePoint(isWritable(c) ? c : ' ');
        });
        return out.toString();
    }

    /** The text as it is shown on one line: also without the soft hyphens, where it might have been broken. */
    public static String onOneLine(String text) {
        return clean(text).replace("\u00ad", "");
    }

    private static boolean isWritable(int c) {
        return c >= 0x20
                && !(c >= 0x7f && c < 0xa0)
                && !(c >= 0xd800 && c <= 0xdfff)
                && (c & 0xfffe) != 0xfffe
                && c != 0x2028
                && c != 0x2029;
    }

    /** Unicode's explicit directional formatting characters (docs/sources.md#bidi). */
    private static boolean isDirection(int c) {
        return c == 0x200e || c == 0x200f || c == 0x61c || (c >= 0x202a && c <= 0x202e) || (c >= 0x2066 && c <= 0x2069);
    }
}
