package hearthcloth.cli;

import hearthcloth.cli.io.OutputFile;
import hearthcloth.cli.io.Shell;
import hearthcloth.draw.MeasuringSheetPage;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.wish.OptionText;
import hearthcloth.words.Language;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code sheet}: the measuring sheet to print. */
@Command(
        name = "sheet",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Writes the measuring sheet, to print and lay among the pieces.",
        description = {
            "",
            "A photograph of pieces beside it is measured more surely than beside plain paper: its marks cannot be",
            "taken for cloth, and they tell how it is bent."
        },
        optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  hearthcloth sheet --out sheet.pdf",
            "  hearthcloth sheet --paper letter --out sheet.pdf",
            "  hearthcloth read table.jpg --sheet sheet --out scraps.csv",
            "  hearthcloth read table.jpg --sheet \"sheet 19.9 cm\" --out scraps.csv",
            "      where a ruler says that the line on the print is 19.9 cm long",
            "",
            "Print it at 100 %, not fitted to the page, and lay a ruler to its thin line: 20 cm, or 7 7/8 in."
        })
final class SheetCommand implements Callable<Integer> {

    private final Shell shell;

    @Option(names = "--out", paramLabel = "FILE.pdf", required = true, description = "The file to write.")
    private String outName = "";

    @Option(names = "--paper", paramLabel = "a4|letter", description = "The paper in the printer; a4.")
    private String paper = "a4";

    @Option(names = "--replace", description = "Write over a file that is there already.")
    private boolean replace;

    SheetCommand(Shell shell) {
        this.shell = shell;
    }

    @Override
    public Integer call() {
        OptionText text = new OptionText();
        Paper sheet = text.word("--paper", paper, Paper.A4);
        text.check();
        OutputFile out = OutputFile.of("--out", outName, ".pdf", replace);
        out.write(MeasuringSheetPage.pdf(sheet, Language.ENGLISH));
        shell.out()
                .println("Wrote " + out.shown() + ". Print it at 100 %, not fitted to the page; the thin line on it"
                        + " should then measure 20 cm (7 7/8 in).");
        return 0;
    }
}
