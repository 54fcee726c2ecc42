package hearthcloth.cli;

import hearthcloth.cli.help.Completion;
import hearthcloth.cli.help.ManPage;
import hearthcloth.cli.io.Shell;
import hearthcloth.cli.option.LanguageOption;
import hearthcloth.wish.OptionText;
import hearthcloth.words.Language;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code completion}: what shells and the manual want to know about the commands, made from the commands themselves. */
@Command(name = "completion", hidden = true, mixinStandardHelpOptions = true)
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

    @Parameters(index = "0", paramLabel = "bash|zsh|fish|man")
    private String kind = "";

    @Mixin
    private LanguageOption language = new LanguageOption();

    CompletionCommand(Shell shell) {
        this.shell = shell;
    }

    @Override
    public Integer call() {
        OptionText text = new OptionText();
        Kind wished = text.word("completion", kind, Kind.BASH);
        Language spoken = language.read(text);
        text.check();
        CommandLine program = java.util.Objects.requireNonNull(spec).root().commandLine();
        shell.out()
                .print(
                        switch (wished) {
                            case BASH -> Completion.bash(program);
                            case ZSH -> Completion.zsh(program, spoken);
                            case FISH -> Completion.fish(program, spoken);
                            case MAN -> ManPage.of(program, spoken);
                        });
        return 0;
    }
}
