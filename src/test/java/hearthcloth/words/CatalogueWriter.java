package hearthcloth.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Writes a catalogue as Java that needs no library: an interface of the room with a method for each key, and a class for each
 * language. How a number is counted in: CLDR's cardinal rules of the six languages (docs/sources.md#plural-rules), for whole
 * numbers under a million.
 */
final class CatalogueWriter {

    private static final String NOTE = "Made from src/main/words by CatalogueTest; mend the catalogue, not this file.";

    private CatalogueWriter() {}

    /** The room's interface. */
    static String type(Catalogue english) {
        StringBuilder out = head(english);
        boolean page = !RoomsWriter.isVoiced(english.room());
        out.append(page ? "import hearthcloth.words.Language;\n\n" : "");
        out.append("/** What is said in the room of ")
                .append(english.room())
                .append(", a method for each message. ")
                .append(NOTE)
                .append(" */\n");
        out.append("public interface ").append(english.type()).append(" {\n");
        out.append(page ? inLanguage(english) : "");
        for (Message message : english.messages().values()) {
            out.append("\n    String ").append(signature(message)).append(";\n");
        }
        return out.append("}\n").toString();
    }

    /** How a language's words are come by: no other language's class is loaded. */
    private static String inLanguage(Catalogue english) {
        StringBuilder out =
                new StringBuilder("\n    /** What is said in one language; the class of no other is loaded. */\n");
        out.append("    static ").append(english.type()).append(" in(Language language) {\n");
        out.append("        return switch (language) {\n");
        for (Language language : Language.values()) {
            out.append("            case ")
                    .append(language.name())
                    .append(" -> new ")
                    .append(new Catalogue(english.room(), language, Map.of()).name())
                    .append("();\n");
        }
        return out.append("        };\n    }\n").toString();
    }

    /** The room in one language. */
    static String words(Catalogue catalogue) {
        StringBuilder out = head(catalogue);
        boolean korean = catalogue.language() == Language.KOREAN;
        if (korean && catalogue.messages().values().stream().anyMatch(CatalogueWriter::hasParticle)) {
            out.append("import hearthcloth.words.korean.Particles;\n\n");
        }
        out.append("/** The room of ")
                .append(catalogue.room())
                .append(" in ")
                .append(catalogue.name(), 0, catalogue.language().name().length())
                .append(". ")
                .append(NOTE)
                .append(" */\n");
        out.append("public final class ")
                .append(catalogue.name())
                .append(" implements ")
                .append(catalogue.type())
                .append(" {\n");
        for (Message message : catalogue.messages().values()) {
            String value = sum(message.nodes(), catalogue.language());
            if (korean && hasParticle(message)) {
                value = "Particles.fitted(" + value + ")";
            }
            out.append("\n    @Override\n    public String ")
                    .append(signature(message))
                    .append(" {\n        return ")
                    .append(value)
                    .append(";\n    }\n");
        }
        return out.append("}\n").toString();
    }

    /** The note that makes a folder a package. */
    static String folder(Catalogue english) {
        return "/** What is said in the room of " + english.room() + ", in every language. " + NOTE
                + " */\n@NullMarked\npackage " + folderName(english)
                + ";\n\nimport org.jspecify.annotations.NullMarked;\n";
    }

    private static String folderName(Catalogue catalogue) {
        return "hearthcloth.words." + catalogue.room();
    }

    private static StringBuilder head(Catalogue catalogue) {
        return new StringBuilder("package ").append(folderName(catalogue)).append(";\n\n");
    }

    private static String signature(Message message) {
        return message.method()
                + message.arguments().entrySet().stream()
                        .map(each -> each.getValue().java + " " + each.getKey())
                        .collect(Collectors.joining(", ", "(", ")"));
    }

    private static boolean hasParticle(Message message) {
        return message.pattern().matches(".*(을\\(를\\)|이\\(가\\)|은\\(는\\)|과\\(와\\)|\\(으\\)로).*");
    }

    private static String sum(List<Message.Node> nodes, Language language) {
        List<String> terms = new ArrayList<>();
        for (Message.Node node : nodes) {
            if (node instanceof Message.Node.Text text) {
                terms.add(quoted(text.words()));
            } else if (node instanceof Message.Node.Value value) {
                terms.add(value.name());
            } else if (node instanceof Message.Node.Choice choice) {
                String chosen = choice(choice, language);
                terms.add(chosen.contains(" ? ") ? "(" + chosen + ")" : chosen);
            }
        }
        return terms.isEmpty() ? "\"\"" : String.join(" + ", terms);
    }

    private static String choice(Message.Node.Choice choice, Language language) {
        StringBuilder out = new StringBuilder();
        String other = text(choice.cases().getOrDefault("other", List.of()), language);
        for (Map.Entry<String, List<Message.Node>> each : choice.cases().entrySet()) {
            String said = text(each.getValue(), language);
            if (!said.equals(other)) {
                String when = condition(choice, each.getKey(), language);
                // What an earlier case has said of nothing need not be asked again.
                out.append(choice.cases().containsKey("=0") ? when.replace(choice.name() + " == 0 || ", "") : when)
                        .append(" ? ")
                        .append(said)
                        .append(" : ");
            }
        }
        return out.append(other).toString();
    }

    /** A sum that is text whatever its first term is. */
    private static String text(List<Message.Node> nodes, Language language) {
        String sum = sum(nodes, language);
        return sum.startsWith("\"") ? sum : "\"\" + " + sum;
    }

    private static String condition(Message.Node.Choice choice, String selector, Language language) {
        if (!choice.counts()) {
            return choice.name() + ".equals(" + quoted(selector) + ")";
        }
        if (selector.startsWith("=")) {
            return choice.name() + " == " + selector.substring(1);
        }
        if (!selector.equals("one")) {
            throw new IllegalStateException(language + " does not count in " + selector);
        }
        return switch (language) {
            case ENGLISH, GERMAN, SPANISH -> choice.name() + " == 1";
            case FRENCH -> choice.name() + " == 0 || " + choice.name() + " == 1";
            case KOREAN, JAPANESE -> throw new IllegalStateException(language + " has one form for every number");
        };
    }

    private static String quoted(String words) {
        return "\"" + words.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + "\"";
    }
}
