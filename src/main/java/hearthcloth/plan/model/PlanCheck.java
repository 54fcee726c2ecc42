package hearthcloth.plan.model;

import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Showing;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * The last check before a plan is handed out: every patch is cut once, at its own size, from its own fabric, in the
 * right direction. That cuts do not overlap and run from edge to edge is ensured by {@link CutTree} itself.
 */
public final class PlanCheck {

    private PlanCheck() {}

    /**
     * Accepts a plan that can be sewn.
     *
     * @throws IllegalStateException naming what is wrong, which is an error in the planner and never in the wish
     */
    public static void require(Plan plan) {
        Map<String, Laid> laid = plan.laid();
        Set<String> seen = new LinkedHashSet<>();
        Set<String> pieces = new LinkedHashSet<>();
        for (PieceCut cut : plan.cuts()) {
            require(pieces.add(cut.piece().id()), "piece " + cut.piece().id() + " is cut twice");
            for (CutTree.Kept kept : cut.tree().kept()) {
                require(seen.add(kept.patch()), kept.patch() + " is cut twice");
                Laid patch = laid.get(kept.patch());
                if (patch == null) {
                    throw new IllegalStateException(kept.patch() + " is cut but not in the cloth");
                }
                isLargeEnough(patch, kept, cut);
                matches(patch, kept, cut.piece().fabric());
                if (!cut.past()) {
                    isLongEnough(patch, plan.rules().leastPiece());
                }
            }
        }
        require(seen.equals(laid.keySet()), "cut are " + seen + ", wanted are " + laid.keySet());
    }

    /**
     * Checks that a patch is cut to its own size. One that was already there may have more or less to trim off, but
     * must be large enough to sew; one cut for an earlier plan is as it was cut, and maybe sewn by now.
     */
    private static void isLargeEnough(Laid laid, CutTree.Kept kept, PieceCut cut) {
        Size lies = kept.turned() ? laid.cut().turned() : laid.cut();
        Size least = kept.turned() ? laid.exact().turned() : laid.exact();
        boolean ready = cut.tree() instanceof CutTree.Kept && kept.at().size().holds(least);
        require(
                cut.past() || ready || kept.at().size().equals(lies),
                kept.patch() + " is cut " + kept.at().size() + ", wanted " + lies);
    }

    private static void matches(Laid laid, CutTree.Kept kept, Fabric fabric) {
        Patch patch = laid.patch();
        require(patch.fabric().equals(fabric.name()), kept.patch() + " is cut from " + fabric.name());
        require(!kept.turned() || fabric.nap() == Fabric.Nap.ANY, kept.patch() + " is turned against the nap");
        // A bar that was sewn wrong side up stays so; which side the planner lays up is held by its own tests.
        // A cloth kept before the other face had a colour of its own says SAME.
        boolean isSame = patch.showing() == Showing.SAME;
        boolean fits = isSame ? fabric.faces() == Fabric.Faces.SAME : fabric.isSided();
        require(fits, kept.patch() + " shows a side its fabric has not");
    }

    /** One that is cut may have been trimmed with the work since; it is not planned any more. */
    private static void isLongEnough(Laid laid, Length least) {
        if (laid.patch().place() instanceof Place.Bar bar && bar.part() > 0) {
            Size size = laid.patch().size();
            Length along = bar.side().isUpright() ? size.height() : size.width();
            require(!along.isLessThan(least), bar.label() + " would finish at " + along + ", under the least piece");
        }
    }

    private static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalStateException(otherwise);
        }
    }
}
