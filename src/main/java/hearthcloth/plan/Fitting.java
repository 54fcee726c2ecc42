package hearthcloth.plan;

import hearthcloth.measure.Unit;
import hearthcloth.plan.cutjoin.CutAndJoin;
import hearthcloth.plan.cutjoin.Outcome;
import hearthcloth.plan.search.Budget;
import hearthcloth.stash.Fabric;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Tries one draft against the pieces it may be cut from. */
final class Fitting {

    private Fitting() {}

    static Optional<Trial> fit(Draft draft, Supply supply, long steps, long seed, Budget budget) {
        CutJob job = job(draft.design(), supply);
        Budget share = Budget.either(Budget.steps(steps), budget);
        if (new CutAndJoin(job.job()).search(share, seed, found -> {}) instanceof Outcome.Found found) {
            double square = squareMm(draft.design());
            Bound bound = new Bound(
                    found.bounds().joins(),
                    found.bounds().lostArea() * square,
                    found.bounds().touchedArea() * square);
            return Optional.of(new Trial(draft, new CutAnswer(job, found.plan()), bound));
        }
        return Optional.empty();
    }

    /** A square of the ruler's marks, in which the search counts, in square millimetres. */
    private static double squareMm(Design design) {
        double mark = design.making().margins().mark().in(Unit.MILLIMETRE);
        return mark * mark;
    }

    /** What is short in a draft that was not made, in sentences. */
    static List<String> lacking(Draft draft, Supply supply, long steps, Wish wish, Budget budget) {
        CutJob job = job(draft.design(), supply);
        Budget share = Budget.either(Budget.steps(steps), budget);
        Outcome outcome =
                new CutAndJoin(job.job()).search(share, wish.preferences().seed(), found -> {});
        if (outcome instanceof Outcome.Impossible impossible) {
            return job.sentences(
                    impossible.shortages(), true, wish.preferences().ruler());
        }
        if (outcome instanceof Outcome.NotFound notFound) {
            return job.sentences(notFound.leftOut(), false, wish.preferences().ruler());
        }
        return List.of("A plan was found only with more time; plan again with a larger budget.");
    }

    static CutJob job(Design design, Supply supply) {
        Set<Fabric> wanted = new LinkedHashSet<>(design.scheme().hearth());
        design.scheme().bars().forEach(wanted::addAll);
        return new CutJob(design, supply.of(List.copyOf(wanted)));
    }
}
