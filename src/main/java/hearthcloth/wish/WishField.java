package hearthcloth.wish;

/** Everything that can be wished, with its name in the shell; a page calls it by the same name without the dashes. */
public enum WishField {
    GIFT("gift"),
    TIE("tie"),
    SLACK("slack"),
    OUTSIDE("outside"),
    TURNED("turned"),
    OFF_MIDDLE("off-middle"),
    SHOW("show"),
    SIZE("size"),
    HEARTH("hearth"),
    BARS("bars"),
    ROUNDS("rounds"),
    ORDER("order"),
    FREE("free"),
    BLOCKS("blocks"),
    SETTING("setting"),
    SCRAPS("scraps"),
    WITH("with"),
    MIDDLE("middle"),
    MOST_TRIM("most-trim"),
    SIZES("sizes"),
    BANDS("bands"),
    SEAM("seam"),
    HEM("hem"),
    CORNER("corner"),
    FELL("fell"),
    LEEWAY("leeway"),
    TRIM("trim"),
    LEAST_PIECE("least-piece"),
    CLEARANCE("clearance"),
    MOST_JOINS("most-joins"),
    SCHEME("scheme"),
    CONTRAST("contrast"),
    FABRICS("fabrics"),
    PROPOSALS("proposals"),
    SEED("seed");

    private final String word;

    WishField(String word) {
        this.word = word;
    }

    String option() {
        return "--" + word;
    }
}
