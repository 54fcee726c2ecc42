package hearthcloth.benchmarks;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Results of {@code against-cpsat} counted, as a Markdown table. */
@Command(name = "summary-cpsat", description = "A table in Markdown for the results of against-cpsat.")
final class CpSatSummary implements Callable<Integer> {

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "RESULTS")
    private Path results = Path.of("");

    @Override
    public Integer call() {
        List<Map<String, String>> rows = Table.of(results).rows();
        double[] faster = rows.stream()
                .map(row -> row.getOrDefault("times faster", ""))
                .filter(text -> !text.isEmpty())
                .mapToDouble(Double::parseDouble)
                .sorted()
                .toArray();
        List<Map<String, String>> made = rows.stream()
                .filter(row -> !row.getOrDefault("ours", "").isEmpty())
                .toList();
        spec.commandLine()
                .getOut()
                .println(String.join(
                        "\n",
                        "| | jobs |",
                        "|---|---|",
                        line("jobs", rows.size()),
                        line("same value", count(rows, "same")),
                        line("ours better, or CP-SAT found none", count(rows, "better")),
                        line(
                                "ours below CP-SAT's bound, by cuttings that it is not given",
                                count(rows, "other cutting")),
                        line("CP-SAT better: misses", count(rows, "MISS")),
                        line("neither found a plan", count(rows, "none found")),
                        line("CP-SAT proved that there is none", count(rows, "none exists")),
                        line("one proved what the other refutes", count(rows, "DISAGREE")),
                        line(
                                "CP-SAT proved its value the best",
                                made.stream().filter(CpSatSummary::proved).count()),
                        line(
                                "ours had that value within a hundredth of CP-SAT's run",
                                made.stream().filter(CpSatSummary::hundredth).count() + " of " + made.size()),
                        line(
                                "CP-SAT's time to its value over ours to the same, median",
                                times(faster, faster.length / 2)),
                        line("the same, least", times(faster, 0))));
        return 0;
    }

    private static String line(String what, Object figure) {
        return "| " + what + " | " + figure + " |";
    }

    private static long count(List<Map<String, String>> rows, String verdict) {
        return rows.stream().filter(row -> verdict.equals(row.get("verdict"))).count();
    }

    private static boolean proved(Map<String, String> row) {
        String joins = row.getOrDefault("cpsat", "");
        return !joins.isEmpty() && joins.equals(row.get("cpsat bound"));
    }

    private static boolean hundredth(Map<String, String> row) {
        return 100 * Double.parseDouble(row.getOrDefault("our ms", "0"))
                <= Double.parseDouble(row.getOrDefault("cpsat whole ms", "0"));
    }

    private static String times(double[] sorted, int at) {
        return sorted.length == 0 ? "" : String.format(Locale.ROOT, "%.0f", sorted[at]);
    }
}
