package hearthcloth.stash;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The words of a line beside its size, removed one kind after another until the fabric's name is left. For one use. */
final class SpokenWords {

    static final Map<Pattern, Fabric.Faces> FACES = ordered(
            words("no right side|(?:the )?same (?:on |from )?both (?:sides|faces)|both (?:sides|faces)"
                    + "(?: (?:alike|the same))?|reversible|two[ -]sided"),
            Fabric.Faces.SAME,
            words("(?:with |has |having )?(?:a |one )?right[ -]side[ds]?|one[ -]sided|(?:a )?wrong side"),
            Fabric.Faces.RIGHT);

    static final Map<Pattern, Fabric.Nap> NAP = ordered(
            words("(?:no|without(?: a)?) nap|nap any|any way"),
            Fabric.Nap.ANY,
            words("(?:with |has )?(?:a )?nap(?: lengthwise)?|lengthwise|one[ -]way"),
            Fabric.Nap.LENGTHWISE);

    static final Map<Pattern, Piece.Washed> WASHED = ordered(
            words("unwashed|not (?:yet )?washed|never washed"),
            Piece.Washed.NO,
            words("(?:pre-?|already )?washed"),
            Piece.Washed.YES);

    private static final List<String> NUMBERS = List.of(
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen",
            "twenty");

    private static final String DOZEN =
            "(?:half a dozen|a dozen|(?:" + String.join("|", NUMBERS) + ") dozen|dozen" + "|a pair|a couple|a single)";
    private static final String COUNT = "(?<n>\\d{1,9}|" + DOZEN + "|" + String.join("|", NUMBERS) + ")";
    private static final String THINGS =
            "(?:pieces?|pcs?\\.?|scraps?|strips?|squares?|rectangles?|offcuts?|bits?|lengths?)";
    private static final Pattern HEX = Pattern.compile("#(?:[0-9a-fA-F]{6}|[0-9a-fA-F]{3})\\b");

    /** The ways of saying how many, the plainest first. */
    private static final List<Pattern> COUNTS = List.of(
            words(COUNT + "\\s*(?:of them|of these|of those|of it|off)"),
            words(COUNT + "\\s*" + THINGS + "(?: of)?"),
            Pattern.compile("(?<![\\p{L}\\d])(?:[x×*]\\s?(?<n>\\d{1,9})|(?<m>\\d{1,9})\\s?[x×*])(?![\\p{L}\\d])"),
            Pattern.compile("(?<=^|[,;])\\s*" + COUNT + "\\s*(?=[,;]|$)", Pattern.CASE_INSENSITIVE),
            Pattern.compile("(?<=^|[,;])\\s*" + COUNT + "(?:\\s+of\\b)?(?=\\s)", Pattern.CASE_INSENSITIVE));

    private String rest;

    SpokenWords(String line) {
        rest = line;
    }

    private static Pattern words(String words) {
        return Pattern.compile(
                "(?<![\\p{L}\\d-])(?:" + words + ")(?![\\p{L}\\d-])", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    private static <T> Map<Pattern, T> ordered(Pattern first, T one, Pattern second, T other) {
        Map<Pattern, T> map = new LinkedHashMap<>();
        map.put(first, one);
        map.put(second, other);
        return map;
    }

    private Optional<Matcher> take(Pattern pattern) {
        Matcher matcher = pattern.matcher(rest);
        if (!matcher.find()) {
            return Optional.empty();
        }
        rest = rest.substring(0, matcher.start()) + ", " + rest.substring(matcher.end());
        return Optional.of(matcher);
    }

    Optional<String> hex() {
        return take(HEX).map(Matcher::group);
    }

    /** The meaning of the first pattern that is found. */
    <T> Optional<T> first(Map<Pattern, T> meanings) {
        for (Map.Entry<Pattern, T> each : meanings.entrySet()) {
            if (take(each.getKey()).isPresent()) {
                return Optional.of(each.getValue());
            }
        }
        return Optional.empty();
    }

    /** How many; one where the line does not say. */
    int count() {
        for (Pattern pattern : COUNTS) {
            Optional<Matcher> found = take(pattern);
            if (found.isPresent()) {
                String n = found.get().group("n");
                return number(n == null ? found.get().group("m") : n);
            }
        }
        return 1;
    }

    private static int number(String said) {
        String word = said.strip().toLowerCase(Locale.ROOT);
        if (word.matches("\\d+")) {
            return Integer.parseInt(word);
        }
        if (word.endsWith("dozen")) {
            String many = word.replace("dozen", "").strip();
            return many.equals("half a") ? 6 : 12 * Math.max(1, NUMBERS.indexOf(many) + 1);
        }
        return switch (word) {
            case "a pair", "a couple" -> 2;
            case "a single" -> 1;
            default -> NUMBERS.indexOf(word) + 1;
        };
    }

    /** The words that nothing else has taken, without the small words that joined them to the rest. */
    String name() {
        List<String> parts = new ArrayList<>();
        for (String part : rest.split("[,;]", -1)) {
            String plain = part.strip()
                    .replaceFirst("(?i)^(?:(?:of|a|an|and|with|in|each|about)\\b\\s*)+", "")
                    .replaceFirst("(?i)(?:\\s*\\b(?:of|and|with|each|in))+$", "")
                    .replaceFirst("^[\\s:.–-]+", "")
                    .replaceFirst("[\\s:.–-]+$", "");
            if (!plain.isEmpty()) {
                parts.add(plain);
            }
        }
        return Names.plain(String.join(" ", parts));
    }
}
