package hearthcloth.words.korean;

/**
 * Particles after a name that is only known when it is said. A catalogue writes both forms, {@code 을(를)}; which one stands
 * is told by the last sound before it: a consonant or a vowel (docs/sources.md#particles). A letter or digit is heard by its
 * Korean name, so that {@code 1A} ends in a vowel and {@code 2C·1} in ㄹ.
 */
public final class Particles {

    private static final String[][] PAIRS = {
        {"을(를)", "을", "를"}, {"이(가)", "이", "가"}, {"은(는)", "은", "는"}, {"과(와)", "과", "와"}
    };
    private static final String ROAD = "(으)로";

    /** Digits whose names end in a consonant: 영 일 삼 육 칠 팔. */
    private static final String CLOSED_DIGITS = "013678";

    /** Those that end in ㄹ, as fractions do (½ is 이분의 일). */
    private static final String L_SOUNDS = "178½⅓¼⅛lLrR";

    /** Letters whose names end in a consonant: 엘 엠 엔 알. */
    private static final String CLOSED_LETTERS = "lmnrLMNR";

    /** Units are read out, and end in vowels: 센티미터, 밀리미터, 인치, 야드. */
    private static final String UNIT = "(?s).*[\\s\u00a0](?:cm|mm|in|m|yd)";

    private Particles() {}

    /** {@code words} with every pair of particles made the one that fits. */
    public static String fitted(String words) {
        String text = words;
        for (String[] pair : PAIRS) {
            text = fitted(text, pair[0], pair[1], pair[2]);
        }
        return road(text);
    }

    private static String fitted(String words, String both, String closed, String open) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        for (int at = words.indexOf(both); at >= 0; at = words.indexOf(both, from)) {
            out.append(words, from, at);
            out.append(isClosed(words.substring(0, at)) ? closed : open);
            from = at + both.length();
        }
        return out.append(words.substring(from)).toString();
    }

    /** {@code 으로} after a consonant, but {@code 로} after ㄹ. */
    private static String road(String words) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        for (int at = words.indexOf(ROAD); at >= 0; at = words.indexOf(ROAD, from)) {
            String before = words.substring(0, at);
            out.append(words, from, at).append(isClosed(before) && !endsInL(before) ? "으로" : "로");
            from = at + ROAD.length();
        }
        return out.append(words.substring(from)).toString();
    }

    private static boolean isClosed(String before) {
        char last = last(before);
        if (isSyllable(last)) {
            return coda(last) > 0;
        }
        return !before.matches(UNIT)
                && (CLOSED_DIGITS.indexOf(last) >= 0
                        || CLOSED_LETTERS.indexOf(last) >= 0
                        || L_SOUNDS.indexOf(last) >= 0);
    }

    private static boolean endsInL(String before) {
        char last = last(before);
        return isSyllable(last) ? coda(last) == 8 : L_SOUNDS.indexOf(last) >= 0;
    }

    /** The last sign that is heard: closing quotes and brackets are not. */
    private static char last(String before) {
        int at = before.length() - 1;
        while (at > 0 && "\"')]”’»」』".indexOf(before.charAt(at)) >= 0) {
            at--;
        }
        return at < 0 ? ' ' : before.charAt(at);
    }

    private static boolean isSyllable(char sign) {
        return sign >= '가' && sign <= '힣';
    }

    /** The final consonant of a syllable, from 0 for none; 8 is ㄹ: Unicode composes syllables in this order. */
    private static int coda(char syllable) {
        return (syllable - '가') % 28;
    }
}
