package hearthcloth.benchmarks;

import hearthcloth.benchmarks.sets.Generated;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes seeded instances as problem files. */
@Command(
        name = "generate",
        description = {
            "Writes seeded instances as problem files.",
            "LARGE and TIGHT* are read by join; TIGHT0 has nothing to spare, TIGHT5 5 %."
        })
final class Generating implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "KIND", description = "one of ${COMPLETION-CANDIDATES}")
    private Generated kind = Generated.JOIN;

    @Parameters(index = "1", paramLabel = "FOLDER", description = "is made where there is none")
    private Path folder = Path.of("");

    @Option(names = "--count", defaultValue = "50", description = "how many (${DEFAULT-VALUE})")
    private int count = 50;

    @Option(names = "--seed", defaultValue = "1", description = "of the first; the others count on (${DEFAULT-VALUE})")
    private long seed = 1;

    @Override
    public Integer call() throws IOException {
        Files.createDirectories(folder);
        for (long at = seed; at < seed + count; at++) {
            String name = String.format(Locale.ROOT, "%s-%04d.txt", kind.name().toLowerCase(Locale.ROOT), at);
            Files.writeString(folder.resolve(name), kind.text(at));
        }
        return 0;
    }
}
