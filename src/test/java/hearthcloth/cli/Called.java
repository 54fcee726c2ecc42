package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cli.io.Shell;
import hearthcloth.wish.BadInputException;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Commands called in a test, with what they say. */
final class Called {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    final Shell shell = new Shell(
            InputStream.nullInputStream(),
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8));

    static int call(Callable<Integer> command, String... words) {
        CommandLine line = new CommandLine(command).setExpandAtFiles(false);
        line.parseArgs(words);
        try {
            return command.call();
        } catch (RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    static void refused(Runnable asked, String... said) {
        assertThatThrownBy(asked::run).isInstanceOf(BadInputException.class).hasMessageContainingAll(said);
    }

    /** What was said since this was last asked. */
    String said() {
        String said = out.toString(StandardCharsets.UTF_8);
        out.reset();
        return said;
    }

    static String[] with(String[] words, String... more) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }
}
