package hearthcloth.benchmarks;

import hearthcloth.benchmarks.cpsat.ExactJoins;
import hearthcloth.benchmarks.cpsat.ExactJoins.Solved;
import hearthcloth.benchmarks.sets.Midsize;
import hearthcloth.plan.cutjoin.CutAndJoin;
import hearthcloth.plan.cutjoin.Job;
import hearthcloth.plan.cutjoin.Outcome;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Seeded jobs of our own kind, solved by our search and by CP-SAT, one after the other on the same cores. */
@Command(
        name = "against-cpsat",
        description = {
            "Seeded jobs of middle size, solved by our search and by CP-SAT on the same model.",
            "Rows are added to FILE as they come; seeds that already stand there are not run again."
        })
final class AgainstCpSat implements Callable<Integer> {

    private static final String HEADER = "seed,bars,pieces,ours,our bound,our ms,cpsat,cpsat bound,cpsat ms,"
            + "cpsat whole ms,times faster,verdict";

    @Parameters(index = "0", paramLabel = "FILE", description = "a CSV, made where there is none")
    private Path file = Path.of("");

    @Option(names = "--count", defaultValue = "60", description = "how many jobs (${DEFAULT-VALUE})")
    private int count = 60;

    @Option(names = "--limit", defaultValue = "60s", description = "for CP-SAT, each job (${DEFAULT-VALUE})")
    private Duration limit = new Duration(60_000_000_000L);

    @Option(names = "--workers", defaultValue = "2", description = "of CP-SAT (${DEFAULT-VALUE})")
    private int workers = 2;

    @Mixin
    private Allowance allowance = new Allowance();

    /** What our search had, and when. */
    private record Step(long joins, long nanos) {}

    @Override
    public Integer call() throws IOException {
        List<String> done = new ArrayList<>();
        if (Files.exists(file)) {
            done.addAll(Files.readAllLines(file, StandardCharsets.UTF_8));
        } else {
            append(HEADER);
        }
        warm();
        boolean missed = done.stream().anyMatch(row -> row.endsWith("MISS") || row.endsWith("DISAGREE"));
        for (long seed = allowance.seed(); seed < allowance.seed() + count; seed++) {
            String start = seed + ",";
            if (done.stream().noneMatch(row -> row.startsWith(start))) {
                String row = start + row(Midsize.job(seed));
                missed |= row.endsWith("MISS") || row.endsWith("DISAGREE");
                append(row);
            }
        }
        return missed ? 1 : 0;
    }

    private void append(String row) throws IOException {
        Files.writeString(file, row + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    private void warm() {
        long end = System.nanoTime() + allowance.warmUp().nanos();
        for (long seed = -1; System.nanoTime() - end < 0; seed--) {
            new CutAndJoin(Midsize.job(seed))
                    .search(Pace.begin(Pace.Clock.WALL, 200_000_000, seed, 1).budget(), seed, better -> {});
        }
        ExactJoins.solve(Midsize.job(-1), 1, workers, 1);
    }

    private String row(Job job) {
        List<Step> steps = new ArrayList<>();
        long begun = System.nanoTime();
        Outcome outcome = new CutAndJoin(job)
                .search(
                        allowance.begin().budget(),
                        allowance.seed(),
                        plan -> steps.add(new Step(plan.figures().joins(), System.nanoTime() - begun)));
        OptionalLong bound = outcome instanceof Outcome.Found found
                ? OptionalLong.of(found.bounds().joins())
                : OptionalLong.empty();
        Solved other = ExactJoins.solve(job, limit.seconds(), workers, (int) allowance.seed());
        return compared(job, outcome, steps, bound, other);
    }

    private static String compared(Job job, Outcome outcome, List<Step> steps, OptionalLong bound, Solved other) {
        OptionalLong ours = steps.stream().mapToLong(Step::joins).min();
        long goal = Math.max(ours.orElse(0), other.joins().orElse(0));
        long reached = steps.stream()
                .filter(step -> step.joins <= goal)
                .mapToLong(Step::nanos)
                .findFirst()
                .orElse(0);
        boolean both = ours.isPresent() && other.joins().isPresent();
        return String.join(
                ",",
                String.valueOf(job.bars().size()),
                String.valueOf(job.stock().size()),
                text(ours),
                text(bound),
                ours.isPresent() ? Verdict.milliseconds(reached) : "",
                text(other.joins()),
                String.valueOf(other.bound()),
                other.joins().isPresent() ? Verdict.milliseconds(other.found()) : "",
                Verdict.milliseconds(other.whole()),
                both ? String.format(Locale.ROOT, "%.0f", (double) other.found() / Math.max(1, reached)) : "",
                verdict(ours, outcome instanceof Outcome.Impossible, bound, other));
    }

    /**
     * A value of the other's below our bound cannot be: then one of the two is wrong. The other's bound holds for the
     * cuttings it is given, and our search knows more.
     */
    private static String verdict(OptionalLong ours, boolean impossible, OptionalLong bound, Solved other) {
        if (ours.isEmpty()) {
            return other.joins().isPresent()
                    ? impossible ? "DISAGREE" : "MISS"
                    : other.impossible() ? "none exists" : "none found";
        }
        if (other.joins().isPresent() && other.joins().getAsLong() < bound.orElse(0)) {
            return "DISAGREE";
        }
        if (other.impossible() || ours.getAsLong() < other.bound()) {
            return "other cutting";
        }
        if (other.joins().isEmpty() || ours.getAsLong() < other.joins().getAsLong()) {
            return "better";
        }
        return ours.getAsLong() > other.joins().getAsLong() ? "MISS" : "same";
    }

    private static String text(OptionalLong number) {
        return number.isPresent() ? Long.toString(number.getAsLong()) : "";
    }
}
