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
                byHand ? "." : "; wind half of it, " + words.ruler().run(thread.each(), Rounding.UP) + ", on bobbins.";
        return "About " + words.ruler().run(total, Rounding.UP) + " in all" + halves + " Set your stitch length to "
                + MakerWords.STITCH + ". This allows for cloth 0.25 mm thick, "
                + (words.ruler().isMetric() ? "10 cm" : "4 in") + " of thread left at both ends of every row, and "
                + ThreadNeed.MARGIN_PERCENT + " % extra.";
    }

    private static List<String> thick(Cloth cloth, MakerWords words) {
        Map<Integer, Integer> places = new TreeMap<>(java.util.Comparator.reverseOrder());
        Layers.spots(cloth).forEach(spot -> places.merge(spot.plies(), 1, Integer::sum));
        List<String> lines = new ArrayList<>();
        if (!cloth.steps().isEmpty()) {
            lines.add("An ordinary stretch of seam has " + Layers.band(cloth) + " layers.");
        }
        places.forEach((plies, count) ->
                lines.add("Up to " + plies + " layers at " + MakerWords.count(count, "place") + ", about "
                        + height(plies, words)
                        + " thick."));
        if (!places.isEmpty()) {
            lines.add(
                    "Before you sew over a thick place, press it hard with steam. Or lay a scrap of cloth on it and tap"
                            + " it flat with a hammer.");
            lines.add(
                    "When you reach it, put a folded scrap behind the presser foot to keep the foot level. Lengthen the"
                            + " stitch a little and turn the handwheel. Never push or pull the cloth; that bends the needle.");
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
                        "Shut the guard after every cut. Cut away from yourself with the blade upright. Keep your fingers well"
                                + " back from the edge of the ruler, and keep pins off the mat. Wrap old blades before you throw"
                                + " them away."),
                new Caution(
                        "Iron",
                        "Stand it on its heel where nobody can catch the cord. Keep your face and fingers out of the steam."
                                + " Unplug it when you stop."),
                new Caution(
                        "Needle",
                        "Take pins out before they reach the foot, and never hold them in your mouth. If a needle breaks,"
                                + " find every piece of it."),
                new Caution(
                        "Small children",
                        "A knotted cloth can tighten round a neck. Keep it away from children under three, above all when"
                                + " its ends are longer than 22 cm (8½ in)."),
                new Caution(
                        "Dye",
                        "Deep reds, blues and purples may bleed in the first few washes. They may also bleed when a damp"
                                + " cloth lies on something pale."),
                new Caution(
                        "Candles and hobs", "Cloth burns. Keep a wrapped gift at least 30 cm (12 in) from any flame."),
                new Caution(
                        "Food",
                        "Keep a separate cloth for food. Wash it often and dry it right through. Put raw meat in a closed bag"
                                + " first."));
    }

    private static List<String> washing(Plan plan) {
        List<String> lines = new ArrayList<>();
        lines.add(
                "Wash the finished cloth alone the first time, as gently as its most delicate fabric needs. If in doubt,"
                        + " wash it by hand in cool water.");
        lines.add("Pull it square while it is damp and dry it flat. Press it on the "
                + MakerWords.face(plan.cloth().making().fell()) + " before it is fully dry.");
        return lines;
    }
}
