package hearthcloth.measure;

import hearthcloth.measure.MeasureException.Slip;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads lengths and sizes as makers write them: {@code 6 1/2 in}, {@code 6½"}, {@code 6.5in}, {@code 16,5 cm}, {@code
 * 165 mm}, {@code 1/2 yd}, {@code 30 x 20 x 8 cm}. A value between two nanometres (a third of an inch) is rounded to
 * the nearest. A comma is a decimal comma; {@code 1,200} is refused, since it could mean either.
 */
public final class Measures {

    /**
     * The longest length that is accepted; a longer one is a slip of the unit. Source: docs/sources.md#input-limits.
     */
    public static final Length LONGEST = Length.of(1_000, Unit.METRE);

    private static final String GLYPHS = "½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚";
    private static final String[] FRACTIONS = {
        "1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8", "1/3", "2/3", "1/5", "2/5", "3/5", "4/5", "1/6", "5/6"
    };
    private static final Pattern NUMBER = Pattern.compile(
            "(?:(?<whole>\\d{1,15})(?:[ -]+(?=\\d{1,6}/))?)?(?:(?<=^|[ -])(?<top>\\d{1,6})/(?<bottom>\\d{1,6}))?"
                    + "|(?<decimal>\\d{0,15}[.,]\\d{1,12})");
    private static final Pattern TIMES = Pattern.compile("\\s*(?:[x×X*]|\\bby\\b)\\s*");

    private Measures() {}

    /**
     * Reads one length.
     *
     * @param assumed the unit of a number without one; null when a unit must be written
     * @throws MeasureException when it cannot be read, is negative or is over a kilometre
     */
    public static Length length(String text, @Nullable Unit assumed) {
        String plain = tidied(text);
        if (plain.isEmpty()) {
            throw new MeasureException(Slip.MISSING);
        }
        if (plain.startsWith("-") || plain.startsWith("−")) {
            throw new MeasureException(Slip.BELOW_ZERO, shown(text));
        }
        int split = startOfUnit(plain);
        String word = plain.substring(split).strip();
        Unit unit = word.isEmpty() ? assumed : Unit.named(word).orElse(null);
        if (unit == null) {
            throw word.isEmpty()
                    ? new MeasureException(Slip.NO_UNIT, shown(text))
                    : new MeasureException(Slip.UNKNOWN_UNIT, shown(text), shown(word));
        }
        return capped(text, number(text, plain.substring(0, split).strip()), unit);
    }

    /** Reads several lengths separated by x, × or "by"; a unit that is written once, at the end, holds for all. */
    public static List<Length> lengths(String text, @Nullable Unit assumed) {
        String[] parts = TIMES.split(tidied(text), -1);
        Unit unit = assumed;
        for (int i = parts.length - 1; i >= 0; i--) {
            String word = parts[i].substring(startOfUnit(parts[i])).strip();
            unit = Unit.named(word).orElse(unit);
            if (!word.isEmpty()) {
                break;
            }
        }
        List<Length> lengths = new ArrayList<>();
        for (String part : parts) {
            lengths.add(length(part, unit));
        }
        return List.copyOf(lengths);
    }

    /** Reads a size: one length is a square, two are width by height. */
    public static Size size(String text, @Nullable Unit assumed) {
        List<Length> sides = lengths(text, assumed);
        return switch (sides.size()) {
            case 1 -> Size.square(sides.get(0));
            case 2 -> new Size(sides.get(0), sides.get(1));
            default -> throw new MeasureException(Slip.NUMBERS, shown(text), Integer.toString(sides.size()));
        };
    }

    private static String tidied(String text) {
        String plain = text.replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .replace('⁄', '/')
                .strip();
        for (int i = 0; i < FRACTIONS.length; i++) {
            plain = plain.replace(GLYPHS.substring(i, i + 1), " " + FRACTIONS[i] + " ");
        }
        return plain.strip().replaceAll("\\s+", " ");
    }

    private static int startOfUnit(String text) {
        int i = 0;
        while (i < text.length() && "0123456789 .,/-−".indexOf(text.charAt(i)) >= 0) {
            i++;
        }
        return i;
    }

    private static BigDecimal[] number(String whole, String text) {
        Matcher matcher = NUMBER.matcher(text);
        if (text.isEmpty() || !matcher.matches()) {
            throw new MeasureException(Slip.UNREAD, shown(whole));
        }
        String decimal = matcher.group("decimal");
        if (decimal != null) {
            return new BigDecimal[] {decimal(whole, decimal), BigDecimal.ONE};
        }
        BigDecimal units = new BigDecimal(matcher.group("whole") == null ? "0" : matcher.group("whole"));
        if (matcher.group("top") == null) {
            return new BigDecimal[] {units, BigDecimal.ONE};
        }
        BigDecimal bottom = new BigDecimal(matcher.group("bottom"));
        if (bottom.signum() == 0) {
            throw new MeasureException(Slip.BY_ZERO, shown(whole));
        }
        return new BigDecimal[] {units.multiply(bottom).add(new BigDecimal(matcher.group("top"))), bottom};
    }

    private static BigDecimal decimal(String whole, String text) {
        if (text.matches("[1-9]\\d{0,2},\\d{3}")) {
            String thousands = text.replace(",", "");
            String decimal = text.replace(',', '.');
            throw new MeasureException(Slip.TWO_WAYS, shown(whole), thousands, decimal);
        }
        return new BigDecimal(text.replace(',', '.'));
    }

    private static Length capped(String text, BigDecimal[] fraction, Unit unit) {
        BigInteger nm = fraction[0]
                .multiply(BigDecimal.valueOf(unit.nanometres()))
                .divide(fraction[1], 0, RoundingMode.HALF_UP)
                .toBigInteger();
        if (nm.compareTo(BigInteger.valueOf(LONGEST.nm())) > 0) {
            throw new MeasureException(Slip.TOO_LONG, shown(text));
        }
        return new Length(nm.longValueExact());
    }

    private static String shown(String text) {
        return (text.length() > 60 ? text.substring(0, 60) + "…" : text).strip();
    }
}
