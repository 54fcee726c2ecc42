package hearthcloth.colour.tongue;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The words of one language and what they mean in English.
 *
 * @param meanings by the word in small letters without accents
 */
record Vocabulary(Map<String, String> meanings, Habit habit) {

    /** What a language does that English does not. */
    enum Habit {
        /** Puts a tone behind its colour. */
        TONE_BEHIND,
        /** Puts two words together in one. */
        COMPOUNDS
    }

    private static final String ACCENTED = "àâäáãåçéèêëíîïìóôöòõúûüùñÿ";
    private static final String PLAIN = "aaaaaaceeeeiiiiooooouuuuny";

    /**
     * Reads a table: on each line the English words, a colon, and the words that mean them; a star stands for the endings
     * of the language.
     *
     * @param endings put after a word with a star, parted by blanks; a word that ends in the first of them loses it
     */
    static Vocabulary read(Habit habit, String table, String... endings) {
        Map<String, String> meanings = new HashMap<>();
        for (String line : table.strip().split("\n", -1)) {
            int colon = line.indexOf(':');
            String english = line.substring(0, colon).strip();
            for (String word : line.substring(colon + 1).strip().split("\\s+", -1)) {
                add(meanings, word, english, endings);
            }
        }
        return new Vocabulary(Map.copyOf(meanings), habit);
    }

    private static void add(Map<String, String> meanings, String word, String english, String[] endings) {
        if (!word.endsWith("*")) {
            meanings.put(plain(word), english);
            return;
        }
        String stem = plain(word.substring(0, word.length() - 1));
        meanings.put(stem, english);
        boolean loses = endings[0].length() > 0 && stem.endsWith(endings[0]);
        String bare = loses ? stem.substring(0, stem.length() - endings[0].length()) : stem;
        for (String ending : endings) {
            if (loses || !ending.equals(endings[0])) {
                meanings.put(bare + ending, english);
            }
        }
    }

    Optional<String> meaning(String word) {
        return Optional.ofNullable(meanings.get(word));
    }

    /** In small letters without accents; "ß" is "ss", "œ" is "oe". */
    static String plain(String word) {
        StringBuilder out = new StringBuilder();
        String small = word.toLowerCase(Locale.ROOT)
                .replace("ß", "ss")
                .replace("œ", "oe")
                .replace("æ", "ae");
        for (int i = 0; i < small.length(); i++) {
            int at = ACCENTED.indexOf(small.charAt(i));
            out.append(at < 0 ? small.charAt(i) : PLAIN.charAt(at));
        }
        return out.toString();
    }
}
