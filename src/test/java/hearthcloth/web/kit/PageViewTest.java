package hearthcloth.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every template takes one record, and every record that is shown names the template that takes it. That their fields
 * fit, the compiler sees: the build turns templates into classes.
 */
class PageViewTest {

    private static final Path TEMPLATES = Path.of("src/main/jte");
    private static final Pattern PARAMETER = Pattern.compile("(?m)^@param (\\S+) \\w+(.*)$");
    private static final Pattern IMPORT = Pattern.compile("(?m)^@import (\\S+)$");
    private static final Pattern CALL = Pattern.compile("@template\\.([\\w.-]+)\\(");

    private static Map<String, String> templates() {
        try (Stream<Path> files = Files.walk(TEMPLATES)) {
            Map<String, String> texts = new TreeMap<>();
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                texts.put(TEMPLATES.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
            return texts;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Set<Class<?>> views() {
        return new ClassFileImporter()
                        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                        .importPackages("hearthcloth.web")
                        .stream()
                        .filter(each -> each.isAssignableTo(PageView.class) && !each.isInterface())
                        .map(JavaClass::reflect)
                        .collect(Collectors.toSet());
    }

    /** The class a template's parameter is of; empty where it takes none. */
    private static Optional<Class<?>> taken(String text) {
        List<MatchResult> parameters = PARAMETER.matcher(text).results().toList();
        if (parameters.isEmpty()) {
            return Optional.empty();
        }
        String[] names = parameters.get(0).group(1).split("\\.", -1);
        String type = IMPORT.matcher(text)
                .results()
                .map(found -> found.group(1))
                .filter(found -> found.endsWith("." + names[0]))
                .findFirst()
                .orElse(names[0]);
        for (int i = 1; i < names.length; i++) {
            type += "$" + names[i];
        }
        try {
            return Optional.of(Class.forName(type));
        } catch (ClassNotFoundException e) {
            throw new AssertionError("a template takes a " + type + ", which is no class of ours", e);
        }
    }

    @Test
    void a_template_takes_one_record_and_nothing_beside_it() {
        Map<String, String> wrong = new TreeMap<>();
        templates().forEach((name, text) -> {
            List<MatchResult> parameters = PARAMETER.matcher(text).results().toList();
            if (parameters.size() > 1) {
                wrong.put(name, "takes " + parameters.size() + " parameters");
            } else if (parameters.stream().anyMatch(one -> !one.group(2).isBlank())) {
                wrong.put(name, "lets its parameter be left out");
            } else if (taken(text).filter(type -> !type.isRecord()).isPresent()) {
                wrong.put(name, "takes what is no record");
            }
        });
        assertThat(wrong).isEmpty();
    }

    @Test
    void a_view_is_a_record_and_names_the_template_that_takes_it() {
        Map<String, String> texts = templates();
        List<String> wrong = new ArrayList<>();
        for (Class<?> view : views()) {
            PageView.Template named = view.getAnnotation(PageView.Template.class);
            if (!view.isRecord() || named == null) {
                wrong.add(view.getName() + " is no record that names a template");
            } else if (!texts.containsKey(named.value())) {
                wrong.add(view.getName() + " names " + named.value() + ", which is not there");
            } else if (!taken(texts.get(named.value())).equals(Optional.of(view))) {
                wrong.add(view.getName() + " names " + named.value() + ", which takes another record");
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void every_template_is_shown_by_a_view_or_called_by_another_template() {
        Map<String, String> texts = templates();
        Set<String> unused = new TreeSet<>(texts.keySet());
        views().forEach(view -> unused.remove(PageView.template(view.asSubclass(PageView.class))));
        texts.values().stream()
                .flatMap(text -> CALL.matcher(text).results())
                .forEach(call -> unused.remove(call.group(1).replace('.', '/') + ".jte"));
        assertThat(unused).isEmpty();
        assertThat(views()).hasSizeGreaterThan(30);
    }
}
