package hearthcloth.benchmarks;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Results beside what is known of them, as one row of a Markdown table. */
@Command(name = "summary", description = "One row of a table in Markdown for a CSV of results.")
final class Summary implements Callable<Integer> {

    static final String HEAD = "| set | budget | instances | answered | best known reached | better | proved |"
            + " within 1 of the bound | furthest off | mean gap % | median ms | longest ms |\n"
            + "|---|---|---|---|---|---|---|---|---|---|---|---|";

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "TITLE")
    private String title = "";

    @Parameters(index = "1", paramLabel = "BUDGET")
    private String budget = "";

    @Parameters(index = "2", paramLabel = "RESULTS", description = "a CSV that another command printed")
    private Path results = Path.of("");

    @Option(names = "--known", description = "a CSV with the best value known of each instance; else its bound counts")
    private Optional<Path> known = Optional.empty();

    @Option(names = "--head", description = "print the head of the table before it")
    private boolean head;

    @Override
    public Integer call() {
        if (head) {
            spec.commandLine().getOut().println(HEAD);
        }
        Map<String, Long> best = new HashMap<>();
        known.ifPresent(file ->
                Table.of(file).rows().forEach(row -> best.put(row.get("instance"), number(row, "value"))));
        spec.commandLine().getOut().println(row(Table.of(results), best));
        return 0;
    }

    /** A value and what it is held against, whichever way is better. */
    private record Found(long value, long bound, long best) {

        /** How far from the best known, in joins or profit; below 0 where better. A bound above is one of profit. */
        long off() {
            boolean profit = bound >= best && bound >= value;
            return profit ? best - value : value - best;
        }
    }

    private String row(Table table, Map<String, Long> best) {
        List<Found> found = table.rows().stream()
                .filter(row -> !cell(row, "value").isEmpty())
                .map(row -> {
                    long bound = number(row, "bound");
                    return new Found(number(row, "value"), bound, best.getOrDefault(row.get("instance"), bound));
                })
                .toList();
        double[] times = table.rows().stream()
                .mapToDouble(row -> Double.parseDouble(cell(row, "milliseconds")))
                .sorted()
                .toArray();
        return String.format(
                Locale.ROOT,
                "| %s | %s | %d | %d | %d | %d | %d | %d | %d | %.3f | %.1f | %.1f |",
                title,
                budget,
                table.rows().size(),
                found.size(),
                found.stream().filter(one -> one.off() <= 0).count(),
                found.stream().filter(one -> one.off() < 0).count(),
                found.stream().filter(one -> one.value == one.bound).count(),
                found.stream()
                        .filter(one -> Math.abs(one.value - one.bound) <= 1)
                        .count(),
                found.stream().mapToLong(Found::off).max().orElse(0),
                found.stream()
                        .mapToDouble(one -> 100.0 * Math.max(0, one.off()) / Math.max(1, one.best))
                        .average()
                        .orElse(0),
                times.length == 0 ? 0 : times[times.length / 2],
                Arrays.stream(times).max().orElse(0));
    }

    private static String cell(Map<String, String> row, String column) {
        return row.getOrDefault(column, "");
    }

    private static long number(Map<String, String> row, String column) {
        return Long.parseLong(cell(row, column));
    }
}
