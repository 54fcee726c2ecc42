package hearthcloth.cli;

import hearthcloth.cli.io.OutputFile;
import hearthcloth.cli.io.PhotoFile;
import hearthcloth.cli.io.Shell;
import hearthcloth.cli.option.LanguageOption;
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
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.TypingSentences;
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
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code guideline}: from a finished cloth to the idea that others can follow. */
@Command(name = "guideline", mixinStandardHelpOptions = true, sortOptions = false)
final class GuidelineCommand implements Callable<Integer> {

    private final Shell shell;
    private final WorkroomDoor door;

    @Parameters(index = "0", paramLabel = "PLAN.json|CLOTH")
    private String planFile = "";

    @Option(names = "--out", paramLabel = "IDEA.json", required = true)
    private String outName = "";

    @Option(names = "--name", paramLabel = "WORDS")
    @Nullable
    private String name;

    @Option(names = "--by", paramLabel = "NAME")
    private String by = "";

    @Option(names = "--words", paramLabel = "WORDS")
    private String words = "";

    @Option(names = "--picture", paramLabel = "FILE")
    @Nullable
    private String picture;

    @Option(names = "--size", paramLabel = "RULE")
    private String size = "open";

    @Option(names = "--hearth", paramLabel = "RULE")
    private String hearth = Taken.SHARE;

    @Option(names = "--bars", paramLabel = "RULE")
    private String bars = "open";

    @Option(names = "--rounds", paramLabel = "RULE")
    private String rounds = Taken.KEPT;

    @Option(names = "--order", paramLabel = "RULE")
    private String order = Taken.KEPT;

    @Option(names = "--colours", paramLabel = "RULE")
    private String colours = Taken.KEPT;

    @Option(names = "--middle", paramLabel = "FABRIC")
    private String middle = "any";

    @Option(names = "--most-joins", paramLabel = "N")
    @Nullable
    private String mostJoins;

    @Option(names = "--unit", paramLabel = "in|cm")
    @Nullable
    private String unit;

    @Option(names = "--replace")
    private boolean replace;

    @Mixin
    private LanguageOption language = new LanguageOption();

    GuidelineCommand(Shell shell, WorkroomDoor door) {
        this.shell = shell;
        this.door = door;
    }

    @Override
    public Integer call() {
        OptionText text = new OptionText();
        Language spoken = language.read(text);
        text.check();
        OutputFile out = OutputFile.of("--out", outName, ".json", replace);
        SentCloth cloth = isFile() ? GuidelineWish.cloth(planFile, shell) : kept(spoken);
        boolean metric = cloth.cloth().making().margins().mark().equals(Ruler.MILLIMETRES.step());
        Ruler ruler = Rulers.wished(unit).orElse(metric ? Ruler.MILLIMETRES : Ruler.EIGHTHS);
        String called = name == null || name.isBlank() ? cloth.title() : name;
        Guideline.Told told = new Guideline.Told(called, by, words, read(), ruler);
        Guideline guideline = guideline(new Taken(cloth, told));
        out.write(GuidelineFile.write(guideline).getBytes(StandardCharsets.UTF_8));
        Voice voice = Voice.of(spoken, ruler);
        shell.out()
                .println(TypingSentences.guidelineWrote(
                                Argument.text(out.shown()), Argument.text(ListWords.plain(called)))
                        .in(voice));
        GuidelineWords.of(guideline).forEach(rule -> shell.out().println("   " + ListWords.line(rule.in(voice))));
        return 0;
    }

    private boolean isFile() {
        return planFile.equals("-") || planFile.endsWith(".json") || new File(planFile).isFile();
    }

    /** The cloth of this name, in whatever case it was typed. */
    private SentCloth kept(Language spoken) {
        List<SentCloth> all = door.kept();
        return all.stream()
                .filter(cloth -> cloth.title().equalsIgnoreCase(planFile.strip()))
                .findFirst()
                .orElseThrow(() -> new BadInputException(missing(all, spoken)));
    }

    private String missing(List<SentCloth> all, Language spoken) {
        TeachingWords words = TeachingWords.in(spoken);
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
            throw new BadInputException(RefusingSentences.wishAt(Argument.text("--picture"), e.sentence()));
        }
        return Optional.of(
                new Guideline.Picture("image/jpeg", Base64.getEncoder().encodeToString(small), ""));
    }
}
