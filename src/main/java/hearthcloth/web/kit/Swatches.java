package hearthcloth.web.kit;

import hearthcloth.draw.cloth.FabricTile;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.stash.Fabric;
import java.nio.charset.StandardCharsets;
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
}
