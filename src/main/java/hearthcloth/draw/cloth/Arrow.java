package hearthcloth.draw.cloth;

import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.geometry.Point;
import java.util.List;

/** An arrow up the page with a gap in its middle for a word. */
final class Arrow {

    private static final Stroke SHAFT = Stroke.solid(0.25, Palette.SECOND_INK);

    private Arrow() {}

    /**
     * Draws an arrow.
     *
     * @param reach from the middle to each tip, in millimetres
     * @param gap from the middle to where the shaft begins, in millimetres; no shaft where the arrow is too short for
     *     it
     * @param bothHeads false for the upper head alone
     */
    static void draw(Sketch sketch, Point middle, double reach, double gap, boolean bothHeads) {
        double open = reach > gap + 1.5 ? gap : 0;
        for (int way : new int[] {-1, 1}) {
            Point tip = middle.plus(0, way * reach);
            sketch.line(middle.plus(0, way * open), tip, SHAFT);
            if (way < 0 || bothHeads) {
                sketch.add(new Mark.Line(List.of(tip.plus(0.9, -way * 2), tip, tip.plus(-0.9, -way * 2)), SHAFT));
            }
        }
    }
}
