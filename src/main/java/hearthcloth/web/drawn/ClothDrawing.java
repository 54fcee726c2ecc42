package hearthcloth.web.drawn;

import gg.jte.html.escape.Escape;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.face.Shown;
import hearthcloth.cloth.making.Face;
import hearthcloth.colour.Colour;
import hearthcloth.colour.ColourVision;
import hearthcloth.draw.cloth.Dyes;
import hearthcloth.draw.fabric.Weave;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.web.kit.Swatches;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * One face of a cloth as SVG for the screen: fabrics, fells, stitches. Lies in the page itself. Lengths are millimetres
 * of the cloth.
 */
public final class ClothDrawing {

    /** Pixels that the longer side of a large picture takes, for what is drawn to the eye and not to scale. */
    private static final double STAGE = 520;

    /** About how wide a Latin letter is, as a share of its size; Hangul, Kana and Kanji are about as wide as high. */
    private static final double LATIN = 0.6;

    /** The first letter of these, U+1100. */
    private static final int EASTERN = 0x1100;

    /** Even steps of lightness in which light and dark is shown. */
    static final int STEPS = 5;

    private final Shown shown;
    private final Swatches swatches;
    private final Dyes dyes;
    private final double width;
    private final double height;
    private final StringBuilder svg = new StringBuilder();

    ClothDrawing(Cloth cloth, Face face, Swatches swatches) {
        this.shown = Shown.of(cloth, face);
        this.swatches = swatches;
        this.dyes = new Dyes(swatches.fabrics());
        this.width = mm(cloth.finished().width());
        this.height = mm(cloth.finished().height());
    }

    private static ClothDrawing begun(Cloth cloth, Face face, Swatches swatches, String words) {
        ClothDrawing drawing = new ClothDrawing(cloth, face, swatches);
        drawing.open("cloth", "role=\"img\" aria-label=\"" + escaped(words) + "\"");
        return drawing;
    }

    /** A picture of a finger's breadth, without stitches, that needs no style sheet. */
    public static String small(Cloth cloth, Face face, Swatches swatches) {
        ClothDrawing drawing = begun(cloth, face, swatches, "");
        drawing.fabrics();
        return drawing.close();
    }

    /** A picture to look at, described by {@code words}. */
    public static String still(Cloth cloth, Face face, Swatches swatches, String words) {
        ClothDrawing drawing = begun(cloth, face, swatches, words);
        drawing.paint();
        return drawing.close();
    }

    /** A large picture to look at, with the threads of its fabrics. */
    public static String large(Cloth cloth, Face face, Swatches swatches, String words) {
        ClothDrawing drawing = begun(cloth, face, swatches, words);
        drawing.paint();
        drawing.threads();
        return drawing.close();
    }

    /** How light and dark lie: no colours, five even steps of lightness. */
    public static String values(Cloth cloth, Swatches swatches, String words) {
        ClothDrawing drawing = begun(cloth, Face.FRONT, swatches, words);
        for (Shown.Field field : drawing.shown.fields()) {
            int step = step(drawing.dyes.colour(field.patch().fabric()));
            Colour grey = Colour.WHITE.shaded((step - STEPS) * 80.0 / (STEPS - 1));
            drawing.rect(field.at(), "fill=\"" + grey.hex() + "\"");
        }
        return drawing.close();
    }

    /** The front as eyes see it that lack one kind of cone: the whole picture's linear light is changed. */
    public static String seenBy(Cloth cloth, Swatches swatches, String words, ColourVision eyes) {
        ClothDrawing drawing = begun(cloth, Face.FRONT, swatches, words);
        StringBuilder numbers = new StringBuilder();
        double[] rows = eyes.rows();
        for (int i = 0; i < rows.length; i++) {
            numbers.append(String.format(Locale.ROOT, i % 3 == 2 ? "%.6f 0 0 " : "%.6f ", rows[i]));
        }
        drawing.svg
                .append("<filter id=\"")
                .append(eyes.word())
                .append("\" color-interpolation-filters=\"linearRGB\"><feColorMatrix values=\"")
                .append(numbers)
                .append("0 0 0 1 0\"/></filter><g filter=\"url(#")
                .append(eyes.word())
                .append(")\">");
        drawing.paint();
        drawing.svg.append("</g>");
        return drawing.close();
    }

    /** The step of lightness of a colour, 1 for the darkest fifth. */
    static int step(Colour colour) {
        return (int) Math.min(STEPS, 1 + Math.floor(colour.lab().lightness() * STEPS / 100));
    }

    /**
     * How far a cloth is sewn: what is to come is pale, what is sewn on now is ringed.
     *
     * @param sewn the patches that are in the work, by their ids; {@code now} those that come to it
     */
    public static String soFar(Cloth cloth, Swatches swatches, String words, Set<String> sewn, Set<String> now) {
        ClothDrawing drawing = begun(cloth, Face.FRONT, swatches, words);
        drawing.paint();
        for (Shown.Field field : drawing.shown.fields()) {
            String id = field.patch().place().id();
            if (!sewn.contains(id) && !now.contains(id)) {
                drawing.rect(field.at(), "class=\"to-come\"");
            }
        }
        for (Shown.Field field : drawing.shown.fields()) {
            if (!field.fell() && now.contains(field.patch().place().id())) {
                drawing.rect(field.at(), "class=\"now\"");
            }
        }
        return drawing.close();
    }

    /**
     * The front to look at, its hearth named.
     *
     * @param hearth what the hearth is called
     */
    public static String named(Cloth cloth, Swatches swatches, String words, String hearth) {
        ClothDrawing drawing = begun(cloth, Face.FRONT, swatches, words);
        drawing.paint();
        drawing.shown.fields().stream()
                .filter(field -> !field.fell() && field.patch().place() instanceof Place.Hearth)
                .forEach(field -> drawing.hearth(field, hearth));
        return drawing.close();
    }

    /** The word for the hearth, as large as letters in a picture 225 px wide; smaller or none where it has no room. */
    private void hearth(Shown.Field field, String word) {
        double most = Math.max(width, height) / 15;
        Rect at = field.at();
        double ems = LATIN
                + word.codePoints()
                        .mapToDouble(letter -> letter < EASTERN ? LATIN : 1.05)
                        .sum();
        double size = Math.min(most, Math.min(mm(at.width()) / ems, mm(at.height()) / 1.5));
        if (size < most * 0.7) {
            return;
        }
        svg.append(String.format(
                Locale.ROOT,
                "<text x=\"%.2f\" y=\"%.2f\" font-size=\"%.2f\" text-anchor=\"middle\" dominant-baseline=\"central\""
                        + " fill=\"%s\" paint-order=\"stroke\" stroke=\"%s\" stroke-width=\"%.2f\""
                        + " stroke-linejoin=\"round\">%s</text>",
                mm(at.x()) + mm(at.width()) / 2,
                mm(at.y()) + mm(at.height()) / 2,
                size,
                ground(field).inkOn().hex(),
                ground(field).hex(),
                size / 2.5,
                escaped(word)));
    }

    /** The front to look at with what is sewn together solid and the rest pale; hidden from those who hear the words beside it. */
    public static String sewn(Cloth cloth, Swatches swatches, Set<Place> on) {
        ClothDrawing drawing = new ClothDrawing(cloth, Face.FRONT, swatches);
        drawing.open("cloth", "aria-hidden=\"true\" focusable=\"false\"");
        drawing.paint();
        drawing.shown.fields().stream()
                .filter(field -> !on.contains(field.patch().place()))
                .forEach(field -> drawing.rect(field.at(), "class=\"off\""));
        return drawing.close();
    }

    void open(String kind, String named) {
        svg.append(String.format(
                Locale.ROOT,
                "<svg class=\"%s\" viewBox=\"0 0 %.2f %.2f\" xmlns=\"http://www.w3.org/2000/svg\" %s>",
                kind,
                width,
                height,
                named));
    }

    String close() {
        return svg.append("</svg>").toString();
    }

    Shown shown() {
        return shown;
    }

    StringBuilder svg() {
        return svg;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    Colour ground(Shown.Field field) {
        return dyes.colour(field.patch().fabric());
    }

    /** Lays the threads of the fabrics over them, all of one weave at once. */
    void threads() {
        Map<Weave, StringBuilder> woven = new EnumMap<>(Weave.class);
        for (Shown.Field field : shown.fields()) {
            Weave weave = Weave.named(field.patch().fabric());
            Rect at = field.at();
            woven.computeIfAbsent(weave, one -> new StringBuilder())
                    .append(String.format(
                            Locale.ROOT,
                            "M%.2f %.2fh%.2fv%.2fh%.2fz",
                            mm(at.x()),
                            mm(at.y()),
                            mm(at.width()),
                            mm(at.height()),
                            -mm(at.width())));
        }
        woven.forEach((weave, path) -> Swatches.threads(svg, weave, Math.max(width, height) / STAGE)
                .forEach(id -> svg.append("<path class=\"threads\" d=\"")
                        .append(path)
                        .append("\" fill=\"url(#")
                        .append(id)
                        .append(")\"/>")));
    }

    void paint() {
        fabrics();
        stitches();
    }

    private void fabrics() {
        swatches.tiles(svg);
        for (Shown.Field field : shown.fields()) {
            Colour colour = dyes.colour(field.patch().fabric(), field.patch().showing());
            ground(field, colour);
            if (field.patch().showing() == Showing.WRONG) {
                hatch(field.at(), colour.inkOn().hex());
            }
        }
    }

    private void stitches() {
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
        svg.append(
                        "<path class=\"hatch\" fill=\"none\" stroke-width=\"1\" stroke-opacity=\".55\" vector-effect=\"non-scaling-stroke\" stroke=\"")
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

    /** The bar a patch belongs to; parts of a joined bar belong to one. */
    public static String name(Place place) {
        return place instanceof Place.Bar bar ? bar.bar() : place.id();
    }

    void rect(Rect at, String drawn) {
        svg.append(String.format(
                Locale.ROOT,
                "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" %s/>",
                mm(at.x()),
                mm(at.y()),
                mm(at.width()),
                mm(at.height()),
                drawn));
    }

    static double mm(Length length) {
        return length.in(Unit.MILLIMETRE);
    }

    static String escaped(String text) {
        gg.jte.output.StringOutput out = new gg.jte.output.StringOutput();
        Escape.htmlAttribute(text, out);
        return out.toString();
    }
}
