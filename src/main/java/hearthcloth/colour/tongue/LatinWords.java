package hearthcloth.colour.tongue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * French, German and Spanish. A word that means different things in two of them is read in the one that most words of the
 * name belong to. A tone stands behind its colour in French and Spanish, before it in English. German puts words together
 * ("dunkelgrün", "blaugrau", "Leinenstoff"), which are taken apart.
 */
final class LatinWords {

    private static final List<Vocabulary> ALL = List.of(LatinTables.FRENCH, LatinTables.GERMAN, LatinTables.SPANISH);

    private static final Set<String> TONES = Set.of("light", "dark", "deep", "pale", "bright", "dusty");

    /** The first half of a German colour made of two, as English says it. */
    private static final Map<String, String> TINGES = Map.ofEntries(
            Map.entry("blau", "bluish"),
            Map.entry("grun", "greenish"),
            Map.entry("gelb", "yellowish"),
            Map.entry("rot", "reddish"),
            Map.entry("braun", "brownish"),
            Map.entry("grau", "greyish"),
            Map.entry("rosa", "pinkish"),
            Map.entry("violett", "purplish"),
            Map.entry("hell", "light"),
            Map.entry("dunkel", "dark"),
            Map.entry("tief", "deep"),
            Map.entry("blass", "pale"),
            Map.entry("zart", "pale"),
            Map.entry("pastell", "pastel"),
            Map.entry("knall", "bright"),
            Map.entry("leucht", "bright"),
            Map.entry("matt", "muted"));

    /** What follows the cloth in a German word. */
    private static final List<String> NOUNS = List.of(
            "streifen",
            "stoffe",
            "stoff",
            "reste",
            "rest",
            "stucke",
            "stuck",
            "tuch",
            "gewebe",
            "quadrate",
            "quadrat",
            "flicken");

    /** Words that English has for something else; they count as foreign only beside another that is. */
    private static final Set<String> ENGLISH_TOO = Set.of(
            "roses", "lie", "vive", "passe", "stern", "muster", "lunar", "arena", "mousse", "violet", "hell", "matt",
            "samt", "petit", "petite", "grand", "grande", "lila", "large", "cord", "argent", "sable", "flor", "cafe",
            "natur", "lino", "print", "pale", "orange", "citron", "prune", "fleur");

    private LatinWords() {}

    static String english(String name) {
        String[] words = Vocabulary.plain(name)
                .replace("terre cuite", "terrecuite")
                .replace("vieux rose", "vieuxrose")
                .replace("blanc casse", "blanccasse")
                .split("[^\\p{L}]+", -1);
        Optional<Vocabulary> most = most(words);
        return most.isEmpty() ? name : english(words, most.get());
    }

    private static String english(String[] words, Vocabulary most) {
        List<String> out = new ArrayList<>();
        for (String word : words) {
            Optional<String> english = meaning(word, most);
            String said = english.orElse(word);
            boolean behind = english.isPresent()
                    && TONES.contains(said)
                    && most.habit() == Vocabulary.Habit.TONE_BEHIND
                    && !out.isEmpty();
            out.add(behind ? out.size() - 1 : out.size(), said);
        }
        return String.join(" ", out).strip();
    }

    /** The language that most words belong to, of equals the first; empty where no word is of another than English. */
    private static Optional<Vocabulary> most(String[] words) {
        Optional<Vocabulary> most = Optional.empty();
        long best = 0;
        for (Vocabulary each : ALL) {
            long count = Arrays.stream(words)
                    .filter(word -> !ENGLISH_TOO.contains(word))
                    .filter(word ->
                            own(word, each).filter(said -> !said.equals(word)).isPresent())
                    .count();
            if (count > best) {
                best = count;
                most = Optional.of(each);
            }
        }
        return most;
    }

    private static Optional<String> meaning(String word, Vocabulary most) {
        Optional<String> found = own(word, most);
        if (ENGLISH_TOO.contains(word)) {
            return found;
        }
        for (Vocabulary each : ALL) {
            found = found.isPresent() ? found : own(word, each);
        }
        return found;
    }

    private static Optional<String> own(String word, Vocabulary language) {
        Optional<String> whole = language.meaning(word);
        return whole.isPresent() || language.habit() != Vocabulary.Habit.COMPOUNDS ? whole : takenApart(word);
    }

    private static Optional<String> takenApart(String word) {
        for (Map.Entry<String, String> tinge : TINGES.entrySet()) {
            Optional<String> rest = word.startsWith(tinge.getKey())
                    ? LatinTables.GERMAN.meaning(word.substring(tinge.getKey().length()))
                    : Optional.empty();
            if (rest.isPresent()) {
                return Optional.of(tinge.getValue() + " " + rest.get());
            }
        }
        return NOUNS.stream()
                .filter(word::endsWith)
                .flatMap(noun -> LatinTables.GERMAN.meaning(word.substring(0, word.length() - noun.length())).stream())
                .findFirst();
    }
}
