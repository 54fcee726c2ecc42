package hearthcloth.benchmarks;

import hearthcloth.plan.colour.ExactColours;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Which fabric each bar is of: our branch and bound beside CP-SAT on seeded jobs, one after the other. */
@Command(
        name = "colour-cpsat",
        description = {
            "Seeded jobs of 8 to 16 bars, a fabric for each, by our search and by CP-SAT on the same model; a row each.",
            "Exit code 1 where ours is worse, or where both prove different values."
        })
final class ColourAgainstCpSat implements Callable<Integer> {

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Option(names = "--count", defaultValue = "60", description = "how many jobs (${DEFAULT-VALUE})")
    private int count = 60;

    @Option(names = "--limit", defaultValue = "60s", description = "for CP-SAT, each job (${DEFAULT-VALUE})")
    private Duration limit = new Duration(60_000_000_000L);

    @Mixin
    private Allowance allowance = new Allowance();

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        long end = System.nanoTime() + allowance.warmUp().nanos();
        for (long seed = -1; System.nanoTime() - end < 0; seed--) {
            ExactColours.row(seed, 1);
        }
        out.println("seed,bars,fabrics,ours,our bound,our ms,cpsat,cpsat bound,cpsat ms,times faster,verdict");
        boolean isMissed = false;
        for (long seed = allowance.seed(); seed < allowance.seed() + count; seed++) {
            String row = ExactColours.row(seed, limit.seconds());
            isMissed |= row.endsWith("MISS") || row.endsWith("DISAGREE");
            out.println(row);
        }
        return isMissed ? 1 : 0;
    }
}
