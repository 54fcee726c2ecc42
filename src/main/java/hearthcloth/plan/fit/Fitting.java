package hearthcloth.plan.fit;

import hearthcloth.cutstock.cutjoin.CutAndJoin;
import hearthcloth.cutstock.job.CutOutcome;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.Bound;
import hearthcloth.plan.model.Design;
import java.util.Optional;

/** Tries one draft against the pieces it may be cut from. */
public final class Fitting {

    private Fitting() {}

    public static Optional<DraftTrial> fit(Draft draft, Supply supply, long steps, long seed, Budget budget) {
        CutJob job = job(draft.design(), supply);
        Budget share = Budget.either(Budget.steps(steps), budget);
        if (new CutAndJoin(job.job()).search(share, seed, found -> {}) instanceof CutOutcome.Found found) {
            double square = squareMm(draft.design());
            Bound bound = new Bound(
                    found.bounds().joins(),
                    found.bounds().lostArea() * square,
                    found.bounds().touchedArea() * square);
            return Optional.of(new DraftTrial(draft, new CutAnswer(job, found.plan()), bound));
        }
        return Optional.empty();
    }

    /** The area of a square of the ruler's marks, the unit in which the search counts, in square millimetres. */
    private static double squareMm(Design design) {
        double mark = design.making().margins().mark().in(Unit.MILLIMETRE);
        return mark * mark;
    }

    public static CutJob job(Design design, Supply supply) {
        return new CutJob(design, supply.of(design.fabrics()));
    }
}
