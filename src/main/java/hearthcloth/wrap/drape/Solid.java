package hearthcloth.wrap.drape;

/** What cloth cannot enter, on a table at height zero. */
interface Solid {

    /**
     * How far a place lies outside, in millimetres; below zero inside.
     *
     * @param out filled with the unit vector of the shortest way out
     */
    double outside(double x, double y, double z, double[] out);

    /** Whether a place is so near an edge that a straight line of this length through it may cut the edge off. */
    boolean isByAnEdge(double x, double y, double z, double length);

    /** Nothing but the table. */
    Solid NOTHING = new Solid() {
        @Override
        public double outside(double x, double y, double z, double[] out) {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public boolean isByAnEdge(double x, double y, double z, double length) {
            return false;
        }
    };

    /** A box standing on the table, its middle over the origin; what lies under it is held there by its weight. */
    record Block(double halfL, double halfW, double height) implements Solid {

        @Override
        public double outside(double x, double y, double z, double[] out) {
            double dx = Math.abs(x) - halfL;
            double dy = Math.abs(y) - halfW;
            double dz = z - height;
            double ox = Math.max(dx, 0);
            double oy = Math.max(dy, 0);
            double oz = Math.max(dz, 0);
            double sx = x < 0 ? -1 : 1;
            double sy = y < 0 ? -1 : 1;
            double away = Math.sqrt(ox * ox + oy * oy + oz * oz);
            out[0] = 0;
            out[1] = 0;
            out[2] = 0;
            if (away > 0) {
                out[0] = sx * ox / away;
                out[1] = sy * oy / away;
                out[2] = oz / away;
                return away;
            }
            double most = Math.max(dx, Math.max(dy, dz));
            out[most == dx ? 0 : most == dy ? 1 : 2] = most == dx ? sx : most == dy ? sy : 1;
            return most;
        }

        @Override
        public boolean isByAnEdge(double x, double y, double z, double length) {
            double dx = Math.abs(x) - halfL;
            double dy = Math.abs(y) - halfW;
            double dz = z - height;
            if (dx > length || dy > length || dz > length) {
                return false;
            }
            return (dx > -length ? 1 : 0) + (dy > -length ? 1 : 0) + (dz > -length ? 1 : 0) > 1;
        }
    }

    /** A cylinder lying along x, its axis at a height. */
    record Bar(double radius, double axis) implements Solid {

        @Override
        public double outside(double x, double y, double z, double[] out) {
            double away = Math.sqrt(y * y + (z - axis) * (z - axis));
            out[0] = 0;
            out[1] = away == 0 ? 0 : y / away;
            out[2] = away == 0 ? 1 : (z - axis) / away;
            return away - radius;
        }

        @Override
        public boolean isByAnEdge(double x, double y, double z, double length) {
            return false;
        }
    }
}
