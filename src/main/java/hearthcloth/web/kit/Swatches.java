package hearthcloth.web.kit;

import hearthcloth.draw.fabric.FabricTile;
import hearthcloth.draw.fabric.Weave;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.stash.Fabric;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
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
                                one.name().equals(fabric) && FabricTile.of(one).isPresent());
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
                FabricTile.of(fabric)
                        .ifPresent(tile -> svg.append("<defs>")
                                .append(SvgWriter.pattern(id(fabric.name()), tile))
                                .append("</defs>"));
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
        List<String> ids = new ArrayList<>();
        for (Picture tile : weave.tiles()) {
            String id = "threads-" + tile.title() + "-" + Math.round(dot * 1000);
            svg.append("<defs>").append(SvgWriter.pattern(id, tile, dot)).append("</defs>");
            ids.add(id);
        }
        return List.copyOf(ids);
    }

    /** A swatch of a fabric: 4 in of it, with its print and its threads. */
    public String swatch(Fabric fabric) {
        StringBuilder svg = new StringBuilder(
                "<svg class=\"fabric\" viewBox=\"0 0 100 100\" aria-hidden=\"true\" focusable=\"false\">");
        tiles(svg);
        String fill = isFigured(fabric.name())
                ? "url(#" + id(fabric.name()) + ")"
                : fabric.colour().hex();
        svg.append("<rect width=\"100\" height=\"100\" fill=\"").append(fill).append("\"/>");
        threads(svg, Weave.named(fabric.name()), SWATCH_DOT)
                .forEach(id -> svg.append("<rect width=\"100\" height=\"100\" fill=\"url(#")
                        .append(id)
                        .append(")\"/>"));
        return svg.append("</svg>").toString();
    }

    /** Millimetres of cloth to a dot in a swatch that is shown 52 dots wide. */
    private static final double SWATCH_DOT = 100 / 52.0;
}
