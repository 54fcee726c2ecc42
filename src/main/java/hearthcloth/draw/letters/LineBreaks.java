package hearthcloth.draw.letters;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a line of words may end. Western and Korean text breaks at its blanks; Japanese has none and breaks between any two
 * letters but those that may not begin a line or end one (docs/sources.md#line-breaks). A soft hyphen is a break within a
 * word, shown as a hyphen only where the line ends there.
 */
public final class LineBreaks {

    private static final char SOFT_HYPHEN = '\u00ad';

    /** What may not begin a line: closing marks, small kana, the long sound mark, repeat marks, and signs after a number. */
    private static final String NOT_FIRST =
            "、。，．,.・:;：；?!？！‼⁇⁈⁉゛゜ヽヾゝゞ々〻ー゠–〜～」』）)】》〉〕］]｝}〟’”»" + "ぁぃぅぇぉっゃゅょゎゕゖァィゥェォッャュョヮヵヶㇰㇱㇲㇳㇴㇵㇶㇷㇸㇹㇺㇻㇼㇽㇾㇿ%％‰°℃′″㎝㎜㎡/／";

    /** What may not end a line: opening marks and signs before a number. */
    private static final String NOT_LAST = "「『（(【《〈〔［[｛{〝‘“«¥￥$＄£＃#№";

    /** Marks that stay together when doubled. */
    private static final String INSEPARABLE = "—…‥―";

    private LineBreaks() {}

    /**
     * A part of a text that is never parted.
     *
     * @param before what stands between the part before and this one on one line: a blank or nothing
     * @param ending what is added where the line ends after this part: a hyphen or nothing
     */
    public record Part(String before, String text, String ending) {}

    /** The parts of a text, in their order. */
    public static List<Part> parts(String text) {
        List<Part> parts = new ArrayList<>();
        for (String word : text.split(" +", -1)) {
            String before = parts.isEmpty() ? "" : " ";
            int from = 0;
            for (int at = 1; at < word.length(); at++) {
                if (word.charAt(at) == SOFT_HYPHEN) {
                    parts.add(new Part(before, word.substring(from, at), "-"));
                } else if (mayBreak(word, at)) {
                    parts.add(new Part(before, word.substring(from, at), ""));
                } else {
                    continue;
                }
                before = "";
                from = word.charAt(at) == SOFT_HYPHEN ? at + 1 : at;
            }
            parts.add(new Part(before, word.substring(Math.min(from, word.length())), ""));
        }
        return List.copyOf(parts);
    }

    /** Whether two parts of a cut text are joined by a blank: not where Japanese meets. */
    public static boolean needsBlank(String first, String second) {
        return first.isEmpty()
                || second.isEmpty()
                || (!isJapanese(first.codePointBefore(first.length())) && !isJapanese(second.codePointAt(0)));
    }

    private static final String VOWELS = "aeiouyäöüàâéèêëîïôùûáíóúœæAEIOUYÄÖÜÉ";

    /** Consonants that go to the next line together. */
    private static final List<String> TOGETHER = List.of(
            "sch", "str", "ch", "ck", "ph", "rh", "sh", "th", "qu", "gn", "bl", "br", "cl", "cr", "dr", "fl", "fr",
            "gl", "gr", "kl", "kr", "pl", "pr", "tr", "ll", "rr");

    /** The fewest letters of a word on a line. */
    private static final int FEWEST = 3;

    /**
     * The places between the syllables of a western word that is too long for a line: of the consonants between two vowels
     * the last begins the next line (docs/sources.md#syllables). None in what is not a word of letters.
     */
    public static List<Integer> syllables(String word) {
        List<Integer> places = new ArrayList<>();
        if (!word.chars().allMatch(letter -> Character.isLetter(letter) && letter < 0x250)) {
            return places;
        }
        for (int at = 1; at <= word.length() - FEWEST; at++) {
            if (isVowel(word, at - 1) && !isVowel(word, at)) {
                int vowel = at;
                while (vowel < word.length() && !isVowel(word, vowel)) {
                    vowel++;
                }
                int place = onset(word, at, vowel);
                if (vowel < word.length() && place >= FEWEST && place <= word.length() - FEWEST) {
                    places.add(place);
                }
            }
        }
        return places;
    }

    /** Where the next syllable begins, of the consonants from {@code from} up to its vowel. */
    private static int onset(String word, int from, int vowel) {
        for (String group : TOGETHER) {
            int place = vowel - group.length();
            boolean begins = place >= from && word.startsWith(group, place);
            // As a rule "s-tr", but the second half of a German word made of two begins with it: "Leinen-streifen".
            if (begins && (!group.startsWith("st") || place > from)) {
                return place;
            }
        }
        return vowel - 1;
    }

    private static boolean isVowel(String word, int at) {
        return VOWELS.indexOf(word.charAt(at)) >= 0;
    }

    private static boolean mayBreak(String word, int at) {
        if (Character.isLowSurrogate(word.charAt(at))) {
            return false;
        }
        int last = word.codePointBefore(at);
        int first = word.codePointAt(at);
        boolean japanese = isJapanese(last) || isJapanese(first);
        return japanese && !isBound(last) && !isBound(first) && isParted(last, first);
    }

    private static boolean isParted(int last, int first) {
        return NOT_FIRST.indexOf(first) < 0
                && NOT_LAST.indexOf(last) < 0
                && !(last == first && INSEPARABLE.indexOf(last) >= 0);
    }

    /** A blank that joins, and letters of Hangul, which belong to their word also beside a kanji. */
    private static boolean isBound(int letter) {
        return letter == 0xa0 || letter == 0x2060 || letter == 0xfeff || Script.isHangul(letter);
    }

    private static boolean isJapanese(int letter) {
        return letter >= 0x2e80 && Script.of(letter) == Script.JAPANESE;
    }
}
