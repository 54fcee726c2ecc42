package hearthcloth.web.kit;

/** How the example is told from her own work: a setting while it lies here, and ids that begin with a mark. */
public final class ExampleMark {

    /** Present while the example lies in the workroom. */
    public static final String SETTING = "example";

    /** What the ids of the example's pieces and cloths begin with: short, since pieces are called by it; no digit, so none of hers does. */
    public static final String MARK = "ex";

    private ExampleMark() {}

    /** Whether a piece or cloth of this id belongs to the example. */
    public static boolean isOn(String id) {
        return id.startsWith(MARK);
    }
}
