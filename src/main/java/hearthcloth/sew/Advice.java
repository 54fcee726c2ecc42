package hearthcloth.sew;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.face.Layers;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.thread.Stitch;
import hearthcloth.sew.thread.ThreadNeed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Thread, thick places, cautions and washing, in our own words. Sources: docs/sources.md#cutter-iron-pins, #needles,
 * #cords, #flames, #food, #finished-washing. The sources of cords are about toys and clothes; holding knotted cloths to
 * the shortest length is our choice.
 */
final class Advice {

    private Advice() {}

    static Notes notes(Plan plan, MakerWords words) {
        ThreadNeed thread = ThreadNeed.of(plan.cloth(), Stitch.USUAL);
        return new Notes(
                thread, threadWords(thread, plan, words), thick(plan.cloth(), words), cautions(), washing(plan));
    }

    private static String threadWords(ThreadNeed thread, Plan plan, MakerWords words) {
        Length total = thread.total();
        boolean byHand = plan.cloth().making().seam().rows() == 1;
        String halves =
                byHand ? "" : ", half of it, " + words.ruler().run(thread.each(), Rounding.UP) + ", wound on bobbins";
        return "About " + words.ruler().run(total, Rounding.UP) + " in all" + halves + ". Reckoned for stitches of "
                + "2.5 mm in cloth 0.25 mm thick, tails of "
                + (words.ruler().isMetric() ? "10 cm" : "4 in") + " at both ends of every row, and "
                + ThreadNeed.MARGIN_PERCENT + " % on top.";
    }

    private static List<String> thick(Cloth cloth, MakerWords words) {
        Map<Integer, Integer> places = new TreeMap<>(java.util.Comparator.reverseOrder());
        Layers.spots(cloth).forEach(spot -> places.merge(spot.plies(), 1, Integer::sum));
        List<String> lines = new ArrayList<>();
        if (!cloth.steps().isEmpty()) {
            lines.add("A plain run of seam has " + Layers.band(cloth) + " layers.");
        }
        places.forEach((plies, count) ->
                lines.add("Up to " + plies + " layers at " + MakerWords.count(count, "place") + ", about "
                        + height(plies, words)
                        + " thick."));
        if (!places.isEmpty()) {
            lines.add("Before each thick place: press it hard with steam, or tap it flat with a hammer under a scrap of"
                    + " cloth.");
            lines.add(
                    "At it: lift the foot level with a folded scrap behind it, lengthen the stitch a little, and turn the"
                            + " wheel by hand. Never push or pull; that bends the needle.");
        }
        return lines;
    }

    /** Whole millimetres, or sixteenths of an inch; cloth gives more than that. */
    private static String height(int plies, MakerWords words) {
        Length height = Stitch.USUAL.ply().times(plies);
        return words.ruler().isMetric()
                ? Rounding.NEAREST.quotient(height.nm(), Length.mm(1).nm()) + " mm"
                : Ruler.SIXTEENTHS.write(height, Rounding.NEAREST);
    }

    private static List<Caution> cautions() {
        return List.of(
                new Caution(
                        "Rotary cutter",
                        "Shut the guard after every cut. Cut away from yourself, the blade upright, fingers well behind the"
                                + " ruler's edge, no pins on the mat. Wrap old blades before you throw them away."),
                new Caution(
                        "Iron",
                        "Stand it on its heel where the cord cannot be caught. Keep face and fingers out of the steam, and"
                                + " pull the plug when you stop."),
                new Caution(
                        "Needle",
                        "Take pins out before they reach the foot, and never hold them in your mouth. If a needle breaks at"
                                + " a thick place, find every bit of it."),
                new Caution(
                        "Small children",
                        "A knotted cloth is a cord and a noose. Keep it away from children under three, above all with ends"
                                + " longer than 22 cm (8½ in)."),
                new Caution(
                        "Dye",
                        "Deep reds, blues and purples may bleed for the first few washes, and when a damp cloth lies on"
                                + " something pale."),
                new Caution(
                        "Candles and hobs", "Cloth burns. Keep a wrapped gift at least 30 cm (12 in) from any flame."),
                new Caution(
                        "Food",
                        "For food keep a cloth of its own, washed often and dried right through. Raw meat goes in a closed"
                                + " bag first."));
    }

    private static List<String> washing(Plan plan) {
        List<String> lines = new ArrayList<>();
        lines.add(
                "Wash the finished cloth alone the first time, as gently as its most delicate fabric asks: when in doubt"
                        + " by hand in cool water.");
        lines.add("Pull it square while it is damp, dry it flat, and press it from the "
                + MakerWords.face(plan.cloth().making().fell()) + " before it is bone dry.");
        return lines;
    }
}
