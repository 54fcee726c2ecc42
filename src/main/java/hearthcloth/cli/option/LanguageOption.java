package hearthcloth.cli.option;

import hearthcloth.measure.MeasureException;
import hearthcloth.wish.ListWords;
import hearthcloth.wish.OptionText;
import hearthcloth.words.Language;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** In which language a command reports and prints. */
public final class LanguageOption {

    @Option(
            names = "--language",
            paramLabel = "TAG",
            description = "Language of the report and of what is printed: en, ko, ja, fr, de, es, or its name;"
                    + " otherwise the shell's own, or English.")
    @Nullable
    private String language;

    /** The language asked for; otherwise that of the shell, where it is one that is spoken here; otherwise English. */
    public Language read(OptionText text) {
        return text.read("--language", language, usual(), LanguageOption::named);
    }

    /** The shell's language: what LC_ALL, LC_MESSAGES or LANG say, as Java reads them. */
    private static Language usual() {
        return Language.tagged(Locale.getDefault(Locale.Category.DISPLAY).getLanguage())
                .orElse(Language.ENGLISH);
    }

    private static Language named(String text) {
        return Language.named(text).orElseThrow(() -> {
            String tags = Arrays.stream(Language.values()).map(Language::tag).collect(Collectors.joining(", "));
            return new MeasureException("\"" + ListWords.plain(text)
                    + "\" is no language that is spoken here; write one of " + tags + ", or its name");
        });
    }
}
