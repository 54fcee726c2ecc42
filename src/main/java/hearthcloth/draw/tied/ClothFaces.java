package hearthcloth.draw.tied;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.face.Shown;
import hearthcloth.cloth.making.Face;
import hearthcloth.colour.Colour;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import java.util.List;

/** Both faces of a flat cloth without words, to lay on a draped one: fabrics, fells and every row of stitches. */
record ClothFaces(Cloth cloth, TiedLook look) {

    private static final double STITCH = 0.7;
    private static final List<Double> DASHES = List.of(3.0, 2.2);

    /** A face as SVG, its points where they are seen through the cloth from the front. */
    String svg(Face face) {
        Length width = cloth.finished().width();
        Shown shown = Shown.of(cloth, face);
        Sketch sketch = new Sketch();
        for (Shown.Field field : shown.fields()) {
            Colour ground = look.fabric(field.patch().fabric());
            Rect at = face == Face.FRONT ? field.at() : field.at().turnedOver(width);
            sketch.add(new Mark.Area(corners(at), field.fell() ? ground.shade() : ground));
        }
        for (Shown.Row row : shown.rows()) {
            List<Point> ends = corners(face == Face.FRONT ? row.at() : row.at().turnedOver(width));
            sketch.line(ends.get(0), ends.get(2), new Stroke(STITCH, look.thread(), DASHES));
        }
        Picture picture = sketch.finished(
                "A face of the cloth", mm(width), mm(cloth.finished().height()));
        return SvgWriter.writeBare(picture);
    }

    private static List<Point> corners(Rect rect) {
        double left = mm(rect.x());
        double top = mm(rect.y());
        double right = mm(rect.right());
        double bottom = mm(rect.bottom());
        return List.of(new Point(left, top), new Point(right, top), new Point(right, bottom), new Point(left, bottom));
    }

    private static double mm(Length length) {
        return length.in(Unit.MILLIMETRE);
    }
}
