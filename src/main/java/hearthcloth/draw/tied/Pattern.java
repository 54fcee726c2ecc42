package hearthcloth.draw.tied;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.face.Shown;
import hearthcloth.cloth.making.Face;
import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.fold.Laying;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What each face of a cloth shows, as it lies under the gift: patches and fells as outlines, stitches as lines. */
final class Pattern {

    /** A part of one face; later ones lie over earlier ones. */
    record Field(Patch patch, boolean fell, ConvexPolygon at, Box box) {

        /** The name of its patch. */
        String name() {
            return patch.place().id();
        }

        String fabric() {
            return patch.fabric();
        }
    }

    /** A straight row of stitches. */
    record Row(Point from, Point to) {}

    /** The upright box round an outline, to skip quickly what is far away. */
    record Box(double u0, double v0, double u1, double v1) {

        static Box of(List<Point> points) {
            double u0 = Double.POSITIVE_INFINITY;
            double v0 = Double.POSITIVE_INFINITY;
            double u1 = Double.NEGATIVE_INFINITY;
            double v1 = Double.NEGATIVE_INFINITY;
            for (Point point : points) {
                u0 = Math.min(u0, point.x());
                v0 = Math.min(v0, point.y());
                u1 = Math.max(u1, point.x());
                v1 = Math.max(v1, point.y());
            }
            return new Box(u0, v0, u1, v1);
        }

        boolean meets(Box other) {
            return u0 < other.u1 && other.u0 < u1 && v0 < other.v1 && other.v0 < v1;
        }
    }

    private final Laying laying;
    private final double widthMm;
    private final Map<Face, List<Field>> fields = new EnumMap<>(Face.class);
    private final Map<Face, List<Row>> rows = new EnumMap<>(Face.class);

    private Pattern(Laying laying, double widthMm) {
        this.laying = laying;
        this.widthMm = widthMm;
    }

    /** Where a place of a face lies, in millimetres from its top left corner as one looks at it. */
    Point place(Face face, double x, double y) {
        return laying.at(face == Face.FRONT ? x : widthMm - x, y);
    }

    static Pattern of(Cloth cloth, Laying laying) {
        Pattern pattern = new Pattern(laying, cloth.finished().width().in(Unit.MILLIMETRE));
        for (Face face : Face.values()) {
            Shown shown = Shown.of(cloth, face);
            Length width = cloth.finished().width();
            List<Field> fields = new ArrayList<>();
            for (Shown.Field field : shown.fields()) {
                ConvexPolygon at = laying.patch(onFront(field.at(), face, width));
                fields.add(new Field(field.patch(), field.fell(), at, Box.of(at.corners())));
            }
            List<Row> rows = new ArrayList<>();
            for (Shown.Row row : shown.rows()) {
                List<Point> ends = laying.patch(onFront(row.at(), face, width)).corners();
                rows.add(new Row(ends.get(0), ends.get(2)));
            }
            pattern.fields.put(face, List.copyOf(fields));
            pattern.rows.put(face, List.copyOf(rows));
        }
        return pattern;
    }

    private static Rect onFront(Rect rect, Face face, Length width) {
        return face == Face.FRONT ? rect : rect.turnedOver(width);
    }

    List<Field> fields(Face face) {
        return fields.getOrDefault(face, List.of());
    }

    List<Row> rows(Face face) {
        return rows.getOrDefault(face, List.of());
    }

    /** What shows at a point of a face: the last field that holds it, or the nearest one for a point on the rim. */
    Field at(Face face, Point point) {
        List<Field> all = fields(face);
        Field best = all.get(0);
        double least = Double.POSITIVE_INFINITY;
        for (Field field : all) {
            Box box = field.box();
            double du = Math.max(0, Math.max(box.u0() - point.x(), point.x() - box.u1()));
            double dv = Math.max(0, Math.max(box.v0() - point.y(), point.y() - box.v1()));
            double away = du > 0 || dv > 0 ? Math.hypot(du, dv) : outside(field.at(), point);
            if (away <= least) {
                least = away;
                best = field;
            }
        }
        return best;
    }

    /** How far a point lies outside an outline, in millimetres; 0 inside. */
    private static double outside(ConvexPolygon outline, Point point) {
        double most = 0;
        List<Point> corners = outline.corners();
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            double du = b.x() - a.x();
            double dv = b.y() - a.y();
            double right = (point.x() - a.x()) * dv - (point.y() - a.y()) * du;
            most = Math.max(most, right / Math.hypot(du, dv));
        }
        return most;
    }
}
