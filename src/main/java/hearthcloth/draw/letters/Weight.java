package hearthcloth.draw.letters;

/** The weights of the one typeface. */
public enum Weight {
    REGULAR(400, "Regular"),
    SEMIBOLD(600, "SemiBold"),
    BOLD(700, "Bold");

    private final int number;
    private final String file;

    Weight(int number, String file) {
        this.number = number;
        this.file = file;
    }

    /** The number in CSS: 400, 600, 700. */
    public int number() {
        return number;
    }

    /** The word in the names of font files. */
    String word() {
        return file;
    }
}
