package hearthcloth.benchmarks;

import hearthcloth.benchmarks.cpsat.ExactJoins;
import hearthcloth.benchmarks.cpsat.ExactJoins.Solved;
import hearthcloth.benchmarks.sets.Midsize;
import hearthcloth.cutstock.cutjoin.CutAndJoin;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutOutcome;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
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

    @Option(
            names = "--exact",
            paramLabel = "EARLIER",
            description = "take CP-SAT's answers from an earlier run's rows, and run only our search")
    @Nullable
    private Path exact;

    @Mixin
    private Allowance allowance = new Allowance();

    /** What our search had, and when. */
    private record Step(long joins, long nanos) {}

    /** What our search came to: as many seeds side by side as there are threads. */
    private record Ours(List<Step> steps, OptionalLong bound, boolean impossible) {}

    @Override
    public Integer call() throws IOException {
        List<String> done = new ArrayList<>();
        if (Files.exists(file)) {
            done.addAll(Files.readAllLines(file, StandardCharsets.UTF_8));
        } else {
            append(HEADER);
        }
        Map<Long, Solved> earlier = exact == null ? Map.of() : EarlierRows.read(exact);
        warm();
        boolean missed = done.stream().anyMatch(row -> row.endsWith("MISS") || row.endsWith("DISAGREE"));
        for (long seed = allowance.seed(); seed < allowance.seed() + count; seed++) {
            String start = seed + ",";
            if (done.stream().noneMatch(row -> row.startsWith(start))) {
                String row = start + row(Midsize.job(seed), Optional.ofNullable(earlier.get(seed)));
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
        if (exact == null) {
            ExactJoins.solve(Midsize.job(-1), 1, workers, 1);
        }
    }

    private String row(CutJoinJob job, Optional<Solved> earlier) {
        Ours ours = ours(job);
        Solved other = earlier.orElseGet(() -> ExactJoins.solve(job, limit.seconds(), workers, (int) allowance.seed()));
        return compared(job, ours, other);
    }

    /** The same budget for each seed, all at once; what any of them had is what the search had. */
    private Ours ours(CutJoinJob job) {
        List<Step> steps = Collections.synchronizedList(new ArrayList<>());
        long begun = System.nanoTime();
        List<CompletableFuture<CutOutcome>> all = new ArrayList<>();
        for (int i = 0; i < allowance.threads(); i++) {
            long seed = allowance.seed() + i;
            all.add(CompletableFuture.supplyAsync(
                    () -> new CutAndJoin(job)
                            .search(
                                    allowance.begin().budget(),
                                    seed,
                                    plan -> steps.add(new Step(plan.figures().joins(), System.nanoTime() - begun))),
                    Task.WORKERS));
        }
        List<CutOutcome> outcomes = all.stream().map(CompletableFuture::join).toList();
        OptionalLong bound = outcomes.stream()
                .filter(CutOutcome.Found.class::isInstance)
                .mapToLong(one -> ((CutOutcome.Found) one).bounds().joins())
                .max();
        List<Step> ordered =
                steps.stream().sorted(Comparator.comparingLong(Step::nanos)).toList();
        return new Ours(ordered, bound, outcomes.stream().anyMatch(CutOutcome.Impossible.class::isInstance));
    }

    private static String compared(CutJoinJob job, Ours found, Solved other) {
        List<Step> steps = found.steps();
        OptionalLong bound = found.bound();
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
                verdict(ours, found.impossible(), bound, other));
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
