package hearthcloth.draw.picture;

import hearthcloth.geometry.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Writes a picture for the screen in few bytes: neighbours of one paint become one path, on a grid of a tenth of a
 * millimetre of the picture. What it shows is what {@link SvgWriter} shows, without words, without a sheet under it, and
 * to the nearest tenth. The same picture always gives the same text.
 */
public final class LeanSvg {

    /** Units of the drawing for a millimetre of the picture: shown at four dots to that, half a dot at most is lost. */
    private static final int UNITS = 10;

    /** A facet of fewer square units is under a quarter of a square dot there, and is not seen. */
    private static final double LEAST = 2;

    private final StringBuilder svg = new StringBuilder();
    private final StringBuilder path = new StringBuilder();
    private final Map<Mark.Figured, String> repeats = new HashMap<>();
    private final Map<Picture, String> tiles = new HashMap<>();
    /** What the names of its patterns begin with: pictures of other titles may stand on the same page. */
    private final String name;

    private String paint = "";

    private LeanSvg(String title) {
        this.name = "lean" + Integer.toHexString(title.hashCode()) + "-";
    }

    /** The picture, its size in millimetres, for a page or as a file of its own. */
    public static String write(Picture picture) {
        LeanSvg lean = new LeanSvg(picture.title());
        picture.marks().forEach(lean::mark);
        lean.flush();
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + SvgWriter.number(picture.width())
                + "mm\" height=\""
                + SvgWriter.number(picture.height()) + "mm\" viewBox=\"0 0 " + units(picture.width()) + " "
                + units(picture.height()) + "\" " + SvgWriter.role(picture) + ">" + SvgWriter.title(picture)
                + lean.svg + "</svg>\n";
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Area area) {
            filled(area.outline(), "fill=\"" + area.colour().hex() + "\"");
        } else if (mark instanceof Mark.Figured figured) {
            filled(figured.outline(), "fill=\"url(#" + repeat(figured) + ")\"");
        } else if (mark instanceof Mark.Tint tint) {
            // Tints add up where they overlap, so each stays by itself.
            flush();
            filled(
                    tint.outline(),
                    "fill=\"" + tint.colour().hex() + "\" fill-opacity=\"" + SvgWriter.number(tint.share()) + "\"");
            flush();
        } else if (mark instanceof Mark.Bare bare) {
            filled(bare.outline(), "fill=\"" + Palette.SHEET.hex() + "\"");
        } else if (mark instanceof Mark.Dotted dotted) {
            flush();
            svg.append(SvgWriter.dotted(dotted, UNITS));
        } else if (mark instanceof Mark.Line line) {
            paint(stroke(line.stroke()));
            points(line.points(), false);
        } else if (mark instanceof Mark.Disc disc) {
            flush();
            svg.append("<circle cx=\"")
                    .append(units(disc.middle().x()))
                    .append("\" cy=\"")
                    .append(units(disc.middle().y()))
                    .append("\" r=\"")
                    .append(units(disc.radius()))
                    .append("\" fill=\"")
                    .append(disc.colour().hex())
                    .append("\"/>");
        }
    }

    private static String stroke(Stroke stroke) {
        StringBuilder paint = new StringBuilder("fill=\"none\" stroke=\""
                + stroke.colour().hex() + "\" stroke-width=\"" + SvgWriter.number(stroke.width() * UNITS) + "\"");
        if (!stroke.dashes().isEmpty()) {
            paint.append(" stroke-dasharray=\"");
            stroke.dashes()
                    .forEach(
                            dash -> paint.append(SvgWriter.number(dash * UNITS)).append(' '));
            paint.setCharAt(paint.length() - 1, '"');
        }
        return paint.toString();
    }

    /** Each way of laying a tile is written once, and each tile once. */
    private String repeat(Mark.Figured figured) {
        Mark.Figured repeat = new Mark.Figured(List.of(), figured.tile(), figured.laid());
        String known = repeats.get(repeat);
        if (known == null) {
            flush();
            known = name + repeats.size();
            repeats.put(repeat, known);
            svg.append("<defs>")
                    .append(laid(known, figured, tiles.putIfAbsent(figured.tile(), known)))
                    .append("</defs>");
        }
        return known;
    }

    /** @param first the pattern that holds the tile already; null where this is the first of it */
    private static String laid(String id, Mark.Figured figured, @Nullable String first) {
        String transform = SvgWriter.transform(figured.laid(), "scale(" + UNITS + ") ");
        return first == null
                ? SvgWriter.pattern(id, figured.tile(), transform)
                : "<pattern id=\"" + id + "\" href=\"#" + first + "\"" + transform + "/>";
    }

    private void paint(String next) {
        if (!next.equals(paint)) {
            flush();
            paint = next;
        }
    }

    private void flush() {
        if (path.length() > 0) {
            svg.append("<path ").append(paint).append(" d=\"").append(path).append("\"/>");
            path.setLength(0);
        }
        paint = "";
    }

    private void filled(List<Point> outline, String with) {
        double twice = twice(outline);
        if (Math.abs(twice) / 2 * UNITS * UNITS < LEAST) {
            return;
        }
        paint(with);
        // All turn the same way, so that one over another in a path stays filled.
        points(twice < 0 ? reversed(outline) : outline, true);
    }

    private static List<Point> reversed(List<Point> outline) {
        List<Point> other = new ArrayList<>(outline);
        Collections.reverse(other);
        return other;
    }

    private static double twice(List<Point> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            Point one = outline.get(i);
            Point next = outline.get((i + 1) % outline.size());
            twice += one.x() * next.y() - next.x() * one.y();
        }
        return twice;
    }

    private void points(List<Point> outline, boolean isClosed) {
        long x = units(outline.get(0).x());
        long y = units(outline.get(0).y());
        path.append('M').append(x).append(y < 0 ? "" : " ").append(y).append('l');
        for (Point point : outline.subList(1, outline.size())) {
            long nextX = units(point.x());
            long nextY = units(point.y());
            if (nextX == x && nextY == y) {
                continue;
            }
            path.append(nextX - x)
                    .append(nextY < y ? "" : " ")
                    .append(nextY - y)
                    .append(' ');
            x = nextX;
            y = nextY;
        }
        path.setLength(path.length() - 1);
        path.append(isClosed ? "z" : "");
    }

    private static long units(double mm) {
        return Math.round(mm * UNITS);
    }
}
