package hearthcloth.sew;

import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.speech.Voice;
import java.util.List;

/**
 * How a planned cloth is made, from the heap of fabric to the last pressing, as a value: every part can be printed,
 * shown on a screen beside the machine, or tested. All of it is read off the plan; nothing here decides anything about
 * the cloth.
 *
 * @param gather what to have ready
 * @param cutting one for each piece of fabric
 * @param sewing laying out, a trial seam, and one task for each seam
 * @param hemming empty where the cloth has no hem
 */
public record Guide(Gather gather, List<PieceTask> cutting, Sewing sewing, List<Task> hemming, Notes notes) {

    /**
     * From patches to one raw cloth.
     *
     * @param layout laying everything out before the first seam
     * @param trial the seam tried on two scraps
     * @param seams one for each seam, in sewing order
     */
    public record Sewing(Task layout, Task trial, List<SeamTask> seams) {
        public Sewing {
            seams = List.copyOf(seams);
        }
    }

    public Guide {
        cutting = List.copyOf(cutting);
        hemming = List.copyOf(hemming);
    }

    /** The guide for {@code plan} in English, with numbers as {@code ruler} shows them; best the ruler it was planned with. */
    public static Guide of(Plan plan, Ruler ruler) {
        return of(plan, Voice.english(ruler));
    }

    /** The same in any language. */
    public static Guide of(Plan plan, Voice voice) {
        MakerWords words = new MakerWords(voice);
        return new Guide(
                Gathering.of(plan, words),
                CuttingOut.of(plan, words),
                new Sewing(
                        TrialSeam.layout(plan.cloth(), voice.sewing()),
                        TrialSeam.seam(plan.cloth(), words),
                        SeamTasks.of(plan.cloth(), words)),
                Hemming.of(plan.cloth(), words),
                Advice.notes(plan, words));
    }
}
