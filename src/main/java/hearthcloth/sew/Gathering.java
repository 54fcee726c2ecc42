package hearthcloth.sew;

import hearthcloth.cloth.face.Layers;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * What to have ready before cutting. Cloths that shrink by different amounts pucker each other, so all are washed or
 * none (docs/sources.md#mixed-washing); cotton shrinks by 2 to 5 %, most of it in the first wash
 * (docs/sources.md#shrinkage).
 */
final class Gathering {

    /**
     * How much more unwashed cotton shrinks than washed, in thousandths: 3 % against ½ %
     * (docs/sources.md#shrink-difference).
     */
    private static final long SHRINKS_PER_THOUSAND = 25;

    /**
     * A relative luminance (0 to 1) below which a dye counts as deep; above {@link #PALE} another cloth shows every
     * stain (docs/sources.md#deep-dye).
     */
    private static final double DEEP = 0.08;

    private static final double PALE = 0.35;

    private Gathering() {}

    static Gather of(Plan plan, MakerWords words) {
        return new Gather(fabrics(plan, words), tools(plan), washing(plan, words), before(words));
    }

    private static List<Gather.FabricNeed> fabrics(Plan plan, MakerWords words) {
        List<Gather.FabricNeed> needs = new ArrayList<>();
        for (Fabric fabric : plan.fabrics()) {
            List<String> pieces = plan.cuts().stream()
                    .filter(cut -> cut.piece().fabric().name().equals(fabric.name()))
                    .map(cut -> "piece " + cut.piece().id() + ", "
                            + words.ruler().write(cut.piece().size(), Rounding.DOWN)
                            + (cut.past() ? ", cut already" : ""))
                    .toList();
            needs.add(new Gather.FabricNeed(fabric.name(), pieces));
        }
        return needs;
    }

    /** The tools. Needle sizes, and when needles break: docs/sources.md#needles. */
    private static List<String> tools(Plan plan) {
        boolean byHand = plan.cloth().making().seam().build() == SeamKind.Build.WHIPPED;
        boolean thick = Layers.most(plan.cloth()) >= 10;
        List<String> tools = new ArrayList<>();
        tools.add("Rotary cutter, ruler and mat, or shears, ruler and chalk");
        tools.add("Iron and board, a cup of water or a spray");
        tools.add(
                byHand
                        ? "Fine hand needles, and a sewing machine for the hem"
                        : "Sewing machine with a new needle, size " + (thick ? "90/14" : "80/12"));
        tools.add("Thread, see \"Thread\" in this guide");
        tools.add("Pins or clips, seam ripper, small scissors");
        tools.add("The patch slips, or small paper slips, and a pin for each");
        return tools;
    }

    private static List<String> washing(Plan plan, MakerWords words) {
        List<String> yes = pieces(plan, Piece.Washed.YES);
        List<String> no = pieces(plan, Piece.Washed.NO);
        List<String> unknown = pieces(plan, Piece.Washed.UNKNOWN);
        List<String> lines = new ArrayList<>();
        if (!yes.isEmpty() && !no.isEmpty()) {
            boolean fewWashed = yes.size() < no.size();
            lines.add("Washed and unwashed pieces are mixed. " + (fewWashed ? "Washed: " : "Not washed: ")
                    + MakerWords.list(fewWashed ? yes : no) + ".");
            lines.add(
                    "Wash the unwashed ones first and measure them again. Over the side of this cloth they could shrink"
                            + " about " + words.near(difference(plan))
                            + " more than the others, and the cloth would pucker.");
        } else if (!no.isEmpty()) {
            lines.add("Nothing has been washed" + (unknown.isEmpty() ? "" : ", as far as the stash says")
                    + ". Wash all of it now, the way you will wash the finished cloth, and measure again. If it has shrunk,"
                    + " plan again. Or wash none of it.");
        }
        if (!unknown.isEmpty() && !(no.isEmpty() && yes.isEmpty())) {
            lines.add("The stash does not say whether " + MakerWords.list(unknown)
                    + (unknown.size() == 1 ? " has" : " have") + " been washed. If in doubt, wash.");
        } else if (!unknown.isEmpty()) {
            lines.add("The stash does not say what has been washed. Wash all of it the way you will wash the finished"
                    + " cloth, and measure again. If it has shrunk, plan again. Or wash none of it.");
        }
        if (no.isEmpty() && unknown.isEmpty()) {
            lines.add("All the fabric has been washed.");
        }
        dye(plan, lines);
        return lines;
    }

    /**
     * How much an unwashed piece shrinks beyond a washed one over the cloth's longer side: 8.5 mm over 340 mm
     * (docs/sources.md#shrink-difference).
     */
    static Length difference(Plan plan) {
        Size size = plan.cloth().finished();
        return size.width().max(size.height()).times(SHRINKS_PER_THOUSAND).dividedBy(1_000, Rounding.UP);
    }

    /** A warning where deep and pale fabrics meet, with the soak test: docs/sources.md#soak-test. */
    private static void dye(Plan plan, List<String> lines) {
        List<String> deep = new ArrayList<>();
        boolean pale = false;
        for (Fabric fabric : plan.fabrics()) {
            double luminance = fabric.colour().luminance();
            if (luminance < DEEP) {
                deep.add(fabric.name());
            }
            pale |= luminance > PALE;
        }
        if (!deep.isEmpty() && pale) {
            lines.add("Deep colours can bleed into pale ones. Soak a corner of " + MakerWords.list(deep)
                    + " in warm soapy water for half an hour and press it wet on white cloth. If it stains, wash that fabric"
                    + " alone until it does not, or leave it out.");
        }
    }

    private static List<String> pieces(Plan plan, Piece.Washed washed) {
        return plan.cuts().stream()
                .map(PieceCut::piece)
                .filter(piece -> piece.washed() == washed)
                .map(piece -> "piece " + piece.id())
                .toList();
    }

    private static List<String> before(MakerWords words) {
        return List.of(
                "Press every piece flat and let it cool. Cut off the selvage if it is still there, and measure again.",
                "Lay each piece with its lengthwise grain (the direction of the selvage) running from top to bottom.",
                "First cut the left and the top edge straight and square to each other, because you measure every cut from"
                        + " an edge. Where a patch needs the piece to its very edge, take off no more than a thread or two.",
                "Measure each piece. If one is more than "
                        + words.exact(words.ruler().step().times(2))
                        + " smaller than in this plan, plan again with its true"
                        + " size.",
                "Pin its slip to every patch as soon as it is cut. Pin it on the side that will be the front of the cloth,"
                        + " with the top of the slip towards the top of the cloth.");
    }
}
