package hearthcloth.idea;

/**
 * Bytes as text that may stand in a page: four bytes in five signs, where base 64 takes five and a third. The signs are those from
 * "(" to "~" without {@code <} and the backslash, 85 in all, so that 85 to the fifth exceeds 2 to the 32nd; a last group that is
 * not full is as many signs as it has bytes, and one more. {@code page.js} reads it.
 */
final class DenseText {

    private static final int SIGNS = 85;
    private static final String ALPHABET = alphabet();

    private DenseText() {}

    private static String alphabet() {
        StringBuilder signs = new StringBuilder();
        for (char sign = '('; sign <= '~'; sign++) {
            if (sign != '<' && sign != '\\') {
                signs.append(sign);
            }
        }
        return signs.toString();
    }

    static String of(byte[] bytes) {
        StringBuilder text = new StringBuilder(bytes.length / 4 * 5 + 5);
        for (int from = 0; from < bytes.length; from += 4) {
            long group = 0;
            for (int i = 0; i < 4; i++) {
                group = group << 8 | (from + i < bytes.length ? bytes[from + i] & 255 : 0);
            }
            int signs = Math.min(4, bytes.length - from) + 1;
            for (long unit = 52_200_625, i = 0; i < signs; i++, unit /= SIGNS) {
                text.append(ALPHABET.charAt((int) (group / unit % SIGNS)));
            }
        }
        return text.toString();
    }
}
