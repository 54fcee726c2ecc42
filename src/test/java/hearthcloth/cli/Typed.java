package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** One command as typed in a shell, and what came of it. */
record Typed(int code, String out, String err) {

    static Typed words(String... words) {
        return withInput(new byte[0], words);
    }

    static Typed withInput(byte[] input, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = new CommandLineTool((asked, shell) -> {
                    shell.out()
                            .println("workroom at " + asked.port() + ", " + asked.data() + ", " + asked.browser() + ", "
                                    + asked.start().restore());
                    return 0;
                })
                .run(
                        words,
                        new ByteArrayInputStream(input),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Typed(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Refused as bad input, in words for a maker, on standard error alone. */
    Typed refused(String... said) {
        assertThat(code).as(err).isEqualTo(2);
        assertThat(out).isEmpty();
        assertThat(err).contains(said);
        return plain();
    }

    /** Nothing of our insides shows. */
    Typed plain() {
        assertThat(out + err)
                .doesNotContain("Exception", "at hearthcloth", "java.", "null", "\u001b", "went wrong inside");
        return this;
    }
}
