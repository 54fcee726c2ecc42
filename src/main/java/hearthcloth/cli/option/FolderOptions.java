package hearthcloth.cli.option;

import hearthcloth.cli.io.OutputFolder;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.guide.GuideLength;
import hearthcloth.measure.Ruler;
import hearthcloth.wish.ListWords;
import hearthcloth.wish.OptionText;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The folder that is written, and how its guides are printed. */
public final class FolderOptions {

    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "The folder to write, new or planned before.")
    private String outName = "";

    @Option(
            names = "--guide",
            paramLabel = "full|class",
            description = "How much each guide.pdf tells: full for you alone, class for four to six pages to teach by;"
                    + " ${DEFAULT-VALUE}.")
    private String guide;

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            description = "Paper to print on; letter with inches, else a4.")
    @Nullable
    private String paper;

    /** @param usual how much a guide tells where nothing is said */
    public FolderOptions(GuideLength usual) {
        this.guide = usual.name().toLowerCase(Locale.ROOT);
    }

    /** On what, and how long, guides are printed. */
    public record Print(Paper paper, GuideLength length) {}

    /** The folder, which may be there already where it was planned before. */
    public OutputFolder folder() {
        return OutputFolder.of(outName);
    }

    /** The folder's name, fit to be said. */
    public String shown() {
        return ListWords.plain(outName).replaceAll("(?<=.)/+$", "");
    }

    /** What was said of the print; what cannot be used of it is kept in {@code text}. */
    public Print print(OptionText text, Ruler ruler) {
        return new Print(
                text.word("--paper", paper, ruler.isMetric() ? Paper.A4 : Paper.LETTER),
                text.word("--guide", guide, GuideLength.FULL));
    }
}
