package hearthcloth.cli;

import hearthcloth.cli.io.Shell;
import hearthcloth.measure.MeasureException;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.OptionText;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program as typed in a shell: its commands, and the one place that turns exceptions into sentences. */
@Command(
        name = "hearthcloth",
        mixinStandardHelpOptions = true,
        versionProvider = ProgramVersion.class,
        header = "Plans reversible, single-layer patchwork wrapping cloths from the fabric you own.",
        subcommands = HelpCommand.class,
        synopsisSubcommandLabel = "[plan|kits|read|size|guideline]",
        description = {"", "Without a command it opens the workroom in your browser."},
        commandListHeading = "%nCommands:%n",
        optionListHeading = "%nOptions:%n",
        exitCodeListHeading = "%nIt ends with:%n",
        exitCodeList = {
            "0:done",
            "1:the stash cannot make what is wished, and it was said what is short",
            "2:something typed, or written in a file, cannot be used, and it was said where"
        },
        footerHeading = "%nTry it on the example that comes with it:%n",
        footer = {
            "  ./hearthcloth plan examples/scraps.csv --gift \"box 30 x 20 x 8 cm\" --out out",
            "  ./hearthcloth size --gift \"box 30 x 20 x 8 cm\"",
            "  ./hearthcloth read table.jpg --sheet a4 --out scraps.csv",
            "",
            "\"./hearthcloth help plan\" explains every wish with examples."
        })
final class Hearthcloth implements Callable<Integer> {

    private final Shell shell;
    private final CommandLine line;
    private final WorkroomDoor door;

    @Option(
            names = "--port",
            paramLabel = "N",
            description = "Port of the workroom; the next free one is taken where it is in use.")
    private String port = "4732";

    @Option(
            names = "--data",
            paramLabel = "FILE",
            description = "File that keeps your work; a usual place if left out. Or a studio's database,"
                    + " postgresql://HOST/NAME.")
    @Nullable
    private String data;

    @Option(
            names = "--restore",
            paramLabel = "COPY",
            description = "Put a safety copy in the file's place first: \"last\", or the copy's name.")
    @Nullable
    private String restore;

    @Option(
            names = "--lan",
            description = "Let phones and tablets on this network in, each by a code shown in the workroom.")
    private boolean lan;

    @Option(
            names = "--new",
            description = "Begin an empty workroom although one used to lie in the file's place and is gone.")
    private boolean anew;

    @Option(
            names = "--code",
            description = "Ask for a code on this machine too, where other people are logged in to it.")
    private boolean code;

    @Option(
            names = "--address",
            paramLabel = "URL",
            description = "Where a studio is reached through a proxy on this machine: https://studio.example.")
    @Nullable
    private String address;

    @Option(names = "--no-browser", description = "Only print the workroom's address.")
    private boolean noBrowser;

    Hearthcloth(Shell shell, WorkroomDoor door) {
        this.shell = shell;
        this.door = door;
        this.line = new CommandLine(this)
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
                .setUsageHelpWidth(100)
                .setOut(new PrintWriter(shell.out(), true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(shell.err(), true, StandardCharsets.UTF_8))
                .setParameterExceptionHandler((trouble, args) -> mistyped(trouble))
                .setExecutionExceptionHandler((trouble, command, parsed) -> failed(trouble));
    }

    /** The commands, for those who describe them. */
    CommandLine line() {
        return line;
    }

    int run(String[] args) {
        try {
            int code = line.setDefaultValueProvider(Surroundings.of(System.getenv()))
                    .execute(args);
            shell.out().flush();
            return code;
        } catch (BadInputException e) {
            return say(e.sentences().toArray(String[]::new));
        } catch (OutOfMemoryError | StackOverflowError e) {
            return say("Hearthcloth ran out of memory on this stash. Leave some pieces out and try again.");
        }
    }

    /** Without a command: the workroom. */
    @Override
    public Integer call() {
        OptionText text = new OptionText();
        int number = text.whole("--port", port, 0, 0, 65_535);
        Optional<String> place = text.read("--data", data, Optional.empty(), Hearthcloth::place);
        text.check();
        return door.open(
                new WorkroomDoor.Asked(
                        number,
                        place,
                        !noBrowser,
                        new WorkroomDoor.Start(Optional.ofNullable(restore), anew),
                        new WorkroomDoor.Network(lan, code, Optional.ofNullable(address))),
                shell);
    }

    private static Optional<String> place(String written) {
        try {
            return Optional.of(
                    written.matches("postgres(ql)?://.*")
                            ? written
                            : Path.of(written).toString());
        } catch (InvalidPathException e) {
            throw new MeasureException("\"" + shortened(written) + "\" is not a file name; choose another");
        }
    }

    private int mistyped(ParameterException trouble) {
        String command = trouble.getCommandLine().getCommandSpec().qualifiedName();
        String sentence = sentence(trouble).replaceAll("\\p{Cntrl}+", " ");
        return say(sentence + ".", "\"" + command + " --help\" shows how to write it.");
    }

    private static String sentence(ParameterException trouble) {
        if (trouble instanceof UnmatchedArgumentException unknown) {
            String what = unknown.getUnmatched().get(0);
            if (unknown.getCommandLine().getParent() == null && !unknown.isUnknownOption()) {
                return "There is no command " + shortened(what) + "; there are "
                        + String.join(
                                ", ",
                                Completion.commands(unknown.getCommandLine()).stream()
                                        .map(CommandLine.Model.CommandSpec::name)
                                        .toList());
            }
            return unknown.isUnknownOption()
                    ? "There is no option " + shortened(what)
                    : "\"" + shortened(what) + "\" is one word too many; put quotes round a wish of several words";
        }
        if (trouble instanceof MissingParameterException missing) {
            return "Something is missing: "
                    + String.join(
                            ", ",
                            missing.getMissing().stream()
                                    .map(arg -> arg.isOption()
                                            ? ((CommandLine.Model.OptionSpec) arg).longestName() + " "
                                                    + arg.paramLabel()
                                            : arg.paramLabel())
                                    .toList());
        }
        return shortened(String.valueOf(trouble.getMessage()));
    }

    private static String shortened(String text) {
        return text.length() > 200 ? text.substring(0, 200) + "…" : text;
    }

    private int failed(Exception trouble) {
        if (trouble instanceof BadInputException bad) {
            return say(bad.sentences().toArray(String[]::new));
        }
        String what = trouble.getClass().getSimpleName().replaceAll("Exception$", "");
        String said = trouble.getMessage() == null ? "" : ", " + shortened(trouble.getMessage());
        return say(
                "Something went wrong inside Hearthcloth (" + what + said + ").",
                "Your files are untouched. Please report it with the stash file and the words you typed.");
    }

    private int say(String... sentences) {
        shell.out().flush();
        for (String sentence : sentences) {
            shell.err().println(sentence);
        }
        shell.err().flush();
        return 2;
    }
}
