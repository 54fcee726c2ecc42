package hearthcloth.cli;

import hearthcloth.cli.io.InputText;
import hearthcloth.cli.io.OutputFolder;
import hearthcloth.cli.io.ProgressLine;
import hearthcloth.cli.io.Shell;
import hearthcloth.cli.option.FolderOptions;
import hearthcloth.cli.option.JsonOption;
import hearthcloth.cli.option.PrintOptions;
import hearthcloth.cli.option.StashInput;
import hearthcloth.cli.option.TimeOption;
import hearthcloth.cli.option.WishOptions;
import hearthcloth.cli.report.JsonText;
import hearthcloth.cli.report.KitsJson;
import hearthcloth.cli.report.KitsReport;
import hearthcloth.draw.KitsPrint;
import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.guide.GuideLength;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.together.Asked;
import hearthcloth.plan.together.PlanningTogether;
import hearthcloth.plan.together.Together;
import hearthcloth.stash.StashFile;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.Door;
import hearthcloth.wish.ListWords;
import hearthcloth.wish.OptionText;
import hearthcloth.wish.PlanBudget;
import hearthcloth.wish.WishField;
import hearthcloth.wish.WishList;
import hearthcloth.wish.WishWords;
import hearthcloth.words.speech.Voice;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code kits}: many cloths from one stash, planned together, each in a folder, and everything to pack bags by. */
@Command(
        name = "kits",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header =
                "Plans many cloths from one stash, so that nothing is promised twice; for a class or a season's gifts.",
        description = {
            "",
            "Plans a cloth for each line of a list, or for so many students, and shares the stash fairly: whoever",
            "fares worst has as few joins as can be found, hearths differ, everybody has lights and darks. Writes a",
            "numbered folder for each as plan does, kits.pdf (a sheet for the teacher, the shopping list, a slip for",
            "every bag and every patch) and kits.json. What is wished here holds for all; the list may say otherwise."
        },
        parameterListHeading = "%n",
        optionListHeading = "%nWishes:%n",
        footerHeading = "%nThe list%n",
        footer = {
            "  Comma-separated text (CSV, UTF-8), a line a cloth. Its first line names the columns: name, and gift or",
            "  size; if you like, any wish of plan without its dashes, such as tie, hearth, bars, rounds, fabrics, free.",
            "",
            "    name,size,gift,fabrics",
            "    Anna,16 in,,",
            "    Grandmother,,box 30 x 20 x 8 cm,\"Kelp linen, Foam cotton\"",
            "",
            "Examples:",
            "  hearthcloth kits examples/two-hundred.csv --students 12 --size \"16 in\" --out class",
            "  hearthcloth kits examples/two-hundred.csv --wishes examples/season.csv --out season",
            "",
            "Ends with 0 when every cloth is as it was wished, 1 when some lack something (said, and the nearest is drawn),",
            "2 when something typed or written in a file cannot be used (and says where)."
        })
final class KitsCommand implements Callable<Integer> {

    private final Shell shell;

    @Option(names = "--wishes", paramLabel = "LIST.csv", description = "The list of cloths.")
    @Nullable
    private String wishes;

    @Option(names = "--students", paramLabel = "N", description = "So many cloths alike instead of a list, 1 to 99.")
    @Nullable
    private String students;

    @Mixin
    private FolderOptions out = new FolderOptions();

    @Mixin
    private JsonOption json = new JsonOption();

    @Mixin
    private WishOptions options = new WishOptions();

    @Mixin
    private StashInput stash = new StashInput();

    @Mixin
    private PrintOptions printing = new PrintOptions(GuideLength.CLASS);

    @Mixin
    private TimeOption budget = new TimeOption("10s");

    KitsCommand(Shell shell) {
        this.shell = shell;
    }

    @Override
    public Integer call() {
        OutputFolder folder = out.folder();
        StashFile.Read read = stash();
        Ruler ruler = stash.ruler(read);
        OptionText text = new OptionText();
        PlanBudget time = budget.read(text);
        PrintOptions.Asked print = printing.read(text, ruler);
        long seed = text.whole("--seed", options.seed(), 1, 0, 999_999_999);
        text.check();
        List<WishList.Line> lines = lines(read, ruler);
        read.warnings().forEach(warning -> shell.err().println("Note: " + ListWords.line(warning.english())));
        ProgressLine progress = new ProgressLine(shell, Voice.english(ruler));
        Together together = PlanningTogether.plan(
                read.stash(),
                lines.stream().map(KitsCommand::asked).toList(),
                new PlanningTogether.Effort(time.effort(), seed, time.begin()),
                progress::together);
        progress.say("drawing");
        List<String> words =
                lines.stream().map(line -> line.asked(Voice.english(ruler))).toList();
        KitsJson kits = KitsJson.of(read.stash(), together, words);
        PrintOptions.Print printed = print.print(shell);
        write(folder, together, lines, kits, printed);
        progress.clear();
        say(together, kits, printed.voice());
        return together.isComplete() ? 0 : 1;
    }

    private static Asked asked(WishList.Line line) {
        return new Asked(line.name(), line.wish(), line.patchwork());
    }

    private void say(Together together, KitsJson kits, Voice voice) {
        if (json.isWished()) {
            shell.out().println(JsonText.of(kits));
        } else {
            new KitsReport(shell.out(), voice).say(together, out.shown());
        }
    }

    private StashFile.Read stash() {
        StashFile.Read read = stash.read(shell);
        if (read.stash().pieces().isEmpty()) {
            throw new BadInputException("The stash is empty; add at least one piece.");
        }
        return read;
    }

    private List<WishList.Line> lines(StashFile.Read read, Ruler ruler) {
        WishWords common = options.words()
                .with(WishField.GIFT, options.gift().gift())
                .with(WishField.TIE, options.gift().tie());
        WishList list = new WishList(common, read.stash(), ruler);
        if (wishes != null && students != null) {
            throw new BadInputException(
                    "--students: a list says how many cloths there are; leave out --students or --wishes.");
        }
        if (wishes != null) {
            return list.read(InputText.read(wishes, shell.in()), ListWords.plain(wishes));
        }
        if (students == null) {
            throw new BadInputException("Which cloths? Give --wishes LIST.csv, or --students 12 --size \"16 in\".");
        }
        OptionText text = new OptionText();
        int count = text.whole("--students", students, 1, 1, WishList.MOST);
        text.check();
        return list.students(count, Door.SHELL);
    }

    private static void write(
            OutputFolder folder,
            Together together,
            List<WishList.Line> lines,
            KitsJson kits,
            PrintOptions.Print print) {
        List<OutputFolder.Proposal> files = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            var gift = lines.get(i).gift().map(wish -> wish.wrapped(print.ruler()));
            together.parts()
                    .get(i)
                    .plan()
                    .map(plan -> new PlanFolder(plan, print.voice(), print.paper(), gift))
                    .ifPresent(drawn -> files.add(into -> drawn.write(into, print.length())));
        }
        List<String> asked = lines.stream()
                .map(line -> line.gift().isPresent() ? line.asked(print.voice()) : "")
                .toList();
        KitsPrint printed = new KitsPrint(together, asked, print.voice(), print.paper());
        folder.write(files, into -> {
            Files.write(into.resolve("kits.pdf"), printed.pdf());
            Files.writeString(into.resolve("kits.json"), JsonText.of(kits) + "\n", StandardCharsets.UTF_8);
        });
    }
}
