package hearthcloth.wrap.fold;

import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import java.util.List;

/**
 * The cloth at one moment of tying. What is already folded lies as in the finished fold, by the same facets; corners
 * that are not folded yet lie flat, stand out or are held. Rolls and books, which are turned about later, lie as they
 * do before that.
 */
public enum TyingMoment {
    /** Nothing folded, the gift on the cloth. */
    LAID,
    /** The near corner is over. */
    NEAR_OVER,
    /** Near and far are over; the cloth beside them stands out to the left and right. */
    NEAR_AND_FAR,
    /** All but the far corner are over. */
    ALL_BUT_FAR,
    /** The first two corners are tied, the other two wait. */
    FIRST_PAIR,
    /** Wound up in the cloth, or folded in from both sides; the ends still out. */
    WOUND,
    /** Left and right are lifted and held, the corners beside them folded flat inside. */
    SIDES_UP,
    /** Of two knots one is tied, the other side waits. */
    ONE_SIDE,
    /** The cloth's edges are folded over the rim; the second pair hangs outside. */
    FLAPS_OVER,
    /** What lay is stood up; the ends still open. */
    STOOD,
    /** The ends are brought in over the gift's ends. */
    ENDS_IN,
    /** The ends are crossed. */
    CROSSED,
    /** What lay open is closed. */
    CLOSED,
    /** Done. */
    TIED,
    /** Done, and the knot covered with a loose corner. */
    HIDDEN,
    /** Done, and a handle made. */
    HANDLE;

    /** The moments of a tie that can be drawn, in order. */
    public static List<TyingMoment> of(Tie tie, Gift gift) {
        return switch (tie) {
            case FOUR_CORNER -> List.of(LAID, NEAR_AND_FAR, SIDES_UP, TIED);
            case EDGE_ALONG_EDGE -> List.of(LAID, FIRST_PAIR, FLAPS_OVER, TIED);
            case ERRAND -> List.of(LAID, NEAR_OVER, NEAR_AND_FAR, SIDES_UP, TIED, HIDDEN);
            case FLAT -> List.of(LAID, NEAR_OVER, ALL_BUT_FAR, TIED);
            case TWO_KNOT ->
                gift instanceof Gift.Box
                        ? List.of(LAID, NEAR_AND_FAR, ONE_SIDE, TIED)
                        : List.of(LAID, NEAR_AND_FAR, ENDS_IN, TIED);
            case ONE_BOTTLE -> List.of(LAID, FIRST_PAIR, CROSSED, TIED, HANDLE);
            case TWO_BOTTLES -> List.of(LAID, WOUND, STOOD, TIED);
            case ROUND -> List.of(LAID, FIRST_PAIR, TIED, HANDLE);
            case BOOKS -> List.of(LAID, WOUND, ENDS_IN, CLOSED, TIED);
            case ROLL -> List.of(LAID, WOUND, ENDS_IN, CROSSED, TIED);
        };
    }

    /** Whether this moment of a tie can be drawn; the first and the last always can. */
    public boolean isDrawn(Tie tie, Gift gift) {
        return of(tie, gift).contains(this);
    }
}
