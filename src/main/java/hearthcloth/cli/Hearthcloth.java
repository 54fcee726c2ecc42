package hearthcloth.cli;

import hearthcloth.cli.help.HelpPage;
import hearthcloth.cli.io.Shell;
import hearthcloth.cli.option.LanguageOption;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.OptionText;
import hearthcloth.words.Language;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.TypingSentences;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The program as typed in a shell: its commands, and the one place that turns exceptions into sentences. */
@Command(name = "hearthcloth", mixinStandardHelpOptions = true, versionProvider = ProgramVersion.class)
final class Hearthcloth implements Callable<Integer> {

    /** Help is one section, which is written here and not by the library. */
    private static final String PAGE = "page";

    private final Shell shell;
    private final CommandLine line;
    private final WorkroomDoor door;

    /** Known before the words are read, so that whatever is wrong with them is said in it too. */
    private Language spoken = Language.ENGLISH;

    @Option(names = "--port", paramLabel = "N")
    private String port = "4732";

    @Option(names = "--data", paramLabel = "FILE")
    @Nullable
    private String data;

    @Option(names = "--restore", paramLabel = "COPY")
    @Nullable
    private String restore;

    @Option(names = "--lan")
    private boolean lan;

    @Option(names = "--new")
    private boolean anew;

    @Option(names = "--code")
    private boolean code;

    @Option(names = "--address", paramLabel = "URL")
    @Nullable
    private String address;

    @Option(names = "--no-browser")
    private boolean noBrowser;

    @Mixin
    private LanguageOption language = new LanguageOption();

    Hearthcloth(Shell shell, WorkroomDoor door) {
        this.shell = shell;
        this.door = door;
        this.line = new CommandLine(this)
                .addSubcommand("help", new HelpCommand())
                .addSubcommand("plan", new PlanCommand(shell))
                .addSubcommand("kits", new KitsCommand(shell))
                .addSubcommand("read", new ReadCommand(shell))
                .addSubcommand("size", new SizeCommand(shell))
                .addSubcommand("guideline", new GuidelineCommand(shell, door))
                .addSubcommand("idea", new IdeaCommand(shell))
                .addSubcommand("sheet", new SheetCommand(shell))
                .addSubcommand("completion", new CompletionCommand(shell))
                .setExpandAtFiles(false)
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setHelpSectionKeys(List.of(PAGE))
                .setHelpSectionMap(Map.of(PAGE, help -> HelpPage.of(help.commandSpec(), spoken)))
                .setOut(new PrintWriter(shell.out(), true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(shell.err(), true, StandardCharsets.UTF_8))
                .setParameterExceptionHandler((trouble, args) -> say(Mistyped.said(trouble, spoken)))
                .setExecutionExceptionHandler((trouble, command, parsed) -> failed(trouble));
    }

    /** The commands, for those who describe them. */
    CommandLine line() {
        return line;
    }

    int run(String[] args) {
        spoken = LanguageOption.spoken(args);
        try {
            int code = line.setDefaultValueProvider(Surroundings.of(System.getenv()))
                    .execute(args);
            shell.out().flush();
            return code;
        } catch (BadInputException e) {
            return say(e);
        } catch (OutOfMemoryError | StackOverflowError e) {
            return say(new BadInputException(TypingSentences.memory()));
        }
    }

    /** Without a command: the workroom. */
    @Override
    public Integer call() {
        OptionText text = new OptionText();
        Language told = language.read(text);
        int number = text.whole("--port", port, 0, 0, 65_535);
        Optional<String> place = text.read("--data", data, Optional.empty(), Hearthcloth::place);
        text.check();
        return door.open(
                new WorkroomDoor.Asked(
                        number,
                        place,
                        !noBrowser,
                        new WorkroomDoor.Start(Optional.ofNullable(restore), anew),
                        new WorkroomDoor.Network(lan, code, Optional.ofNullable(address)),
                        told),
                shell);
    }

    private static Optional<String> place(String written) {
        try {
            return Optional.of(
                    written.matches("postgres(ql)?://.*")
                            ? written
                            : Path.of(written).toString());
        } catch (InvalidPathException e) {
            throw new RefusedException(TypingSentences.notFile(Argument.text(Mistyped.shortened(written))));
        }
    }

    private int failed(Exception trouble) {
        if (trouble instanceof BadInputException bad) {
            return say(bad);
        }
        String what = trouble.getClass().getSimpleName().replaceAll("Exception$", "");
        String said = trouble.getMessage() == null ? "" : ", " + Mistyped.shortened(trouble.getMessage());
        return say(new BadInputException(TypingSentences.inside(Argument.text(what + said)), TypingSentences.report()));
    }

    private int say(BadInputException refused) {
        shell.out().flush();
        refused.in(spoken).forEach(shell.err()::println);
        shell.err().flush();
        return 2;
    }
}
