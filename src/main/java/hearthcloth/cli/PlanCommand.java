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
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.TypingSentences;
import hearthcloth.words.speech.Voice;
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
@Command(name = "plan", mixinStandardHelpOptions = true, sortOptions = false)
final class PlanCommand implements Callable<Integer> {

    private final Shell shell;

    @Mixin
    private FolderOptions out = new FolderOptions();

    @Option(names = "--png")
    private boolean png;

    @Option(names = "--net")
    private boolean net;

    @Option(names = "--slips")
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
        StashFile.Read read = stash.read(shell, printing.voice());
        if (guideline.isGiven()) {
            return fitted(read, folder);
        }
        Ruler ruler = stash.ruler(read);
        OptionText text = new OptionText();
        PlanBudget time = budget.read(text);
        text.check();
        Optional<GiftWish> bare = options.gift().read(ruler.unit());
        WishWords words = picture.in(options.words(), read.stash(), shell, printing.voice());
        Placing placing = PlacingReader.read(words, bare.isPresent(), ruler.unit());
        Optional<GiftWish> gift = bare.map(wish -> wish.placed(placing));
        Optional<Patchwork> patchwork = PatchworkReader.read(words, Door.SHELL);
        WishReader reader = new WishReader(words, read.stash(), Usual.of(ruler), Door.SHELL);
        Wish wish = reader.wish(gift);
        Wished wished = new Wished(read.stash(), wish, patchwork);
        ProposalFiles files = files(gift, ruler);
        note(read, files.voice());
        return planned(wished, time, files, reader.slack(), folder);
    }

    private void note(StashFile.Read read, Voice voice) {
        read.warnings()
                .forEach(warning -> shell.err()
                        .println(ListWords.line(TypingSentences.note(warning).in(voice))));
    }

    private ProposalFiles files(Optional<GiftWish> gift, Ruler ruler) {
        OptionText text = new OptionText();
        PrintOptions.Asked asked = printing.read(text, ruler);
        text.check();
        return new ProposalFiles(gift, asked.print(), new ProposalFiles.Extras(slips, png, net));
    }

    /** Fits a guideline: 0 where a cloth keeps every rule, 1 with the nearest where a rule had to be bent. */
    private int fitted(StashFile.Read read, OutputFolder folder) {
        Guideline rules = guideline.read(shell);
        OptionText text = new OptionText();
        PlanBudget time = budget.read(text);
        text.check();
        ProposalFiles files = files(GuidelineWish.gift(rules), GuidelineWish.ruler(rules));
        Ask ask = guideline.ask(options.proposals(), options.seed(), read.stash());
        note(read, files.voice());
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
        progress.say(TypingSentences.progress(Argument.text(""), "drawing").in(files.voice()));
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
