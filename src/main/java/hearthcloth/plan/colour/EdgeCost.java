package hearthcloth.plan.colour;

import hearthcloth.plan.model.Contrast;

/**
 * What a millimetre of edge counts for a wished contrast. The weights are ours.
 *
 * @param unseen of the hearth's edge that does not stand out
 * @param own of the hearth's edge that meets its own fabric, on top of that
 * @param same between two bars of one fabric
 * @param alike between two bars of other fabrics that look wholly alike; less, the more they differ
 * @param unlike between two that look wholly unlike, the hearth twice; less, the more they are alike; negative where
 *     it is wished
 */
record EdgeCost(double unseen, double own, double same, double alike, double unlike) {

    static EdgeCost of(Contrast wanted) {
        return switch (wanted) {
            case MOST -> new EdgeCost(2, 2, 1, 0.5, -0.5);
            case READS -> new EdgeCost(2, 2, 1, 0.5, 0);
            case EASY -> new EdgeCost(1, 2, 1, 0, 0);
            case QUIET -> new EdgeCost(0, 0.5, 0.5, 0, 1);
            case MELTS -> new EdgeCost(0, 0, 0, 0, 1);
        };
    }

    /** Whether a hearth stands out from a bar that is {@code apart} by CIEDE2000 and {@code gap} points of L* away. */
    static boolean standsOut(double apart, double gap) {
        return apart >= ColourFigures.STANDS_OUT && gap >= ColourFigures.STANDS_OUT_LIGHTNESS;
    }

    /** How nearly two fabrics look alike, from 0 to 1. */
    static double alike(double apart) {
        return Math.max(0, 1 - apart / ColourFigures.ALIKE);
    }

    /** How unlike two fabrics look, from 0 to 1. */
    static double unlike(double apart) {
        return Math.min(1, apart / ColourFigures.UNLIKE);
    }

    /** All edges of a cloth; where unlikeness is wished what there could be of it is counted as missing. */
    double of(ColourFigures figures) {
        ColourFigures.Hearth hearth = figures.hearth();
        ColourFigures.Neighbours bars = figures.neighbours();
        double wished = unlike < 0 ? -unlike * (2 * hearth.edgeMm() + bars.edgeMm()) : 0;
        return unseen * (hearth.edgeMm() - hearth.standsOutMm())
                + own * hearth.ownMm()
                + same * bars.sameMm()
                + alike * bars.alikeMm()
                + unlike * (2 * hearth.unlikeMm() + bars.unlikeMm())
                + wished;
    }

    /** A millimetre between hearth and bar. */
    double ofHearth(boolean isOwn, double apart, double gap) {
        return (standsOut(apart, gap) ? 0 : unseen) + (isOwn ? own : 0) + 2 * unlikeness(apart);
    }

    /** A millimetre between two bars. */
    double ofBars(boolean isSame, double apart) {
        return (isSame ? same : alike * alike(apart)) + unlikeness(apart);
    }

    private double unlikeness(double apart) {
        return unlike < 0 ? -unlike * (1 - unlike(apart)) : unlike * unlike(apart);
    }
}
