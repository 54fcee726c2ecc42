package hearthcloth.cloth;

import hearthcloth.cloth.making.Face;

/** Which side of a fabric lies on the front of the cloth; SAME where the fabric looks alike from both. */
public enum Showing {
    SAME,
    RIGHT,
    WRONG;

    /** What shows on the other face. */
    public Showing turnedOver() {
        return switch (this) {
            case SAME -> SAME;
            case RIGHT -> WRONG;
            case WRONG -> RIGHT;
        };
    }

    /** What shows on {@code face}. */
    public Showing on(Face face) {
        return face == Face.FRONT ? this : turnedOver();
    }

    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
