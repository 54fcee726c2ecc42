package hearthcloth.web.cloth;

import gg.jte.html.escape.Escape;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.face.Shown;
import hearthcloth.cloth.making.Face;
import hearthcloth.colour.Colour;
import hearthcloth.draw.cloth.Dyes;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.web.kit.Swatches;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * One face of a cloth as SVG for the screen: fabrics, fells, stitches, the names of the bars where they fit. Lies in the
 * page itself, so that bars can be links. Lengths are millimetres of the cloth.
 */
public final class ClothDrawing {

    /** Letters are this part of the longer side, so that they come out near 14 px in a picture 560 px wide. */
    private static final double LETTER = 1 / 40.0;

    /** The same in a picture 225 px wide, for one word only. */
    private static final double LARGE_LETTER = 1 / 15.0;

    /** Width of an average letter of the face, and of air round the words, in ems. */
    private static final double GLYPH = 0.6;

    private static final String HEARTH = "hearth";

    private final Shown shown;
    private final Swatches swatches;
    private final Dyes dyes;
    private final double width;
    private final double height;
    private final StringBuilder svg = new StringBuilder();
    private double letter = LETTER;

    /** What a bar is called by those who cannot see it, and where pressing it leads; {@code width} where it can be pulled. */
    record Target(String words, String href, boolean chosen, Optional<Pull> width) {}

    /** A cut width that can be pulled, in marks of her ruler of which {@code parts} make a unit. */
    record Pull(Length cut, Length step, long parts) {}

    private ClothDrawing(Cloth cloth, Face face, Swatches swatches) {
        this.shown = Shown.of(cloth, face);
        this.swatches = swatches;
        this.dyes = new Dyes(swatches.fabrics());
        this.width = mm(cloth.finished().width());
        this.height = mm(cloth.finished().height());
    }

    /** A picture to look at, described by {@code words}. */
    public static String still(Cloth cloth, Face face, Swatches swatches, String words) {
        ClothDrawing drawing = new ClothDrawing(cloth, face, swatches);
        drawing.open("role=\"img\" aria-label=\"" + escaped(words) + "\"");
        drawing.paint();
        return drawing.close();
    }

    /** The front to look at, its hearth named. */
    public static String named(Cloth cloth, Swatches swatches, String words) {
        ClothDrawing drawing = new ClothDrawing(cloth, Face.FRONT, swatches);
        drawing.open("role=\"img\" aria-label=\"" + escaped(words) + "\"");
        drawing.paint();
        drawing.shown.fields().stream()
                .filter(field -> !field.fell() && field.patch().place() instanceof Place.Hearth)
                .forEach(field -> {
                    double room = mm(field.at().width().max(field.at().height()));
                    double most = room / ((HEARTH.length() + 1) * GLYPH) / Math.max(drawing.width, drawing.height);
                    drawing.letter = Math.min(LARGE_LETTER, most * 0.99);
                    drawing.label(field);
                });
        return drawing.close();
    }

    /** The front to look at with what is sewn together solid and the rest pale; hidden from those who hear the words beside it. */
    public static String sewn(Cloth cloth, Swatches swatches, Set<Place> on) {
        ClothDrawing drawing = new ClothDrawing(cloth, Face.FRONT, swatches);
        drawing.open("aria-hidden=\"true\" focusable=\"false\"");
        drawing.paint();
        drawing.shown.fields().stream()
                .filter(field -> !on.contains(field.patch().place()))
                .forEach(field -> drawing.rect(field.at(), "class=\"off\""));
        return drawing.close();
    }

    /** A picture whose bars and hearth are links. {@code target} says what a patch of that place leads to. */
    static String tappable(Cloth cloth, Face face, Swatches swatches, String words, Function<String, Target> target) {
        ClothDrawing drawing = new ClothDrawing(cloth, face, swatches);
        drawing.open("role=\"group\" aria-label=\"" + escaped(words) + "\"");
        drawing.paint();
        drawing.shown.fields().stream().filter(field -> !field.fell()).forEach(drawing::label);
        drawing.links(target);
        return drawing.close();
    }

    private void open(String named) {
        svg.append(String.format(
                Locale.ROOT,
                "<svg class=\"cloth\" viewBox=\"0 0 %.2f %.2f\" xmlns=\"http://www.w3.org/2000/svg\" %s>",
                width,
                height,
                named));
    }

    private String close() {
        return svg.append("</svg>").toString();
    }

    private void paint() {
        swatches.tiles(svg);
        for (Shown.Field field : shown.fields()) {
            Colour colour = dyes.colour(field.patch().fabric());
            ground(field, colour);
            if (field.patch().showing() == Showing.WRONG) {
                hatch(field.at(), colour.inkOn().hex());
            }
        }
        String thread = dyes.thread().hex();
        for (Shown.Row row : shown.rows()) {
            Rect at = row.at();
            svg.append(String.format(
                    Locale.ROOT,
                    "<line x1=\"%.2f\" y1=\"%.2f\" x2=\"%.2f\" y2=\"%.2f\" class=\"stitches\" stroke=\"%s\"" + "/>",
                    mm(at.x()),
                    mm(at.y()),
                    mm(at.right()),
                    mm(at.bottom()),
                    thread));
        }
    }

    /** Hatches a wrong side: slanting lines a fortieth of the cloth's width apart, from lower left to upper right. */
    private void hatch(Rect at, String ink) {
        double step = width / 40;
        double right = mm(at.right());
        double bottom = mm(at.bottom());
        svg.append("<path class=\"hatch\" fill=\"none\" stroke-width=\"1\" stroke-opacity=\".55\""
                        + " vector-effect=\"non-scaling-stroke\" stroke=\"")
                .append(ink)
                .append("\" d=\"");
        double first = Math.ceil((mm(at.x()) + mm(at.y())) / step) * step;
        for (double sum = first; sum < right + bottom; sum += step) {
            double from = Math.max(mm(at.x()), sum - bottom);
            double to = Math.min(right, sum - mm(at.y()));
            svg.append(String.format(Locale.ROOT, "M%.2f %.2fL%.2f %.2f", from, sum - from, to, sum - to));
        }
        svg.append("\"/>");
    }

    /** Her picture of the fabric where its pictured side shows, its colour otherwise; a fell is a shade off either. */
    private void ground(Shown.Field field, Colour colour) {
        String fabric = field.patch().fabric();
        if (!swatches.isFigured(fabric) || field.patch().showing() == Showing.WRONG) {
            rect(field.at(), "fill=\"" + (field.fell() ? colour.shade() : colour).hex() + "\"");
            return;
        }
        rect(field.at(), "fill=\"url(#" + Swatches.id(fabric) + ")\"");
        if (field.fell()) {
            rect(field.at(), "fill=\"" + colour.shade().hex() + "\" fill-opacity=\".45\"");
        }
    }

    private void label(Shown.Field field) {
        String words = field.patch().place() instanceof Place.Hearth
                ? HEARTH
                : field.patch().place().label();
        double size = letter * Math.max(width, height);
        double wide = mm(field.at().width());
        double high = mm(field.at().height());
        double length = (words.length() * GLYPH + GLYPH) * size;
        boolean along = length <= wide && size * 1.5 <= high;
        boolean up = length <= high && size * 1.5 <= wide;
        if (!along && !up) {
            return;
        }
        double x = mm(field.at().x()) + wide / 2;
        double y = mm(field.at().y()) + high / 2;
        Colour ground = dyes.colour(field.patch().fabric());
        svg.append(String.format(
                Locale.ROOT,
                "<text x=\"%.2f\" y=\"%.2f\" font-size=\"%.2f\" text-anchor=\"middle\" dominant-baseline=\"central\""
                        + " fill=\"%s\"%s%s>%s</text>",
                x,
                y,
                size,
                ground.inkOn().hex(),
                // A figured ground is kept off the letters by a rim of the fabric's colour.
                swatches.isFigured(field.patch().fabric())
                        ? String.format(
                                Locale.ROOT,
                                " paint-order=\"stroke\" stroke=\"%s\" stroke-width=\"%.2f\" stroke-linejoin=\"round\"",
                                ground.hex(),
                                size / 2.5)
                        : "",
                along ? "" : String.format(Locale.ROOT, " transform=\"rotate(-90 %.2f %.2f)\"", x, y),
                escaped(words)));
    }

    private void links(Function<String, Target> target) {
        Map<String, Rect> places = new LinkedHashMap<>();
        for (Shown.Field field : shown.fields()) {
            if (!field.fell()) {
                places.merge(name(field.patch().place()), field.at(), ClothDrawing::around);
            }
        }
        places.forEach((name, at) -> {
            Target to = target.apply(name);
            svg.append("<a class=\"tap\" id=\"tap-")
                    .append(escaped(name))
                    .append("\" href=\"")
                    .append(escaped(to.href()))
                    .append("\" aria-label=\"")
                    .append(escaped(to.words()))
                    .append(to.chosen() ? "\" aria-current=\"true\">" : "\">");
            rect(at, "class=\"room\"");
            if (to.chosen()) {
                rect(at, "class=\"ring under\"");
                rect(at, "class=\"ring\"");
            }
            svg.append("</a>");
        });
        // Grips lie over all bars, so that a neighbour does not catch the finger.
        places.forEach((name, at) -> target.apply(name).width().ifPresent(pull -> handle(side(name), at, pull)));
    }

    private Side side(String name) {
        return shown.fields().stream()
                .map(field -> field.patch().place())
                .filter(place -> name(place).equals(name) && place instanceof Place.Bar)
                .map(place -> ((Place.Bar) place).side())
                .findFirst()
                .orElse(Side.RIGHT);
    }

    /** A grip on the outer edge of a bar. For the eye and the finger alone: the field beside the picture does the same. */
    private void handle(Side side, Rect at, Pull pull) {
        boolean forth = side == Side.RIGHT || side == Side.BOTTOM;
        double x = side.isUpright() ? mm(forth ? at.right() : at.x()) : (mm(at.x()) + mm(at.right())) / 2;
        double y = side.isUpright() ? (mm(at.y()) + mm(at.bottom())) / 2 : mm(forth ? at.bottom() : at.y());
        double grip = Math.max(width, height) / 45;
        svg.append(String.format(
                Locale.ROOT,
                "<g class=\"handle\" aria-hidden=\"true\" data-upright=\"%s\" data-out=\"%d\" data-cut=\"%.4f\""
                        + " data-step=\"%.4f\" data-parts=\"%d\"><circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\"/>"
                        + "<circle class=\"room\" cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\"/></g>",
                side.isUpright(),
                forth ? 1 : -1,
                mm(pull.cut()),
                mm(pull.step()),
                pull.parts(),
                x,
                y,
                grip,
                x,
                y,
                grip * 2));
        svg.append(String.format(
                Locale.ROOT,
                "<text class=\"pulled\" x=\"%.2f\" y=\"%.2f\" font-size=\"%.2f\" text-anchor=\"middle\""
                        + " dominant-baseline=\"central\"></text>",
                (mm(at.x()) + mm(at.right())) / 2,
                (mm(at.y()) + mm(at.bottom())) / 2,
                LETTER * 1.6 * Math.max(width, height)));
    }

    /** The bar a patch belongs to; parts of a joined bar belong to one. */
    public static String name(Place place) {
        return place instanceof Place.Bar bar ? bar.bar() : place.id();
    }

    private static Rect around(Rect one, Rect other) {
        Length x = one.x().min(other.x());
        Length y = one.y().min(other.y());
        return Rect.at(
                x,
                y,
                new hearthcloth.measure.Size(
                        one.right().max(other.right()).minus(x),
                        one.bottom().max(other.bottom()).minus(y)));
    }

    private void rect(Rect at, String drawn) {
        svg.append(String.format(
                Locale.ROOT,
                "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" %s/>",
                mm(at.x()),
                mm(at.y()),
                mm(at.width()),
                mm(at.height()),
                drawn));
    }

    private static double mm(Length length) {
        return length.in(Unit.MILLIMETRE);
    }

    private static String escaped(String text) {
        gg.jte.output.StringOutput out = new gg.jte.output.StringOutput();
        Escape.htmlAttribute(text, out);
        return out.toString();
    }
}
