package hearthcloth.benchmarks;

import java.util.OptionalLong;

/**
 * What a search said of one instance.
 *
 * @param value joins or profit; empty while nothing was found, or where nothing exists
 * @param bound what no answer beats; empty where none is known
 */
record Verdict(OptionalLong value, OptionalLong bound) {

    static Verdict of(long value, long bound) {
        return new Verdict(OptionalLong.of(value), OptionalLong.of(bound));
    }

    /** The row of the table, without its end of line. */
    String row(String instance, long nanos) {
        return String.join(",", quoted(instance), text(value), text(bound), milliseconds(nanos));
    }

    static String milliseconds(long nanos) {
        return String.format(java.util.Locale.ROOT, "%.1f", nanos / 1e6);
    }

    private static String text(OptionalLong number) {
        return number.isPresent() ? Long.toString(number.getAsLong()) : "";
    }

    private static String quoted(String name) {
        return name.matches("[^\",\\r\\n]*") ? name : '"' + name.replace("\"", "\"\"") + '"';
    }
}
