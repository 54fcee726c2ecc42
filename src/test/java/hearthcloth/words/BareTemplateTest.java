package hearthcloth.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No template says a word of its own: what is read or spoken on a page comes from the catalogues of docs/words.md. */
class BareTemplateTest {

    private static final Path TEMPLATES = Path.of("src", "main", "jte");

    /** Templates that still speak English of their own. Take out each that is brought in; none is put in. */
    private static final Set<String> WAITING = new TreeSet<>(List.of(
            "choose.jte",
            "cloths-compare.jte",
            "cloths.jte",
            "gallery.jte",
            "gift.jte",
            "part/bench-tied.jte",
            "part/bench-ties.jte",
            "part/bench.jte",
            "part/holds.jte",
            "part/measures.jte",
            "part/proposals.jte",
            "part/shelf-undo.jte",
            "part/stash-body.jte",
            "part/stash-found.jte",
            "part/stash-heard.jte",
            "part/stash-line.jte",
            "part/stash-many.jte",
            "part/stash-more.jte",
            "part/ties.jte",
            "proposals-beside.jte",
            "stash-fabric.jte",
            "stash-piece.jte",
            "stash-ways.jte",
            "stash.jte"));

    private static Map<String, List<String>> bare() {
        Map<String, List<String>> bare = new TreeMap<>();
        try (Stream<Path> files = Files.walk(TEMPLATES)) {
            for (Path file : files.filter(each -> each.toString().endsWith(".jte")).toList()) {
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
        Map<String, List<String>> bare = bare();
        int left = bare.values().stream().mapToInt(List::size).sum();
        System.out.printf(Locale.ROOT, "%d texts in %d templates are not in a catalogue yet.%n", left, bare.size());
        Map<String, List<String>> unexpected = new TreeMap<>(bare);
        unexpected.keySet().removeAll(WAITING);
        assertThat(unexpected).isEmpty();
    }

    @Test
    void the_list_of_those_that_wait_names_no_other() {
        Set<String> done = new TreeSet<>(WAITING);
        done.removeAll(bare().keySet());
        assertThat(done).as("brought in: take them off the list").isEmpty();
    }

    @Test
    void texts_attributes_and_what_expressions_say_are_found() {
        assertThat(TemplateWords.bare(
                        """
                        @param X view
                        @template.frame(view = view.around(@`
                        @if(view.is("a word"))<p class="note trouble">Cut it.</p>@else<b>${view.a() ? "Stop" : "go"}</b>@endif
                        <a href="/x" aria-label="Close it" title="${w.close()}" class="${view.b() ? "pick now" : "pick"}">${w.key("tab")}</a>
                        @template.part.help(view = new Help("What is it?", @`<i>${w.told()}</i> 12 × 4`))
                        `))
                        """))
                .containsExactly("Cut it.", "Stop", "go", "Close it", "What is it?");
        assertThat(TemplateWords.bare("<p>${w.told()}&nbsp;<kbd>+</kbd> ${view.a().equals(\"x\") ? w.a() : w.b()}</p>"))
                .isEmpty();
    }
}
