package hearthcloth.plan.patchwork.byhand;

import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.Trimming;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What fits to what on the table, and how much each would trim. */
public record Fits(HandHeap heap, LaidOut laid) {

    /** What trims more than this share of both is not offered by itself; ours. */
    private static final double MUCH = 0.2;

    /** What fits next to a scrap or the part it is in: the ways that trim least, one for each other scrap or part. */
    public List<ScrapFit> next(int scrap, int most) {
        List<ScrapFit> best = new ArrayList<>();
        Set<Integer> seen = new LinkedHashSet<>(HandTree.scraps(thing(scrap)));
        for (int other = 0; other < heap.size(); other++) {
            if (!seen.contains(other)) {
                seen.addAll(HandTree.scraps(thing(other)));
                ways(scrap, other).stream()
                        .filter(fit -> fit.trim().share() <= MUCH)
                        .findFirst()
                        .ifPresent(best::add);
            }
        }
        best.sort(
                Comparator.comparingDouble((ScrapFit fit) -> fit.trim().share()).thenComparingInt(ScrapFit::second));
        return best.subList(0, Math.min(most, best.size()));
    }

    /** The ways to put these two together, the one that trims least first. */
    public List<ScrapFit> ways(int first, int second) {
        List<ScrapFit> ways = new ArrayList<>();
        Pieced one = thing(first);
        Pieced other = thing(second);
        if (HandTree.scraps(one).contains(second)) {
            return ways;
        }
        for (boolean turned : heap.turnable(other) ? new boolean[] {false, true} : new boolean[] {false}) {
            Pieced lies = turned ? HandTree.quarterTurned(other) : other;
            for (boolean beside : new boolean[] {true, false}) {
                trim(one, lies, beside).ifPresent(trim -> ways.add(new ScrapFit(first, second, beside, turned, trim)));
            }
        }
        ways.sort(Comparator.comparingDouble(fit -> fit.trim().share()));
        return ways;
    }

    /** The table when two are put together. */
    public LaidOut joined(ScrapFit fit) {
        Pieced one = thing(fit.first());
        Pieced other = thing(fit.second());
        Pieced both = new Joint(fit.beside(), one, fit.turned() ? HandTree.quarterTurned(other) : other);
        List<Pieced> parts = new ArrayList<>(laid.parts());
        parts.remove(one);
        parts.remove(other);
        parts.add(both);
        return laid.of(parts);
    }

    /** The part a scrap is in, or the whole scrap by itself. */
    Pieced thing(int scrap) {
        int part = laid.partOf(scrap);
        return part < 0 ? heap.natural(scrap, false) : laid.parts().get(part);
    }

    private Optional<ScrapFit.Trim> trim(Pieced one, Pieced other, boolean beside) {
        Trimming.Extent both = heap.extent(new Joint(beside, one, other));
        if (both.offWidth() < 0 || both.offHeight() < 0 || !fits(both)) {
            return Optional.empty();
        }
        Trimming.Extent first = heap.extent(one);
        Trimming.Extent second = heap.extent(other);
        long edge = beside ? first.height() : first.width();
        long meets = beside ? second.height() : second.width();
        double area = (double) first.width() * first.height() + (double) second.width() * second.height();
        double left = (double) both.width() * both.height();
        return Optional.of(new ScrapFit.Trim(Math.abs(edge - meets), meets > edge, (area - left) / area));
    }

    /** Whether so large a part has room in the cloth, either way. */
    private boolean fits(Trimming.Extent part) {
        long width = part.width() - part.offWidth();
        long height = part.height() - part.offHeight();
        return (width <= heap.netWidth() && height <= heap.netHeight())
                || (width <= heap.netHeight() && height <= heap.netWidth());
    }
}
