package hearthcloth.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No template says a word of its own: what is read or spoken on a page comes from the catalogues of docs/words.md. */
class BareTemplateTest {

    private static final Path TEMPLATES = Path.of("src", "main", "jte");

    private static Map<String, List<String>> bare() {
        Map<String, List<String>> bare = new TreeMap<>();
        try (Stream<Path> files = Files.walk(TEMPLATES)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".jte")).toList()) {
                List<String> words = TemplateWords.bare(Files.readString(file));
                if (!words.isEmpty()) {
                    bare.put(TEMPLATES.relativize(file).toString().replace('\\', '/'), words);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bare;
    }

    @Test
    void a_template_says_nothing_of_its_own() {
        assertThat(bare()).isEmpty();
    }

    @Test
    void texts_attributes_and_what_expressions_say_are_found() {
        assertThat(TemplateWords.bare("""
                        @param X view
                        @template.frame(view = view.around(@`
                        @if(view.is("a word"))<p class="note trouble">Cut it.</p>@else<b>${view.a() ? "Stop" : "go"}</b>@endif
                        <a href="/x" aria-label="Close it" title="${w.close()}" class="${view.b() ? "pick now" : "pick"}">${w.key("tab")}</a>
                        @template.part.help(view = new Help("What is it?", @`<i>${w.told()}</i> 12 × 4`))
                        `))
                        """)).containsExactly("Cut it.", "Stop", "go", "Close it", "What is it?");
        assertThat(TemplateWords.bare("<p>${w.told()}&nbsp;<kbd>+</kbd> ${view.a().equals(\"x\") ? w.a() : w.b()}</p>"))
                .isEmpty();
    }
}
