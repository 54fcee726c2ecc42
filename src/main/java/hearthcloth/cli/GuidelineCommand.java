package hearthcloth.cli;

import hearthcloth.cli.io.OutputFile;
import hearthcloth.cli.io.PhotoFile;
import hearthcloth.cli.io.Shell;
import hearthcloth.draw.FabricPicture;
import hearthcloth.draw.RefusedPictureException;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.GuidelineWords;
import hearthcloth.guideline.SentCloth;
import hearthcloth.guideline.Taken;
import hearthcloth.guideline.file.GuidelineFile;
import hearthcloth.measure.Ruler;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.ListWords;
import hearthcloth.wish.OptionText;
import hearthcloth.wish.Rulers;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.teaching.TeachingWords;
import java.io.File;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code guideline}: from a finished cloth to the idea that others can follow. */
@Command(
        name = "guideline",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Makes a guideline from a finished cloth, to hand on.",
        description = {
            "",
            "Of each choice in the cloth you say whether it is the idea (kept), its share of the width is (share),",
            "or it was only that day's (open), or you write a rule of your own. Seam and hem are the cloth's."
        },
        parameterListHeading = "%n",
        optionListHeading = "%nWhat is the idea:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  hearthcloth guideline out/1/plan.json --name \"Ring by ring\" --out idea.json",
            "  hearthcloth guideline out/1/plan.json --size \"16 to 20 in\" --hearth \"largest square\" \\",
            "      --bars strips --rounds \"2 to 4\" --middle favourite --out idea.json",
            "  hearthcloth plan my-scraps.csv --guideline idea.json --out mine",
            "  hearthcloth idea idea.json --out page.html",
            "      a page that anyone can open and plan with"
        })
final class GuidelineCommand implements Callable<Integer> {

    private final Shell shell;
    private final WorkroomDoor door;

    @Parameters(
            index = "0",
            paramLabel = "PLAN.json|CLOTH",
            description = "The cloth: the plan.json of its folder, - for standard input, or its name on Made.")
    private String planFile = "";

    @Option(names = "--out", paramLabel = "IDEA.json", required = true, description = "The file to write.")
    private String outName = "";

    @Option(names = "--name", paramLabel = "WORDS", description = "What the idea is called; the plan's title.")
    @Nullable
    private String name;

    @Option(names = "--by", paramLabel = "NAME", description = "Who hands it on.")
    private String by = "";

    @Option(names = "--words", paramLabel = "WORDS", description = "What you want to say of it.")
    private String words = "";

    @Option(names = "--picture", paramLabel = "FILE", description = "A picture of yours, PNG or JPEG.")
    @Nullable
    private String picture;

    @Option(
            names = "--size",
            paramLabel = "RULE",
            description = "kept, open, \"16 in\", \"16 to 20 in\", \"for box 30 x 20 x 8 cm\"; open.")
    private String size = "open";

    @Option(
            names = "--hearth",
            paramLabel = "RULE",
            description = "kept, share, open, \"largest square\", \"30 to 40 %%\", \"14 in cut\"; share.")
    private String hearth = Taken.SHARE;

    @Option(
            names = "--bars",
            paramLabel = "RULE",
            description = "kept, share, open, strips (as wide as your strips), \"2 to 3 in\", \"8 to 12 %%\"; open.")
    private String bars = "open";

    @Option(names = "--rounds", paramLabel = "RULE", description = "kept, open, \"3\", \"2 to 4\"; kept.")
    private String rounds = Taken.KEPT;

    @Option(names = "--order", paramLabel = "RULE", description = "kept or open; kept.")
    private String order = Taken.KEPT;

    @Option(
            names = "--colours",
            paramLabel = "RULE",
            description = "kept, open, or ways such as \"two halves or frames\"; kept.")
    private String colours = Taken.KEPT;

    @Option(
            names = "--middle",
            paramLabel = "FABRIC",
            description = "What lies in the middle: any, favourite, lightest, darkest; any.")
    private String middle = "any";

    @Option(names = "--most-joins", paramLabel = "N", description = "Joins in one bar, 0 to 40; as the cloth allowed.")
    @Nullable
    private String mostJoins;

    @Option(names = "--unit", paramLabel = "in|cm", description = "Ruler of those who follow it; as the cloth was cut.")
    @Nullable
    private String unit;

    @Option(names = "--replace", description = "Write over a file that is there already.")
    private boolean replace;

    GuidelineCommand(Shell shell, WorkroomDoor door) {
        this.shell = shell;
        this.door = door;
    }

    @Override
    public Integer call() {
        OutputFile out = OutputFile.of("--out", outName, ".json", replace);
        SentCloth cloth = isFile() ? GuidelineWish.cloth(planFile, shell) : kept();
        boolean metric = cloth.cloth().making().margins().mark().equals(Ruler.MILLIMETRES.step());
        Ruler ruler = Rulers.wished(unit).orElse(metric ? Ruler.MILLIMETRES : Ruler.EIGHTHS);
        String called = name == null || name.isBlank() ? cloth.title() : name;
        Guideline.Told told = new Guideline.Told(called, by, words, read(), ruler);
        Guideline guideline = guideline(new Taken(cloth, told));
        out.write(GuidelineFile.write(guideline).getBytes(StandardCharsets.UTF_8));
        shell.out().println("Wrote " + out.shown() + ": " + ListWords.plain(called) + ".");
        Voice voice = Voice.english(ruler);
        GuidelineWords.of(guideline).forEach(rule -> shell.out().println("   " + ListWords.line(rule.in(voice))));
        return 0;
    }

    private boolean isFile() {
        return planFile.equals("-") || planFile.endsWith(".json") || new File(planFile).isFile();
    }

    /** The cloth of this name, in whatever case it was typed. */
    private SentCloth kept() {
        List<SentCloth> all = door.kept();
        return all.stream()
                .filter(cloth -> cloth.title().equalsIgnoreCase(planFile.strip()))
                .findFirst()
                .orElseThrow(() -> new BadInputException(missing(all)));
    }

    private String missing(List<SentCloth> all) {
        TeachingWords words = TeachingWords.in(Language.ENGLISH);
        String name = ListWords.plain(planFile);
        String there = ListWords.plain(
                String.join(", ", all.stream().map(SentCloth::title).toList()));
        return all.isEmpty() ? words.ideaNoneKept(name) : words.ideaNoCloth(there, name);
    }

    private Guideline guideline(Taken taken) {
        OptionText text = new OptionText();
        Guideline open = new Guideline(
                taken.told(),
                text.read("--size", size, taken.size("open"), taken::size),
                new Guideline.ShapeRule(
                        text.read("--hearth", hearth, taken.hearth("open"), taken::hearth),
                        text.read("--bars", bars, taken.bars("open"), taken::bars),
                        text.read("--rounds", rounds, taken.rounds("open"), taken::rounds),
                        text.read("--order", order, taken.order("open"), taken::order)),
                text.read("--colours", colours, taken.colours("open", "any"), said -> taken.colours(said, "any")),
                taken.sewing(Optional.ofNullable(mostJoins).map(said -> text.whole("--most-joins", said, 4, 0, 40))));
        var lies = text.read("--middle", middle, taken.colours("open", "any"), said -> taken.colours("open", said));
        text.check();
        return new Guideline(
                open.told(),
                open.size(),
                open.shape(),
                new hearthcloth.guideline.ColourRule(open.colours().ways(), lies.middle()),
                open.sewing());
    }

    private Optional<Guideline.Picture> read() {
        if (picture == null) {
            return Optional.empty();
        }
        byte[] small;
        try {
            small = FabricPicture.jpeg(PhotoFile.read(picture, shell.in()));
        } catch (RefusedPictureException e) {
            throw new BadInputException("--picture: " + e.getMessage());
        }
        return Optional.of(
                new Guideline.Picture("image/jpeg", Base64.getEncoder().encodeToString(small), ""));
    }
}
