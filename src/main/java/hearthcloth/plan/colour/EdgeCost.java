package hearthcloth.plan.colour;

import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.parameter.ColourParameters;

/** What a millimetre of edge counts where its two sides look so far apart, for a wished contrast. */
record EdgeCost(ColourParameters.Edges weights) {

    private static final ColourParameters STANDARD = ColourParameters.standard();

    static EdgeCost of(Contrast wanted) {
        return new EdgeCost(STANDARD.dial().of(wanted));
    }

    /** Whether a hearth stands out from a bar that is {@code apart} by CIEDE2000 and {@code gap} points of L* away. */
    static boolean standsOut(double apart, double gap) {
        return apart >= STANDARD.looks().standsOut() && gap >= STANDARD.looks().standsOutLightness();
    }

    /** How nearly two fabrics look alike, from 0 to 1. */
    static double alike(double apart) {
        return Math.max(0, 1 - apart / STANDARD.looks().alike());
    }

    /** How unlike two fabrics look, from 0 to 1. */
    static double unlike(double apart) {
        return Math.min(1, apart / STANDARD.looks().unlike());
    }

    /** All edges of a cloth; where unlikeness is wished what there could be of it is counted as missing. */
    double of(ColourFigures figures) {
        ColourFigures.Hearth hearth = figures.hearth();
        ColourFigures.Neighbours bars = figures.neighbours();
        double unlike = weights.unlike();
        double wished = unlike < 0 ? -unlike * (2 * hearth.edgeMm() + bars.edgeMm()) : 0;
        return weights.unseen() * (hearth.edgeMm() - hearth.standsOutMm())
                + weights.own() * hearth.ownMm()
                + weights.same() * bars.sameMm()
                + weights.alike() * bars.alikeMm()
                + unlike * (2 * hearth.unlikeMm() + bars.unlikeMm())
                + wished;
    }

    /** A millimetre between hearth and bar. */
    double ofHearth(boolean isOwn, double apart, double gap) {
        return (standsOut(apart, gap) ? 0 : weights.unseen()) + (isOwn ? weights.own() : 0) + 2 * unlikeness(apart);
    }

    /** A millimetre between two bars. */
    double ofBars(boolean isSame, double apart) {
        return (isSame ? weights.same() : weights.alike() * alike(apart)) + unlikeness(apart);
    }

    private double unlikeness(double apart) {
        double unlike = weights.unlike();
        return unlike < 0 ? -unlike * (1 - unlike(apart)) : unlike * unlike(apart);
    }
}
