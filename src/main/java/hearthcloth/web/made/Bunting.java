package hearthcloth.web.made;

import hearthcloth.stash.Fabric;
import hearthcloth.web.kit.Swatches;
import java.util.List;
import java.util.Locale;

/** A line of pennants from a cloth's own fabrics, hung over the page when it is sewn. A dot is a millimetre of cloth. */
final class Bunting {

    private static final int PENNANTS = 15;
    private static final double APART = 68;
    private static final double WIDE = 46;
    private static final double HIGH = 48;
    private static final double LENGTH = PENNANTS * APART;

    /** How far the line hangs through between its three pins. */
    private static final double SAG = 20;

    private Bunting() {}

    static String of(List<Fabric> fabrics, Swatches swatches) {
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg class=\"bunting\" viewBox=\"0 0 %.0f 74\" preserveAspectRatio=\"xMidYMin slice\""
                        + " aria-hidden=\"true\" focusable=\"false\">",
                LENGTH));
        swatches.tiles(svg);
        for (int i = 0; i < PENNANTS; i++) {
            double x = (i + 0.5) * APART;
            svg.append(String.format(
                    Locale.ROOT,
                    "<g class=\"pennant p%d\" transform=\"translate(%.1f %.1f)\"><path d=\"M%.1f 0h%.1fl%.1f %.1fz\""
                            + " fill=\"%s\"/></g>",
                    i % 5,
                    x,
                    line(x),
                    -WIDE / 2,
                    WIDE,
                    -WIDE / 2,
                    HIGH,
                    swatches.fill(fabrics.get(i % fabrics.size()))));
        }
        svg.append("<path class=\"line\" d=\"");
        for (double x = 0; x <= LENGTH; x += APART / 2) {
            svg.append(String.format(Locale.ROOT, "%s%.0f %.1f", x == 0 ? "M" : "L", x, line(x)));
        }
        return svg.append("\"/></svg>").toString();
    }

    /** How deep the line hangs there: two arcs from pin to pin. */
    private static double line(double x) {
        double half = LENGTH / 2;
        double share = x % half / half;
        return 4 + 4 * SAG * share * (1 - share);
    }
}
