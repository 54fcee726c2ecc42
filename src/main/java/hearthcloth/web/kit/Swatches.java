package hearthcloth.web.kit;

import hearthcloth.draw.fabric.Weave;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.stash.Fabric;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How fabrics look on the screen: their colours, and her own pictures of them tiled to scale.
 *
 * @param across for each fabric that has a picture, how much cloth that shows
 */
public record Swatches(List<Fabric> fabrics, Map<String, Length> across) {

    public Swatches {
        fabrics = List.copyOf(fabrics);
        across = Map.copyOf(across);
    }

    boolean isPictured(String fabric) {
        return across.containsKey(fabric);
    }

    /** Whether the fabric is drawn with figures: her picture of it, or what its name tells. */
    public boolean isFigured(String fabric) {
        return isPictured(fabric)
                || fabrics.stream()
                        .anyMatch(one ->
                                one.name().equals(fabric) && !Textures.tile(one).isEmpty());
    }

    /** What a part of this fabric is filled with: its tile where it has one, else its colour. */
    public String fill(Fabric fabric) {
        return isFigured(fabric.name())
                ? "url(#" + id(fabric.name()) + ")"
                : fabric.colour().hex();
    }

    /** The tile's id; the same for a fabric in every drawing of a page, since the tile is the same too. */
    public static String id(String fabric) {
        return "weave-" + HexFormat.of().formatHex(fabric.getBytes(StandardCharsets.UTF_8));
    }

    /** Adds the tiles of all figured fabrics to a drawing whose lengths are millimetres. */
    public void tiles(StringBuilder svg) {
        for (Fabric fabric : fabrics) {
            Length shown = across.get(fabric.name());
            if (shown != null) {
                double side = shown.in(Unit.MILLIMETRE);
                svg.append(String.format(
                        Locale.ROOT,
                        "<defs><pattern id=\"%1$s\" patternUnits=\"userSpaceOnUse\" width=\"%2$.2f\" height=\"%2$.2f\">"
                                + "<image href=\"%3$s\" width=\"%2$.2f\" height=\"%2$.2f\"/></pattern></defs>",
                        id(fabric.name()),
                        side,
                        PieceDrawing.address(fabric.name())));
            } else {
                svg.append(Textures.tile(fabric));
            }
        }
    }

    /**
     * Adds the threads of a weave to a drawing.
     *
     * @param dot lengths of the drawing to one of the screen's dots
     * @return the ids of what each layer is to be filled with
     */
    public static List<String> threads(StringBuilder svg, Weave weave, double dot) {
        svg.append(Textures.threads(weave, dot));
        return ids(weave, dot);
    }

    private static List<String> ids(Weave weave, double dot) {
        return weave.tiles().stream().map(layer -> Textures.threads(layer, dot)).toList();
    }

    /**
     * What all swatches of a page are filled with, once for all of them. It goes into a drawing of no size before the first
     * {@link #laid swatch}.
     */
    public String sheet() {
        StringBuilder svg = new StringBuilder();
        tiles(svg);
        EnumSet<Weave> weaves = EnumSet.noneOf(Weave.class);
        fabrics.forEach(fabric -> weaves.add(Weave.named(fabric.name())));
        weaves.forEach(weave -> svg.append(Textures.threads(weave, SWATCH_DOT)));
        return svg.toString();
    }

    /** A swatch of a fabric, 4 in of it, on a page that has the {@link #sheet}. */
    public String laid(Fabric fabric) {
        return swatch(fabric, "");
    }

    /** A swatch of a fabric: 4 in of it, with its print and its threads. */
    public String swatch(Fabric fabric) {
        return swatch(fabric, new Swatches(List.of(fabric), across).sheet());
    }

    private String swatch(Fabric fabric, String sheet) {
        StringBuilder svg = new StringBuilder(
                "<svg class=\"fabric\" viewBox=\"0 0 100 100\" aria-hidden=\"true\" focusable=\"false\">");
        svg.append(sheet);
        filled(svg, fill(fabric));
        ids(Weave.named(fabric.name()), SWATCH_DOT).forEach(id -> filled(svg, "url(#" + id + ")"));
        return svg.append("</svg>").toString();
    }

    private static void filled(StringBuilder svg, String fill) {
        svg.append("<rect width=\"100\" height=\"100\" fill=\"").append(fill).append("\"/>");
    }

    /** Millimetres of cloth to a dot in a swatch that is shown 52 dots wide. */
    private static final double SWATCH_DOT = 100 / 52.0;
}
