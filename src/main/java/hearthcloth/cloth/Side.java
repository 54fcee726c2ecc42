package hearthcloth.cloth;

/** A side of an upright rectangle, seen from the front. */
public enum Side {
    LEFT,
    TOP,
    RIGHT,
    BOTTOM;

    public Side opposite() {
        return switch (this) {
            case LEFT -> RIGHT;
            case TOP -> BOTTOM;
            case RIGHT -> LEFT;
            case BOTTOM -> TOP;
        };
    }

    /** The side it becomes when the cloth is turned over like a page: left and right trade places. */
    public Side turnedOver() {
        return isUpright() ? opposite() : this;
    }

    /** True for left and right, whose edges run up and down. */
    public boolean isUpright() {
        return this == LEFT || this == RIGHT;
    }

    /** Lower-case name, as in files and notation. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
