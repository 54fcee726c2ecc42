package hearthcloth.benchmarks;

import hearthcloth.benchmarks.sets.NumberFile;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Commands that answer problem files, one row each. Every file is read before the first is answered. */
@Command(
        name = "benchmarks/run",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND",
        description = "Measures Hearthcloth's searches. Each instance has its own budget, all share one warm JVM.")
final class Answering {

    static final String HEADER = "instance,value,bound,milliseconds";

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Command(name = "join", description = "bars pieced from strips of their own width: joins")
    int join(@Parameters(arity = "1..*", paramLabel = "FILE") List<Path> files, @Mixin Allowance allowance) {
        return answer(Kind.JOIN, files, allowance);
    }

    @Command(name = "cut-and-join", description = "bars and a square out of coloured rectangles: joins")
    int cutAndJoin(@Parameters(arity = "1..*", paramLabel = "FILE") List<Path> files, @Mixin Allowance allowance) {
        return answer(Kind.CUT_AND_JOIN, files, allowance);
    }

    @Command(name = "knapsack", description = "one sheet, limited copies, straight cuts, no turning: profit")
    int knapsack(@Parameters(arity = "1..*", paramLabel = "FILE") List<Path> files, @Mixin Allowance allowance) {
        return answer(Kind.KNAPSACK, files, allowance);
    }

    @Command(name = "unconstrained", description = "one sheet, unlimited copies, straight cuts: profit")
    int unconstrained(
            @Parameters(arity = "1..*", paramLabel = "FILE") List<Path> files,
            @Option(names = "--turned", description = "rectangles may be turned by a quarter") boolean turned,
            @Mixin Allowance allowance) {
        return answer(turned ? Kind.UNCONSTRAINED_TURNED : Kind.UNCONSTRAINED, files, allowance);
    }

    private int answer(Kind kind, List<Path> files, Allowance allowance) {
        Map<Path, Task> tasks = new LinkedHashMap<>();
        files.forEach(file -> tasks.put(file, kind.read(NumberFile.of(file))));
        kind.warm(allowance.warmUp().nanos(), allowance.threads());
        PrintWriter out = spec.commandLine().getOut();
        out.println(HEADER);
        tasks.forEach((file, task) -> {
            Pace pace = allowance.begin();
            Verdict verdict = task.answer(pace);
            out.println(verdict.row(String.valueOf(file.getFileName()), pace.elapsed()));
            out.flush();
        });
        return 0;
    }
}
