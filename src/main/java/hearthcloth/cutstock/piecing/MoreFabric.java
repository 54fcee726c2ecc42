package hearthcloth.cutstock.piecing;

import hearthcloth.cutstock.piecing.parameter.ShortHeapParameters;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/**
 * How much fabric makes a cloth for which the heap just does not suffice: one piece along the whole of a side. It is tried,
 * not reckoned: the rest of the cloth was pieced.
 *
 * @param piece the piece of fabric that is added, at its cut size
 * @param job the job with the piece as its last scrap
 * @param cloth the cloth that comes out, of the wished size
 */
public record MoreFabric(Scrap piece, PiecingJob job, PiecedCloth cloth) {

    private static final ShortHeapParameters.Fabric PARAMETERS =
            ShortHeapParameters.standard().fabric();

    /**
     * Adds ever larger pieces until the cloth can be made.
     *
     * @param job a job of one cloth
     * @param fabric the number of the added fabric
     * @return the least addition that was found to be enough, empty if none was within the budget
     */
    public static Optional<MoreFabric> enough(PiecingJob job, int fabric, BooleanSupplier spent, long seed) {
        Allowances sewn = job.allowances();
        WishedCloth wished = job.cloths().get(0);
        long missing = PiecingBounds.of(job).missing();
        long low = Math.max(least(job), missing / sewn.net(wished.width()));
        long narrow = Math.max(least(job), missing / sewn.net(wished.height()));
        while (!spent.getAsBoolean() && (fits(job, low, true) || fits(job, narrow, false))) {
            Optional<MoreFabric> best = Stream.concat(
                            with(job, fabric, low, true, spent, seed).stream(),
                            with(job, fabric, narrow, false, spent, seed).stream())
                    .min(Comparator.comparingLong(MoreFabric::area));
            if (best.isPresent()) {
                return best;
            }
            low += 1 + low / PARAMETERS.growth();
            narrow += 1 + narrow / PARAMETERS.growth();
        }
        return Optional.empty();
    }

    /** The least net side of a patch. */
    private static long least(PiecingJob job) {
        return job.allowances().cutToShow(job.terms().least())
                - job.allowances().seam();
    }

    /** Whether enough is left beside a strip of this net breadth. */
    private static boolean fits(PiecingJob job, long breadth, boolean below) {
        WishedCloth wished = job.cloths().get(0);
        return job.allowances().net(below ? wished.height() : wished.width()) - breadth >= least(job);
    }

    private long area() {
        return piece.width() * piece.height();
    }

    /** The cloth with a strip of this net breadth below the rest, or to its right. */
    private static Optional<MoreFabric> with(
            PiecingJob job, int fabric, long breadth, boolean below, BooleanSupplier spent, long seed) {
        if (!fits(job, breadth, below)) {
            return Optional.empty();
        }
        WishedCloth wished = job.cloths().get(0);
        WishedCloth rest = below
                ? new WishedCloth(wished.width(), wished.height() - breadth)
                : new WishedCloth(wished.width() - breadth, wished.height());
        PiecingJob smaller = new PiecingJob(List.of(rest), job.scraps(), job.allowances(), job.terms());
        boolean[] found = {false};
        long[] left = {PARAMETERS.steps()};
        PiecingPlan plan = new FreePiecing(smaller)
                .search(
                        () -> found[0] || left[0]-- <= 0 || spent.getAsBoolean(),
                        seed,
                        better -> found[0] |= better.figures().full());
        return plan.figures().full() ? Optional.of(joined(job, plan, fabric, breadth, below)) : Optional.empty();
    }

    private static MoreFabric joined(PiecingJob job, PiecingPlan plan, int fabric, long breadth, boolean below) {
        Allowances sewn = job.allowances();
        WishedCloth wished = job.cloths().get(0);
        Scrap piece = below
                ? new Scrap(sewn.cut(wished.width()), breadth + sewn.seam(), fabric, false)
                : new Scrap(breadth + sewn.seam(), sewn.cut(wished.height()), fabric, false);
        List<Scrap> scraps = new ArrayList<>(job.scraps());
        scraps.add(piece);
        Pieced tree = new Joint(
                !below,
                plan.cloths().get(0).tree(),
                new ScrapPatch(scraps.size() - 1, false, piece.width(), piece.height()));
        PiecingJob more = new PiecingJob(job.cloths(), scraps, sewn, job.terms());
        return new MoreFabric(piece, more, new PiecedCloth(0, wished, tree));
    }
}
