package hearthcloth.sew.machine;

import hearthcloth.cloth.Step;
import hearthcloth.sew.Guide;
import hearthcloth.sew.SeamTask;
import hearthcloth.sew.Task;
import hearthcloth.words.sewing.SewingWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One thing to do at the machine or the ironing board, for a screen that shows nothing else.
 *
 * @param seam the seam that it sews, where it is one
 * @param thick where it is thick, in a few words; empty where it is nowhere
 */
public record AtTheMachine(Kind kind, Task task, Optional<Step> seam, String thick) {

    /** What is done. */
    public enum Kind {
        /** Laying everything out before the first seam. */
        LAY,
        /** A seam tried on scraps. */
        TRY,
        /** Two parts of one bar joined. */
        JOIN,
        /** A bar sewn to the work. */
        SEAM,
        HEM
    }

    private static final int BEFORE_SEAMS = 2;

    /** Everything from laying out to the last corner of the hem, in order. */
    public static List<AtTheMachine> of(Guide guide, SewingWords words) {
        List<AtTheMachine> all = new ArrayList<>();
        all.add(new AtTheMachine(Kind.LAY, guide.sewing().layout(), Optional.empty(), ""));
        if (!guide.sewing().seams().isEmpty()) {
            all.add(new AtTheMachine(Kind.TRY, guide.sewing().trial(), Optional.empty(), ""));
        }
        for (SeamTask seam : guide.sewing().seams()) {
            Kind kind = seam.step().joinedBar().isPresent() ? Kind.JOIN : Kind.SEAM;
            String thick = seam.glance().thick().isEmpty()
                    ? ""
                    : words.thickAt(seam.glance().thick());
            all.add(new AtTheMachine(kind, seam.task(), Optional.of(seam.step()), thick));
        }
        guide.hemming().forEach(task -> all.add(new AtTheMachine(Kind.HEM, task, Optional.empty(), hem(task, words))));
        return List.copyOf(all);
    }

    /**
     * How many seams, joins among them, are sewn when so many steps are done: before the first comes laying out, and a seam that
     * is tried.
     *
     * @param done steps that are done
     * @param seams of the whole cloth
     */
    public static int seams(int done, int seams) {
        return Math.max(0, Math.min(done - BEFORE_SEAMS, seams));
    }

    private static String hem(Task task, SewingWords words) {
        return task.warnings().isEmpty() ? "" : words.thickHem();
    }
}
