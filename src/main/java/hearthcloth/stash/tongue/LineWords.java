package hearthcloth.stash.tongue;

import java.util.List;

/**
 * A line of pieces with its counts, units, and words for pieces and their sides in English, and the fabric's name as it was
 * written: "3 bandes lin bleu 10 x 50 cm" is "3 of them, lin bleu 10 x 50 cm". A line in English stays as it is. Which word
 * means which is ours, from memory (docs/sources.md#line-words).
 */
public final class LineWords {

    private static final List<LineTongue> TONGUES = List.of(
            EasternLines.KOREAN, EasternLines.JAPANESE, LatinLines.FRENCH, LatinLines.GERMAN, LatinLines.SPANISH);

    private LineWords() {}

    /** The line in English where it says how many, how large and what is known of the cloth. */
    public static String english(String line) {
        String plain = narrow(line);
        for (LineTongue tongue : TONGUES) {
            plain = tongue.english(plain);
        }
        return LatinLines.JOINS.english(plain);
    }

    /** Wide letters of eastern keyboards as the usual ones; eastern commas as commas. */
    private static String narrow(String line) {
        StringBuilder out = new StringBuilder(line.length());
        for (int i = 0; i < line.length(); i++) {
            char letter = line.charAt(i);
            if (letter >= 0xff01 && letter <= 0xff5e) {
                out.append((char) (letter - 0xfee0));
            } else if (letter == '\u3000') {
                out.append(' ');
            } else if (letter == '、' || letter == '。') {
                out.append(", ");
            } else {
                out.append("✕✖╳".indexOf(letter) >= 0 ? '×' : letter);
            }
        }
        return out.toString();
    }
}
