package hearthcloth.benchmarks;

import picocli.CommandLine.Option;

/** The options that every measurement has. */
final class Allowance {

    @Option(names = "--budget", defaultValue = "100ms", description = "time for each instance (${DEFAULT-VALUE})")
    private Duration budget = new Duration(100_000_000);

    @Option(names = "--seed", defaultValue = "1", description = "of every chance (${DEFAULT-VALUE})")
    private long seed = 1;

    @Option(
            names = "--threads",
            defaultValue = "2",
            description = "searches at once, each with its own seed (${DEFAULT-VALUE})")
    private int threads = 2;

    @Option(
            names = "--warm-up",
            defaultValue = "3s",
            description = "time on generated instances before the first row (${DEFAULT-VALUE})")
    private Duration warmUp = new Duration(3_000_000_000L);

    @Option(
            names = "--clock",
            defaultValue = "wall",
            description = "of budgets and times: wall, or thread on a machine that does other work (${DEFAULT-VALUE})")
    private Pace.Clock clock = Pace.Clock.WALL;

    Duration budget() {
        return budget;
    }

    long seed() {
        return seed;
    }

    int threads() {
        return Math.max(1, Math.min(threads, 64));
    }

    Duration warmUp() {
        return warmUp;
    }

    /** The clock of one instance begins to run. */
    Pace begin() {
        return Pace.begin(clock, budget.nanos(), seed, threads());
    }
}
