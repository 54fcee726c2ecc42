package hearthcloth.work.deed;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Size;
import hearthcloth.plan.rework.CutSoFar;
import hearthcloth.plan.rework.Miscut;
import hearthcloth.plan.rework.MiscutWays;
import hearthcloth.plan.rework.WayOn;
import hearthcloth.words.sentence.MendingSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.Project;
import java.util.List;
import java.util.Optional;

/** A patch came out too small: the ways on, and the one she takes. The stash keeps its pieces. */
public final class PatchTooSmall {

    private final Workbench bench;
    private final MiscutWays ways;

    private PatchTooSmall(Workbench bench, MiscutWays ways) {
        this.bench = bench;
        this.ways = ways;
    }

    /**
     * The patch that the next cut of a piece is for, as it measures now; empty where all of its patches are cut.
     *
     * @throws hearthcloth.measure.MeasureException where it is not too small, or nothing at all
     */
    public static Optional<PatchTooSmall> of(Workbench bench, String piece, Size measured) {
        return Miscut.next(bench.plan(), bench.cloth().bench().ticked(), piece)
                .map(patch -> Miscut.of(bench.plan(), bench.cloth().bench().ticked(), patch, measured))
                .map(miscut -> new PatchTooSmall(
                        bench, new MiscutWays(miscut, bench.cloth().design(), bench.stash())));
    }

    /** How much it is too small, in a sentence. */
    public Sentence told() {
        return ways.told();
    }

    /** The ways on, best first. */
    public List<WayOn> ways(Budget budget) {
        return ways.ways(budget, way -> {});
    }

    /** Goes on that way. Patches it no longer uses are fabric again. */
    public Deed taken(WayOn way) {
        Project was = bench.cloth();
        Project now = new Project(
                way.design(), Optional.of(way.plan()), List.of(), was.bench().withTicked(way.made()), was.life());
        return Deed.of(
                MendingSentences.deedAgain("small"),
                now,
                new Deed.Pieces(List.of(), CutSoFar.freed(bench.plan(), way.plan(), bench.next())));
    }
}
