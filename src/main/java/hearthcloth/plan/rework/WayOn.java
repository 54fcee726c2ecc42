package hearthcloth.plan.rework;

import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.sentence.Sentence;
import java.util.List;
import java.util.Set;

/**
 * One way on after a cut went wrong: a whole plan, with everything that was cut before in its place.
 *
 * @param made the cuts of {@code plan} that are made already, as {@link Miscut#made}
 * @param told in sentences: what is done, from which piece, what else changes
 */
public record WayOn(Kind kind, Design design, Plan plan, Set<String> made, List<Sentence> told) {

    public WayOn {
        made = Set.copyOf(made);
        told = List.copyOf(told);
    }

    /** Bars that are of another fabric after a change of plan than before it, a sentence each. */
    public static List<Sentence> otherFabrics(Plan before, Plan after) {
        return WayWords.otherFabrics(before, after);
    }

    /** What is done about it, in the order in which ways are offered. */
    public enum Kind {
        /** The patch is used as it is, and bars not cut yet are cut wider, so that the cloth keeps its size. */
        WIDER_NEIGHBOURS,
        /** The patch is cut again from another piece. */
        ANOTHER_PIECE,
        /** A strip is joined to the patch. */
        JOINED_STRIP,
        /** The patch is used as it is, and the cloth becomes smaller. */
        SMALLER_CLOTH
    }
}
