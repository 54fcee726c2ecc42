package hearthcloth.plan.model;

import hearthcloth.cloth.Step;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;

/**
 * The plan in numbers, all read off its cloth and its cuts.
 *
 * @param joins seams inside bars
 * @param cuts straight cuts
 * @param areas in square millimetres
 * @param seamLength finished length of all joining lines
 */
public record PlanFigures(int joins, int cuts, Areas areas, Length seamLength) {

    /**
     * Areas in square millimetres, over the whole story of the cloth: an offcut that was cut in its turn counts once.
     *
     * @param touched all pieces that are cut into
     * @param used cut into patches
     * @param lost leftovers with a side smaller than the least piece
     * @param offcuts leftovers that can be used again
     */
    public record Areas(double touched, double used, double lost, double offcuts) {

        /** The share of what is cut into that is lost, from 0 to 1. */
        double lostShare() {
            return touched == 0 ? 0 : lost / touched;
        }

        /** The same in whole per cent, rounded up so that the loss is never stated too small. */
        public long lostPercent() {
            return Rounding.UP.whole(100 * lostShare() - 1e-9);
        }
    }

    static PlanFigures of(Plan plan) {
        int joins = 0;
        Length seams = Length.ZERO;
        for (Step step : plan.cloth().steps()) {
            joins += step.joinedBar().isPresent() ? 1 : 0;
            seams = seams.plus(step.length());
        }
        int cuts =
                plan.cuts().stream().mapToInt(cut -> cut.tree().cuts().size()).sum();
        return new PlanFigures(joins, cuts, new WholeAreas(plan).areas(), seams);
    }
}
