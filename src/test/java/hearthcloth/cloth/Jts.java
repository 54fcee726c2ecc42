package hearthcloth.cloth;

import hearthcloth.cloth.face.Shown;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** Our rectangles put to JTS, an independent judge of areas and overlaps; millimetres. */
public final class Jts {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Jts() {}

    static Geometry of(Rect rect) {
        return FACTORY.toGeometry(new Envelope(mm(rect.x()), mm(rect.right()), mm(rect.y()), mm(rect.bottom())));
    }

    static Geometry union(List<Rect> rects) {
        return UnaryUnionOp.union(rects.stream().map(Jts::of).toList());
    }

    /** What is seen of a patch once everything that lies over it is taken away. */
    public static Geometry visible(Shown shown, String id) {
        Geometry seen = FACTORY.createPolygon();
        for (Shown.Field field : shown.fields()) {
            seen = field.patch().place().id().equals(id) ? seen.union(of(field.at())) : seen.difference(of(field.at()));
        }
        return seen;
    }

    static double mm(Length length) {
        return length.in(Unit.MILLIMETRE);
    }
}
