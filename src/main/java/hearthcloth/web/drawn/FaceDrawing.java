package hearthcloth.web.drawn;

import gg.jte.html.escape.Escape;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.face.Shown;
import hearthcloth.cloth.making.Face;
import hearthcloth.colour.Colour;
import hearthcloth.draw.cloth.Dyes;
import hearthcloth.draw.fabric.Weave;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.web.kit.Swatches;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/** One face of a cloth, drawn part by part as SVG: fabrics, fells, stitches, threads. Lengths are millimetres of the cloth. */
final class FaceDrawing {

    /** Pixels that the longer side of a large picture takes, for what is drawn to the eye and not to scale. */
    private static final double STAGE = 520;

    private final Shown shown;
    private final Swatches swatches;
    private final Dyes dyes;
    private final double width;
    private final double height;
    private final StringBuilder svg = new StringBuilder();

    FaceDrawing(Cloth cloth, Face face, Swatches swatches) {
        this.shown = Shown.of(cloth, face);
        this.swatches = swatches;
        this.dyes = new Dyes(swatches.fabrics());
        this.width = mm(cloth.finished().width());
        this.height = mm(cloth.finished().height());
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
        return dyes.colour(field.patch().fabric(), field.patch().showing());
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

    void fabrics() {
        swatches.tiles(svg);
        for (Shown.Field field : shown.fields()) {
            Colour colour = dyes.colour(field.patch().fabric(), field.patch().showing());
            ground(field, colour);
            if (field.patch().showing() == Showing.WRONG
                    && !isTurnable(field.patch().fabric())) {
                hatch(field.at(), colour.inkOn().hex());
            }
        }
    }

    /** Of two faces without a right side each is what it looks like: neither is hatched as the wrong one. */
    private boolean isTurnable(String name) {
        return swatches.fabrics().stream().anyMatch(fabric -> fabric.name().equals(name) && fabric.isTurnable());
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
