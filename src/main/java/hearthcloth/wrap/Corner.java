package hearthcloth.wrap;

/**
 * A corner of the cloth, named by where it points from the gift, seen from above by the maker standing at the near
 * side. The first four belong to a cloth laid as a diamond, the others to one laid edge along edge.
 */
public enum Corner {
    RIGHT(1, 0),
    FAR(0, 1),
    LEFT(-1, 0),
    NEAR(0, -1),
    FAR_RIGHT(1, 1),
    FAR_LEFT(-1, 1),
    NEAR_LEFT(-1, -1),
    NEAR_RIGHT(1, -1);

    private final int right;
    private final int away;

    Corner(int right, int away) {
        this.right = right;
        this.away = away;
    }

    /** −1, 0 or 1: towards the maker's left or right. */
    public int right() {
        return right;
    }

    /** −1, 0 or 1: towards or away from the maker. */
    public int away() {
        return away;
    }
}
