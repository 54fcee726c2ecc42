package hearthcloth.stash;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.ReadingSentences;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.Sentence;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Finds the size in a line, trying each way of writing one in turn. Numbers are read by {@link Measures}. */
final class SpokenSize {

    /**
     * The widest cloth that is accepted; no loom is wider. Source of this and of {@link #LONGEST}:
     * docs/sources.md#input-limits.
     */
    private static final Length WIDEST = Length.of(5, Unit.METRE);

    private static final Length LONGEST = Length.of(100, Unit.METRE);

    private static final String GLYPHS = "½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚";
    private static final String NUMBER =
            "(?:\\d+[ -]+\\d+\\s?[/⁄]\\s?\\d+|\\d+\\s?[/⁄]\\s?\\d+|\\d*[.,]\\d+" + "|\\d*\\s?[" + GLYPHS + "]|\\d+)";
    private static final String UNIT = "(?:(?:in|inch|inches|ft|foot|feet|yds?|yards?|mm|millimet(?:re|er)s?|cm"
            + "|centimet(?:re|er)s?|m|met(?:re|er)s?)(?:\\.(?!\\d))?(?!(?!x\\s?\\d)\\p{L})|''|[\"″”'′’])";
    private static final String LENGTH = NUMBER + "(?:\\s?-?" + UNIT + ")?";
    private static final String MEASURED = NUMBER + "\\s?-?" + UNIT;
    /** Units that cloth is sold by along a bolt, and those its width is told in. */
    private static final String SOLD = NUMBER + "\\s?-?(?:yds?|yards?|m|met(?:re|er)s?)(?:\\.(?!\\d))?(?!\\p{L})";

    private static final String SLIM =
            NUMBER + "\\s?-?(?:(?:in|inch|inches|cm|centimet(?:re|er)s?|mm)(?:\\.(?!\\d))?(?!\\p{L})|''|[\"″”])";
    private static final String FRONT = "(?<![\\d.,/⁄\\p{L}#])";
    private static final String TIMES = "\\s*(?:[x×*]|by\\b)\\s*";
    private static final String PARTED = "\\s*(?:,|by\\b|x|×|and)?\\s*";

    /** One way of writing a size. */
    private enum Way {
        /** {@code 12 x 4 x 8 in}: twelve of them; but {@code 4 x 8 in x 12} is a size first. */
        COUNTED("(?<count>\\d+)" + TIMES + "(?<a>" + NUMBER + "(?!\\s?-?" + UNIT + "|\\d)|" + LENGTH + "(?=" + TIMES
                + MEASURED + "))" + TIMES + "(?<b>" + LENGTH + ")"),
        LONG_AND_WIDE("(?<b>" + LENGTH + ")\\s*long" + PARTED + "(?<a>" + LENGTH + ")\\s*wide"),
        WIDE_AND_LONG("(?<a>" + LENGTH + ")\\s*wide" + PARTED + "(?<b>" + LENGTH + ")\\s*long"),
        /** {@code 1/2 yd x 44 wide}: the first is the length. */
        LONG_BY_WIDE("(?<b>" + MEASURED + ")" + TIMES + "(?<a>" + LENGTH + ")\\s*-?wide"),
        ACROSS("(?<a>" + LENGTH + ")" + TIMES + "(?<b>" + LENGTH + ")"),
        /** {@code 1 1/2 yd of 44 in}: a length off a bolt of a width. */
        OFF_THE_BOLT("(?<b>" + MEASURED + ")\\s+(?:of|off)\\s+(?:a\\s+)?(?<a>" + MEASURED
                + ")(?:\\s*-?wide)?(?:\\s+(?:bolt|cloth|fabric)\\b)?"),
        /** {@code 6 square}, {@code 6 in squares}; but {@code 6 squares} are six. */
        SQUARE("(?<a>" + LENGTH + "(?=\\s*-?(?:square|sq)\\b)|" + MEASURED
                + "(?=\\s*-?squares\\b))\\s*-?(?:squares?|sq)\\b(?:\\s+of\\b)?"),
        SQUARE_OF("squares?\\b[ ,]+(?:of\\s+)?(?<a>" + MEASURED + ")"),
        /** A fat quarter is 18 × 22 in. Source: docs/sources.md#fat-quarter. */
        FAT_QUARTER("fat[ -]quarters?\\b(?:\\s+of\\b)?"),
        /** {@code 2 yd navy, 44 in wide}: the name stands between them. */
        LONG_THEN_WIDE("(?<b>" + MEASURED + ")(?:\\s*-?long)?(?<between>[^\\d]{1,60}?)(?<a>" + LENGTH + ")\\s*-?wide"),
        WIDE_THEN_LONG("(?<a>" + LENGTH + ")\\s*-?wide(?<between>[^\\d]{1,60}?)(?<b>" + MEASURED + ")(?:\\s*-?long)?"),
        /** {@code half yard rust linen 22 in}: what is sold by the yard or the metre is as wide as the inches or centimetres. */
        YARDAGE("(?<b>" + SOLD + ")(?<between>[^\\d" + GLYPHS + "]{1,60}?)(?<a>" + SLIM + ")"),
        WIDTH_AND_YARDAGE("(?<a>" + SLIM + ")(?<between>[^\\d" + GLYPHS + "]{1,60}?)(?<b>" + SOLD + ")");

        private final Pattern pattern;

        Way(String pattern) {
            this.pattern = Pattern.compile(FRONT + pattern, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
        }
    }

    /** Those that have the name of the fabric between their two measures. */
    private static final Set<Way> APART =
            Set.of(Way.LONG_THEN_WIDE, Way.WIDE_THEN_LONG, Way.YARDAGE, Way.WIDTH_AND_YARDAGE);

    /**
     * A size, and the line without it; a count that stood before it is left as {@code 12 of them}.
     *
     * @param rest with a comma where the size was
     */
    record Found(Size size, String rest) {}

    private SpokenSize() {}

    /**
     * Finds a size.
     *
     * @throws MeasureException where there is none, or it cannot be read
     */
    static Found find(String line, @Nullable Unit bare) {
        for (Way way : Way.values()) {
            Matcher matcher = way.pattern.matcher(line);
            if (matcher.find()) {
                String counted = way == Way.COUNTED ? matcher.group("count") + " of them, " : "";
                String rest = line.substring(0, matcher.start()) + ", " + counted + between(way, matcher)
                        + line.substring(matcher.end());
                return new Found(checked(size(way, matcher, bare)), rest);
            }
        }
        throw new RefusedException(lone(line));
    }

    private static String between(Way way, Matcher found) {
        return APART.contains(way) ? found.group("between") + ", " : "";
    }

    private static Size size(Way way, Matcher found, @Nullable Unit bare) {
        if (way == Way.FAT_QUARTER) {
            return new Size(Length.inches(18), Length.inches(22));
        }
        if (way == Way.SQUARE || way == Way.SQUARE_OF) {
            return Size.square(length(found.group("a"), bare));
        }
        String across = found.group("a");
        String along = found.group("b");
        Unit first = unitOf(across, bare);
        Unit second = unitOf(along, first);
        Length wide = length(across, unitOf(across, second));
        Length tall = length(along, second);
        if (unitOf(across, null) == null && wide.isMoreThan(WIDEST)) {
            return new Size(length(across, slim(second)), tall);
        }
        if (unitOf(along, null) == null && tall.isMoreThan(WIDEST) && slim(second) != second) {
            return new Size(length(along, slim(second)), wide);
        }
        return new Size(wide, tall);
    }

    /** What the width of a bolt is told in where its length is in this: a bare 44 beside yards is 44 in. */
    private static @Nullable Unit slim(@Nullable Unit unit) {
        if (unit == Unit.YARD) {
            return Unit.INCH;
        }
        return unit == Unit.METRE ? Unit.CENTIMETRE : unit;
    }

    private static @Nullable Unit unitOf(String length, @Nullable Unit otherwise) {
        Matcher unit = Pattern.compile(UNIT + "$", Pattern.CASE_INSENSITIVE).matcher(length.strip());
        return unit.find() ? Unit.named(plainMarks(unit.group())).orElse(otherwise) : otherwise;
    }

    private static Length length(String text, @Nullable Unit unit) {
        String marks = plainMarks(text)
                .replaceAll("(?<=\\d)\\s?([/⁄])\\s?(?=\\d)", "$1")
                .replaceAll("-(?=\\p{L})", " ");
        return Measures.length(marks, unit);
    }

    private static String plainMarks(String text) {
        return text.replace('’', '\'').replaceAll("''", "\"");
    }

    private static Size checked(Size size) {
        if (!size.width().isPositive() || !size.height().isPositive()) {
            throw new RefusedException(ReadingSentences.sizeNothing());
        }
        boolean over = size.width().isMoreThan(LONGEST)
                || size.height().isMoreThan(LONGEST)
                || size.width().min(size.height()).isMoreThan(WIDEST);
        if (over) {
            throw new RefusedException(ReadingSentences.sizeTooMuch());
        }
        return size;
    }

    private static Sentence lone(String line) {
        Matcher one =
                Pattern.compile(FRONT + MEASURED, Pattern.CASE_INSENSITIVE).matcher(line);
        return one.find() ? ReadingSentences.sizeOneSide(Argument.text(one.group())) : ReadingSentences.sizeMissing();
    }
}
