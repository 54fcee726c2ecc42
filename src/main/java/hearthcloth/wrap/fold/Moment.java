package hearthcloth.wrap.fold;

import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;

/**
 * The cloth at one moment of tying: what is folded lies as in the finished fold, by the same facets; the corners whose
 * turn has not come still lie flat. What is turned about later, rolls and books, lies as it does before that.
 */
public enum Moment {
    /** Nothing folded, the gift on the cloth. */
    LAID,
    /** The near corner is over. */
    NEAR_OVER,
    /** Near and far are over. */
    NEAR_AND_FAR,
    /** All but the far corner are over. */
    ALL_BUT_FAR,
    /** The first two corners are tied, the other two wait. */
    FIRST_PAIR,
    /** Wound up in the cloth, or folded in from both sides; the ends still out. */
    WOUND,
    /** Done. */
    TIED;

    /** True where this moment of a tie can be drawn; the first and the last always can. */
    public boolean isDrawn(Tie tie, Gift gift) {
        return switch (this) {
            case LAID, TIED -> true;
            case NEAR_OVER, NEAR_AND_FAR, ALL_BUT_FAR -> gift instanceof Gift.Box && tie != Tie.EDGE_ALONG_EDGE;
            case FIRST_PAIR -> tie == Tie.EDGE_ALONG_EDGE || tie == Tie.ONE_BOTTLE || tie == Tie.ROUND;
            case WOUND -> tie == Tie.ROLL || tie == Tie.TWO_BOTTLES || tie == Tie.BOOKS;
        };
    }

    /**
     * The fold as far as it has come.
     *
     * @throws IllegalArgumentException where this moment cannot be drawn
     */
    public Fold of(Fold tied) {
        if (!isDrawn(tied.fit().tie(), tied.fit().gift())) {
            throw new IllegalArgumentException(
                    this + " of the " + tied.fit().tie().words() + " is not drawn");
        }
        return this == TIED ? tied : new Halfway(tied, this).fold();
    }
}
