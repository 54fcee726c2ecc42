package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads a gift: removes the words that name its kind and hands the rest to {@link Measures}. */
final class GiftReader {

    private static final String KINDS = "write the kind and its measures, such as \"box 30 x 20 x 8 cm\","
            + " \"bottle 8 x 30 cm\", \"two bottles 8 x 30 cm\", \"ball 22 cm\", \"books 21 x 15 x 2 cm\" or"
            + " \"roll 6 x 40 cm\"";
    private static final Pattern WORD = Pattern.compile("\\p{L}+");
    private static final Pattern TWO =
            Pattern.compile("\\b(?:two|2|pair of|couple of)\\s+(?=(?:\\p{L}+\\s+)?(?:bottles?|books?)\\b)");
    private static final Set<String> FILLERS = Set.of(
            "a",
            "an",
            "the",
            "of",
            "with",
            "each",
            "gift",
            "wine",
            "sake",
            "diameter",
            "across",
            "high",
            "tall",
            "long",
            "wide",
            "deep",
            "thick",
            "about",
            "is",
            "and",
            "square",
            "flat",
            "rolled",
            "yoga",
            "cloth",
            "cardboard",
            "lunch",
            "cake",
            "round",
            "measuring");

    /** The kinds of gift and the words that name them. */
    private enum Kind {
        BOX("a box has three measures: length x width x height", 3, "box carton parcel package packet case hamper"),
        CUBE("a cube has one measure", 1, "cube"),
        BOTTLE("a bottle has two measures: diameter x height", 2, "bottle flask"),
        BOTTLES("two like bottles have two measures: diameter x height", 2, "bottles flasks"),
        BALL("something round has one measure, its diameter", 1, "ball sphere globe melon watermelon"),
        BOOKS("two like books have three measures, those of one: height x width x thickness", 3, "books"),
        ROLL(
                "a roll has two measures: diameter x length",
                2,
                "roll tube bolt mat scroll poster cylinder umbrella pole");

        private final String rule;
        private final int measures;
        private final String words;

        Kind(String rule, int measures, String words) {
            this.rule = rule;
            this.measures = measures;
            this.words = " " + words + " ";
        }

        boolean isNamed(String word) {
            return words.contains(" " + word + " ");
        }
    }

    private GiftReader() {}

    static Gift read(String text, @Nullable Unit assumed) {
        String plain = text.toLowerCase(Locale.ROOT).strip();
        if (plain.isEmpty()) {
            throw new MeasureException("no gift is written; " + KINDS);
        }
        if (plain.length() > 200) {
            throw new MeasureException("\"" + plain.substring(0, 40) + "…\" is too long for a gift; " + KINDS);
        }
        boolean two = TWO.matcher(plain).find();
        plain = TWO.matcher(plain).replaceAll("");
        Kind kind = kind(plain, two);
        String rest = measuresOnly(plain, text);
        if (rest.isEmpty()) {
            throw new MeasureException("\"" + text.strip() + "\" has no measures; " + kind.rule);
        }
        List<Length> sides = Measures.lengths(rest, assumed);
        if (sides.size() != kind.measures) {
            throw new MeasureException("\"" + text.strip() + "\" has " + sides.size() + " measures, but " + kind.rule);
        }
        return gift(kind, sides);
    }

    private static Gift gift(Kind kind, List<Length> s) {
        return switch (kind) {
            case BOX -> new Gift.Box(s.get(0), s.get(1), s.get(2));
            case CUBE -> new Gift.Box(s.get(0), s.get(0), s.get(0));
            // a bottle or roll is longer than it is wide, so the order of the two numbers does not matter
            case BOTTLE -> Gift.Bottle.of(s.get(0).min(s.get(1)), s.get(0).max(s.get(1)));
            case BOTTLES ->
                new Gift.TwoBottles(
                        Gift.Bottle.of(s.get(0).min(s.get(1)), s.get(0).max(s.get(1))));
            case BALL -> new Gift.Round(s.get(0));
            case BOOKS -> new Gift.Books(s.get(0), s.get(1), s.get(2));
            case ROLL -> new Gift.Roll(s.get(0).min(s.get(1)), s.get(0).max(s.get(1)));
        };
    }

    private static Kind kind(String plain, boolean two) {
        boolean round = false;
        Matcher words = WORD.matcher(plain);
        while (words.find()) {
            for (Kind kind : Kind.values()) {
                if (kind.isNamed(words.group())) {
                    return two && kind == Kind.BOTTLE ? Kind.BOTTLES : kind;
                }
            }
            if (words.group().equals("book")) {
                if (two) {
                    return Kind.BOOKS;
                }
                throw new MeasureException("one book ties as a box; write \"box\" and its three measures, or \"books\""
                        + " for two like books");
            }
            round |= words.group().equals("round");
        }
        if (round) {
            return Kind.BALL;
        }
        throw new MeasureException("\"" + shown(plain) + "\" does not say what the gift is; " + KINDS);
    }

    private static String measuresOnly(String plain, String text) {
        StringBuilder rest = new StringBuilder();
        Matcher words = WORD.matcher(plain);
        int from = 0;
        while (words.find()) {
            String word = words.group();
            if (!isMeasureWord(word) && !isKindOrFiller(word)) {
                throw new MeasureException(
                        "\"" + shown(text) + "\": \"" + shown(word) + "\" is not understood; " + KINDS);
            }
            rest.append(plain, from, words.start()).append(isMeasureWord(word) ? word : " ");
            from = words.end();
        }
        rest.append(plain.substring(from));
        return rest.toString().replace(':', ' ').replaceAll(",\\s|,$", " ").strip();
    }

    private static boolean isMeasureWord(String word) {
        return word.equals("x") || word.equals("by") || Unit.named(word).isPresent();
    }

    private static boolean isKindOrFiller(String word) {
        if (FILLERS.contains(word) || word.equals("book")) {
            return true;
        }
        for (Kind kind : Kind.values()) {
            if (kind.isNamed(word)) {
                return true;
            }
        }
        return false;
    }

    private static String shown(String text) {
        String plain = text.strip();
        return plain.length() > 60 ? plain.substring(0, 60) + "…" : plain;
    }
}
