package hearthcloth.cli;

import hearthcloth.cli.io.InputText;
import hearthcloth.cli.io.OutputFile;
import hearthcloth.cli.io.Shell;
import hearthcloth.guideline.Guideline;
import hearthcloth.idea.IdeaPage;
import hearthcloth.idea.MissingPlannerException;
import hearthcloth.measure.Ruler;
import hearthcloth.stash.StashFile;
import hearthcloth.wish.BadInputException;
import hearthcloth.words.speech.Voice;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code idea}: a guideline as one page that anybody can open and plan with. */
@Command(
        name = "idea",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Writes a guideline as one page that anybody can open, with the planner inside.",
        description = {
            "",
            "The page is one file. It opens on any phone or computer, without a network, and plans each reader's",
            "own cloth from the pieces she types. Send it, or put it on a site of yours."
        },
        parameterListHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  hearthcloth idea examples/idea.json --out page.html",
            "  hearthcloth idea idea.json --from my-scraps.csv --out page.html",
            "      the example on it is planned from your scraps"
        })
final class IdeaCommand implements Callable<Integer> {

    private final Shell shell;

    @Parameters(index = "0", paramLabel = "IDEA.json", description = "The guideline's file; - reads standard input.")
    private String guidelineFile = "";

    @Option(names = "--out", paramLabel = "PAGE.html", required = true, description = "The file to write.")
    private String outName = "";

    @Option(
            names = "--from",
            paramLabel = "STASH.csv",
            description = "Pieces from which the page's example is planned; invented ones otherwise.")
    @Nullable
    private String stashFile;

    @Option(names = "--replace", description = "Write over a file that is there already.")
    private boolean replace;

    IdeaCommand(Shell shell) {
        this.shell = shell;
    }

    @Override
    public Integer call() {
        OutputFile out = OutputFile.of("--out", outName, ".html", replace);
        Guideline guideline = GuidelineWish.guideline(guidelineFile, shell);
        byte[] page;
        try {
            page = IdeaPage.of(guideline, heap(guideline).stash()).getBytes(StandardCharsets.UTF_8);
        } catch (MissingPlannerException e) {
            throw new BadInputException(String.valueOf(e.getMessage()));
        }
        if (page.length > IdeaPage.MOST_BYTES) {
            throw new BadInputException("The page would be " + page.length / 1000 + " kB, over "
                    + IdeaPage.MOST_BYTES / 1000 + " kB; leave the picture out, or make it smaller.");
        }
        out.write(page);
        shell.out()
                .println("Wrote " + out.shown() + ", " + page.length / 1000
                        + " kB: one file, which opens without a network. Send it or put it on a site of yours.");
        return 0;
    }

    private StashFile.Read heap(Guideline guideline) {
        String text = stashFile == null ? example() : InputText.read(stashFile, shell.in());
        StashFile.Reading reading =
                StashFile.read(text, Optional.of(guideline.told().ruler().unit()));
        if (reading instanceof StashFile.Read read) {
            return read;
        }
        throw new BadInputException(((StashFile.Faulty) reading).lines(20, Voice.english(Ruler.EIGHTHS)));
    }

    private static String example() {
        try (InputStream in = IdeaCommand.class.getResourceAsStream("/example/scraps.csv")) {
            if (in == null) {
                throw new BadInputException("The example's pieces are missing; give some with --from STASH.csv.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
