package hearthcloth.draw.tied;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.making.Face;
import hearthcloth.draw.fabric.FabricWeight;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.wrap.fold.Laying;
import hearthcloth.wrap.settle.Stiffness;
import java.util.List;

/** How stiff a cloth is by its fabrics' words and its felled seams, whose four layers bend less readily. */
record ClothStiffness(List<Pattern.Field> fields) implements Stiffness {

    /** A fell beside the same fabric in one layer; chosen for the drawing. */
    private static final double FELL = 1.5;

    ClothStiffness {
        fields = List.copyOf(fields);
    }

    static ClothStiffness of(Cloth cloth, Laying laying) {
        Pattern pattern = Pattern.of(cloth, laying);
        boolean isFront = cloth.making().fell() == Face.FRONT;
        return new ClothStiffness(pattern.fields(isFront ? Face.FRONT : Face.BACK));
    }

    @Override
    public double at(Point place) {
        double stiffness = 1;
        for (Pattern.Field field : fields) {
            if (isIn(field, place)) {
                stiffness = FabricWeight.named(field.fabric()).stiffness() * (field.fell() ? FELL : 1);
            }
        }
        return stiffness;
    }

    private static boolean isIn(Pattern.Field field, Point place) {
        Pattern.Box box = field.box();
        return place.x() >= box.u0()
                && place.x() <= box.u1()
                && place.y() >= box.v0()
                && place.y() <= box.v1()
                && Polygons.inside(field.at().corners(), place.x(), place.y());
    }
}
