package hearthcloth.idea;

/** This program was built without the planner for pages; the message is a sentence with the mend. */
public final class MissingPlannerException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    MissingPlannerException() {
        super(
                "This Hearthcloth was built without the planner for pages; run ideapage/build in its folder, then build it again.");
    }
}
