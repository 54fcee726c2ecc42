package hearthcloth.draw.picture;

import hearthcloth.colour.Colour;
import hearthcloth.draw.letters.SafeText;
import hearthcloth.draw.letters.Typeface;
import hearthcloth.geometry.Point;
import java.util.List;

/**
 * One thing drawn. Everything but a tint is opaque, and words lie on no tint, so that the colour under a word is always
 * known. Immutable.
 */
public sealed interface Mark {

    Mark movedBy(double dx, double dy);

    /** The room it takes; lines are counted without their width. */
    Bounds bounds();

    /** A filled shape with straight sides. */
    record Area(List<Point> outline, Colour colour) implements Mark {
        public Area {
            outline = List.copyOf(outline);
        }

        @Override
        public Area movedBy(double dx, double dy) {
            return new Area(moved(outline, dx, dy), colour);
        }

        @Override
        public Bounds bounds() {
            return around(outline);
        }
    }

    /** Paper cleared of what lies there, for words that belong to the drawing and not to the cloth. */
    record Bare(List<Point> outline) implements Mark {
        public Bare {
            outline = List.copyOf(outline);
        }

        @Override
        public Bare movedBy(double dx, double dy) {
            return new Bare(moved(outline, dx, dy));
        }

        @Override
        public Bounds bounds() {
            return around(outline);
        }
    }

    /**
     * A shape that lets shine through what lies under it, such as the threads of a weave or a shade.
     *
     * @param share how much of it covers, from 0 to 1
     */
    record Tint(List<Point> outline, Colour colour, double share) implements Mark {
        public Tint {
            outline = List.copyOf(outline);
        }

        @Override
        public Tint movedBy(double dx, double dy) {
            return new Tint(moved(outline, dx, dy), colour, share);
        }

        @Override
        public Bounds bounds() {
            return around(outline);
        }
    }

    /**
     * A shape filled with a repeated tile; it is drawn over a plain area of the tile's ground, so that a reader that
     * knows no patterns shows that.
     *
     * @param tile one repeat
     * @param laid where the plane of the tile lies in the picture; a repeat begins at its origin
     */
    record Figured(List<Point> outline, Picture tile, Affine laid) implements Mark {
        public Figured {
            outline = List.copyOf(outline);
        }

        @Override
        public Mark movedBy(double dx, double dy) {
            return new Figured(moved(outline, dx, dy), tile, laid.movedBy(dx, dy));
        }

        @Override
        public Bounds bounds() {
            return around(outline);
        }
    }

    /**
     * A picture of dots, parts of which may let shine through.
     *
     * @param png the bytes of a PNG file in base 64
     */
    record Dotted(Bounds at, String png) implements Mark {
        @Override
        public Dotted movedBy(double dx, double dy) {
            return new Dotted(at.movedBy(dx, dy), png);
        }

        @Override
        public Bounds bounds() {
            return at;
        }
    }

    /** A line through points; closed where the last is the first. */
    record Line(List<Point> points, Stroke stroke) implements Mark {
        public Line {
            points = List.copyOf(points);
        }

        @Override
        public Line movedBy(double dx, double dy) {
            return new Line(moved(points, dx, dy), stroke);
        }

        @Override
        public Bounds bounds() {
            return around(points);
        }
    }

    /** A filled circle. */
    record Disc(Point middle, double radius, Colour colour) implements Mark {
        @Override
        public Disc movedBy(double dx, double dy) {
            return new Disc(middle.plus(dx, dy), radius, colour);
        }

        @Override
        public Bounds bounds() {
            return new Bounds(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius);
        }
    }

    /** One line of words; {@code at} lies on the baseline. */
    record Words(String text, Point at, Type type) implements Mark {
        public Words {
            text = SafeText.onOneLine(text);
        }

        @Override
        public Words movedBy(double dx, double dy) {
            return new Words(text, at.plus(dx, dy), type);
        }

        @Override
        public Bounds bounds() {
            double width = type.width(text);
            double before = width * type.anchor().share();
            double above = Typeface.ABOVE * type.size();
            double below = Typeface.BELOW * type.size();
            return type.way() == Type.Way.ALONG
                    ? new Bounds(at.x() - before, at.y() - above, width, above + below)
                    : new Bounds(at.x() - above, at.y() + before - width, above + below, width);
        }
    }

    private static Bounds around(List<Point> points) {
        double left = points.stream().mapToDouble(Point::x).min().orElse(0);
        double top = points.stream().mapToDouble(Point::y).min().orElse(0);
        double right = points.stream().mapToDouble(Point::x).max().orElse(0);
        double bottom = points.stream().mapToDouble(Point::y).max().orElse(0);
        return new Bounds(left, top, right - left, bottom - top);
    }

    private static List<Point> moved(List<Point> points, double dx, double dy) {
        return points.stream().map(point -> point.plus(dx, dy)).toList();
    }
}
