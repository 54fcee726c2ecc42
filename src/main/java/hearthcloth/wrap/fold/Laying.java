package hearthcloth.wrap.fold;

import hearthcloth.cloth.Rect;
import hearthcloth.cloth.making.Face;
import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.number.Elementary;
import hearthcloth.wrap.Placing;
import java.util.List;
import java.util.stream.Stream;

/**
 * How the cloth lies under the gift: converts places on the plan (front, origin top left, x right, y down) to places on
 * the table. The face that ends outside lies on the table, so with the front out the plan is seen mirrored from above.
 * A diamond is turned an eighth clockwise: the plan's top edge then faces away to the right.
 *
 * @param cloth its finished size
 * @param diamond true when its corners, and not its edges, point to the maker
 */
public record Laying(Size cloth, Placing placing, boolean diamond) {

    /** The place on the table of a place on the plan, in millimetres. */
    public Point at(double x, double y) {
        double right = x - mm(cloth.width()) / 2;
        double away = mm(cloth.height()) / 2 - y;
        double seen = placing.out() == Face.FRONT ? -right : right;
        double turn = placing.quarterTurns() * Math.PI / 2 - (diamond ? Math.PI / 4 : 0);
        double u = seen * Elementary.cos(turn) - away * Elementary.sin(turn);
        double v = seen * Elementary.sin(turn) + away * Elementary.cos(turn);
        return new Point(u - mm(placing.right()), v - mm(placing.away()));
    }

    /** The place on the plan, x and y in millimetres, that lies at this point. */
    public Point plan(Point point) {
        double u = point.x() + mm(placing.right());
        double v = point.y() + mm(placing.away());
        double turn = placing.quarterTurns() * Math.PI / 2 - (diamond ? Math.PI / 4 : 0);
        double seen = u * Elementary.cos(turn) + v * Elementary.sin(turn);
        double away = v * Elementary.cos(turn) - u * Elementary.sin(turn);
        double right = placing.out() == Face.FRONT ? -seen : seen;
        return new Point(right + mm(cloth.width()) / 2, mm(cloth.height()) / 2 - away);
    }

    /** The outline on the table of a rectangle of the plan. */
    public ConvexPolygon patch(Rect rect) {
        return patch(mm(rect.x()), mm(rect.y()), mm(rect.right()), mm(rect.bottom()));
    }

    /** The outline on the table of a rectangle of the plan, in millimetres. */
    public ConvexPolygon patch(double left, double top, double right, double bottom) {
        List<Point> corners = Stream.of(at(left, top), at(right, top), at(right, bottom), at(left, bottom))
                .toList();
        return ConvexPolygon.anticlockwise(corners);
    }

    /** The whole cloth. */
    public ConvexPolygon whole() {
        return patch(0, 0, mm(cloth.width()), mm(cloth.height()));
    }

    private static double mm(Length length) {
        return length.in(Unit.MILLIMETRE);
    }
}
