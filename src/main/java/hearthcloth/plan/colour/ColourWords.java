package hearthcloth.plan.colour;

import hearthcloth.cloth.Cloth;
import hearthcloth.stash.Fabric;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Argument.Joined;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.wrap.fold.Visible;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the colours of a cloth do, in plain words: on the front, on the back where that differs, and once tied. */
public final class ColourWords {

    private ColourWords() {}

    /** Some sentences; none where there is nothing to tell. */
    public static List<Sentence> of(Cloth cloth, List<Fabric> fabrics, Optional<Visible> tied) {
        List<Sentence> said = new ArrayList<>();
        said.add(ColourFigures.of(cloth, fabrics).sentence());
        ColourFigures.ofBack(cloth, fabrics)
                .map(ColourFigures::parts)
                .filter(parts -> !parts.isEmpty())
                .ifPresent(parts -> said.add(PlanningSentences.colourBack(Argument.row(Joined.SEMICOLONS, parts))));
        tied.ifPresent(visible -> said.add(TiedColours.sentence(cloth, fabrics, visible)));
        said.removeIf(Sentence::isEmpty);
        return List.copyOf(said);
    }
}
