package hearthcloth.benchmarks;

import hearthcloth.benchmarks.sets.BadFileException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** Runs the benchmarks' commands. Exit codes: 0 done, 1 a measurement failed its own check, 2 bad input. */
public final class Benchmarks {

    private Benchmarks() {}

    /** Runs one command and leaves with its code. */
    public static void main(String[] args) {
        System.exit(run(
                new PrintWriter(System.out, true, StandardCharsets.UTF_8),
                new PrintWriter(System.err, true, StandardCharsets.UTF_8),
                args));
    }

    static int run(PrintWriter out, PrintWriter err, String... args) {
        return new CommandLine(new Answering())
                .addSubcommand(new Generating())
                .addSubcommand(new Piecing())
                .addSubcommand(new Planning())
                .addSubcommand(new Colouring())
                .addSubcommand(new ColourAgainstCpSat())
                .addSubcommand(new Sharing())
                .addSubcommand(new Hot())
                .addSubcommand(new Summary())
                .addSubcommand(new CpSatSummary())
                .addSubcommand(new AgainstCpSat())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .registerConverter(Duration.class, Duration::parse)
                .setOut(out)
                .setErr(err)
                .setExecutionExceptionHandler((thrown, command, parsed) -> {
                    if (thrown instanceof BadFileException bad) {
                        err.println(bad.getMessage());
                        return CommandLine.ExitCode.USAGE;
                    }
                    throw thrown;
                })
                .execute(args);
    }
}
