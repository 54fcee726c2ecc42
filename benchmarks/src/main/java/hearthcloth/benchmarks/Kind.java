package hearthcloth.benchmarks;

import hearthcloth.benchmarks.sets.Formats;
import hearthcloth.benchmarks.sets.Generated;
import hearthcloth.benchmarks.sets.NumberFile;

/** The kinds of problem that have a file format: how to read one, and which instances of our own warm the machine. */
enum Kind {
    JOIN(Generated.JOIN),
    CUT_AND_JOIN(Generated.CUT_AND_JOIN),
    KNAPSACK(Generated.KNAPSACK),
    UNCONSTRAINED(Generated.UNCONSTRAINED),
    UNCONSTRAINED_TURNED(Generated.UNCONSTRAINED);

    private final Generated own;

    Kind(Generated own) {
        this.own = own;
    }

    Task read(NumberFile file) {
        return switch (this) {
            case JOIN -> Task.of(Formats.join(file));
            case CUT_AND_JOIN -> Task.of(Formats.cutAndJoin(file));
            case KNAPSACK -> Task.limited(Formats.knapsack(file));
            case UNCONSTRAINED -> Task.unlimited(Formats.unconstrained(file, false));
            case UNCONSTRAINED_TURNED -> Task.unlimited(Formats.unconstrained(file, true));
        };
    }

    /** Answers generated instances for so long, so that what is measured afterwards runs compiled. */
    void warm(long nanos, int threads) {
        long end = System.nanoTime() + nanos;
        long each = Math.min(nanos / 8, 200_000_000);
        for (long seed = -1; System.nanoTime() - end < 0; seed--) {
            read(NumberFile.of("generated", own.text(seed))).answer(Pace.begin(Pace.Clock.WALL, each, seed, threads));
        }
    }
}
