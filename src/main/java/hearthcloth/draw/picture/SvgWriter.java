package hearthcloth.draw.picture;

import hearthcloth.geometry.Point;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Writes a picture as SVG that needs nothing else: its letters are embedded, its size is in real millimetres. The same
 * picture always gives the same text.
 */
public final class SvgWriter {

    /** The family of the embedded letters, followed by the fonts used for letters it lacks. */
    private static final String REST = "'Source Sans 3','Source Sans Pro',system-ui,sans-serif";

    private static final String FAMILY = "'hearthcloth'," + REST;

    private final StringBuilder out = new StringBuilder();
    private final boolean bare;
    private final List<Mark.Figured> repeats = new ArrayList<>();

    private SvgWriter(boolean bare) {
        this.bare = bare;
    }

    /** The picture with its letters embedded. */
    public static String write(Picture picture) {
        return new SvgWriter(false).written(picture, fontFaces(picture));
    }

    /** The picture without letters of its own, for readers that know the typeface, and for tests. */
    public static String writeBare(Picture picture) {
        return new SvgWriter(true).written(picture, "");
    }

    /**
     * One repeat as a pattern of a drawing whose lengths are the tile's.
     *
     * @param id a name that is safe in SVG and unique in the page
     */
    public static String pattern(String id, Picture tile) {
        return pattern(id, tile, "");
    }

    private static String pattern(String id, Picture tile, String transform) {
        SvgWriter writer = new SvgWriter(true);
        tile.marks().forEach(writer::mark);
        return "<pattern id=\"" + id + "\" patternUnits=\"userSpaceOnUse\" width=\"" + number(tile.width())
                + "\" height=\"" + number(tile.height()) + "\"" + transform + ">" + writer.out + "</pattern>";
    }

    private String written(Picture picture, String fonts) {
        String width = number(picture.width());
        String height = number(picture.height());
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "mm\" height=\"" + height
                + "mm\" viewBox=\"0 0 " + width + " " + height + "\" role=\"img\" font-family=\"" + FAMILY + "\">\n");
        out.append("<title>" + escaped(picture.title()) + "</title>\n");
        out.append(fonts);
        out.append("<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"" + Palette.SHEET.hex() + "\"/>\n");
        picture.marks().forEach(this::mark);
        return out.append("</svg>\n").toString();
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Area area) {
            out.append("<polygon points=\"" + points(area.outline()) + "\" fill=\""
                    + area.colour().hex() + "\"/>\n");
        } else if (mark instanceof Mark.Line line) {
            out.append("<polyline points=\"" + points(line.points()) + "\" fill=\"none\"" + stroke(line.stroke())
                    + "/>\n");
        } else if (mark instanceof Mark.Disc disc) {
            out.append("<circle cx=\"" + number(disc.middle().x()) + "\" cy=\""
                    + number(disc.middle().y()) + "\" r=\"" + number(disc.radius()) + "\" fill=\""
                    + disc.colour().hex() + "\"/>\n");
        } else if (mark instanceof Mark.Words words) {
            words(words);
        } else if (mark instanceof Mark.Figured figured) {
            figured(figured);
        }
    }

    /** Each repeat is written once, however many areas are filled with it. */
    private void figured(Mark.Figured figured) {
        Mark.Figured repeat = new Mark.Figured(List.of(), figured.tile(), figured.scale(), figured.origin());
        int known = repeats.indexOf(repeat);
        if (known < 0) {
            known = repeats.size();
            repeats.add(repeat);
            out.append("<defs>" + pattern("repeat" + known, figured.tile(), transform(figured)) + "</defs>\n");
        }
        out.append("<polygon points=\"" + points(figured.outline()) + "\" fill=\"url(#repeat" + known + ")\"/>\n");
    }

    private static String transform(Mark.Figured figured) {
        return " patternTransform=\"translate(" + number(figured.origin().x()) + " "
                + number(figured.origin().y()) + ") scale(" + BigDecimal.valueOf(figured.scale())
                        .round(new MathContext(6))
                        .toPlainString() + ")\"";
    }

    private void words(Mark.Words words) {
        Type type = words.type();
        String x = number(words.at().x());
        String y = number(words.at().y());
        String turn = type.way() == Type.Way.UP ? " transform=\"rotate(-90 " + x + " " + y + ")\"" : "";
        String anchor = type.anchor() == Type.Anchor.START
                ? ""
                : " text-anchor=\"" + type.anchor().word() + "\"";
        out.append("<text x=\"" + x + "\" y=\"" + y + "\" font-size=\"" + number(type.size()) + "\" font-weight=\""
                + type.weight().number() + "\"" + family(type.weight()) + " fill=\""
                + type.colour().hex() + "\"" + anchor
                + turn + ">"
                + escaped(words.text()) + "</text>\n");
    }

    /**
     * The family of a weight. When it is installed, the semibold is a family of its own for readers that know only
     * regular and bold.
     */
    private String family(Weight weight) {
        return bare && weight == Weight.SEMIBOLD ? " font-family=\"'Source Sans 3 SemiBold'," + REST + "\"" : "";
    }

    private static String stroke(Stroke stroke) {
        String dashes = stroke.dashes().isEmpty()
                ? ""
                : " stroke-dasharray=\""
                        + stroke.dashes().stream().map(SvgWriter::number).collect(Collectors.joining(" ")) + "\"";
        return " stroke=\"" + stroke.colour().hex() + "\" stroke-width=\"" + number(stroke.width()) + "\"" + dashes;
    }

    private static String points(List<Point> points) {
        return points.stream()
                .map(point -> number(point.x()) + "," + number(point.y()))
                .collect(Collectors.joining(" "));
    }

    /** A number with three decimals at most (a thousandth of a millimetre), without trailing zeros. */
    static String number(double value) {
        String text = BigDecimal.valueOf(value)
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        return text.equals("-0") ? "0" : text;
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    private static String fontFaces(Picture picture) {
        Map<Weight, Set<Integer>> used = new EnumMap<>(Weight.class);
        for (Mark.Words words : picture.words()) {
            Set<Integer> letters = used.computeIfAbsent(words.type().weight(), weight -> new TreeSet<>());
            words.text().codePoints().forEach(letters::add);
        }
        if (used.isEmpty()) {
            return "";
        }
        StringBuilder style = new StringBuilder("<style>");
        used.forEach((weight, letters) -> style.append("@font-face{font-family:'hearthcloth';font-weight:"
                + weight.number() + ";src:url(data:font/ttf;base64," + FontSubset.base64(weight, letters) + ")}"));
        return style.append("</style>\n").toString();
    }
}
