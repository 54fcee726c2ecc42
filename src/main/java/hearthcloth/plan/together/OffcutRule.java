package hearthcloth.plan.together;

/** What becomes of what one cloth leaves of a piece. */
public enum OffcutRule {
    /** Another cloth may be cut from it, after the first. */
    SHARED,
    /** It goes back to the heap when the cloth is cut: each piece is one cloth's alone, so that pieces can be moved by hand. */
    KEPT
}
