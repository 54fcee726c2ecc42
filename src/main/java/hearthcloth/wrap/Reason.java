package hearthcloth.wrap;

/** Why a cloth must be as large as a demand says. */
public enum Reason {
    KNOT("the knot and its ends"),
    COVER("covering the gift"),
    TUCK("tucking in the last flap"),
    OVERLAP("the overlap of the side flaps");

    private final String words;

    Reason(String words) {
        this.words = words;
    }

    /** In a sentence: {@code the knot and its ends}. */
    public String words() {
        return words;
    }
}
