package hearthcloth.benchmarks;

import hearthcloth.benchmarks.hot.HotPaths;
import java.io.PrintWriter;
import java.util.Collection;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The microbenchmarks, by JMH in a JVM of their own. */
@Command(name = "hot", description = "Mean time of the hot paths, in microseconds, by JMH.")
final class Hot implements Callable<Integer> {

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(index = "0", arity = "0..1", paramLabel = "PATTERN", description = "only those whose name contains it")
    private String pattern = "";

    @Override
    public Integer call() throws RunnerException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(HotPaths.class.getName() + ".*" + pattern)
                        .verbosity(VerboseMode.SILENT)
                        .build())
                .run();
        PrintWriter out = spec.commandLine().getOut();
        out.println("path,microseconds,error");
        for (RunResult run : results) {
            Result<?> result = run.getPrimaryResult();
            out.println(String.format(
                    Locale.ROOT, "%s,%.1f,%.1f", result.getLabel(), result.getScore(), result.getScoreError()));
        }
        return 0;
    }
}
