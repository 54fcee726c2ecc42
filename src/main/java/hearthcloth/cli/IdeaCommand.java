package hearthcloth.cli;

import hearthcloth.cli.io.InputText;
import hearthcloth.cli.io.OutputFile;
import hearthcloth.cli.io.Shell;
import hearthcloth.cli.option.LanguageOption;
import hearthcloth.guideline.Guideline;
import hearthcloth.idea.IdeaPage;
import hearthcloth.idea.MissingPlannerException;
import hearthcloth.measure.Ruler;
import hearthcloth.stash.StashFile;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.OptionText;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.sentence.TypingSentences;
import hearthcloth.words.speech.Voice;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code idea}: a guideline as one page that anybody can open and plan with. */
@Command(name = "idea", mixinStandardHelpOptions = true, sortOptions = false)
final class IdeaCommand implements Callable<Integer> {

    private final Shell shell;

    @Parameters(index = "0", paramLabel = "IDEA.json")
    private String guidelineFile = "";

    @Option(names = "--out", paramLabel = "PAGE.html", required = true)
    private String outName = "";

    @Option(names = "--from", paramLabel = "STASH.csv")
    @Nullable
    private String stashFile;

    @Option(names = "--replace")
    private boolean replace;

    @Mixin
    private LanguageOption language = new LanguageOption();

    IdeaCommand(Shell shell) {
        this.shell = shell;
    }

    @Override
    public Integer call() {
        OptionText text = new OptionText();
        Voice voice = Voice.of(language.read(text), Ruler.EIGHTHS);
        text.check();
        OutputFile out = OutputFile.of("--out", outName, ".html", replace);
        Guideline guideline = GuidelineWish.guideline(guidelineFile, shell);
        byte[] page;
        try {
            page = IdeaPage.of(guideline, heap(guideline, voice).stash()).getBytes(StandardCharsets.UTF_8);
        } catch (MissingPlannerException e) {
            throw new BadInputException(Refusal.of(e));
        }
        if (page.length > IdeaPage.MOST_BYTES) {
            throw new BadInputException(TypingSentences.ideaLarge(
                    Argument.number(IdeaPage.MOST_BYTES / 1000), Argument.number(page.length / 1000)));
        }
        out.write(page);
        shell.out()
                .println(TypingSentences.ideaWrote(Argument.text(out.shown()), Argument.number(page.length / 1000))
                        .in(voice));
        return 0;
    }

    private StashFile.Read heap(Guideline guideline, Voice voice) {
        String text = stashFile == null ? example() : InputText.read(stashFile, shell.in());
        StashFile.Reading reading =
                StashFile.read(text, Optional.of(guideline.told().ruler().unit()));
        if (reading instanceof StashFile.Read read) {
            return read;
        }
        throw new BadInputException(((StashFile.Faulty) reading).lines(20, voice));
    }

    private static String example() {
        try (InputStream in = IdeaCommand.class.getResourceAsStream("/example/scraps.csv")) {
            if (in == null) {
                throw new BadInputException(TypingSentences.ideaNoPieces());
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
