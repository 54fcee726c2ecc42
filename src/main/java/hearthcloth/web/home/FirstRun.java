package hearthcloth.web.home;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.Step;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.colour.Colour;
import hearthcloth.draw.fabric.FabricLook;
import hearthcloth.draw.tied.Thumbnail;
import hearthcloth.draw.tied.TiedGift;
import hearthcloth.draw.tied.TiedLook;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.stash.Fabric;
import hearthcloth.web.kit.Swatches;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.tie.TiedFold;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The first time: nine scraps become a cloth and are tied round a box, in twenty seconds. A small scene of our own; the
 * cloth is a cloth and the gift is tied by its folds, so that nothing in it is otherwise than the workroom makes it.
 */
final class FirstRun {

    private static final Length SIDE = Length.inches(30);
    private static final int ROUNDS = 3;
    private static final Length BAR = Length.inches(15, 4);

    private static final List<Fabric> FABRICS = List.of(
            fabric("navy linen", 0x27375c),
            fabric("birds print", 0xefe8da),
            fabric("oat cotton", 0xdccaa2),
            fabric("madder check", 0xc48a78),
            fabric("rose dot", 0xd08f8a),
            fabric("ochre lantern print", 0xcf9f45),
            fabric("ticking stripe", 0xcdd2da),
            fabric("kelp linen", 0x4f6b57),
            fabric("plum posy", 0x5d3248));

    /** Each bar's fabric, from the hearth outwards. */
    private static final int[] BARS = {1, 2, 3, 4, 5, 1, 7, 3, 2, 6, 8, 7};

    /** Where the scraps lie, in inches from the middle: x, y, width, height, turn. */
    private static final double[][] SCRAPS = {
        {-8, 2, 12, 12, 5},
        {-16, 8, 15, 7, 4},
        {5, -8, 22, 4, -6},
        {-19, -5, 11, 13, -8},
        {-7, 12, 6, 8, 14},
        {12, 1, 9, 6, -5},
        {13, 12, 17, 4, -4},
        {6, 7, 20, 4, 8},
        {21, -1, 5, 13, 9}
    };

    private FirstRun() {}

    private static Fabric fabric(String name, int rgb) {
        return new Fabric(name, Colour.of(rgb), Fabric.Faces.SAME, Fabric.Nap.ANY);
    }

    private static Layout layout() {
        return new Layout(
                Size.square(SIDE.minus(BAR.times(2L * ROUNDS))), Layout.courses(Order.ROUND, ROUNDS, List.of(BAR)));
    }

    private static Cloth cloth() {
        List<List<Layout.Part>> bars = new ArrayList<>();
        List<Layout.Slot> slots = layout().slots();
        for (int i = 0; i < slots.size(); i++) {
            bars.add(List.of(new Layout.Part(
                    FABRICS.get(BARS[i]).name(), Showing.SAME, slots.get(i).length())));
        }
        return new Cloth(layout().sewn(FABRICS.get(0).name(), Showing.SAME, bars), Making.inches());
    }

    /** Scraps and bars, as SVG; which is there when, the style sheet says. */
    static String film() {
        Swatches swatches = new Swatches(FABRICS, Map.of());
        StringBuilder svg = new StringBuilder(
                "<svg class=\"film\" viewBox=\"-760 -500 1520 1000\" aria-hidden=\"true\" focusable=\"false\">");
        swatches.tiles(svg);
        svg.append("<g class=\"scraps\">");
        for (int i = 0; i < SCRAPS.length; i++) {
            double[] at = SCRAPS[i];
            svg.append(String.format(
                    Locale.ROOT,
                    "<g class=\"in drop d%d\"><rect transform=\"translate(%.0f %.0f) rotate(%.0f)\" x=\"%.0f\""
                            + " y=\"%.0f\" width=\"%.0f\" height=\"%.0f\" fill=\"%s\"/></g>",
                    i,
                    at[0] * 25.4,
                    at[1] * 25.4,
                    at[4],
                    -at[2] * 12.7,
                    -at[3] * 12.7,
                    at[2] * 25.4,
                    at[3] * 25.4,
                    swatches.fill(FABRICS.get(i))));
        }
        svg.append("</g><g class=\"made\">");
        bars(svg, swatches);
        return svg.append("</g></svg>").toString();
    }

    /** Patches in the order they are sewn on. */
    private static void bars(StringBuilder svg, Swatches swatches) {
        Cloth cloth = cloth();
        Map<String, Fabric> fabrics = new LinkedHashMap<>();
        FABRICS.forEach(fabric -> fabrics.put(fabric.name(), fabric));
        double half = SIDE.in(Unit.MILLIMETRE) / 2;
        List<Place> order = sewn(cloth);
        for (Laid laid : cloth.laid()) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<rect class=\"in b%d\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"%s\"/>",
                    order.indexOf(laid.patch().place()),
                    laid.at().x().in(Unit.MILLIMETRE) - half,
                    laid.at().y().in(Unit.MILLIMETRE) - half,
                    laid.at().width().in(Unit.MILLIMETRE),
                    laid.at().height().in(Unit.MILLIMETRE),
                    swatches.fill(fabrics.getOrDefault(laid.patch().fabric(), FABRICS.get(0)))));
        }
    }

    /** The places in the order they are sewn, the hearth first. */
    private static List<Place> sewn(Cloth cloth) {
        List<Place> order = new ArrayList<>();
        for (Step step : cloth.steps()) {
            if (order.isEmpty()) {
                step.patches(step.added().other()).forEach(patch -> order.add(patch.place()));
            }
            step.patches(step.added()).forEach(patch -> order.add(patch.place()));
        }
        return order;
    }

    /** The gift tied, as a picture of its own, which is fetched while the scraps still fall. */
    static String tied() {
        Cloth cloth = cloth();
        Gift box = Gift.parse("box 12 x 9 x 4 in", null);
        Map<String, FabricLook> looks = new LinkedHashMap<>();
        IntStream.range(0, FABRICS.size())
                .forEach(i -> looks.put(FABRICS.get(i).name(), FabricLook.of(FABRICS.get(i))));
        TiedLook look = new TiedLook(looks, Colour.of(0x5b616b));
        var fit = Tie.FOUR_CORNER.fit(box, cloth.finished(), Tail.INCHES.usual());
        return Thumbnail.of(TiedGift.of(cloth, TiedFold.of(fit), look))
                .replaceFirst("<svg ", "<svg xmlns=\"http://www.w3.org/2000/svg\" ")
                .replace("class=\"shade\"", "fill=\"#14181f\" fill-opacity=\".16\"");
    }
}
