package hearthcloth.web.kits;

import hearthcloth.cloth.making.Face;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.together.Together;
import hearthcloth.stash.Piece;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.teaching.TeachingWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was found for many cloths, as the page shows it: a card a cloth, and how fairly the stash was shared.
 *
 * @param fair how fair it is, in sentences
 */
public record KitsFound(List<Card> cards, List<String> fair) {

    /**
     * One cloth.
     *
     * @param number from 0
     * @param drawn empty where nothing could be made
     * @param why what it lacks, in sentences
     */
    public record Card(int number, String name, String asked, Optional<Drawn> drawn, List<String> why) {}

    /** What was planned. */
    public record Drawn(String picture, String size, int joins, List<Held> pieces) {}

    /** A piece that a cloth is cut from. */
    public record Held(String id, String words) {}

    static KitsFound of(KitsSearch.Question question, Together found, TeachingWords words, Voice voice) {
        List<Card> cards = new ArrayList<>();
        for (int i = 0; i < found.parts().size(); i++) {
            Together.Part part = found.parts().get(i);
            cards.add(new Card(
                    i,
                    part.asked().name(),
                    question.lines().get(i).asked(voice),
                    part.plan().map(plan -> drawn(part.asked().name(), plan, voice)),
                    part.shortage().map(shortage -> shortage.why()).orElse(List.of()).stream()
                            .map(why -> why.in(voice))
                            .toList()));
        }
        return new KitsFound(cards, fair(found.measure(), words));
    }

    private static Drawn drawn(String name, Plan plan, Voice voice) {
        String size = voice.write(plan.cloth().finished(), Rounding.NEAREST);
        return new Drawn(
                ClothDrawing.still(
                        plan.cloth(), Face.FRONT, new Swatches(plan.fabrics(), Map.of()), name + ", " + size),
                size,
                plan.figures().joins(),
                plan.cuts().stream().map(cut -> held(cut.piece(), voice)).toList());
    }

    private static Held held(Piece piece, Voice voice) {
        return new Held(
                piece.id(), piece.id() + ", " + piece.fabric().name() + " " + voice.write(piece.size(), Rounding.DOWN));
    }

    private static List<String> fair(Together.Measure measure, TeachingWords words) {
        List<String> said = new ArrayList<>();
        said.add(words.kitsFair(
                String.valueOf(measure.bound()),
                String.valueOf(measure.fairness().worst())));
        measure.oneAfterAnother()
                .filter(turn -> turn.compareTo(measure.fairness()) > 0)
                .filter(turn ->
                        turn.lacking() > 0 || turn.worst() > measure.fairness().worst())
                .ifPresent(turn ->
                        said.add(words.kitsInTurn(words.kitsJoins(turn.worst()), String.valueOf(turn.lacking()))));
        return said;
    }
}
