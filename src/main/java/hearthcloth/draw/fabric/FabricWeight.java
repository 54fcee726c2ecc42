package hearthcloth.draw.fabric;

import hearthcloth.colour.tongue.ClothWords;
import java.util.Locale;

/**
 * How heavy a fabric is, read from its words. Which words mean which is common practice, no source; what names none is
 * of middling weight, as quilting cotton and linen are.
 */
public enum FabricWeight {
    LIGHT(0.6, "lawn", "voile", "batiste", "gauze", "muslin", "silk", "chiffon", "organza", "organdy", "lace"),
    MIDDLING(1),
    HEAVY(1.6, "denim", "canvas", "duck", "drill", "gabardine", "chino", "corduroy", "velvet", "felt", "wool", "tweed");

    private final double stiffness;
    private final String words;

    FabricWeight(double stiffness, String... words) {
        this.stiffness = stiffness;
        this.words = " " + String.join(" ", words) + " ";
    }

    /** How stiff it is beside quilting cotton, which is 1; chosen for the drawing. */
    public double stiffness() {
        return stiffness;
    }

    /** The first that the words name, else middling. */
    public static FabricWeight named(String name) {
        for (String word : ClothWords.english(name).toLowerCase(Locale.ROOT).split("[^\\p{L}]+", -1)) {
            for (FabricWeight weight : values()) {
                if (!word.isEmpty() && weight.words.contains(" " + word + " ")) {
                    return weight;
                }
            }
        }
        return MIDDLING;
    }
}
