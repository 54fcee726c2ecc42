package hearthcloth.benchmarks.sheet;

import hearthcloth.cutstock.search.Budget;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Jobs whose sides have too many stops for a table, solved in a coarser unit: pieces rounded up and the sheet down
 * give plans that really fit; pieces rounded down and the sheet up give a bound that really holds.
 */
final class Coarse {

    /**
     * Units along the longer side for plans; with finer ones a pass of {@link Building} was measured to take too long.
     */
    private static final long PLAN_UNITS = 60;

    /** Units along the longer side for the bound, which is one table. */
    private static final long BOUND_UNITS = 200;

    private Coarse() {}

    static SheetPlan plan(SheetJob job, Budget budget, Consumer<? super SheetPlan> improvements) {
        long unit = up(Math.max(job.width(), job.height()), PLAN_UNITS);
        long bound = bound(job, up(Math.max(job.width(), job.height()), BOUND_UNITS));
        if (job.width() < unit || job.height() < unit) {
            return new SheetPlan(0, bound, new Slicing.Rest(job.width(), job.height()));
        }
        SheetJob tight = new SheetJob(
                job.width() / unit,
                job.height() / unit,
                job.wanted().stream()
                        .map(w -> new Wanted(up(w.width(), unit), up(w.height(), unit), w.worth(), w.copies()))
                        .toList(),
                job.turning());
        SheetPlan plan =
                SheetCutting.limited(tight, budget, better -> improvements.accept(real(job, better, unit, bound)));
        return real(job, plan, unit, bound);
    }

    private static long up(long length, long unit) {
        return -Math.floorDiv(-length, unit);
    }

    /**
     * A bound in coarse units. Thin pieces vanish when rounded down; they count as cut in full, in addition to the
     * bound for the others.
     */
    private static long bound(SheetJob job, long unit) {
        long thin = 0;
        List<Wanted> loose = new ArrayList<>();
        for (int kind = 0; kind < job.wanted().size(); kind++) {
            Wanted w = job.wanted().get(kind);
            if (w.width() < unit || w.height() < unit) {
                thin += w.worth() * job.copies(kind);
            } else {
                loose.add(new Wanted(w.width() / unit, w.height() / unit, w.worth(), job.copies(kind)));
            }
        }
        if (loose.isEmpty()) {
            return thin;
        }
        SheetJob around = new SheetJob(up(job.width(), unit), up(job.height(), unit), loose, job.turning());
        return thin
                + SheetCutting.limited(around, Budget.steps(0), better -> {}).bound();
    }

    private static SheetPlan real(SheetJob job, SheetPlan plan, long unit, long bound) {
        Slicing cuts = Slicing.within(real(job, plan.cuts(), unit), job.width(), job.height());
        return new SheetPlan(plan.worth(), bound, cuts);
    }

    private static Slicing real(SheetJob job, Slicing slicing, long unit) {
        if (slicing instanceof Slicing.Beside cut) {
            return new Slicing.Beside(real(job, cut.left(), unit), real(job, cut.right(), unit));
        }
        if (slicing instanceof Slicing.Above cut) {
            return new Slicing.Above(real(job, cut.upper(), unit), real(job, cut.lower(), unit));
        }
        long width = slicing.width() * unit;
        long height = slicing.height() * unit;
        if (slicing instanceof Slicing.Piece piece) {
            Wanted wanted = job.wanted().get(piece.kind());
            Slicing exact = piece.turned()
                    ? new Slicing.Piece(piece.kind(), true, wanted.height(), wanted.width())
                    : new Slicing.Piece(piece.kind(), false, wanted.width(), wanted.height());
            return Slicing.within(exact, width, height);
        }
        return new Slicing.Rest(width, height);
    }
}
