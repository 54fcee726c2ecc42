package hearthcloth.cli.option;

import hearthcloth.cli.io.InputText;
import hearthcloth.cli.io.Shell;
import hearthcloth.measure.Ruler;
import hearthcloth.stash.StashFile;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.ListWords;
import hearthcloth.wish.Rulers;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.TypingSentences;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The stash file a command plans from, and the ruler. */
public final class StashInput {

    private static final int PROBLEMS_SHOWN = 20;

    @Parameters(index = "0", paramLabel = "STASH.csv")
    private String file = "";

    @Mixin
    private UnitOption unit = new UnitOption();

    /**
     * Reads the stash.
     *
     * @param voice in which faults are told
     * @throws BadInputException with a sentence for each of the first faults
     */
    public StashFile.Read read(Shell shell, Voice voice) {
        StashFile.Reading reading =
                StashFile.read(InputText.read(file, shell.in()), unit.ruler().map(Ruler::unit));
        if (reading instanceof StashFile.Read read) {
            return read;
        }
        List<String> sentences = new ArrayList<>();
        Sentence head = file.equals("-")
                ? TypingSentences.unusableInput("stash")
                : TypingSentences.unusable(Argument.text(ListWords.plain(file)));
        sentences.add(head.in(voice));
        ((StashFile.Faulty) reading).lines(PROBLEMS_SHOWN, voice).forEach(line -> sentences.add("  " + line));
        throw new BadInputException(sentences);
    }

    /** The ruler in hand: as asked for, else as the stash is written, else eighths of an inch. */
    public Ruler ruler(StashFile.Read read) {
        return unit.ruler().orElseGet(() -> read.unit().map(Rulers::of).orElse(Ruler.EIGHTHS));
    }
}
