package hearthcloth.words.sentence;

import hearthcloth.measure.MeasureException;

/** Something thrown that says in a sentence why it cannot be, and the mend. */
public interface Refusal {

    /** What is said of it. */
    Sentence sentence();

    /** What is said of anything thrown: its sentence, or its own words where it has none. */
    static Sentence of(Throwable thrown) {
        if (thrown instanceof Refusal refusal) {
            return refusal.sentence();
        }
        return thrown instanceof MeasureException measure
                ? RefusedException.sentence(measure)
                : Sentence.itself(String.valueOf(thrown.getMessage()));
    }
}
