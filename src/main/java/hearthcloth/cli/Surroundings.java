package hearthcloth.cli;

import hearthcloth.wish.BadInputException;
import hearthcloth.wish.ListWords;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.TypingSentences;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.IDefaultValueProvider;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * How the workroom opens where nothing was typed: {@code --port} from HEARTHCLOTH_PORT, {@code --no-browser} from
 * HEARTHCLOTH_NO_BROWSER and so on, out of the environment or else out of the file that HEARTHCLOTH_SETTINGS names, which
 * holds lines such as {@code HEARTHCLOTH_PORT=4732}. The commands take nothing from there, and the language is the shell's.
 */
record Surroundings(Map<String, String> environment, Properties file) implements IDefaultValueProvider {

    private static final String BEGINNING = "HEARTHCLOTH_";
    private static final String SETTINGS = BEGINNING + "SETTINGS";

    /**
     * Reads the file, where one is named.
     *
     * @throws BadInputException where it cannot be read
     */
    static Surroundings of(Map<String, String> environment) {
        Properties file = new Properties();
        String name = environment.get(SETTINGS);
        if (name != null && !name.isBlank()) {
            try (Reader lines = Files.newBufferedReader(Path.of(name), StandardCharsets.UTF_8)) {
                file.load(lines);
            } catch (IOException | IllegalArgumentException e) {
                throw new BadInputException(TypingSentences.settings(
                        Argument.text(ListWords.plain(name)),
                        Argument.text(BEGINNING + "PORT=4732"),
                        Argument.text(SETTINGS)));
            }
        }
        return new Surroundings(environment, file);
    }

    @Override
    public @Nullable String defaultValue(ArgSpec argument) {
        if (!(argument instanceof OptionSpec option)
                || option.command().parent() != null
                || option.longestName().equals("--language")) {
            return null;
        }
        String name = BEGINNING
                + option.longestName().replaceFirst("^--", "").replace('-', '_').toUpperCase(Locale.ROOT);
        String value = environment.get(name);
        return value == null || value.isBlank() ? file.getProperty(name) : value;
    }
}
