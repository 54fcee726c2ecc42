package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Unit;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads a gift: removes the words that name its kind and hands the rest to {@link Measures}. */
final class GiftReader {

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
        BOX(3, "box carton parcel package packet case hamper"),
        CUBE(1, "cube"),
        BOTTLE(2, "bottle flask"),
        BOTTLES(2, "bottles flasks"),
        BALL(1, "ball sphere globe melon watermelon"),
        BOOKS(3, "books"),
        ROLL(2, "roll tube bolt mat scroll poster cylinder umbrella pole");

        private final int measures;
        private final String words;

        Kind(int measures, String words) {
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
            throw new RefusedException(RefusingSentences.giftNone(kinds()));
        }
        if (plain.length() > 200) {
            throw new RefusedException(RefusingSentences.giftLong(kinds(), Argument.text(plain.substring(0, 40))));
        }
        boolean two = TWO.matcher(plain).find();
        plain = TWO.matcher(plain).replaceAll("");
        Kind kind = kind(plain, two);
        String rest = measuresOnly(plain, text);
        if (rest.isEmpty()) {
            throw new RefusedException(RefusingSentences.giftUnmeasured(rule(kind), Argument.text(text.strip())));
        }
        List<Length> sides = Measures.lengths(rest, assumed);
        if (sides.size() != kind.measures) {
            throw new RefusedException(RefusingSentences.giftCount(
                    Argument.number(sides.size()), rule(kind), Argument.text(text.strip())));
        }
        return gift(kind, sides);
    }

    private static Argument kinds() {
        return RefusingSentences.giftKinds();
    }

    private static Argument rule(Kind kind) {
        return RefusingSentences.giftRule(kind.name());
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
                throw new RefusedException(RefusingSentences.giftBook());
            }
            round |= words.group().equals("round");
        }
        if (round) {
            return Kind.BALL;
        }
        throw new RefusedException(RefusingSentences.giftWhat(kinds(), Argument.text(shown(plain))));
    }

    private static String measuresOnly(String plain, String text) {
        StringBuilder rest = new StringBuilder();
        Matcher words = WORD.matcher(plain);
        int from = 0;
        while (words.find()) {
            String word = words.group();
            if (!isMeasureWord(word) && !isKindOrFiller(word)) {
                throw new RefusedException(
                        RefusingSentences.giftWord(kinds(), Argument.text(shown(text)), Argument.text(shown(word))));
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
