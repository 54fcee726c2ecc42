package hearthcloth.draw.picture;

import hearthcloth.draw.letters.FontSubset;
import hearthcloth.draw.letters.Script;
import hearthcloth.draw.letters.Weight;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The letters that a picture uses as style rules of its SVG, a small font for each writing and weight. */
final class EmbeddedLetters {

    private static final Map<Script, String> FACES =
            Map.of(Script.WESTERN, "hearthcloth", Script.KOREAN, "hearthcloth ko", Script.JAPANESE, "hearthcloth ja");

    private EmbeddedLetters() {}

    /** The rules; empty where the picture has no words. */
    static String faces(Picture picture) {
        Map<Script, Map<Weight, Set<Integer>>> used = new EnumMap<>(Script.class);
        for (Mark.Words words : picture.words()) {
            Weight weight = words.type().weight();
            words.text()
                    .codePoints()
                    .forEach(letter -> used.computeIfAbsent(Script.of(letter), each -> new EnumMap<>(Weight.class))
                            .computeIfAbsent(weight, each -> new TreeSet<>())
                            .add(letter));
        }
        if (used.isEmpty()) {
            return "";
        }
        StringBuilder style = new StringBuilder("<style>");
        used.forEach(
                (script, weights) -> weights.forEach((weight, letters) -> style.append(face(script, weight, letters))));
        return style.append("</style>\n").toString();
    }

    private static String face(Script script, Weight weight, Set<Integer> letters) {
        return "@font-face{font-family:'" + FACES.getOrDefault(script, "hearthcloth") + "';font-weight:"
                + weight.number() + ";src:url(data:font/ttf;base64," + FontSubset.base64(script, weight, letters)
                + ")}";
    }
}
