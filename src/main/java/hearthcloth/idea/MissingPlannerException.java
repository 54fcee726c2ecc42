package hearthcloth.idea;

import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.sentence.RulingSentences;
import hearthcloth.words.sentence.Sentence;

/** This program was built without the planner for pages; it carries a sentence with the mend. */
public final class MissingPlannerException extends RuntimeException implements Refusal {

    private static final long serialVersionUID = 1L;

    @Override
    public Sentence sentence() {
        return RulingSentences.plannerMissing();
    }

    /** The sentence in English. */
    @Override
    public String getMessage() {
        return sentence().english();
    }
}
