package hearthcloth.web.gift;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * A gift in ink on paper, in the proportions of its measures, seen from above a corner; where its measures are taken is
 * marked, and where on the drawing each is typed. Ink and paper only, so that nothing passes for cloth.
 */
public final class GiftDrawing {

    /** The drawing's own width and height, and how large the gift may be in it. */
    private static final double WIDTH = 450;

    private static final double HEIGHT = 300;
    private static final double ROOM_X = 290;
    private static final double ROOM_Y = 205;

    /** What an inch of length, width and height becomes, to the right and downwards. */
    private static final double[] LONG = {0.92, 0.31};

    private static final double[] WIDE = {0.5, -0.37};
    private static final double UP = 0.95;

    /** No measure is drawn less than this part of the longest, so that it can still be told. */
    private static final double LEAST = 0.06;

    /** Where a measure is typed, in steps of five hundredths of the drawing. */
    public record Place(int x, int y) {}

    private final GiftInk ink = new GiftInk();

    private GiftDrawing() {}

    /** The drawing with its marks, as SVG, and where each measure is typed. */
    record Sized(String svg, List<Place> places) {}

    /** In the proportions of these measures, in any one unit. */
    static Sized sized(GiftShape shape, List<Double> measures) {
        GiftDrawing drawing = new GiftDrawing();
        drawing.drawn(shape, kept(measures), ROOM_X, ROOM_Y, WIDTH / 2 + 8, HEIGHT / 2 + 4, true);
        return new Sized(drawing.ink.closed(WIDTH, HEIGHT), drawing.ink.places(WIDTH, HEIGHT));
    }

    /** Small, the kind of thing that a gift as it is written is; empty where none is. */
    public static String of(String gift) {
        String written = gift.toLowerCase(Locale.ROOT);
        return written.isEmpty()
                ? ""
                : Stream.of(GiftShape.values())
                        .sorted(Comparator.comparing(
                                (GiftShape shape) -> -shape.word().length()))
                        .filter(shape -> written.contains(shape.word().replace('-', ' ')))
                        .findFirst()
                        .map(GiftDrawing::tile)
                        .orElse("");
    }

    /** Small, to choose it by. */
    public static String tile(GiftShape shape) {
        GiftDrawing drawing = new GiftDrawing();
        drawing.drawn(shape, kept(shape.usual()), 58, 48, 36, 28, false);
        return drawing.ink.closed(72, 56);
    }

    private static List<Double> kept(List<Double> measures) {
        double most = measures.stream().mapToDouble(Double::doubleValue).max().orElse(1);
        return measures.stream().map(one -> Math.max(one, most * LEAST)).toList();
    }

    private void drawn(GiftShape shape, List<Double> m, double wide, double high, double x, double y, boolean marked) {
        switch (shape) {
            case BOX -> new Boxed(m.get(0), m.get(1), m.get(2), 1).draw(this, wide, high, x, y, marked);
            case BOOKS -> new Boxed(m.get(0), m.get(1), m.get(2), 2).draw(this, wide, high, x, y, marked);
            case BOTTLE -> bottles(m.get(0), m.get(1), 1, wide, high, x, y, marked);
            case TWO_BOTTLES -> bottles(m.get(0), m.get(1), 2, wide, high, x, y, marked);
            case ROUND -> ball(Math.min(wide, high) / 2, x, y, marked);
            case ROLL -> roll(m.get(0), m.get(1), wide, high, x, y, marked);
        }
    }

    /** One box, or two lying on each other. */
    private record Boxed(double length, double width, double height, int many) {

        void draw(GiftDrawing on, double wide, double high, double x, double y, boolean marked) {
            double tall = height * many;
            double across = length * LONG[0] + width * WIDE[0];
            double down = length * LONG[1] - width * WIDE[1] + tall * UP;
            double scale = Math.min(wide / across, high / down);
            double l = length * scale;
            double w = width * scale;
            double h = height * scale * UP;
            double left = x - across * scale / 2;
            double foot = y + down * scale / 2 - l * LONG[1];
            for (int i = 0; i < many; i++) {
                one(on, left, foot - i * h, l, w, h);
            }
            if (marked) {
                marks(on, left, foot, l, w, h);
            }
        }

        private void one(GiftDrawing on, double x, double y, double l, double w, double h) {
            double fx = x + l * LONG[0];
            double fy = y + l * LONG[1];
            double bx = w * WIDE[0];
            double by = w * WIDE[1];
            on.ink.area("front", x, y, fx, fy, fx, fy - h, x, y - h);
            on.ink.area("side", fx, fy, fx + bx, fy + by, fx + bx, fy + by - h, fx, fy - h);
            on.ink.area("top", x, y - h, fx, fy - h, fx + bx, fy + by - h, x + bx, y + by - h);
        }

        private void marks(GiftDrawing on, double x, double y, double l, double w, double h) {
            double fx = x + l * LONG[0];
            double fy = y + l * LONG[1];
            on.ink.measure(x - 6, y + 18, fx - 6, fy + 18);
            on.ink.measure(fx + 8, fy + 14, fx + 8 + w * WIDE[0], fy + 14 + w * WIDE[1]);
            on.ink.measure(x - 18, y, x - 18, y - h);
        }
    }

    private void bottles(
            double wide, double tall, int many, double roomX, double roomY, double x, double y, boolean marked) {
        double apart = wide * 1.15;
        double scale = Math.min(roomX / (wide + apart * (many - 1)), roomY / (tall + wide * 0.18));
        double r = wide * scale / 2;
        double h = tall * scale;
        double first = x - apart * scale * (many - 1) / 2;
        double foot = y + h / 2;
        for (int i = 0; i < many; i++) {
            bottle(first + i * apart * scale, foot + i * r * 0.12, r, h);
        }
        if (marked) {
            double last = first + apart * scale * (many - 1);
            ink.measure(first - r, foot + r * 0.36 + 14, first + r, foot + r * 0.36 + 14);
            ink.measure(last + r + 22, foot, last + r + 22, foot - h);
        }
    }

    /** With the shoulder and the mouth that the reckoning takes for a bottle. */
    private void bottle(double x, double foot, double r, double h) {
        double neck = r * 0.4;
        double top = foot - h;
        glass(x, foot, r, h);
        ink.line(
                "M%.1f %.1fA%.1f %.1f 0 0 0 %.1f %.1f",
                x - neck, top + h * 0.06, neck, neck * 0.36, x + neck, top + h * 0.06);
        ink.line("M%.1f %.1fA%.1f %.1f 0 0 0 %.1f %.1f", x - r, foot - h * 0.42, r, r * 0.18, x + r, foot - h * 0.42);
        ink.line("M%.1f %.1fA%.1f %.1f 0 0 0 %.1f %.1f", x - r, foot - h * 0.14, r, r * 0.18, x + r, foot - h * 0.14);
    }

    /** The outline of a bottle. */
    private void glass(double x, double foot, double r, double h) {
        double neck = r * 0.4;
        double shoulder = foot - h * 19 / 30;
        double top = foot - h;
        ink.append(String.format(
                Locale.ROOT,
                "<path class=\"front\" d=\"M%.1f %.1fV%.1fC%.1f %.1f %.1f %.1f %.1f %.1fV%.1fA%.1f %.1f 0 0 1 %.1f"
                        + " %.1fV%.1fC%.1f %.1f %.1f %.1f %.1f %.1fV%.1fA%.1f %.1f 0 0 1 %.1f %.1fZ\"/>",
                x - r,
                foot,
                shoulder,
                x - r,
                shoulder - h * 0.12,
                x - neck,
                shoulder - h * 0.1,
                x - neck,
                shoulder - h * 0.2,
                top,
                neck,
                neck * 0.36,
                x + neck,
                top,
                shoulder - h * 0.2,
                x + neck,
                shoulder - h * 0.1,
                x + r,
                shoulder - h * 0.12,
                x + r,
                shoulder,
                foot,
                r,
                r * 0.18,
                x - r,
                foot));
    }

    private void ball(double r, double x, double y, boolean marked) {
        ink.append(String.format(Locale.ROOT, "<circle class=\"top\" cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\"/>", x, y, r));
        ink.append(String.format(
                Locale.ROOT,
                "<path class=\"side bare\" d=\"M%.1f %.1fA%.1f %.1f 0 0 1 %.1f %.1fA%.1f %.1f 0 0 0 %.1f %.1fZ\"/>",
                x + r * 0.62,
                y - r * 0.75,
                r * 0.97,
                r * 0.97,
                x - r * 0.75,
                y + r * 0.62,
                r * 1.25,
                r * 1.25,
                x + r * 0.62,
                y - r * 0.75));
        if (marked) {
            ink.measure(x - r, y + r + 16, x + r, y + r + 16);
        }
    }

    private void roll(double wide, double length, double roomX, double roomY, double x, double y, boolean marked) {
        double scale = Math.min(roomX / (length * LONG[0] + wide), roomY / (length * LONG[1] + wide));
        double r = wide * scale / 2;
        double dx = length * scale * LONG[0];
        double dy = length * scale * LONG[1];
        double left = x - dx / 2;
        double up = y - dy / 2;
        double nx = -dy / Math.hypot(dx, dy) * r;
        double ny = dx / Math.hypot(dx, dy) * r;
        ink.append(String.format(
                Locale.ROOT,
                "<path class=\"front\" d=\"M%.1f %.1fL%.1f %.1fA%.1f %.1f 18 0 0 %.1f %.1fL%.1f %.1fZ\"/>",
                left + nx,
                up + ny,
                left + dx + nx,
                up + dy + ny,
                r * 0.55,
                r,
                left + dx - nx,
                up + dy - ny,
                left - nx,
                up - ny));
        end(left, up, r);
        ink.line(
                "M%.1f %.1fq%.1f %.1f %.1f %.1fq%.1f %.1f %.1f %.1f",
                left, up, r * 0.3, -r * 0.4, r * 0.05, -r * 0.55, -r * 0.4, r * 0.1, -r * 0.25, r * 0.75);
        if (marked) {
            ink.measure(left - r * 0.6 - 16, up - r, left - r * 0.6 - 16, up + r);
            ink.measure(left + nx, up + ny + 18, left + dx + nx, up + dy + ny + 18);
        }
    }

    /** The end of a roll, as one looks at it. */
    private void end(double x, double y, double r) {
        ink.append(String.format(
                Locale.ROOT,
                "<ellipse class=\"top\" cx=\"%.1f\" cy=\"%.1f\" rx=\"%.1f\" ry=\"%.1f\" transform=\"rotate(18 %.1f"
                        + " %.1f)\"/>",
                x,
                y,
                r * 0.55,
                r,
                x,
                y));
    }
}
