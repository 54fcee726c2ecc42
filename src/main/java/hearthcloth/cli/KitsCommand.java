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
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.TypingSentences;
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
@Command(name = "kits", mixinStandardHelpOptions = true, sortOptions = false)
final class KitsCommand implements Callable<Integer> {

    private final Shell shell;

    @Option(names = "--wishes", paramLabel = "LIST.csv")
    @Nullable
    private String wishes;

    @Option(names = "--students", paramLabel = "N")
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
        Voice voice = print.print().voice();
        List<WishList.Line> lines = lines(read, voice);
        read.warnings()
                .forEach(warning -> shell.err()
                        .println(ListWords.line(TypingSentences.note(warning).in(voice))));
        ProgressLine progress = new ProgressLine(shell, voice);
        Together together = PlanningTogether.plan(
                read.stash(),
                lines.stream().map(KitsCommand::asked).toList(),
                new PlanningTogether.Effort(time.effort(), seed, time.begin()),
                progress::together);
        progress.say(TypingSentences.progress(Argument.text(""), "drawing").in(voice));
        List<String> words =
                lines.stream().map(line -> line.asked(Voice.english(ruler))).toList();
        KitsJson kits = KitsJson.of(read.stash(), together, words);
        PrintOptions.Print printed = print.print();
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
        StashFile.Read read = stash.read(shell, printing.voice());
        if (read.stash().pieces().isEmpty()) {
            throw new BadInputException(TypingSentences.kitsEmpty());
        }
        return read;
    }

    private List<WishList.Line> lines(StashFile.Read read, Voice voice) {
        WishWords common = options.words()
                .with(WishField.GIFT, options.gift().gift())
                .with(WishField.TIE, options.gift().tie());
        WishList list = new WishList(common, read.stash(), voice.ruler());
        if (wishes != null && students != null) {
            throw new BadInputException(TypingSentences.kitsBoth());
        }
        if (wishes != null) {
            return list.read(InputText.read(wishes, shell.in()), ListWords.plain(wishes));
        }
        if (students == null) {
            throw new BadInputException(TypingSentences.kitsWhich());
        }
        OptionText text = new OptionText();
        int count = text.whole("--students", students, 1, 1, WishList.MOST);
        text.check();
        return list.students(count, Door.SHELL, voice);
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
