package hearthcloth.draw.guide;

import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.geometry.Point;
import java.util.List;

/** Small blocks side by side, row by row, in the order given. */
final class Cards {

    /** Between two rows, in millimetres. */
    static final double GAP = 3.5;

    private static final double BETWEEN = 6;

    private Cards() {}

    /** The width of one of {@code columns} cards across a page, in millimetres. */
    static double width(Flow flow, int columns) {
        return (flow.width() - (columns - 1) * BETWEEN) / columns;
    }

    /** Adds the cards, {@code columns} in a row; a row is never divided. */
    static void flow(Flow flow, List<Picture> cards, int columns) {
        flow(flow, cards, columns, GAP);
    }

    /** The same with {@code gap} millimetres between the rows. */
    static void flow(Flow flow, List<Picture> cards, int columns, double gap) {
        double width = width(flow, columns);
        for (int first = 0; first < cards.size(); first += columns) {
            List<Picture> row = cards.subList(first, Math.min(cards.size(), first + columns));
            Sketch sketch = new Sketch();
            double height = 0;
            for (int i = 0; i < row.size(); i++) {
                sketch.place(row.get(i), new Point(i * (width + BETWEEN), 0));
                height = Math.max(height, row.get(i).height());
            }
            flow.gap(gap).add(sketch.finished("Row of cards", flow.width(), height));
        }
    }
}
