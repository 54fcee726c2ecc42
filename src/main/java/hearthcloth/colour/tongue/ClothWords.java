package hearthcloth.colour.tongue;

import java.util.List;

/**
 * A fabric's name in English words, as far as it says how the cloth looks: colours and their tones, the cloth, what is
 * printed on it. "lin bleu clair à carreaux" is "linen light blue à check". What is not known stays as it was written.
 * Which word means which is ours, from memory (docs/sources.md#cloth-words-elsewhere).
 */
public final class ClothWords {

    private ClothWords() {}

    /** The name in English; the very name where it has no word of another language. */
    public static String english(String name) {
        if (name.chars().allMatch(letter -> letter < 0x1100)) {
            return LatinWords.english(name);
        }
        List<String> parts = EasternWords.parts(name);
        return String.join(" ", parts).strip();
    }
}
