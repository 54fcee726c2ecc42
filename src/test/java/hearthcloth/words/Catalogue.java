package hearthcloth.words;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The messages of one room in one language: {@code src/main/words/tying/ko.properties}. */
record Catalogue(String room, Language language, Map<String, Message> messages) {

    private static final Path ROOT = Path.of("src", "main", "words");

    /** The rooms that have catalogues. */
    static List<String> rooms() {
        try (Stream<Path> all = Files.list(ROOT)) {
            return all.filter(Files::isDirectory)
                    .map(folder -> folder.getFileName().toString())
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Catalogue read(String room, Language language) {
        try {
            return read(room, language, Files.readString(ROOT.resolve(room).resolve(language.tag() + ".properties")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The catalogue whose file holds {@code text}; a key that is there twice is refused. */
    static Catalogue read(String room, Language language, String text) {
        Map<String, Message> messages = new TreeMap<>();
        Properties once = new Properties() {
            @Override
            public synchronized Object put(Object key, Object value) {
                if (messages.put((String) key, Message.read((String) key, (String) value)) != null) {
                    throw new IllegalStateException(room + ", " + language + ": " + key + " is there twice");
                }
                return value;
            }
        };
        try (Reader reader = new StringReader(text)) {
            once.load(reader);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Catalogue(room, language, messages);
    }

    /** What is wrong with this catalogue beside the English one; empty where nothing is. */
    List<String> faults(Catalogue english) {
        List<String> faults = new ArrayList<>();
        for (Message message : english.messages.values()) {
            Message own = messages.get(message.key());
            if (own == null) {
                faults.add(file() + " lacks " + message.key());
            } else if (!own.arguments().equals(message.arguments())) {
                faults.add(
                        file() + ": " + own.key() + " has " + own.arguments() + ", English has " + message.arguments());
            }
        }
        messages.keySet().stream()
                .filter(key -> !english.messages.containsKey(key))
                .forEach(key -> faults.add(file() + " has " + key + ", which English lacks"));
        return faults;
    }

    private String file() {
        return room + "/" + language.tag() + ".properties";
    }

    /** {@code TyingWords}. */
    String type() {
        return capital(room) + "Words";
    }

    /** {@code KoreanTying}. */
    String name() {
        return capital(language.name().toLowerCase(Locale.ROOT)) + capital(room);
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }
}
