package hearthcloth.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Where the program starts. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        System.exit(run(args, System.in, utf8(System.out), utf8(System.err)));
    }

    /**
     * Runs one command.
     *
     * @return 0 done, 1 cannot be made, 2 bad input
     */
    static int run(String[] args, InputStream in, PrintStream out, PrintStream err) {
        return new Hearthcloth(new Shell(in, out, err)).run(args);
    }

    /** Fractions and the × sign come out right whatever the terminal's own encoding is called. */
    private static PrintStream utf8(PrintStream stream) {
        return new PrintStream(stream, true, StandardCharsets.UTF_8);
    }
}
