package hearthcloth.wrap.settle;

import hearthcloth.geometry.Vector;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.fold.ReefKnot;
import java.util.List;

/**
 * Whether eased cloth is still cloth: by the limits that {@code wrap.drape} sets itself, threads are hardly longer than
 * on the table and nothing lies in the gift, free and gathered ends neither. Where threads are measured, the knots' own
 * tangle is left out, and so are those ends, which stay as the fold laid them.
 */
final class Truth {

    /** Cotton gives less than this share before it is seen to be pulled. */
    private static final double STRETCH = 0.02;

    /** Twice the thickness of light cotton, in millimetres. */
    private static final double DEPTH = 0.5;

    /** Cloth within so many diameters of a gathered end from a knot's middle is in its tangle. */
    private static final double TANGLE = 3;

    private final Web web;
    private final List<ReefKnot> knots;

    Truth(Web web, List<ReefKnot> knots) {
        this.web = web;
        this.knots = List.copyOf(knots);
    }

    boolean holds(Gift gift) {
        for (int e = 0; e < web.rest.length; e++) {
            int a = web.lines[2 * e];
            int b = web.lines[2 * e + 1];
            if ((isEased(a) && isEased(b) && isStretched(e, a, b)) || isInside(gift, a, b)) {
                return false;
            }
        }
        return true;
    }

    private boolean isEased(int k) {
        return web.isEased(k)
                && knots.stream().allMatch(knot -> web.place(k).minus(knot.at()).length() > TANGLE * knot.bunch());
    }

    /** By its length where the fold laid it, which for loose layers drawn apart is not the cloth's. */
    private boolean isStretched(int line, int a, int b) {
        double rest = Math.max(web.rest[line], web.begun(a).minus(web.begun(b)).length());
        return web.place(a).minus(web.place(b)).length() > rest * (1 + STRETCH) + SLACK;
    }

    /** Shorter differences than this, in millimetres, nobody sees, whatever share of a short line they are. */
    private static final double SLACK = 0.05;

    private boolean isInside(Gift gift, int a, int b) {
        return gift instanceof Gift.Box box
                && depth(box, web.place(a).plus(web.place(b)).times(0.5)) > DEPTH;
    }

    private static double depth(Gift.Box box, Vector place) {
        double across = box.along().nm() / NM_TO_MM / 2 - Math.abs(place.x());
        double along = box.across().nm() / NM_TO_MM / 2 - Math.abs(place.y());
        double under = Math.min(box.height().nm() / NM_TO_MM - place.z(), place.z());
        return Math.min(across, Math.min(along, under));
    }

    private static final double NM_TO_MM = 1e6;
}
