package hearthcloth.words;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.MessageFormat;
import hearthcloth.words.korean.Particles;
import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every catalogue says everything, and the Java that is made of it says what ICU's own MessageFormat says. The Java is kept in
 * the sources; {@code -Dgolden=write} makes it anew.
 */
class CatalogueTest {

    private static final Path MADE = Path.of("src", "main", "java", "hearthcloth", "words");

    static List<String> rooms() {
        return Catalogue.rooms();
    }

    @Test
    void there_are_rooms_with_catalogues() {
        assertThat(rooms()).contains("tying");
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void every_language_has_every_message_with_the_same_arguments(String room) {
        Catalogue english = Catalogue.read(room, Language.ENGLISH);
        List<String> faults = new ArrayList<>();
        for (Language language : Language.values()) {
            faults.addAll(Catalogue.read(room, language).faults(english));
        }
        assertThat(faults).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void the_java_is_what_the_catalogues_make(String room) throws IOException {
        Map<Path, String> made = new LinkedHashMap<>();
        Path folder = MADE.resolve(room);
        Catalogue english = Catalogue.read(room, Language.ENGLISH);
        made.put(folder.resolve("package-info.java"), CatalogueWriter.folder(english));
        made.put(folder.resolve(english.type() + ".java"), CatalogueWriter.type(english));
        for (Language language : Language.values()) {
            Catalogue catalogue = Catalogue.read(room, language);
            made.put(folder.resolve(catalogue.name() + ".java"), CatalogueWriter.words(catalogue));
        }
        kept(made);
        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all).containsExactlyInAnyOrderElementsOf(made.keySet());
        }
    }

    @Test
    void the_rooms_are_held_together_by_what_the_catalogues_make() throws IOException {
        Map<Path, String> made = new LinkedHashMap<>();
        Path folder = MADE.resolve("room");
        made.put(folder.resolve("package-info.java"), RoomsWriter.folder());
        made.put(folder.resolve("Rooms.java"), RoomsWriter.rooms(all(Language.ENGLISH)));
        for (Language language : Language.values()) {
            made.put(
                    folder.resolve(RoomsWriter.name(language) + "Rooms.java"),
                    RoomsWriter.language(language, all(language)));
        }
        kept(made);
    }

    @Test
    void sentences_are_made_by_factories_that_the_catalogues_make() throws IOException {
        Map<Path, String> made = new LinkedHashMap<>();
        Path folder = MADE.resolve("sentence");
        List<Catalogue> rooms = RoomsWriter.VALUES.stream()
                .map(room -> Catalogue.read(room, Language.ENGLISH))
                .toList();
        made.put(folder.resolve("SentenceRooms.java"), RoomsWriter.all(rooms));
        rooms.forEach(room ->
                made.put(folder.resolve(RoomsWriter.factory(room.room()) + ".java"), RoomsWriter.sentences(room)));
        kept(made);
    }

    private static List<Catalogue> all(Language language) {
        return rooms().stream()
                .filter(RoomsWriter::isVoiced)
                .map(room -> Catalogue.read(room, language))
                .toList();
    }

    /** Writes what was made where that is asked for, and holds what is kept to it. */
    private static void kept(Map<Path, String> made) throws IOException {
        if (System.getProperty("golden", "").equals("write")) {
            for (Map.Entry<Path, String> each : made.entrySet()) {
                Files.createDirectories(each.getKey().getParent());
                Files.writeString(each.getKey(), each.getValue());
            }
        }
        for (Map.Entry<Path, String> each : made.entrySet()) {
            assertThat(Files.readString(each.getKey()))
                    .as(each.getKey().toString())
                    .isEqualTo(each.getValue());
        }
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void what_is_said_is_what_icu_says(Language language) throws ReflectiveOperationException {
        int compared = 0;
        for (String room : rooms()) {
            Catalogue catalogue = Catalogue.read(room, language);
            Class<?> made = Class.forName("hearthcloth.words." + room + "." + catalogue.name());
            Object words = made.getConstructor().newInstance();
            for (Message message : catalogue.messages().values()) {
                Method method = Stream.of(made.getDeclaredMethods())
                        .filter(one -> one.getName().equals(message.method()))
                        .findFirst()
                        .orElseThrow();
                for (Map<String, Object> values : samples(message)) {
                    String icu =
                            new MessageFormat(message.pattern(), Locale.forLanguageTag(language.tag())).format(values);
                    String ours = (String) method.invoke(words, values.values().toArray());
                    assertThat(ours)
                            .as(message.key())
                            .isEqualTo(language == Language.KOREAN ? Particles.fitted(icu) : icu);
                    compared++;
                }
            }
        }
        System.out.printf(Locale.ROOT, "%s: %d messages compared with ICU's.%n", language, compared);
        assertThat(compared).isGreaterThan(50);
    }

    /** Values for each argument: every word that a select names, and 0, 1, 2, 5 and 999 where something is counted. */
    private static List<Map<String, Object>> samples(Message message) {
        List<Map<String, Object>> samples = new ArrayList<>(List.of(Map.of()));
        for (Map.Entry<String, Message.Kind> argument : message.arguments().entrySet()) {
            List<Map<String, Object>> more = new ArrayList<>();
            for (Map<String, Object> sample : samples) {
                for (Object value : values(message, argument.getKey(), argument.getValue())) {
                    Map<String, Object> one = new LinkedHashMap<>(sample);
                    one.put(argument.getKey(), value);
                    more.add(one);
                }
            }
            samples = more;
        }
        return samples;
    }

    private static List<Object> values(Message message, String name, Message.Kind kind) {
        return switch (kind) {
            case COUNT -> List.of(0, 1, 2, 5, 999);
            case TEXT -> List.of("1A", "'l' {x}");
            case WORD -> {
                Set<String> words = new TreeSet<>();
                words(message.nodes(), name, words);
                yield List.copyOf(words);
            }
        };
    }

    private static void words(List<Message.Node> nodes, String name, Set<String> words) {
        for (Message.Node node : nodes) {
            if (node instanceof Message.Node.Choice choice) {
                if (choice.name().equals(name)) {
                    words.addAll(choice.cases().keySet());
                }
                choice.cases().values().forEach(each -> words(each, name, words));
            }
        }
    }

    @Test
    void a_missing_message_and_another_argument_are_found() {
        Catalogue english = Catalogue.read(
                "tying", Language.ENGLISH, "a=Fold {x}\nb={n, plural, one {# end} other {# ends}}\nc=Tie");
        Catalogue german = Catalogue.read(
                "tying", Language.GERMAN, "a=Falte {y}\nb={n, plural, one {# Ende} other {# Enden}}\nd=Knoten");

        assertThat(german.faults(english))
                .containsExactly(
                        "tying/de.properties: a has {y=TEXT}, English has {x=TEXT}",
                        "tying/de.properties lacks c",
                        "tying/de.properties has d, which English lacks");
        assertThat(german.faults(german)).isEmpty();
    }

    @Test
    void a_choice_and_quotes_become_java() {
        Catalogue french = Catalogue.read(
                "tying",
                Language.FRENCH,
                "end=L'\\u0022un\\u0022 {n, plural, one {# bout} other {# bouts}} {side, select, left {g} other {d}}");

        assertThat(CatalogueWriter.words(french))
                .contains("public String end(int n, String side)")
                .contains(
                        "return \"L'\\\"un\\\" \" + (n == 0 || n == 1 ? \"\" + n + \" bout\" : \"\" + n + \" bouts\") + \" \""
                                + " + (side.equals(\"left\") ? \"g\" : \"d\");");
    }
}
