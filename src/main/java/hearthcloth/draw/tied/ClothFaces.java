package hearthcloth.draw.tied;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.face.Shown;
import hearthcloth.cloth.making.Face;
import hearthcloth.colour.Colour;
import hearthcloth.draw.fabric.FabricLook;
import hearthcloth.draw.picture.Affine;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import java.util.List;

/**
 * Both faces of a flat cloth without words, to lay on a tied one: fabrics with their prints to scale and their threads,
 * fells, and every row of stitches.
 */
record ClothFaces(Cloth cloth, TiedLook look) {

    /** The longer side of the picture, in millimetres of it, so that threads are as fine on every cloth. */
    private static final double SIDE = 256;

    /** A row of stitches and its dashes, in millimetres of cloth. */
    private static final double STITCH = 0.7;

    private static final List<Double> DASHES = List.of(3.0, 2.2);

    private static final Colour SHADE = Colour.of(0x000000);
    private static final Colour GLEAM = Colour.of(0xffffff);
    private static final double FELL = 0.16;
    private static final double DARK = 25;

    /** A face as SVG, its points where they are seen through the cloth from the front. */
    String svg(Face face) {
        return SvgWriter.writeBare(picture(face));
    }

    Picture picture(Face face) {
        Size size = cloth.finished();
        double scale = SIDE / Math.max(mm(size.width()), mm(size.height()));
        double whole = mm(size.width()) * scale;
        Affine laid = face == Face.FRONT ? Affine.scaled(scale, 0, 0) : new Affine(-scale, 0, 0, scale, whole, 0);
        Shown shown = Shown.of(cloth, face);
        Sketch sketch = new Sketch();
        for (Shown.Field field : shown.fields()) {
            field(sketch, field, corners(field.at(), face, scale), laid);
        }
        for (Shown.Row row : shown.rows()) {
            List<Point> ends = corners(row.at(), face, scale);
            List<Double> dashes = DASHES.stream().map(dash -> dash * scale).toList();
            sketch.line(ends.get(0), ends.get(2), new Stroke(STITCH * scale, look.thread(), dashes));
        }
        return sketch.part(whole, mm(size.height()) * scale);
    }

    private void field(Sketch sketch, Shown.Field field, List<Point> outline, Affine laid) {
        FabricLook fabric = look.look(field.patch().fabric());
        if (field.patch().showing() == Showing.WRONG) {
            fabric.fillWrong(sketch, outline, laid);
        } else {
            fabric.fill(sketch, outline, laid, 0);
        }
        if (field.fell()) {
            boolean isDark = fabric.ground().lab().lightness() < DARK;
            sketch.add(new Mark.Tint(outline, isDark ? GLEAM : SHADE, FELL));
        }
    }

    private List<Point> corners(Rect rect, Face face, double scale) {
        Rect at = face == Face.FRONT ? rect : rect.turnedOver(cloth.finished().width());
        double left = mm(at.x()) * scale;
        double top = mm(at.y()) * scale;
        double right = mm(at.right()) * scale;
        double bottom = mm(at.bottom()) * scale;
        return List.of(new Point(left, top), new Point(right, top), new Point(right, bottom), new Point(left, bottom));
    }

    private static double mm(Length length) {
        return length.in(Unit.MILLIMETRE);
    }
}
