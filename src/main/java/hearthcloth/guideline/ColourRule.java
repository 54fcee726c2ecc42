package hearthcloth.guideline;

import hearthcloth.plan.model.Scheme;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.RulingSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Which fabric where: the ways of colour that are the idea, and what lies in the middle.
 *
 * @param ways in the order of liking; empty where any may be
 */
public record ColourRule(List<Scheme.Kind> ways, Middle middle) {

    /** The ways that can be an idea; the others say only how a cloth came about. */
    public static final List<Scheme.Kind> WAYS = List.of(
            Scheme.Kind.HALVES,
            Scheme.Kind.ROUNDS,
            Scheme.Kind.TURNS,
            Scheme.Kind.FIELD,
            Scheme.Kind.SCATTERED,
            Scheme.Kind.GRADED,
            Scheme.Kind.FRAMES,
            Scheme.Kind.ACCENT);

    /** What the hearth is cut from. */
    public enum Middle {
        ANY,
        FAVOURITE,
        LIGHTEST,
        DARKEST;

        /** As it is read. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /**
         * Reads a word.
         *
         * @throws RefusedException with a sentence, where it is none
         */
        public static Middle parse(String written) {
            for (Middle middle : values()) {
                if (middle.word().equals(RuleText.plain(written).replace("open", "any"))) {
                    return middle;
                }
            }
            List<String> known = Arrays.stream(values()).map(Middle::word).toList();
            throw new RefusedException(
                    RefusingSentences.wishWord(Argument.names(Argument.Joined.OR, known), Argument.written(written)));
        }
    }

    public ColourRule {
        ways = List.copyOf(ways);
    }

    /**
     * Reads ways such as {@code two halves or frames}.
     *
     * @throws RefusedException with a sentence, where one is none
     */
    public static List<Scheme.Kind> parse(String written) {
        if (RuleText.isOpen(written)) {
            return List.of();
        }
        List<Scheme.Kind> ways = new ArrayList<>();
        for (String part : written.split("\\bor\\b|,", -1)) {
            Scheme.Kind way = WAYS.stream()
                    .filter(kind -> RuleText.plain(kind.title()).equals(RuleText.plain(part)))
                    .findFirst()
                    .orElseThrow(() -> new RefusedException(RulingSentences.ruleWay(known(), Argument.written(part))));
            if (!ways.contains(way)) {
                ways.add(way);
            }
        }
        return ways;
    }

    private static Argument known() {
        List<String> names = new ArrayList<>(List.of(RuleText.OPEN));
        WAYS.forEach(kind -> names.add(RuleText.plain(kind.title())));
        return Argument.names(Argument.Joined.OR, names);
    }

    /** As the ways are read. */
    public String written() {
        return ways.isEmpty()
                ? RuleText.OPEN
                : ways.stream().map(kind -> RuleText.plain(kind.title())).collect(Collectors.joining(" or "));
    }

    /** For a reader: the ways and what each is. */
    public Sentence said() {
        List<Sentence> each = ways.stream()
                .map(kind -> RulingSentences.isWay(
                        PlanningSentences.schemeIdea(kind.name()), PlanningSentences.scheme(kind.name())))
                .toList();
        return RulingSentences.isColours(ways.isEmpty() ? "yes" : "no", Argument.row(Argument.Joined.OR, each));
    }

    /** The names of the ways alone. */
    Argument names() {
        return Argument.row(
                Argument.Joined.OR,
                ways.stream().map(kind -> PlanningSentences.scheme(kind.name())).toList());
    }
}
