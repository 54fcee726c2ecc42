package hearthcloth.benchmarks;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine;

/** A length of time as it is written on the command line: 100ms, 2s, 1min. */
record Duration(long nanos) {

    private static final Pattern WRITTEN = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,9})?)\\s*(ms|s|min)");

    static Duration parse(String text) {
        Matcher matcher = WRITTEN.matcher(text.strip());
        if (!matcher.matches()) {
            throw new CommandLine.TypeConversionException(
                    "\"" + text + "\" is not a time; write one such as 100ms, 2s or 1min");
        }
        long unit = matcher.group(2).equals("ms")
                ? 1_000_000L
                : matcher.group(2).equals("s") ? 1_000_000_000L : 60_000_000_000L;
        return new Duration(new BigDecimal(matcher.group(1))
                .multiply(BigDecimal.valueOf(unit))
                .longValue());
    }

    double seconds() {
        return nanos / 1e9;
    }
}
