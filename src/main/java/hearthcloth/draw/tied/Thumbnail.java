package hearthcloth.draw.tied;

import hearthcloth.colour.Colour;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Picture;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Ruler;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.speech.Voice;
import java.util.List;

/**
 * A tied gift small, from a corner, as SVG of few bytes: neighbouring facets of one colour become one path on a grid of a
 * quarter of a pixel, stitches are left out, and the shadow is left to the page, so that it suits light and dark.
 */
public final class Thumbnail {

    /** Room in millimetres; and units of the drawing for one of them. */
    private static final double WIDTH = 64;

    private static final double HEIGHT = 46;
    private static final double UNITS = 8;

    /** A facet smaller than this many square units is not seen. */
    private static final double LEAST = 4;

    /** The titles of pictures, which a thumbnail leaves out. */
    private static final PrintingWords UNSAID = Voice.english(Ruler.MILLIMETRES).printing();

    private final StringBuilder svg = new StringBuilder();
    private final StringBuilder path = new StringBuilder();
    private String paint = "";

    private Thumbnail() {}

    /** The gift tied, from a corner. */
    public static String of(TiedGift gift) {
        List<Picture> stills = gift.stills(WIDTH, HEIGHT, UNSAID);
        return of(stills.get(stills.size() - 1));
    }

    /** The same as a file of its own, with its shadow. */
    public static String file(TiedGift gift) {
        return of(gift).replaceFirst("<svg ", "<svg xmlns=\"http://www.w3.org/2000/svg\" ")
                .replace("class=\"shade\"", "fill=\"#000000\" fill-opacity=\"0.15\"");
    }

    /** The open cloth with the gift on it, before it is tied. */
    public static String laid(TiedGift gift) {
        return of(gift.moment(hearthcloth.wrap.fold.TyingMoment.LAID, HEIGHT, HEIGHT, UNSAID));
    }

    private static String of(Picture picture) {
        Thumbnail thumbnail = new Thumbnail();
        for (int i = 0; i < picture.marks().size(); i++) {
            thumbnail.mark(picture.marks().get(i), i == 0);
        }
        thumbnail.flush();
        return "<svg viewBox=\"0 0 " + units(picture.width()) + " " + units(picture.height())
                + "\" aria-hidden=\"true\" focusable=\"false\">" + thumbnail.svg + "</svg>";
    }

    private void mark(Mark mark, boolean isFirst) {
        if (mark instanceof Mark.Tint tint && isFirst) {
            paint("class=\"shade\"");
            points(tint.outline(), true);
        } else if (mark instanceof Mark.Area area) {
            paint("fill=\"" + hex(area.colour()) + "\"");
            if (size(area.outline()) >= LEAST) {
                points(area.outline(), true);
            }
        } else if (mark instanceof Mark.Dotted dotted) {
            flush();
            paint = "";
            svg.append("<image x=\"")
                    .append(units(dotted.at().x()))
                    .append("\" y=\"")
                    .append(units(dotted.at().y()))
                    .append("\" width=\"")
                    .append(units(dotted.at().width()))
                    .append("\" height=\"")
                    .append(units(dotted.at().height()))
                    .append("\" href=\"data:image/png;base64,")
                    .append(dotted.png())
                    .append("\"/>");
        } else if (mark instanceof Mark.Line line && line.stroke().dashes().isEmpty()) {
            paint("fill=\"none\" stroke=\"" + hex(line.stroke().colour()) + "\"");
            points(line.points(), false);
        }
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
    }

    private void points(List<Point> outline, boolean isClosed) {
        long x = units(outline.get(0).x());
        long y = units(outline.get(0).y());
        path.append('M').append(x).append(' ').append(y).append('l');
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
        if (isClosed) {
            path.append('z');
        }
    }

    private static double size(List<Point> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            Point one = outline.get(i);
            Point next = outline.get((i + 1) % outline.size());
            twice += one.x() * next.y() - next.x() * one.y();
        }
        return Math.abs(twice) / 2 * UNITS * UNITS;
    }

    private static long units(double mm) {
        return Math.round(mm * UNITS);
    }

    private static String hex(Colour colour) {
        return colour.hex();
    }
}
