package hearthcloth.cli.option;

import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.guide.GuideLength;
import hearthcloth.measure.Ruler;
import hearthcloth.wish.OptionText;
import hearthcloth.words.Language;
import hearthcloth.words.Spoken;
import hearthcloth.words.speech.Voice;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** On what paper, in which language and how long a command's guides are printed. */
public final class PrintOptions {

    @Option(names = "--guide", paramLabel = "full|class")
    private String guide;

    @Option(names = "--paper", paramLabel = "a4|letter")
    @Nullable
    private String paper;

    @Mixin
    private LanguageOption language = new LanguageOption();

    /** Options of a command whose guides are usually so long. */
    public PrintOptions(GuideLength usual) {
        this.guide = usual.name().toLowerCase(Locale.ROOT);
    }

    /**
     * How guides are printed.
     *
     * @param voice the language and the ruler they speak in
     */
    public record Print(Paper paper, Voice voice, GuideLength length) {

        /** The ruler in which measures are written. */
        public Ruler ruler() {
            return voice.ruler();
        }
    }

    /** What was asked for, before anything is said of it. */
    public record Asked(Paper paper, Language language, GuideLength length, Ruler ruler) {

        /** The print. */
        public Print print() {
            return new Print(paper, Voice.of(Spoken.inGuides(language), ruler), length);
        }
    }

    /** How what is refused before that is told. */
    public Voice voice() {
        return Voice.of(language.spoken(), Ruler.EIGHTHS);
    }

    /** What was said of the print; what cannot be used of it is kept in {@code text}. */
    public Asked read(OptionText text, Ruler ruler) {
        return new Asked(
                text.word("--paper", paper, ruler.isMetric() ? Paper.A4 : Paper.LETTER),
                language.read(text),
                text.word("--guide", guide, GuideLength.FULL),
                ruler);
    }
}
