package hearthcloth.draw;

import hearthcloth.cloth.Rect;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.measure.Size;

/**
 * How a piece lies on the mat: its long side along the page. A piece longer than it is wide is turned a quarter to the
 * left, so that its top edge comes to lie left; it is never mirrored, since it may have a right side.
 */
record MatView(Size piece, boolean turned, Scale scale) {

    static MatView of(Size piece, double width, double height) {
        boolean turned = piece.height().isMoreThan(piece.width());
        return new MatView(piece, turned, Scale.fitting(turned ? piece.turned() : piece, width, height));
    }

    MatView smaller() {
        return new MatView(piece, turned, scale.smaller());
    }

    /** The whole piece on paper, its top left corner at the origin. */
    Bounds frame() {
        Size seen = turned ? piece.turned() : piece;
        return new Bounds(0, 0, scale.mm(seen.width()), scale.mm(seen.height()));
    }

    Bounds bounds(Rect rect) {
        if (!turned) {
            return scale.bounds(rect, 0, 0);
        }
        return new Bounds(
                scale.mm(rect.y()),
                scale.mm(piece.width().minus(rect.right())),
                scale.mm(rect.height()),
                scale.mm(rect.width()));
    }

    /** A cut's line on paper, without thickness. */
    Bounds line(CutLine line) {
        Bounds first = bounds(line.cut().first().at());
        Bounds second = bounds(line.cut().second().at());
        if (isVertical(line)) {
            return new Bounds(Math.max(first.x(), second.x()), first.y(), 0, first.height());
        }
        return new Bounds(first.x(), Math.max(first.y(), second.y()), first.width(), 0);
    }

    /** True where the cut runs down the page. */
    boolean isVertical(CutLine line) {
        return line.cut().upright() != turned;
    }

    /** The edge the cut is measured from, as it lies. */
    String edge(CutLine line) {
        if (isVertical(line)) {
            return line.fromFirst() ? "left" : "right";
        }
        return line.fromFirst() == turned ? "bottom" : "top";
    }
}
