package hearthcloth.draw.tied;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.making.Face;
import hearthcloth.colour.Colour;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.Fold;
import java.util.List;

/** The open cloth with every fold of the tied gift drawn on it, as it lies in front of the maker, inside up. */
final class Net {

    private static final Stroke FOLD = Stroke.solid(0.18, Colour.of(0x20242b));

    private Net() {}

    static Picture of(Cloth cloth, Fold fold, TiedLook look, double width, String title) {
        Face inside = fold.fit().placing().out().other();
        ConvexPolygon whole = fold.laying().whole();
        Pattern.Box box = Pattern.Box.of(whole.corners());
        double scale = (box.u1() - box.u0()) / (width - 1);
        Sketch sketch = new Sketch();
        for (Pattern.Field field : Pattern.of(cloth, fold.laying()).fields(inside)) {
            Colour ground = look.look(field.patch()).ground();
            sketch.add(new Mark.Area(placed(field.at(), scale), field.fell() ? ground.shade() : ground));
        }
        for (Facet facet : fold.facets()) {
            sketch.outline(placed(facet.cloth(), scale), FOLD);
        }
        return sketch.trimmed(title, 0.5);
    }

    private static List<Point> placed(ConvexPolygon outline, double scale) {
        return outline.corners().stream()
                .map(point -> new Point(point.x() / scale, -point.y() / scale))
                .toList();
    }
}
