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
            flow.gap(gap).add(sketch.part(flow.width(), height));
        }
    }

    /** Adds cards in two columns, down the first and then down the second; on the last page both are about as long. */
    static void inColumns(Flow flow, List<Picture> cards) {
        int from = 0;
        while (from < cards.size()) {
            if (cards.get(from).height() + GAP > flow.left()) {
                flow.turn();
            }
            double room = flow.left() - GAP;
            int middle = filled(cards, from, room);
            int end = filled(cards, middle, room);
            middle = end == cards.size() ? evened(cards, from, middle) : middle;
            flow.gap(GAP).add(columns(flow, cards.subList(from, middle), cards.subList(middle, end)));
            from = end;
        }
    }

    /** The first card that has no room in a column; at least one is put into it where any is left. */
    private static int filled(List<Picture> cards, int from, double room) {
        int end = Math.min(from + 1, cards.size());
        while (end < cards.size() && height(cards.subList(from, end + 1)) <= room) {
            end++;
        }
        return end;
    }

    /** Where to begin the second column, so that the longer of both is as short as can be. */
    private static int evened(List<Picture> cards, int from, int last) {
        int best = last;
        for (int middle = last; middle > from; middle--) {
            if (longer(cards, from, middle) <= longer(cards, from, best)) {
                best = middle;
            }
        }
        return best;
    }

    private static double longer(List<Picture> cards, int from, int middle) {
        return Math.max(height(cards.subList(from, middle)), height(cards.subList(middle, cards.size())));
    }

    private static double height(List<Picture> column) {
        return column.stream().mapToDouble(Picture::height).sum() + GAP * Math.max(0, column.size() - 1);
    }

    private static Picture columns(Flow flow, List<Picture> first, List<Picture> second) {
        Sketch sketch = new Sketch();
        double x = 0;
        for (List<Picture> column : List.of(first, second)) {
            double y = 0;
            for (Picture card : column) {
                sketch.place(card, new Point(x, y));
                y += card.height() + GAP;
            }
            x += width(flow, 2) + BETWEEN;
        }
        return sketch.finished("Cards", flow.width(), Math.max(height(first), height(second)));
    }
}
