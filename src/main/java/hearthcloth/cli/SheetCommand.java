package hearthcloth.cli;

import hearthcloth.cli.io.OutputFile;
import hearthcloth.cli.io.Shell;
import hearthcloth.cli.option.LanguageOption;
import hearthcloth.draw.MeasuringSheetPage;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.measure.Ruler;
import hearthcloth.wish.OptionText;
import hearthcloth.words.Language;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.TypingSentences;
import hearthcloth.words.speech.Voice;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code sheet}: the measuring sheet to print. */
@Command(name = "sheet", mixinStandardHelpOptions = true, sortOptions = false)
final class SheetCommand implements Callable<Integer> {

    private final Shell shell;

    @Option(names = "--out", paramLabel = "FILE.pdf", required = true)
    private String outName = "";

    @Option(names = "--paper", paramLabel = "a4|letter")
    private String paper = "a4";

    @Option(names = "--replace")
    private boolean replace;

    @Mixin
    private LanguageOption language = new LanguageOption();

    SheetCommand(Shell shell) {
        this.shell = shell;
    }

    @Override
    public Integer call() {
        OptionText text = new OptionText();
        Language spoken = language.read(text);
        Paper sheet = text.word("--paper", paper, Paper.A4);
        text.check();
        OutputFile out = OutputFile.of("--out", outName, ".pdf", replace);
        out.write(MeasuringSheetPage.pdf(sheet, spoken));
        shell.out()
                .println(
                        TypingSentences.sheetWrote(Argument.text(out.shown())).in(Voice.of(spoken, Ruler.MILLIMETRES)));
        return 0;
    }
}
