package hearthcloth.sew;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.face.Layers;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.thread.Stitch;
import hearthcloth.sew.thread.ThreadNeed;
import hearthcloth.words.sewing.SewingWords;
import hearthcloth.words.speech.Voice;
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
                thread,
                threadWords(thread, plan, words),
                thick(plan.cloth(), words),
                cautions(words.said()),
                washing(plan, words.said()));
    }

    private static String threadWords(ThreadNeed thread, Plan plan, MakerWords words) {
        Voice voice = words.voice();
        SewingWords said = words.said();
        String total = voice.run(thread.total(), Rounding.UP);
        String tail = words.ruler().isMetric() ? "10 cm" : "4 " + voice.unit();
        String ply = voice.local("0.25") + " mm";
        String percent = voice.measuring().percent(Integer.toString(ThreadNeed.MARGIN_PERCENT));
        boolean byHand = plan.cloth().making().seam().rows() == 1;
        return byHand
                ? said.threadHand(percent, ply, words.stitch(), tail, total)
                : said.threadMachine(voice.run(thread.each(), Rounding.UP), percent, ply, words.stitch(), tail, total);
    }

    private static List<String> thick(Cloth cloth, MakerWords words) {
        SewingWords said = words.said();
        Map<Integer, Integer> places = new TreeMap<>(java.util.Comparator.reverseOrder());
        Layers.spots(cloth).forEach(spot -> places.merge(spot.plies(), 1, Integer::sum));
        List<String> lines = new ArrayList<>();
        if (!cloth.steps().isEmpty()) {
            lines.add(said.thickBand(Integer.toString(Layers.band(cloth))));
        }
        places.forEach(
                (plies, count) -> lines.add(said.thickPlace(height(plies, words), count, Integer.toString(plies))));
        if (!places.isEmpty()) {
            lines.add(said.thickPress());
            lines.add(said.thickFoot());
        }
        return lines;
    }

    /** Whole millimetres, or sixteenths of an inch; cloth gives more than that. */
    private static String height(int plies, MakerWords words) {
        Length height = Stitch.USUAL.ply().times(plies);
        return words.ruler().isMetric()
                ? Rounding.NEAREST.quotient(height.nm(), Length.mm(1).nm()) + " mm"
                : words.voice().by(Ruler.SIXTEENTHS).write(height, Rounding.NEAREST);
    }

    private static List<Caution> cautions(SewingWords said) {
        return List.of(
                new Caution(said.careCutterTitle(), said.careCutter()),
                new Caution(said.careIronTitle(), said.careIron()),
                new Caution(said.careNeedleTitle(), said.careNeedle()),
                new Caution(said.careChildrenTitle(), said.careChildren()),
                new Caution(said.careDyeTitle(), said.careDye()),
                new Caution(said.careFlamesTitle(), said.careFlames()),
                new Caution(said.careFoodTitle(), said.careFood()));
    }

    private static List<String> washing(Plan plan, SewingWords said) {
        return List.of(
                said.washingAlone(),
                said.washingSquare(MakerWords.face(plan.cloth().making().fell())));
    }
}
