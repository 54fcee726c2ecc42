package hearthcloth.plan.colour;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Rect;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.stash.Fabric;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Argument.Joined;
import hearthcloth.words.sentence.Planning;
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
    private static final double WORTH = 20;

    private TiedColours() {}

    /** What its colours do where they show, in a sentence; empty where hardly an edge shows. */
    public static Sentence sentence(Cloth cloth, List<Fabric> fabrics, Visible visible) {
        ColourFigures figures = figures(cloth, new FabricDifferences(fabrics), visible);
        List<Sentence> parts = figures.parts();
        boolean isLittle = figures.hearth().edgeMm() + figures.neighbours().edgeMm() < WORTH;
        return parts.isEmpty() || isLittle
                ? Sentence.none()
                : Planning.colourTied(Argument.row(Joined.SEMICOLONS, parts));
    }

    static ColourFigures figures(Cloth cloth, FabricDifferences differences, Visible visible) {
        List<Tile> tiles = ColourFigures.tiles(cloth, differences);
        List<Rect> places = cloth.laid().stream().map(laid -> laid.at()).toList();
        ColourSum sum = new ColourSum(differences);
        for (int i = 0; i < tiles.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (tiles.get(i).bar() != tiles.get(j).bar() && tiles.get(i).meets(tiles.get(j)) > 0) {
                    sum.pair(tiles.get(j), tiles.get(i), share(places.get(i), places.get(j), visible));
                }
            }
        }
        return sum.figures();
    }

    /** The share of the edge between two patches that shows, from 0 to 1. */
    private static double share(Rect one, Rect other, Visible visible) {
        Length left = one.x().max(other.x()).minus(HALF);
        Length top = one.y().max(other.y()).minus(HALF);
        Length right = one.right().min(other.right()).plus(HALF);
        Length bottom = one.bottom().min(other.bottom()).plus(HALF);
        Rect strip = Rect.at(left, top, new Size(right.minus(left), bottom.minus(top)));
        double area = strip.width().in(Unit.MILLIMETRE) * strip.height().in(Unit.MILLIMETRE);
        return Math.min(1, visible.seen(strip) / area);
    }
}
