package hearthcloth.cli.io;

import java.io.InputStream;
import java.io.PrintStream;

/** The three streams that every command speaks through. */
public record Shell(InputStream in, PrintStream out, PrintStream err) {

    /** Set by the launcher where standard error is a terminal; Java itself cannot ask that of one stream alone. */
    private static final String WATCHED = "hearthcloth.watched";

    /** Whether somebody watches; progress is not shown for a file or a pipe. */
    boolean isWatched() {
        return Boolean.getBoolean(WATCHED);
    }
}
