package hearthcloth.web;



/** How the example is told from her own work: a setting while it lies here, and ids that begin with a mark. */
final class ExampleMark {

    /** Present while the example lies in the workroom. */
    static final String SETTING = "example";

    /** What the ids of the example's pieces and cloths begin with: short, since pieces are called by it; no digit, so none of hers does. */
    static final String MARK = "ex";

    private ExampleMark() {}

    /** Whether a piece or cloth of this id belongs to the example. */
    static boolean isOn(String id) {
        return id.startsWith(MARK);
    }
}
