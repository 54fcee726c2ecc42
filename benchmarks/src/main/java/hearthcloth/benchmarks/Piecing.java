package hearthcloth.benchmarks;

import hearthcloth.benchmarks.sets.Heaps;
import hearthcloth.benchmarks.sets.NumberFile;
import hearthcloth.benchmarks.sets.PiecingFile;
import hearthcloth.cutstock.piecing.FreePiecing;
import hearthcloth.cutstock.piecing.PiecedCloth;
import hearthcloth.cutstock.piecing.PiecingBounds;
import hearthcloth.cutstock.piecing.PiecingJob;
import hearthcloth.cutstock.piecing.PiecingPlan;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Pieces cloths from heaps of scraps: what is lost, in percent of the patches' cut area, or how much the cloths lack. */
@Command(
        name = "piecing",
        description = "cloths pieced freely from scraps: lost % of the patches' cut area, or short and the % missing")
final class Piecing implements Callable<Integer> {

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "FILE")
    private List<Path> files = List.of();

    @Option(names = "--answers", paramLabel = "DIR", description = "where the cloths are written, one file an instance")
    private Optional<Path> answers = Optional.empty();

    @Mixin
    private Allowance allowance = new Allowance();

    @Override
    public Integer call() throws IOException {
        Map<Path, PiecingJob> jobs = new LinkedHashMap<>();
        files.forEach(file -> jobs.put(file, PiecingFile.read(NumberFile.of(file))));
        if (answers.isPresent()) {
            Files.createDirectories(answers.get());
        }
        warm();
        PrintWriter out = spec.commandLine().getOut();
        out.println(Answering.HEADER);
        for (Map.Entry<Path, PiecingJob> entry : jobs.entrySet()) {
            String name = String.valueOf(entry.getKey().getFileName());
            Pace pace = allowance.begin();
            PiecingPlan plan = best(entry.getValue(), pace);
            out.println(row(name, plan, PiecingBounds.of(entry.getValue()), pace.elapsed()));
            out.flush();
            if (answers.isPresent()) {
                Files.writeString(answers.get().resolve(name.replaceFirst("\\.txt$", "") + ".answer"), text(plan));
            }
        }
        return 0;
    }

    private void warm() {
        long end = System.nanoTime() + allowance.warmUp().nanos();
        for (long seed = 1; System.nanoTime() - end < 0; seed++) {
            best(Heaps.of(seed), Pace.begin(Pace.Clock.WALL, 100_000_000, seed, allowance.threads()));
        }
    }

    private static PiecingPlan best(PiecingJob job, Pace pace) {
        List<CompletableFuture<PiecingPlan>> others = new ArrayList<>();
        for (int i = 1; i < pace.threads(); i++) {
            long seed = pace.seed() + i;
            others.add(CompletableFuture.supplyAsync(() -> answer(job, pace, seed), Task.WORKERS));
        }
        List<PiecingPlan> plans = new ArrayList<>(List.of(answer(job, pace, pace.seed())));
        others.forEach(other -> plans.add(other.join()));
        return plans.stream().min(Comparator.comparing(PiecingPlan::figures)).orElseThrow();
    }

    private static PiecingPlan answer(PiecingJob job, Pace pace, long seed) {
        PiecingPlan plan = pace.timed(() -> new FreePiecing(job).search(pace.budget()::spent, seed, better -> {}));
        if (plan.figures().full() && plan.figures().lost() == 0) {
            pace.enough();
        }
        return plan;
    }

    private static String row(String name, PiecingPlan plan, PiecingBounds bounds, long nanos) {
        PiecingPlan.Figures figures = plan.figures();
        String value = figures.full() ? percent(figures.lostPercent()) : "short " + percent(100.0 * figures.missing() / figures.wished());
        String bound = bounds.missing() > 0
                ? "short " + percent(100.0 * bounds.missing() / figures.wished())
                : percent(bounds.lostPercent());
        return String.join(",", name, value, bound, Verdict.milliseconds(nanos));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.4f", share);
    }

    private static String text(PiecingPlan plan) {
        return plan.cloths().stream()
                .map(PiecedCloth::tree)
                .map(tree -> "cloth " + text(tree) + "\n")
                .collect(Collectors.joining());
    }

    private static String text(Pieced tree) {
        if (tree instanceof Joint joint) {
            return "(" + text(joint.first()) + (joint.beside() ? " | " : " / ") + text(joint.second()) + ")";
        }
        ScrapPatch patch = (ScrapPatch) tree;
        return patch.scrap() + (patch.turned() ? "t" : "") + ":" + patch.width() + "x" + patch.height();
    }
}
