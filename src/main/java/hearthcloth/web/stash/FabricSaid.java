package hearthcloth.web.stash;

import hearthcloth.colour.Colour;
import hearthcloth.colour.ColourName;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.words.Language;
import hearthcloth.words.stashing.StashingWords;
import java.util.Set;

/** What is said of a fabric in few words, in the language of the page. */
public final class FabricSaid {

    /** First words of a colour's name that tell how dark or strong it is. */
    private static final Set<String> TONES = Set.of("dark", "light", "pale", "bright", "greyish");

    private FabricSaid() {}

    /** A colour in everyday words: {@code dark green}. */
    public static String colour(Colour colour, Language language) {
        StashingWords words = StashingWords.in(language);
        String[] name = ColourName.of(colour).split(" ", 2);
        boolean isToned = name.length == 2 && TONES.contains(name[0]);
        String hue = isToned ? name[1] : String.join(" ", name);
        return words.colour(words.hue(hue.replace(' ', '_')), isToned ? name[0] : "plain");
    }

    /** What all pieces of a fabric share: {@code pale green, has a right side, nap lengthwise}. */
    static String about(Fabric fabric, Language language) {
        StashingWords words = StashingWords.in(language);
        String colour = fabric.colour().isKnown() ? colour(fabric.colour(), language) : words.colourUnknown();
        String faces = fabric.faces().name();
        String nap = fabric.nap().name();
        return fabric.wrong()
                .map(wrong -> words.fabricAboutWrong(colour, faces, nap, colour(wrong, language)))
                .orElseGet(() -> words.fabricAbout(colour, faces, nap));
    }

    /** The same of a piece of it, which may be washed. */
    static String about(Piece piece, Language language) {
        return and(
                about(piece.fabric(), language),
                StashingWords.in(language).washed(piece.washed().name()),
                language);
    }

    /** Two things after each other; what is empty is left out. */
    static String and(String before, String next, Language language) {
        return next.isEmpty() ? before : StashingWords.in(language).and(before, next);
    }
}
