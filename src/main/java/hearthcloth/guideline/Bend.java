package hearthcloth.guideline;

/**
 * A rule that a cloth does not keep.
 *
 * @param what how the cloth differs from it, a sentence
 */
public record Bend(Rule rule, String what) {

    /** The rules, the one that is bent most readily first. */
    public enum Rule {
        COLOURS("colours"),
        MIDDLE("middle"),
        BARS("bars"),
        ROUNDS("rounds"),
        JOINS("joins"),
        HEARTH("hearth"),
        ORDER("order"),
        SIZE("size");

        private final String word;

        Rule(String word) {
            this.word = word;
        }

        /** The field of the guideline file. */
        public String word() {
            return word;
        }
    }
}
