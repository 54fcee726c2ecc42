package hearthcloth.cli;

import hearthcloth.cli.io.Shell;
import hearthcloth.wish.OptionText;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code completion}: what shells and the manual want to know about the commands, made from the commands themselves. */
@Command(
        name = "completion",
        hidden = true,
        mixinStandardHelpOptions = true,
        header = "Prints a completion for bash, zsh or fish, or the manual page.",
        description = {"", "For example: hearthcloth completion fish > ~/.config/fish/completions/hearthcloth.fish"})
final class CompletionCommand implements Callable<Integer> {

    /** What can be printed. */
    enum Kind {
        BASH,
        ZSH,
        FISH,
        MAN
    }

    private final Shell shell;

    @Spec
    @Nullable
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "bash|zsh|fish|man", description = "What to print.")
    private String kind = "";

    CompletionCommand(Shell shell) {
        this.shell = shell;
    }

    @Override
    public Integer call() {
        OptionText text = new OptionText();
        Kind wished = text.word("completion", kind, Kind.BASH);
        text.check();
        CommandLine program = java.util.Objects.requireNonNull(spec).root().commandLine();
        shell.out()
                .print(
                        switch (wished) {
                            case BASH -> Completion.bash(program);
                            case ZSH -> Completion.zsh(program);
                            case FISH -> Completion.fish(program);
                            case MAN -> ManPage.of(program);
                        });
        return 0;
    }
}
