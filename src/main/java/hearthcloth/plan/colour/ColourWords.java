package hearthcloth.plan.colour;

import hearthcloth.cloth.Cloth;
import hearthcloth.stash.Fabric;
import hearthcloth.wrap.fold.Visible;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the colours of a cloth do, in plain words: on the front, on the back where that differs, and once tied. */
public final class ColourWords {

    private ColourWords() {}

    /** Some sentences; empty where there is nothing to tell. */
    public static String of(Cloth cloth, List<Fabric> fabrics, Optional<Visible> tied) {
        List<String> said = new ArrayList<>();
        said.add(ColourFigures.of(cloth, fabrics).sentence());
        said.add(ofBack(cloth, fabrics));
        tied.ifPresent(visible -> said.add(TiedColours.sentence(cloth, fabrics, visible)));
        said.removeIf(String::isEmpty);
        return String.join(" ", said);
    }

    /** What the back does; empty where it has the colours of the front. */
    public static String ofBack(Cloth cloth, List<Fabric> fabrics) {
        String words = ColourFigures.ofBack(cloth, fabrics)
                .map(ColourFigures::sentence)
                .orElse("");
        return words.isEmpty()
                ? ""
                : "On the back " + words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }
}
