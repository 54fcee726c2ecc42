package hearthcloth.cli;

import hearthcloth.cli.io.Shell;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Ruler;
import hearthcloth.wish.ListWords;
import hearthcloth.wish.OptionText;
import hearthcloth.words.Language;
import hearthcloth.words.Spoken;
import hearthcloth.words.speech.Voice;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** On what paper and in which language a command prints. */
final class PrintOptions {

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            description = "Paper to print on; letter with inches, else a4.")
    @Nullable
    private String paper;

    @Option(
            names = "--language",
            paramLabel = "TAG",
            description = "Language of what is printed: en, ko, ja, fr, de, es, or its name; English.")
    @Nullable
    private String language;

    /** The paper asked for, or that which goes with the ruler. */
    Paper paper(OptionText text, Ruler ruler) {
        return text.word("--paper", paper, ruler.isMetric() ? Paper.A4 : Paper.LETTER);
    }

    Language language(OptionText text) {
        return text.read("--language", language, Language.ENGLISH, PrintOptions::language);
    }

    private static Language language(String text) {
        return Language.named(text).orElseThrow(() -> {
            String tags = Arrays.stream(Language.values()).map(Language::tag).collect(Collectors.joining(", "));
            return new MeasureException("\"" + ListWords.plain(text) + "\" is no language that is spoken here; write one of "
                    + tags + ", or its name");
        });
    }

    /** How the prints speak; where they are not written in the language wished for, English, and that is said. */
    static Voice voice(Shell shell, Language wished, Ruler ruler) {
        Language printed = Spoken.inGuides(wished);
        if (printed != wished) {
            shell.err().println("Note: Guides are not written in " + wished.ownName() + " yet; they stay English.");
        }
        return Voice.of(printed, ruler);
    }
}
