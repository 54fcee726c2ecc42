package hearthcloth.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Writes what holds the rooms together: an interface with a method for each room and a class of it for each language, whose
 * methods touch the room's class only when they are called; and, for rooms whose messages are kept as values, the factories of
 * their sentences.
 */
final class RoomsWriter {

    private static final String NOTE = "Made from src/main/words by CatalogueTest; mend the catalogue, not this file.";

    private static final String SENTENCES = "hearthcloth.words.sentence";

    /** The rooms whose messages are kept as values: {@code hearthcloth.words.sentence.PlanningSentences} and its like. */
    static final List<String> VALUES =
            List.of("mending", "photographing", "planning", "reading", "refusing", "ruling", "storing", "typing");

    /** The other rooms that a voice says; all that are left belong to pages. */
    private static final List<String> VOICED = List.of("measuring", "printing", "reporting", "sewing", "tying");

    private RoomsWriter() {}

    /** Whether a voice has the room; a page asks any other by its {@code in}. */
    static boolean isVoiced(String room) {
        return VALUES.contains(room) || VOICED.contains(room);
    }

    static String rooms(List<Catalogue> english) {
        StringBuilder out = new StringBuilder("package hearthcloth.words.room;\n\n");
        english.forEach(room -> out.append("import hearthcloth.words.%s.%s;\n".formatted(room.room(), room.type())));
        out.append("\n/** What is said in one language, a method for each room. ")
                .append(NOTE)
                .append(" */\n");
        out.append("public interface Rooms {\n");
        english.forEach(room -> out.append("\n    %s %s();\n".formatted(room.type(), room.room())));
        return out.append("}\n").toString();
    }

    static String language(Language language, List<Catalogue> rooms) {
        StringBuilder out = new StringBuilder("package hearthcloth.words.room;\n\n");
        rooms.stream()
                .flatMap(room -> java.util.stream.Stream.of(room.name(), room.type())
                        .map(type -> "import hearthcloth.words." + room.room() + "." + type + ";\n"))
                .sorted()
                .forEach(out::append);
        String name = name(language);
        out.append("\n/** Every room in ")
                .append(name)
                .append(". ")
                .append(NOTE)
                .append(" */\n");
        out.append("public final class ").append(name).append("Rooms implements Rooms {\n");
        for (Catalogue room : rooms) {
            out.append("\n    @Override\n    public %s %s() {\n        return new %s();\n    }\n"
                    .formatted(room.type(), room.room(), room.name()));
        }
        return out.append("}\n").toString();
    }

    static String folder() {
        return "/** Every room of what is said, in one language. " + NOTE
                + " */\n@NullMarked\npackage hearthcloth.words.room;\n\n"
                + "import org.jspecify.annotations.NullMarked;\n";
    }

    /** The list of all rooms whose messages are values. */
    static String all(List<Catalogue> english) {
        String names =
                english.stream().map(room -> factory(room.room()) + ".ROOM").collect(Collectors.joining(", "));
        return "package " + SENTENCES + ";\n\nimport java.util.List;\n\n"
                + "/** The rooms whose messages are kept as sentences. " + NOTE + " */\n"
                + "final class SentenceRooms {\n\n    static final List<Room> ALL = List.of(OwnWords.ROOM, " + names
                + ");\n\n    private SentenceRooms() {}\n}\n";
    }

    /** The factories of a room's sentences. */
    static String sentences(Catalogue english) {
        String name = factory(english.room());
        StringBuilder out = new StringBuilder("package " + SENTENCES + ";\n\n");
        out.append("import hearthcloth.words.%s.%s;\n".formatted(english.room(), english.type()));
        out.append("import hearthcloth.words.speech.Voice;\nimport org.jspecify.annotations.Nullable;\n\n");
        out.append("/** Sentences of the room of ")
                .append(english.room())
                .append(". ")
                .append(NOTE)
                .append(" */\n");
        out.append("public final class ").append(name).append(" implements Room {\n\n");
        out.append("    static final Room ROOM = new ")
                .append(name)
                .append("();\n\n    private ")
                .append(name)
                .append("() {}\n");
        english.messages().values().forEach(message -> out.append(factory(message)));
        out.append("\n    @Override\n    public String name() {\n        return \"")
                .append(english.room())
                .append("\";\n    }\n");
        out.append(kinds(english));
        out.append("\n    @Override\n    public String said(Sentence sentence, Voice voice) {\n        ");
        out.append(english.type())
                .append(" words = voice.rooms().")
                .append(english.room())
                .append("();\n");
        out.append("        return switch (sentence.key()) {\n");
        english.messages().values().forEach(message -> out.append(said(message)));
        out.append("            default -> throw new IllegalStateException(\"no message \" + sentence.key());\n");
        return out.append("        };\n    }\n}\n").toString();
    }

    private static String factory(Message message) {
        List<String> parameters = new ArrayList<>();
        StringBuilder values = new StringBuilder();
        for (Map.Entry<String, Message.Kind> each : message.arguments().entrySet()) {
            String given = each.getKey();
            parameters.add(
                    switch (each.getValue()) {
                        case TEXT -> "Argument " + given;
                        case WORD -> "String " + given;
                        case COUNT -> "int " + given;
                    });
            values.append(
                    switch (each.getValue()) {
                        case TEXT -> ", " + given;
                        case WORD -> ", new Argument.Text(" + given + ")";
                        case COUNT -> ", new Argument.Count(" + given + ")";
                    });
        }
        return "\n    public static Sentence %s(%s) {\n        return new Sentence(ROOM, \"%s\"%s);\n    }\n"
                .formatted(message.method(), String.join(", ", parameters), message.key(), values);
    }

    private static String kinds(Catalogue english) {
        StringBuilder out = new StringBuilder(
                "\n    @Override\n    public @Nullable String kinds(String key) {\n        return switch (key) {\n");
        for (Message message : english.messages().values()) {
            String kinds = message.arguments().values().stream()
                    .map(kind -> kind.name().substring(0, 1).toLowerCase(Locale.ROOT))
                    .collect(Collectors.joining());
            out.append("            case \"%s\" -> \"%s\";\n".formatted(message.key(), kinds));
        }
        return out.append("            default -> null;\n        };\n    }\n").toString();
    }

    private static String said(Message message) {
        List<String> given = new ArrayList<>();
        for (Message.Kind kind : message.arguments().values()) {
            int i = given.size();
            given.add(
                    switch (kind) {
                        case TEXT -> "sentence.text(" + i + ", voice)";
                        case WORD -> "sentence.word(" + i + ")";
                        case COUNT -> "sentence.count(" + i + ")";
                    });
        }
        return "            case \"%s\" -> words.%s(%s);\n"
                .formatted(message.key(), message.method(), String.join(", ", given));
    }

    static String name(Language language) {
        return capital(language.name().toLowerCase(Locale.ROOT));
    }

    /** The name of the class that makes a room's sentences. */
    static String factory(String room) {
        return capital(room) + "Sentences";
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }
}
