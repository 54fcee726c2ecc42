package hearthcloth.stash;

import hearthcloth.colour.Figure;
import hearthcloth.colour.tongue.ClothWords;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What is woven or printed on a fabric, as far as its name tells. How far each repeats is common practice, no source; it is what
 * fabrics are drawn with.
 */
public enum FabricPattern {
    CHECK(0.9, 0.5, "check", "checks", "checked", "gingham", "plaid", "tartan"),
    STRIPE(0.8, 0.46, "stripe", "stripes", "striped", "ticking"),
    DOT(0.9, 0.13, "dot", "dots", "dotted", "spot", "spots", "spotted"),
    FLORAL(2.4, 0.17, "floral", "flower", "flowers", "flowery", "posy", "roses", "ditsy", "blossom"),
    LEAVES(1.8, 0.14, "leaf", "leaves", "ivy", "willow"),
    STARS(1.3, 0.05, "star", "stars", "starry"),
    LANTERNS(2.0, 0.1, "lantern", "lanterns"),
    BIRDS(2.6, 0.04, "bird", "birds", "gulls", "swallow", "swallows"),
    PRINT(1.3, 0.09, "print", "printed", "patterned", "batik");

    /** "Small" prints repeat so much closer, "large" ones so much wider (ours). */
    private static final double SMALL = 0.6;

    private static final double LARGE = 1.8;

    private static final double INCH_MM = 25.4;

    /** How far a figure lies from its ground where no colour of its own is named, in points of L* (ours). */
    public static final double FIGURE_LIGHTNESS = 32;

    /** The same in a check and a stripe (ours). */
    public static final double STRIPE_LIGHTNESS = 14;

    private final double repeatInches;
    private final double share;
    /** The words that name it, parted by blanks. */
    private final String words;

    /**
     * A pattern.
     *
     * @param share of the cloth that its figures cover, as they are drawn
     */
    FabricPattern(double repeatInches, double share, String... words) {
        this.repeatInches = repeatInches;
        this.share = share;
        this.words = " " + String.join(" ", words) + " ";
    }

    /** The first that the words name; "print" only where no other is named. */
    public static Optional<FabricPattern> named(String name) {
        Optional<FabricPattern> found = Optional.empty();
        for (String word : ClothWords.english(name).toLowerCase(Locale.ROOT).split("[^\\p{L}]+", -1)) {
            for (FabricPattern pattern : values()) {
                if (pattern.words.contains(" " + word + " ") && (found.isEmpty() || found.get() == PRINT)) {
                    found = Optional.of(pattern);
                }
            }
        }
        return found;
    }

    /** How far it repeats, in inches, where its size is not said. */
    public double repeatInches() {
        return repeatInches;
    }

    /** How many times farther than that a fabric of this name repeats. */
    public static double size(String name) {
        String words = " " + ClothWords.english(name).toLowerCase(Locale.ROOT) + " ";
        if (words.contains(" small ") || words.contains(" tiny ")) {
            return SMALL;
        }
        return words.contains(" large ") || words.contains(" big ") ? LARGE : 1;
    }

    /** Names read last, since planning asks for the same few thousands of times. */
    private static final int KEPT = 600;

    private static final Map<String, Optional<FabricPattern>> LARGE_ONES = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Optional<FabricPattern>> eldest) {
            return size() > KEPT;
        }
    };

    /** The pattern of a fabric whose words call it large. */
    private static Optional<FabricPattern> large(String name) {
        synchronized (LARGE_ONES) {
            return LARGE_ONES.computeIfAbsent(name, words -> size(words) > 1 ? named(words) : Optional.empty());
        }
    }

    /**
     * How a fabric looks of which only the words are known: figured where they call its figures large, as it is drawn then.
     * What else they name is taken as the colour that is said, since words do not tell how strong a figure is.
     */
    static Optional<Figure> said(Fabric fabric) {
        return large(fabric.name()).map(pattern -> {
            double away = pattern == CHECK || pattern == STRIPE ? STRIPE_LIGHTNESS : FIGURE_LIGHTNESS;
            double spread = away * Math.sqrt(pattern.share * (1 - pattern.share));
            return new Figure(fabric.colour().lab(), spread, spread, LARGE * pattern.repeatInches * INCH_MM);
        });
    }
}
