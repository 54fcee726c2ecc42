package hearthcloth.web.piecing;

import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.plan.patchwork.MarkedHeap;
import hearthcloth.stash.Fabric;
import hearthcloth.web.kit.Swatches;
import java.util.Locale;
import java.util.function.IntFunction;

/** Scraps put together, as SVG: every patch a link, its number on it. To one scale on the whole page; lengths are millimetres. */
final class PartDrawing {

    /** Pixels of the longer side of the cloth. */
    private static final double STAGE = 520;

    /** Letters are so many pixels high. */
    private static final double LETTERS = 13;

    private final MarkedHeap heap;
    private final Swatches swatches;
    private final double pixels;
    private final IntFunction<Tap> taps;
    private final StringBuilder svg = new StringBuilder();

    /**
     * What a tap on a scrap leads to.
     *
     * @param words for those who cannot see it
     */
    record Tap(String href, String words, boolean chosen, boolean locked) {}

    /**
     * Prepares.
     *
     * @param longest the longer side of the cloth
     * @param taps by the scrap's place in the heap
     */
    PartDrawing(MarkedHeap heap, Swatches swatches, Length longest, IntFunction<Tap> taps) {
        this.heap = heap;
        this.swatches = swatches;
        this.pixels = STAGE / longest.in(Unit.MILLIMETRE);
        this.taps = taps;
    }

    /** One part whose edges meet. */
    String drawn(Pieced part) {
        svg.setLength(0);
        double width = mm(width(part));
        double height = mm(height(part));
        svg.append(String.format(
                Locale.ROOT,
                "<svg class=\"part\" viewBox=\"0 0 %.1f %.1f\" width=\"%.0f\" height=\"%.0f\" role=\"group\">",
                width,
                height,
                Math.max(LETTERS, width * pixels),
                Math.max(LETTERS, height * pixels)));
        draw(part, 0, 0);
        return svg.append("</svg>").toString();
    }

    private void draw(Pieced tree, double x, double y) {
        if (tree instanceof Joint joint) {
            draw(joint.first(), x, y);
            draw(
                    joint.second(),
                    joint.beside() ? x + mm(width(joint.first())) : x,
                    joint.beside() ? y : y + mm(height(joint.first())));
            return;
        }
        patch((ScrapPatch) tree, x, y);
    }

    private void patch(ScrapPatch patch, double x, double y) {
        Tap tap = taps.apply(patch.scrap());
        Fabric fabric = heap.pieces().get(patch.scrap()).fabric();
        String at = String.format(
                Locale.ROOT,
                "x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"",
                x,
                y,
                mm(patch.width()),
                mm(patch.height()));
        svg.append("<a class=\"tap\" href=\"")
                .append(escaped(tap.href()))
                .append("\" aria-label=\"")
                .append(escaped(tap.words()))
                .append(tap.chosen() ? "\" aria-current=\"true\">" : "\">")
                .append("<rect ")
                .append(at)
                .append(" fill=\"")
                .append(swatches.fill(fabric))
                .append("\" class=\"patch")
                .append(tap.chosen() ? " picked" : "")
                .append("\"/>");
        label(patch, fabric, x, y, tap.locked());
        svg.append("</a>");
    }

    private void label(ScrapPatch patch, Fabric fabric, double x, double y, boolean locked) {
        String words = heap.pieces().get(patch.scrap()).id() + (locked ? " \u25cf" : "");
        double size = Math.min(LETTERS / pixels, mm(Math.min(patch.width(), patch.height())) * 0.6);
        svg.append(String.format(
                        Locale.ROOT,
                        "<text x=\"%.1f\" y=\"%.1f\" font-size=\"%.1f\" text-anchor=\"middle\""
                                + " dominant-baseline=\"central\" fill=\"%s\" stroke=\"%s\" stroke-width=\"%.2f\""
                                + " paint-order=\"stroke\" aria-hidden=\"true\">",
                        x + mm(patch.width()) / 2,
                        y + mm(patch.height()) / 2,
                        size,
                        fabric.colour().inkOn().hex(),
                        fabric.colour().hex(),
                        size / 4))
                .append(escaped(words))
                .append("</text>");
    }

    private static long width(Pieced tree) {
        if (tree instanceof Joint joint) {
            return width(joint.first()) + (joint.beside() ? width(joint.second()) : 0);
        }
        return ((ScrapPatch) tree).width();
    }

    private static long height(Pieced tree) {
        if (tree instanceof Joint joint) {
            return height(joint.first()) + (joint.beside() ? 0 : height(joint.second()));
        }
        return ((ScrapPatch) tree).height();
    }

    private double mm(long marks) {
        return heap.mark().times(marks).in(Unit.MILLIMETRE);
    }

    private static String escaped(String text) {
        gg.jte.output.StringOutput out = new gg.jte.output.StringOutput();
        gg.jte.html.escape.Escape.htmlAttribute(text, out);
        return out.toString();
    }
}
