package hearthcloth.draw;

import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Point;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import java.util.List;

/** An arrow with a gap in its middle for a word. */
final class Arrow {

    private static final Stroke SHAFT = Stroke.solid(0.25, Palette.SECOND_INK);

    private Arrow() {}

    /**
     * Draws it.
     *
     * @param along along the page, its first head to the left; else up the page, its first head at the top
     * @param reach from the middle to each tip
     * @param gap from the middle to where the shaft begins
     * @param bothHeads else only the first
     */
    static void draw(Sketch sketch, Point middle, boolean along, double reach, double gap, boolean bothHeads) {
        double open = reach > gap + 1.5 ? gap : 0;
        for (int way : new int[] {-1, 1}) {
            Point tip = moved(middle, along, way * reach, 0);
            sketch.line(moved(middle, along, way * open, 0), tip, SHAFT);
            if (way < 0 || bothHeads) {
                Point left = moved(middle, along, way * (reach - 2), 0.9);
                Point right = moved(middle, along, way * (reach - 2), -0.9);
                sketch.add(new Mark.Area(List.of(tip, left, right), Palette.SECOND_INK));
            }
        }
    }

    private static Point moved(Point from, boolean along, double by, double aside) {
        return along ? from.movedBy(by, aside) : from.movedBy(aside, by);
    }
}
