package hearthcloth.wrap;

/**
 * A corner of the cloth, named by where it points from the gift, seen from above by the maker standing at the near
 * side. The first four belong to a cloth laid as a diamond, the others to one laid edge along edge.
 */
public enum Corner {
    RIGHT("right", 1, 0),
    FAR("far", 0, 1),
    LEFT("left", -1, 0),
    NEAR("near", 0, -1),
    FAR_RIGHT("far right", 1, 1),
    FAR_LEFT("far left", -1, 1),
    NEAR_LEFT("near left", -1, -1),
    NEAR_RIGHT("near right", 1, -1);

    private final String words;
    private final int right;
    private final int away;

    Corner(String words, int right, int away) {
        this.words = words;
        this.right = right;
        this.away = away;
    }

    /** In a sentence: {@code the far left corner}. */
    public String words() {
        return "the " + words + " corner";
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
