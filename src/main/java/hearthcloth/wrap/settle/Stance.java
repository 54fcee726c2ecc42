package hearthcloth.wrap.settle;

/** How far cloth stands off a gift, in millimetres on a cloth of 700 mm; chosen for the drawing. */
enum Stance {
    /** Round something with flat sides, cloth bulges between the edges. */
    SQUARE(1.2, 4.2),
    /** Round something round it lies close, since it would have to stretch to stand off. */
    ROUND(0.3, 0);

    private final double off;
    private final double bulge;

    Stance(double off, double bulge) {
        this.off = off;
        this.bulge = bulge;
    }

    /** How far this share of the way from an edge to the middle of a side. */
    double at(double share) {
        return off + bulge * share;
    }
}
