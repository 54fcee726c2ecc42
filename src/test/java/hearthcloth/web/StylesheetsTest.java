package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No rule of a stylesheet is there for nothing: each class and id it names is written by a template, a script or the program. */
class StylesheetsTest {

    private static final Path STYLES = Path.of("src/main/resources/web");

    /** Set by the library that swaps parts of pages, while it does. */
    private static final Set<String> OF_LIBRARIES = Set.of("htmx-swapping", "htmx-request", "htmx-added");

    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
    private static final Pattern SELECTOR = Pattern.compile("([^{}]+)\\{");
    private static final Pattern NAME = Pattern.compile("[.#]([A-Za-z_][\\w-]*)");
    private static final Pattern WORD = Pattern.compile("[A-Za-z][\\w-]*");
    private static final Pattern TEXT =
            Pattern.compile("\"\"\"(?:.*?)\"\"\"|\"(?:[^\"\\\\\\n]|\\\\.)*\"", Pattern.DOTALL);

    @Test
    void every_class_and_id_of_a_rule_is_written_somewhere() throws IOException {
        Set<String> written = written();
        List<String> unused = new ArrayList<>();
        for (Path sheet : files(STYLES, ".css")) {
            named(Files.readString(sheet)).stream()
                    .filter(name ->
                            !written.contains(name) && !OF_LIBRARIES.contains(name) && !isNumbered(name, written))
                    .forEach(name -> unused.add(sheet.getFileName() + ": " + name));
        }
        assertThat(written).hasSizeGreaterThan(500);
        assertThat(unused).isEmpty();
    }

    @Test
    void every_stylesheet_and_script_is_asked_for_by_a_page() throws IOException {
        Set<String> written = written();
        List<String> unused = new ArrayList<>();
        Stream.concat(files(STYLES, ".css").stream(), files(STYLES, ".js").stream())
                .filter(file -> STYLES.equals(file.getParent()))
                .map(file -> file.getFileName().toString())
                .filter(file -> !written.contains(file.replaceFirst("\\.(css|js)$", "")))
                .forEach(unused::add);
        assertThat(unused).isEmpty();
    }

    /** {@code b12} is b and a number the page counts up. */
    private static boolean isNumbered(String name, Set<String> written) {
        return name.matches("[a-z]+\\d+") && written.contains(name.replaceFirst("\\d+$", ""));
    }

    private static Set<String> named(String sheet) {
        Set<String> names = new TreeSet<>();
        SELECTOR.matcher(COMMENT.matcher(sheet).replaceAll(""))
                .results()
                .map(found -> found.group(1).strip())
                .filter(selector -> !selector.startsWith("@"))
                .forEach(selector -> NAME.matcher(selector)
                        .results()
                        .map(found -> found.group(1))
                        .forEach(names::add));
        return names;
    }

    /** All words of templates and scripts, and of the texts in the program. */
    private static Set<String> written() throws IOException {
        Set<String> words = new HashSet<>();
        for (Path file : files(Path.of("src/main/jte"), ".jte")) {
            words.addAll(words(Files.readString(file)));
        }
        for (Path file : files(STYLES, ".js")) {
            words.addAll(words(Files.readString(file)));
        }
        for (Path file : files(Path.of("src/main/java"), ".java")) {
            TEXT.matcher(Files.readString(file))
                    .results()
                    .map(MatchResult::group)
                    .forEach(text -> words.addAll(words(text)));
        }
        return words;
    }

    private static List<String> words(String text) {
        return WORD.matcher(text).results().map(MatchResult::group).toList();
    }

    private static List<Path> files(Path folder, String ending) {
        try (Stream<Path> found = Files.walk(folder)) {
            return found.filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
