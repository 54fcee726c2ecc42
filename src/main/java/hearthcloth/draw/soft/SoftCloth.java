package hearthcloth.draw.soft;

import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Dots;
import hearthcloth.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A tied cloth as it lies round its gift, to be drawn from any side. The same cloth gives the same dots on any machine.
 */
public final class SoftCloth {

    /** Dots of the canvas along one of the picture, so that edges are smooth. */
    private static final int FINE = 3;

    /** Of a picture so wide, each dot is small enough that fewer do; and the canvas fits into little memory. */
    private static final int WIDE = 700;

    private final Shape cloth;
    private final Shape knots;
    private final Skin outer;
    private final Skin inner;
    private final Cast cast;

    /**
     * A cloth.
     *
     * @param cloth its surface, the normals inwards
     * @param knots its gathered ends
     * @param outer the face that shows
     */
    public SoftCloth(Shape cloth, Shape knots, Skin outer, Skin inner) {
        this.cloth = cloth;
        this.knots = knots;
        this.outer = outer;
        this.inner = inner;
        this.cast = new Cast(cloth);
    }

    /**
     * The room it takes, in millimetres of the gift, right and down, with its shadow as far as that lies near: of something
     * tall it falls far, and all would be small beside it.
     */
    public Bounds bounds(Sight sight) {
        List<Point> all = new ArrayList<>();
        for (Shape shape : List.of(cloth, knots)) {
            for (int k = 0; k < shape.points(); k++) {
                all.add(new Point(sight.right().dot(shape.place(k)), -sight.up().dot(shape.place(k))));
            }
        }
        Bounds own = round(all);
        all.addAll(cast.seen(sight));
        return round(all).shared(own.grown(NEAR * Math.max(own.width(), own.height())));
    }

    /** How far the shadow is drawn, as a share of what casts it, and over what share of that it ends. */
    private static final double NEAR = 0.22;

    private static final double FADES = 0.2;

    private static Bounds round(List<Point> all) {
        double left = all.stream().mapToDouble(Point::x).min().orElse(0);
        double right = all.stream().mapToDouble(Point::x).max().orElse(1);
        double top = all.stream().mapToDouble(Point::y).min().orElse(0);
        double bottom = all.stream().mapToDouble(Point::y).max().orElse(1);
        return new Bounds(left, top, right - left, bottom - top);
    }

    /** Less towards the rim of the picture, so that a shadow that falls farther ends softly. */
    private static double faded(Bounds room, double x, double y) {
        double off = Math.min(Math.min(x - room.x(), room.right() - x), Math.min(y - room.y(), room.bottom() - y));
        return Math.max(0, Math.min(1, off / (FADES * NEAR * Math.min(room.width(), room.height()))));
    }

    /**
     * The cloth from a side.
     *
     * @param room in millimetres of the gift
     * @param scale dots a millimetre
     */
    public Dots drawn(Sight sight, Bounds room, double scale) {
        int width = (int) Math.max(1, Math.ceil(room.width() * scale));
        int height = (int) Math.max(1, Math.ceil(room.height() * scale));
        int fine = Math.max(width, height) > WIDE ? FINE - 1 : FINE;
        Canvas canvas = new Canvas(fine * width, fine * height, sight, room.x(), -room.y(), fine * scale);
        canvas.draw(cloth, inner, outer);
        canvas.draw(knots, outer, outer);
        int[] argb = new int[width * height];
        double[] here = new double[4];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                canvas.mean(fine * x, fine * y, fine, here);
                double right = room.x() + (x + 0.5) / scale;
                double down = room.y() + (y + 0.5) / scale;
                double dark = cast.at(sight, right, -down) * faded(room, right, down);
                argb[y * width + x] = argb(here, dark * (1 - here[3]));
            }
        }
        return new Dots(width, height, argb);
    }

    /** Cloth over the shadow, which is black and lets shine through. */
    private static int argb(double[] cloth, double dark) {
        double covers = cloth[3] + dark;
        if (covers <= 0) {
            return 0;
        }
        return part(255 * covers) << 24
                | part(cloth[0] / covers) << 16
                | part(cloth[1] / covers) << 8
                | part(cloth[2] / covers);
    }

    private static int part(double number) {
        return (int) Math.max(0, Math.min(255, Math.round(number)));
    }
}
