package hearthcloth.benchmarks;

import hearthcloth.benchmarks.sets.Stashes;
import hearthcloth.benchmarks.sets.Wishes;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.Planner;
import hearthcloth.stash.Stash;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.LongStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How soon the planner has a first proposal, and how that grows with the stash. */
@Command(
        name = "plan",
        description = {
            "Plans a cloth from seeded stashes of growing size, everything but its size left open.",
            "first: until the search is stopped at its first cloth and hands over a proposal, in wall and thread time;",
            "growth: of thread time for each size, over that of n log n; heap: the most in use while planning."
        })
final class Planning implements Callable<Integer> {

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Option(
            names = "--sizes",
            split = ",",
            defaultValue = "10,100,1000,10000",
            description = "pieces (${DEFAULT-VALUE})")
    private List<Integer> sizes = List.of();

    @Option(names = "--cloth", defaultValue = "24", description = "finished side in inches (${DEFAULT-VALUE})")
    private int side = 24;

    @Option(
            names = "--times",
            defaultValue = "5",
            description = "stashes of each size; the median counts (${DEFAULT-VALUE})")
    private int times = 5;

    @Mixin
    private Allowance allowance = new Allowance();

    /** One call of the planner; {@code cloths} 0 where nothing was found. */
    private record Look(int cloths, long wall, long work, long heap) {}

    @Override
    public Integer call() {
        long end = System.nanoTime() + allowance.warmUp().nanos();
        for (long seed = -1; System.nanoTime() - end < 0; seed--) {
            look(Stashes.of(50, seed), true);
        }
        PrintWriter out = spec.commandLine().getOut();
        out.println("pieces,made,first ms,first thread ms,growth,all ms,proposals,heap MB");
        double before = 0;
        int smaller = 0;
        for (int size : sizes) {
            List<Look> first = looks(size, true);
            List<Look> all = looks(size, false);
            double work = median(first.stream().mapToLong(Look::work).toArray());
            double growth = before == 0 ? 0 : work / before / (nLogN(size) / nLogN(smaller));
            out.println(String.format(
                    Locale.ROOT,
                    "%d,%d of %d,%s,%s,%s,%s,%d,%.0f",
                    size,
                    first.stream().filter(look -> look.cloths > 0).count(),
                    times,
                    Verdict.milliseconds(
                            (long) median(first.stream().mapToLong(Look::wall).toArray())),
                    Verdict.milliseconds((long) work),
                    growth == 0 ? "" : String.format(Locale.ROOT, "%.2f", growth),
                    Verdict.milliseconds(
                            (long) median(all.stream().mapToLong(Look::wall).toArray())),
                    (int) median(all.stream().mapToLong(Look::cloths).toArray()),
                    all.stream().mapToLong(Look::heap).max().orElse(0) / 1e6));
            before = work;
            smaller = size;
        }
        return 0;
    }

    private static double nLogN(int n) {
        return n * Math.log(n);
    }

    private static double median(long[] values) {
        long[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private List<Look> looks(int size, boolean onlyFirst) {
        return LongStream.range(0, times)
                .mapToObj(i -> look(Stashes.of(size, allowance.seed() + i), onlyFirst))
                .toList();
    }

    private Look look(Stash stash, boolean onlyFirst) {
        Wish wish = Wishes.square(side, allowance.seed());
        AtomicBoolean found = new AtomicBoolean();
        Budget budget = Budget.until(() -> onlyFirst && found.get());
        List<MemoryPoolMXBean> heap = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .toList();
        heap.forEach(MemoryPoolMXBean::resetPeakUsage);
        long work = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        long wall = System.nanoTime();
        PlanOutcome outcome = Planner.plan(stash, wish, 1, budget, progress -> found.set(progress.found() > 0));
        wall = System.nanoTime() - wall;
        work = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - work;
        int cloths =
                outcome instanceof PlanOutcome.Proposals made ? made.plans().size() : 0;
        return new Look(
                cloths,
                wall,
                work,
                heap.stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum());
    }
}
