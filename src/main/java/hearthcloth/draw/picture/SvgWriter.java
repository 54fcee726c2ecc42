package hearthcloth.draw.picture;

import hearthcloth.colour.Colour;
import hearthcloth.draw.letters.Run;
import hearthcloth.draw.letters.Script;
import hearthcloth.draw.letters.Weight;
import hearthcloth.geometry.Point;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Writes a picture as SVG that needs nothing else: its letters are embedded, its size is in real millimetres. The same
 * picture always gives the same text.
 */
public final class SvgWriter {

    /** The family of the embedded letters, followed by the fonts used for letters it lacks. */
    private static final String REST = "'Source Sans 3','Source Sans Pro',system-ui,sans-serif";

    private static final String FAMILY = "'hearthcloth'," + REST;

    /** The families where a picture has Hangul, kana or kanji; on a page the page's own letters serve. */
    private static final String EASTERN =
            "'hearthcloth','hearthcloth ko','hearthcloth ja','Source Sans 3','Noto Sans KR','Noto Sans JP',system-ui,sans-serif";

    /** What the picture is for. */
    private enum Use {
        /** A file that stands for itself. */
        FILE,
        /** A reader that knows the typeface. */
        BARE,
        /** A page, whose paper and ink it takes on. */
        PAGE,
        /** A picture to lay on anything. */
        CLEAR
    }

    /** On a page, what is drawn on paper has the page's own colours, which are light on dark in a dark room. */
    private static final Map<Colour, String> OF_PAGE = Map.of(
            Palette.INK, "var(--ink)",
            Palette.SECOND_INK, "var(--ink-2)",
            Palette.MADDER, "var(--madder)",
            Palette.INDIGO, "var(--indigo)",
            Palette.MAT_LINE, "var(--mat-line)",
            Palette.ON_MADDER, "var(--paper)",
            Palette.SHEET, "var(--paper)");

    private final StringBuilder out = new StringBuilder();
    private final Use use;
    private final Map<Picture, String> tiles = new HashMap<>();
    private final Map<Mark.Figured, String> repeats = new HashMap<>();
    private final String mark;

    private SvgWriter(Use use, String mark) {
        this.use = use;
        this.mark = mark;
    }

    /** The picture with its letters embedded. */
    public static String write(Picture picture) {
        return new SvgWriter(Use.FILE, "").written(picture, EmbeddedLetters.faces(picture));
    }

    /** The picture without letters of its own, for readers that know the typeface, and for tests. */
    public static String writeBare(Picture picture) {
        return new SvgWriter(Use.BARE, "").written(picture, "");
    }

    /**
     * The picture as a part of a page: on no sheet of its own, with the page's letters, and with what is drawn on paper
     * in the page's ink, whose CSS properties are {@code --ink}, {@code --ink-2}, {@code --madder} and {@code --paper}.
     *
     * @param name of the picture, different for each on a page
     */
    public static String writeOnPage(Picture picture, String name) {
        return new SvgWriter(Use.PAGE, name + "-").written(picture, "");
    }

    /** The picture without letters and on no sheet, to be laid on anything. */
    public static String writeClear(Picture picture) {
        return new SvgWriter(Use.CLEAR, "").written(picture, "");
    }

    /**
     * One repeat as a pattern of a drawing whose lengths are the tile's.
     *
     * @param id a name that is safe in SVG and unique in the page
     */
    public static String pattern(String id, Picture tile) {
        return pattern(id, tile, 1);
    }

    /** The same, with this many lengths of the drawing to one of the tile's. */
    public static String pattern(String id, Picture tile, double scale) {
        String transform = scale == 1 ? "" : " patternTransform=\"scale(" + rounded(scale) + ")\"";
        return pattern(id, tile, transform);
    }

    static String pattern(String id, Picture tile, String transform) {
        SvgWriter writer = new SvgWriter(Use.BARE, "");
        tile.marks().forEach(writer::mark);
        return "<pattern id=\"" + id + "\" patternUnits=\"userSpaceOnUse\" width=\"" + number(tile.width())
                + "\" height=\"" + number(tile.height()) + "\"" + transform + ">" + writer.out + "</pattern>";
    }

    private String written(Picture picture, String fonts) {
        String width = number(picture.width());
        String height = number(picture.height());
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "mm\" height=\"" + height
                + "mm\" viewBox=\"0 0 " + width + " " + height + "\" " + role(picture) + " font-family=\""
                + (isEastern(picture) ? EASTERN : FAMILY) + "\">\n");
        out.append(title(picture)).append(picture.title().isEmpty() ? "" : "\n");
        out.append(fonts);
        if (use != Use.PAGE && use != Use.CLEAR) {
            out.append(
                    "<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"" + Palette.SHEET.hex() + "\"/>\n");
        }
        picture.marks().forEach(this::mark);
        return out.append("</svg>\n").toString();
    }

    /** A picture without a title stands beside the words that say what is in it, and is passed over when they are read aloud. */
    static String role(Picture picture) {
        return picture.title().isEmpty() ? "aria-hidden=\"true\"" : "role=\"img\"";
    }

    static String title(Picture picture) {
        return picture.title().isEmpty() ? "" : "<title>" + escaped(picture.title()) + "</title>";
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
                    + ink(disc.colour()) + "\"/>\n");
        } else if (mark instanceof Mark.Words words) {
            words(words);
        } else if (mark instanceof Mark.Figured figured) {
            figured(figured);
        } else if (mark instanceof Mark.Tint tint) {
            out.append("<polygon points=\"" + points(tint.outline()) + "\" fill=\"" + ink(tint.colour())
                    + "\" fill-opacity=\"" + number(tint.share()) + "\"/>\n");
        } else if (mark instanceof Mark.Bare bare) {
            out.append("<polygon points=\"" + points(bare.outline()) + "\" fill=\"" + ink(Palette.SHEET) + "\"/>\n");
        } else if (mark instanceof Mark.Dotted dotted) {
            out.append(dotted(dotted, 1)).append('\n');
        }
    }

    /** The colour of all but cloth; that of the page where it is drawn on its paper. Cloth is drawn as areas alone. */
    private String ink(Colour colour) {
        return use == Use.PAGE ? OF_PAGE.getOrDefault(colour, colour.hex()) : colour.hex();
    }

    /** Each tile is written once, and each way of laying it, however many areas are filled with it. */
    private void figured(Mark.Figured figured) {
        Mark.Figured repeat = new Mark.Figured(List.of(), figured.tile(), figured.laid());
        String known = repeats.get(repeat);
        if (known == null) {
            known = mark + "repeat" + repeats.size();
            repeats.put(repeat, known);
            String first = tiles.putIfAbsent(figured.tile(), known);
            out.append("<defs>"
                    // The writer of PNG reads no pattern that stands on another.
                    + (first == null || use == Use.BARE
                            ? pattern(known, figured.tile(), transform(figured.laid()))
                            : "<pattern id=\"" + known + "\" href=\"#" + first + "\"" + transform(figured.laid())
                                    + "/>")
                    + "</defs>\n");
        }
        out.append("<polygon points=\"" + points(figured.outline()) + "\" fill=\"url(#" + known + ")\"/>\n");
    }

    private static String transform(Affine laid) {
        return transform(laid, "");
    }

    static String transform(Affine laid, String before) {
        if (laid.isUpright()) {
            return " patternTransform=\"" + before + "translate(" + number(laid.e()) + " " + number(laid.f())
                    + ") scale(" + rounded(laid.a()) + ")\"";
        }
        return " patternTransform=\"" + before + "matrix(" + rounded(laid.a()) + " " + rounded(laid.b()) + " "
                + rounded(laid.c()) + " " + rounded(laid.d()) + " " + number(laid.e()) + " " + number(laid.f()) + ")\"";
    }

    private static String rounded(double factor) {
        return BigDecimal.valueOf(factor).round(new MathContext(6)).toPlainString();
    }

    /** White words stand on dark cloth and stay white. */
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
                + (type.colour().equals(Palette.SHEET) ? Palette.SHEET.hex() : ink(type.colour())) + "\"" + anchor
                + turn + ">"
                + (use == Use.BARE ? runs(words) : escaped(words.text())) + "</text>\n");
    }

    /** A reader of bare pictures takes every letter from the family named, so each writing is given its own. */
    private static String runs(Mark.Words words) {
        List<Run> runs = Run.of(words.text());
        return runs.stream()
                .map(run -> run.script() == Script.WESTERN
                        // It drops a plain blank beside such a part.
                        ? escaped(runs.size() == 1 ? run.text() : run.text().replace(' ', '\u00a0'))
                        : "<tspan font-family=\"'" + run.script().family() + "'\" font-weight=\""
                                + run.script().cut(words.type().weight()).number() + "\">" + escaped(run.text())
                                + "</tspan>")
                .collect(Collectors.joining());
    }

    private static boolean isEastern(Picture picture) {
        return !picture.words().stream().allMatch(words -> Run.isWestern(words.text()));
    }

    /**
     * The family of a weight. When it is installed, the semibold is a family of its own for readers that know only
     * regular and bold.
     */
    private String family(Weight weight) {
        return use == Use.BARE && weight == Weight.SEMIBOLD
                ? " font-family=\"'Source Sans 3 SemiBold'," + REST + "\""
                : "";
    }

    private String stroke(Stroke stroke) {
        String dashes = stroke.dashes().isEmpty()
                ? ""
                : " stroke-dasharray=\""
                        + stroke.dashes().stream().map(SvgWriter::number).collect(Collectors.joining(" ")) + "\"";
        return " stroke=\"" + ink(stroke.colour()) + "\" stroke-width=\"" + number(stroke.width()) + "\"" + dashes;
    }

    /** @param units of the drawing to a millimetre */
    static String dotted(Mark.Dotted dotted, int units) {
        Bounds at = dotted.at();
        return "<image x=\"" + number(at.x() * units) + "\" y=\"" + number(at.y() * units) + "\" width=\""
                + number(at.width() * units) + "\" height=\"" + number(at.height() * units)
                + "\" preserveAspectRatio=\"none\" href=\"data:image/png;base64," + dotted.png() + "\"/>";
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
}
