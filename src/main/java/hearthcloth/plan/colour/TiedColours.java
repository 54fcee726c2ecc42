package hearthcloth.plan.colour;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Rect;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.parameter.ColourParameters;
import hearthcloth.stash.Fabric;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Argument.Joined;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.wrap.fold.Visible;
import java.util.List;

/**
 * What the eye makes of a tied cloth: the figures of {@link ColourFigures} over the edges that show on the standing gift.
 * How much of an edge shows is taken from a strip of cloth along it.
 */
public final class TiedColours {

    /** Half the width of that strip: narrow beside any fold, wide beside rounding (ours). */
    private static final Length HALF = Length.mm(2);

    /** Less edge than this, in millimetres, is not worth a word. */
    private static final double WORTH = ColourParameters.standard().faults().worth();

    private TiedColours() {}

    /**
     * What its colours do where they show, in a sentence, as far as it is another than on the flat front; empty where it is the
     * same, or where hardly an edge shows.
     */
    public static Sentence sentence(Cloth cloth, List<Fabric> fabrics, Visible visible) {
        ColourFigures figures = figures(cloth, new FabricDifferences(fabrics), visible);
        List<Sentence> flat = ColourFigures.of(cloth, fabrics).parts();
        List<Sentence> parts =
                figures.parts().stream().filter(part -> !flat.contains(part)).toList();
        boolean isLittle = figures.hearth().edgeMm() + figures.neighbours().edgeMm() < WORTH;
        return parts.isEmpty() || isLittle
                ? Sentence.none()
                : PlanningSentences.colourTied(Argument.row(Joined.SEMICOLONS, parts));
    }

    static ColourFigures figures(Cloth cloth, FabricDifferences differences, Visible visible) {
        return EdgeMap.of(cloth, differences).figures(differences, edge -> share(edge, visible));
    }

    /** The share of an edge that shows, from 0 to 1. */
    static double share(Rect edge, Visible visible) {
        Size strip = new Size(edge.width().plus(HALF.times(2)), edge.height().plus(HALF.times(2)));
        double seen = visible.seen(Rect.at(edge.x().minus(HALF), edge.y().minus(HALF), strip));
        return Math.min(1, seen / strip.areaMm2());
    }
}
