package hearthcloth.plan.colour;

/**
 * A rectangle of one fabric as the eye sees it in the finished cloth, in millimetres from its upper left corner.
 *
 * @param bar 0 for the hearth, otherwise the number of the bar from 1; parts of one bar have the same
 * @param fabric its number
 */
record Tile(int bar, int fabric, double x, double y, double right, double bottom) {

    /** Edges closer than this, in millimetres, are one: far below what is sewn. */
    private static final double NEAR = 0.01;

    /** The length along which two tiles meet edge to edge, in millimetres; 0 where they only share a corner. */
    double meets(Tile other) {
        if (Math.abs(right - other.x) < NEAR || Math.abs(other.right - x) < NEAR) {
            return Math.max(0, Math.min(bottom, other.bottom) - Math.max(y, other.y));
        }
        if (Math.abs(bottom - other.y) < NEAR || Math.abs(other.bottom - y) < NEAR) {
            return Math.max(0, Math.min(right, other.right) - Math.max(x, other.x));
        }
        return 0;
    }

    /** The rectangle round both, of this one's bar and fabric. */
    Tile around(Tile other) {
        return new Tile(
                bar,
                fabric,
                Math.min(x, other.x),
                Math.min(y, other.y),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    double middleX() {
        return (x + right) / 2;
    }

    double middleY() {
        return (y + bottom) / 2;
    }

    double areaMm2() {
        return (right - x) * (bottom - y);
    }
}
