package hearthcloth.cli;

import hearthcloth.cli.io.Shell;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** The program as it is started from a shell. It knows no browser: how the workroom is opened is passed to it. */
public final class CommandLineTool {

    private final WorkroomDoor door;

    public CommandLineTool(WorkroomDoor door) {
        this.door = door;
    }

    /**
     * Runs one command; without one, the workroom.
     *
     * @return 0 done, 1 cannot be made, 2 bad input
     */
    public int run(String[] args, InputStream in, PrintStream out, PrintStream err) {
        return new Hearthcloth(new Shell(in, utf8(out), utf8(err)), door).run(args);
    }

    /**
     * A stream in UTF-8, so that fractions and the × sign come out right whatever the terminal's own encoding is
     * called.
     */
    private static PrintStream utf8(PrintStream stream) {
        return new PrintStream(stream, true, StandardCharsets.UTF_8);
    }
}
