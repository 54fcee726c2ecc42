package hearthcloth.guideline;

import hearthcloth.words.sentence.Sentence;

/**
 * A rule that a cloth does not keep.
 *
 * @param what how the cloth differs from it, a sentence
 */
public record Bend(Rule rule, Sentence what) {

    /** The rules, the one that is bent most readily first. */
    public enum Rule {
        COLOURS,
        MIDDLE,
        BARS,
        ROUNDS,
        JOINS,
        HEARTH,
        ORDER,
        SIZE
    }
}
