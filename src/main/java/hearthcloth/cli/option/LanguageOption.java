package hearthcloth.cli.option;

import hearthcloth.wish.ListWords;
import hearthcloth.wish.OptionText;
import hearthcloth.words.Language;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.TypingSentences;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** In which language a command reports and prints. */
public final class LanguageOption {

    private static final String NAME = "--language";

    @Option(names = NAME, paramLabel = "LANGUAGE")
    @Nullable
    private String language;

    /** The language asked for; otherwise that of the shell, where it is one that is spoken here; otherwise English. */
    public Language read(OptionText text) {
        return text.read(NAME, language, usual(), LanguageOption::named);
    }

    /** The same, where what cannot be read is refused elsewhere. */
    public Language spoken() {
        return Optional.ofNullable(language).flatMap(Language::named).orElseGet(LanguageOption::usual);
    }

    /** The language that a command line asks for before it is read, so that help and refusals speak it too. */
    public static Language spoken(String[] typed) {
        for (int i = 0; i < typed.length && !typed[i].equals("--"); i++) {
            String value = typed[i].startsWith(NAME + "=")
                    ? typed[i].substring(NAME.length() + 1)
                    : typed[i].equals(NAME) && i + 1 < typed.length ? typed[i + 1] : "";
            Optional<Language> language = Language.named(value);
            if (language.isPresent()) {
                return language.get();
            }
        }
        return usual();
    }

    /** The shell's language: what LC_ALL, LC_MESSAGES or LANG say, as Java reads them. */
    private static Language usual() {
        return Language.tagged(Locale.getDefault(Locale.Category.DISPLAY).getLanguage())
                .orElse(Language.ENGLISH);
    }

    private static Language named(String text) {
        return Language.named(text).orElseThrow(() -> {
            String tags = Arrays.stream(Language.values()).map(Language::tag).collect(Collectors.joining(", "));
            return new RefusedException(
                    TypingSentences.language(Argument.text(tags), Argument.text(ListWords.plain(text))));
        });
    }
}
