package hearthcloth.web.kit;

import hearthcloth.draw.fabric.FabricTile;
import hearthcloth.draw.fabric.Weave;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.stash.Fabric;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The patterns that fabrics are drawn with from their words, as SVG. They follow from name and colour alone and every
 * change on the bench needs them all, so those drawn last are kept. Thread-safe.
 */
final class Textures {

    /** Some stashes' fabrics; a pattern is a few thousand letters at most. */
    private static final int KEPT = 600;

    private static final Map<Fabric, String> TILES = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Fabric, String> eldest) {
            return size() > KEPT;
        }
    };

    private Textures() {}

    /** The pattern of a fabric in millimetres; empty for plain cloth. */
    static String tile(Fabric fabric) {
        synchronized (TILES) {
            String kept = TILES.get(fabric);
            if (kept == null) {
                kept = FabricTile.of(fabric)
                        .map(tile -> "<defs>" + SvgWriter.pattern(Swatches.id(fabric.name()), tile) + "</defs>")
                        .orElse("");
                TILES.put(fabric, kept);
            }
            return kept;
        }
    }

    /** What a layer of the threads of a weave is called in a drawing where so many lengths make a dot of the screen. */
    static String threads(Picture layer, double dot) {
        return "threads-" + layer.title() + "-" + Math.round(dot * 1000);
    }

    /** The threads of a weave, all its layers. */
    static String threads(Weave weave, double dot) {
        StringBuilder svg = new StringBuilder();
        for (Picture layer : weave.tiles()) {
            svg.append("<defs>")
                    .append(SvgWriter.pattern(threads(layer, dot), layer, dot))
                    .append("</defs>");
        }
        return svg.toString();
    }
}
