package hearthcloth.cli;

import hearthcloth.cli.io.OutputFolder;
import hearthcloth.cli.io.ProgressLine;
import hearthcloth.cli.io.Shell;
import hearthcloth.cli.option.FolderOptions;
import hearthcloth.cli.option.JsonOption;
import hearthcloth.cli.option.PrintOptions;
import hearthcloth.cli.option.StashInput;
import hearthcloth.cli.option.TimeOption;
import hearthcloth.cli.option.WishOptions;
import hearthcloth.cli.report.GuidelineReport;
import hearthcloth.cli.report.JsonText;
import hearthcloth.cli.report.PlanJson;
import hearthcloth.cli.report.PlanReport;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.draw.guide.GuideLength;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.fit.Ask;
import hearthcloth.guideline.fit.Fitted;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.PlanProgress;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.patchwork.PatchworkPlanner;
import hearthcloth.plan.propose.Planner;
import hearthcloth.stash.Stash;
import hearthcloth.stash.StashFile;
import hearthcloth.wish.Door;
import hearthcloth.wish.GiftWish;
import hearthcloth.wish.ListWords;
import hearthcloth.wish.OptionText;
import hearthcloth.wish.PatchworkReader;
import hearthcloth.wish.PlacingReader;
import hearthcloth.wish.PlanBudget;
import hearthcloth.wish.Usual;
import hearthcloth.wish.WishReader;
import hearthcloth.wish.WishWords;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Slack;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code plan}: from a stash file and a wish to several cloths, each in a folder ready to cut and sew by. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Plans cloths from a stash: what to cut from which piece, and how to sew it.",
        description = {
            "",
            "Reads the stash, plans several different cloths that it can really make, and writes a numbered",
            "folder for each, best first, with plan.json, front.svg, back.svg, cut.svg and guide.pdf; with --gift",
            "also tied.svg, the gift as it will look. What you leave out is chosen for you, and said."
        },
        parameterListHeading = "%n",
        optionListHeading = "%nWishes:%n",
        footerHeading = "%nThe stash file%n",
        footer = {
            "  Comma-separated text (CSV, UTF-8) with a line for each piece and the columns named in its first",
            "  line, in any order. Needed: fabric, width, length (along the selvage). If you like: count, colour",
            "  (#8a9a5b or olive), faces (same | right), nap (any | lengthwise), washed (yes | no), unit, note.",
            "",
            "    fabric,width,length,count,colour,faces",
            "    Kelp linen,6 1/2 in,20 in,3,#3f5a4a,same",
            "    Sail stripe,44 in,1/2 yd,1,#d8d2c0,right",
            "",
            "Examples:",
            "  hearthcloth plan examples/scraps.csv --out out",
            "      whatever the stash makes best, as large as it goes",
            "  hearthcloth plan examples/scraps.csv --gift \"box 30 x 20 x 8 cm\" --out out",
            "      large enough to tie round that box",
            "  hearthcloth plan examples/two-lengths.csv --hearth \"18 in\" --bars \"6 in\" --rounds 2 \\",
            "      --seam \"1/4 + 1/2 in\" --hem \"1/4 + 1/4 in\" --out out",
            "      hearth and bars as cut; the size follows",
            "  hearthcloth plan examples/metric.csv --size \"70 cm\" --order pairs --fabrics \"Rope, Slate\" --out out",
            "  hearthcloth plan examples/scraps.csv --free --size \"30 x 24 in\" --out out",
            "      scraps laid together as they are",
            "  hearthcloth plan examples/scraps.csv --blocks \"3 x 3\" --setting \"straight furrow\" --out out",
            "      nine small log cabins set together",
            "  hearthcloth plan examples/scraps.csv --guideline examples/idea.json --out out",
            "      a teacher's guideline, fitted to your heap",
            "  hearthcloth plan - --size \"30 x 24 in\" --out out < my-stash.csv",
            "",
            "Ends with 0 when cloths were planned, 1 when the stash cannot make what is wished (and says what is",
            "short, and writes the nearest cloth that it can make), 2 when something typed or written in the stash file cannot be used (and says where)."
        })
final class PlanCommand implements Callable<Integer> {

    private final Shell shell;

    @Mixin
    private FolderOptions out = new FolderOptions();

    @Option(names = "--png", description = "Also write the pictures as PNG.")
    private boolean png;

    @Option(
            names = "--net",
            description =
                    "With --gift, also write net.pdf and net.svg: the flat cloth with every fold, to fold in paper.")
    private boolean net;

    @Option(names = "--slips", description = "Also write slips.pdf: a slip of paper to pin to each patch.")
    private boolean slips;

    @Mixin
    private JsonOption json = new JsonOption();

    @Mixin
    private WishOptions options = new WishOptions();

    @Mixin
    private GuidelineWish guideline = new GuidelineWish();

    @Mixin
    private StashInput stash = new StashInput();

    @Mixin
    private LovedPicture picture = new LovedPicture();

    @Mixin
    private PrintOptions printing = new PrintOptions(GuideLength.FULL);

    @Mixin
    private TimeOption budget = new TimeOption("2s");

    /** What is to be planned from what. */
    private record Wished(Stash stash, Wish wish, Optional<Patchwork> patchwork) {

        PlanOutcome plan(int effort, Budget budget, Consumer<PlanProgress> seen) {
            return patchwork
                    .map(asked -> PatchworkPlanner.plan(stash, wish, asked, effort, budget, seen))
                    .orElseGet(() -> Planner.plan(stash, wish, effort, budget, seen));
        }
    }

    PlanCommand(Shell shell) {
        this.shell = shell;
    }

    @Override
    public Integer call() {
        OutputFolder folder = out.folder();
        StashFile.Read read = stash.read(shell);
        if (guideline.isGiven()) {
            return fitted(read, folder);
        }
        Ruler ruler = stash.ruler(read);
        OptionText text = new OptionText();
        PlanBudget time = budget.read(text);
        text.check();
        Optional<GiftWish> bare = options.gift().read(ruler.unit());
        WishWords words = picture.in(options.words(), read.stash(), shell);
        Placing placing = PlacingReader.read(words, bare.isPresent(), ruler.unit());
        Optional<GiftWish> gift = bare.map(wish -> wish.placed(placing));
        Optional<Patchwork> patchwork = PatchworkReader.read(words, Door.SHELL);
        WishReader reader = new WishReader(words, read.stash(), Usual.of(ruler), Door.SHELL);
        Wish wish = reader.wish(gift);
        read.warnings().forEach(warning -> shell.err().println("Note: " + ListWords.line(warning.english())));
        Wished wished = new Wished(read.stash(), wish, patchwork);
        return planned(wished, time, files(gift, ruler), reader.slack(), folder);
    }

    private ProposalFiles files(Optional<GiftWish> gift, Ruler ruler) {
        OptionText text = new OptionText();
        PrintOptions.Asked asked = printing.read(text, ruler);
        text.check();
        return new ProposalFiles(gift, asked.print(shell), new ProposalFiles.Extras(slips, png, net));
    }

    /** Fits a guideline: 0 where a cloth keeps every rule, 1 with the nearest where a rule had to be bent. */
    private int fitted(StashFile.Read read, OutputFolder folder) {
        Guideline rules = guideline.read(shell);
        OptionText text = new OptionText();
        PlanBudget time = budget.read(text);
        text.check();
        ProposalFiles files = files(GuidelineWish.gift(rules), GuidelineWish.ruler(rules));
        Ask ask = guideline.ask(options.proposals(), options.seed(), read.stash());
        read.warnings().forEach(warning -> shell.err().println("Note: " + ListWords.line(warning.english())));
        ProgressLine progress = new ProgressLine(shell, files.voice());
        Fitted fitted = GuidelineWish.fit(rules, read.stash(), ask, time.effort(), time.begin(), progress::show);
        progress.clear();
        List<Plan> plans = fitted.cloths().stream().map(Fitted.Nearest::plan).toList();
        if (!plans.isEmpty()) {
            write(plans, files, folder, progress);
        }
        if (!plans.isEmpty() && fitted.cloths().get(0).keepsAll()) {
            report(read.stash(), new PlanOutcome.Proposals(plans), files, Slack.NONE);
            return 0;
        }
        GuidelineReport report = new GuidelineReport(shell, rules, files.voice());
        if (json.isWished()) {
            say(PlanJson.shortage(read.stash(), files.gift(), files.voice(), report.outcome(fitted), out.shown()));
        } else {
            report.bent(fitted, out.shown());
        }
        return 1;
    }

    private int planned(Wished wished, PlanBudget time, ProposalFiles print, Slack slack, OutputFolder folder) {
        ProgressLine progress = new ProgressLine(shell, print.voice());
        PlanBudget.Clock clock = time.begin();
        PlanOutcome outcome = wished.plan(time.effort(), clock, progress::show);
        progress.clear();
        if (clock.ranOut()) {
            shell.err().println(print.voice().rooms().reporting().planTimeOut(String.valueOf(time.doubled())));
        }
        if (outcome instanceof PlanOutcome.CannotMake cannot) {
            if (!cannot.nearest().isEmpty()) {
                write(cannot.nearest(), print, folder, progress);
            }
            if (json.isWished()) {
                say(PlanJson.shortage(wished.stash(), print.gift(), print.voice(), cannot, out.shown()));
            } else {
                new PlanReport(shell.err(), print.voice()).shortage(cannot, out.shown());
            }
            return 1;
        }
        PlanOutcome.Proposals proposals = (PlanOutcome.Proposals) outcome;
        write(proposals.plans(), print, folder, progress);
        report(wished.stash(), proposals, print, slack);
        return 0;
    }

    private void write(List<Plan> plans, ProposalFiles files, OutputFolder folder, ProgressLine progress) {
        progress.say("drawing");
        files.write(plans, folder);
        progress.clear();
    }

    private void say(PlanJson planned) {
        shell.out().println(JsonText.of(planned));
    }

    private void report(Stash stash, PlanOutcome.Proposals proposals, ProposalFiles print, Slack slack) {
        String folder = out.shown();
        if (json.isWished()) {
            say(PlanJson.planned(stash, print.gift(), print.voice(), proposals.plans(), folder));
            return;
        }
        PlanReport report = new PlanReport(shell.out(), print.voice());
        report.stash(stash);
        print.gift().ifPresent(gift -> report.gift(gift, slack));
        report.proposals(proposals, folder, print.gift());
    }
}
