package hearthcloth.benchmarks.hot;

import hearthcloth.benchmarks.sets.Formats;
import hearthcloth.benchmarks.sets.Generated;
import hearthcloth.benchmarks.sets.Midsize;
import hearthcloth.benchmarks.sets.NumberFile;
import hearthcloth.benchmarks.sets.Stashes;
import hearthcloth.benchmarks.sets.Wishes;
import hearthcloth.benchmarks.sheet.SheetCutting;
import hearthcloth.benchmarks.sheet.SheetJob;
import hearthcloth.benchmarks.sheet.SheetPlan;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Step;
import hearthcloth.cloth.face.Layers;
import hearthcloth.cutstock.cutjoin.CutAndJoin;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.join.Answer;
import hearthcloth.cutstock.join.JoinJob;
import hearthcloth.cutstock.join.JoinPlan;
import hearthcloth.cutstock.join.Joining;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.Planner;
import hearthcloth.stash.Stash;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Mean time of one call, on one thread; each call does the same work, counted in steps. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class HotPaths {

    private static final int STEPS = 1_000;

    private final JoinJob bars = Formats.join(file(Generated.TIGHT5));
    private final CutJoinJob odd = Midsize.job(6);
    private final SheetJob limited = Formats.knapsack(file(Generated.KNAPSACK));
    private final SheetJob free = Formats.unconstrained(file(Generated.UNCONSTRAINED), true);
    private final Stash stash = Stashes.of(100, 1);
    private final Wish wish = Wishes.square(24, 1);
    private final Cloth cloth = Wishes.cloth(5);

    private static NumberFile file(Generated kind) {
        return NumberFile.of(kind.name(), kind.text(1));
    }

    /** 20 bars out of 120 scraps: the bounds, one construction and {@value #STEPS} steps of the walk. */
    @Benchmark
    public Answer<JoinPlan, Integer> joining() {
        return new Joining().run(bars, Budget.steps(STEPS), 1, better -> {});
    }

    /** A hearth and 12 bars out of odd pieces: four placings and {@value #STEPS} steps of the walk. */
    @Benchmark
    public hearthcloth.cutstock.job.CutOutcome cuttingAndJoining() {
        return new CutAndJoin(odd).search(Budget.steps(STEPS), 1, better -> {});
    }

    /** One sheet, copies limited, {@value #STEPS} units of work. */
    @Benchmark
    public SheetPlan sheetWithLimits() {
        return SheetCutting.limited(limited, Budget.steps(STEPS), better -> {});
    }

    /** One sheet, copies not limited, pieces may be turned: the optimum. */
    @Benchmark
    public SheetPlan sheetWithoutLimits() {
        return SheetCutting.unlimited(free);
    }

    /** The first cloth out of a stash of 100 pieces, handed over as a proposal. */
    @Benchmark
    public PlanOutcome firstProposal() {
        AtomicBoolean found = new AtomicBoolean();
        return Planner.plan(stash, wish, 1, Budget.until(found::get), progress -> found.set(progress.found() > 0));
    }

    /** Places, allowances and cut sizes of a cloth of 20 bars. */
    @Benchmark
    public List<Laid> laid() {
        return cloth.laid();
    }

    /** The order of sewing of a cloth of 20 bars. */
    @Benchmark
    public List<Step> steps() {
        return cloth.steps();
    }

    /** The thickest place of a cloth of 20 bars. */
    @Benchmark
    public int layers() {
        return Layers.most(cloth);
    }
}
