package hearthcloth.wrap;

/** Why a cloth must be as large as a demand says. */
public enum Reason {
    KNOT,
    COVER,
    TUCK,
    OVERLAP
}
