package hearthcloth.web.drawn;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.face.Shown;
import hearthcloth.cloth.making.Face;
import hearthcloth.colour.Colour;
import hearthcloth.colour.ColourVision;
import hearthcloth.web.kit.Swatches;
import java.util.Locale;
import java.util.Set;

/**
 * Pictures of a cloth as SVG for the screen, each for what it is looked at for. They lie in the page itself. Lengths are
 * millimetres of the cloth.
 */
public final class ClothDrawing {

    /** About how wide a Latin letter is, as a share of its size; Hangul, Kana and Kanji are about as wide as high. */
    private static final double LATIN = 0.6;

    /** The first letter of these, U+1100. */
    private static final int EASTERN = 0x1100;

    /** Even steps of lightness in which light and dark is shown. */
    private static final int STEPS = 5;

    private ClothDrawing() {}

    private static FaceDrawing begun(Cloth cloth, Face face, Swatches swatches, String words) {
        FaceDrawing drawing = new FaceDrawing(cloth, face, swatches);
        drawing.open("cloth", "role=\"img\" aria-label=\"" + FaceDrawing.escaped(words) + "\"");
        return drawing;
    }

    /** A picture of a finger's breadth, without stitches, that needs no style sheet. */
    public static String small(Cloth cloth, Face face, Swatches swatches) {
        FaceDrawing drawing = begun(cloth, face, swatches, "");
        drawing.fabrics();
        return drawing.close();
    }

    /** A picture to look at, described by {@code words}. */
    public static String still(Cloth cloth, Face face, Swatches swatches, String words) {
        FaceDrawing drawing = begun(cloth, face, swatches, words);
        drawing.paint();
        return drawing.close();
    }

    /** A large picture to look at, with the threads of its fabrics. */
    public static String large(Cloth cloth, Face face, Swatches swatches, String words) {
        FaceDrawing drawing = begun(cloth, face, swatches, words);
        drawing.paint();
        drawing.threads();
        return drawing.close();
    }

    /** How light and dark lie: no colours, five even steps of lightness. */
    public static String values(Cloth cloth, Swatches swatches, String words) {
        FaceDrawing drawing = begun(cloth, Face.FRONT, swatches, words);
        for (Shown.Field field : drawing.shown().fields()) {
            int step = step(drawing.ground(field));
            Colour grey = Colour.WHITE.shaded((step - STEPS) * 80.0 / (STEPS - 1));
            drawing.rect(field.at(), "fill=\"" + grey.hex() + "\"");
        }
        return drawing.close();
    }

    /** The front as eyes see it that lack one kind of cone: the whole picture's linear light is changed. */
    public static String seenBy(Cloth cloth, Swatches swatches, String words, ColourVision eyes) {
        FaceDrawing drawing = begun(cloth, Face.FRONT, swatches, words);
        StringBuilder numbers = new StringBuilder();
        double[] rows = eyes.rows();
        for (int i = 0; i < rows.length; i++) {
            numbers.append(String.format(Locale.ROOT, i % 3 == 2 ? "%.6f 0 0 " : "%.6f ", rows[i]));
        }
        drawing.svg()
                .append("<filter id=\"")
                .append(eyes.word())
                .append("\" color-interpolation-filters=\"linearRGB\"><feColorMatrix values=\"")
                .append(numbers)
                .append("0 0 0 1 0\"/></filter><g filter=\"url(#")
                .append(eyes.word())
                .append(")\">");
        drawing.paint();
        drawing.svg().append("</g>");
        return drawing.close();
    }

    /** The step of lightness of a colour, 1 for the darkest fifth. */
    private static int step(Colour colour) {
        return (int) Math.min(STEPS, 1 + Math.floor(colour.lab().lightness() * STEPS / 100));
    }

    /**
     * How far a cloth is sewn: what is to come is pale, what is sewn on now is ringed.
     *
     * @param sewn the patches that are in the work, by their ids; {@code now} those that come to it
     */
    public static String soFar(Cloth cloth, Swatches swatches, String words, Set<String> sewn, Set<String> now) {
        FaceDrawing drawing = begun(cloth, Face.FRONT, swatches, words);
        drawing.paint();
        for (Shown.Field field : drawing.shown().fields()) {
            String id = field.patch().place().id();
            if (!sewn.contains(id) && !now.contains(id)) {
                drawing.rect(field.at(), "class=\"to-come\"");
            }
        }
        for (Shown.Field field : drawing.shown().fields()) {
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
        FaceDrawing drawing = begun(cloth, Face.FRONT, swatches, words);
        drawing.paint();
        drawing.shown().fields().stream()
                .filter(field -> !field.fell() && field.patch().place() instanceof Place.Hearth)
                .forEach(field -> hearth(drawing, field, hearth));
        return drawing.close();
    }

    /** The word for the hearth, as large as letters in a picture 225 px wide; smaller or none where it has no room. */
    private static void hearth(FaceDrawing drawing, Shown.Field field, String word) {
        double most = Math.max(drawing.width(), drawing.height()) / 15;
        Rect at = field.at();
        double ems = LATIN
                + word.codePoints()
                        .mapToDouble(letter -> letter < EASTERN ? LATIN : 1.05)
                        .sum();
        double size = Math.min(most, Math.min(FaceDrawing.mm(at.width()) / ems, FaceDrawing.mm(at.height()) / 1.5));
        if (size < most * 0.7) {
            return;
        }
        drawing.svg()
                .append(String.format(
                        Locale.ROOT,
                        "<text x=\"%.2f\" y=\"%.2f\" font-size=\"%.2f\" text-anchor=\"middle\" dominant-baseline=\"central\""
                                + " fill=\"%s\" paint-order=\"stroke\" stroke=\"%s\" stroke-width=\"%.2f\""
                                + " stroke-linejoin=\"round\">%s</text>",
                        FaceDrawing.mm(at.x()) + FaceDrawing.mm(at.width()) / 2,
                        FaceDrawing.mm(at.y()) + FaceDrawing.mm(at.height()) / 2,
                        size,
                        drawing.ground(field).inkOn().hex(),
                        drawing.ground(field).hex(),
                        size / 2.5,
                        FaceDrawing.escaped(word)));
    }

    /** The front to look at with what is sewn together solid and the rest pale; hidden from those who hear the words beside it. */
    public static String sewn(Cloth cloth, Swatches swatches, Set<Place> on) {
        FaceDrawing drawing = new FaceDrawing(cloth, Face.FRONT, swatches);
        drawing.open("cloth", "aria-hidden=\"true\" focusable=\"false\"");
        drawing.paint();
        drawing.shown().fields().stream()
                .filter(field -> !on.contains(field.patch().place()))
                .forEach(field -> drawing.rect(field.at(), "class=\"off\""));
        return drawing.close();
    }

    /** The bar a patch belongs to; parts of a joined bar belong to one. */
    public static String name(Place place) {
        return place instanceof Place.Bar bar ? bar.bar() : place.id();
    }
}
