package hearthcloth.cli;

import hearthcloth.cli.help.Completion;
import hearthcloth.cli.option.LanguageOption;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.ListWords;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.TypingSentences;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code help}: the program or one of its commands explained. */
@Command(name = "help", helpCommand = true, mixinStandardHelpOptions = true, sortOptions = false)
final class HelpCommand implements Callable<Integer> {

    @Spec
    @Nullable
    private CommandSpec spec;

    @Parameters(index = "0", arity = "0..1", paramLabel = "COMMAND")
    @Nullable
    private String which;

    /** Read before anything else is, from the words as they were typed. */
    @Mixin
    @SuppressWarnings("unused")
    private LanguageOption language = new LanguageOption();

    @Override
    public Integer call() {
        CommandLine program = Objects.requireNonNull(spec).root().commandLine();
        CommandLine explained =
                which == null ? program : program.getSubcommands().get(which);
        if (explained == null) {
            throw new BadInputException(unknown(String.valueOf(which), program));
        }
        explained.usage(program.getOut());
        program.getOut().flush();
        return 0;
    }

    /** There is no such command, but these. */
    static Sentence unknown(String typed, CommandLine program) {
        return TypingSentences.commandUnknown(
                Argument.text(ListWords.plain(typed)),
                Argument.names(
                        Argument.Joined.AND,
                        Completion.commands(program).stream()
                                .map(CommandSpec::name)
                                .toList()));
    }
}
