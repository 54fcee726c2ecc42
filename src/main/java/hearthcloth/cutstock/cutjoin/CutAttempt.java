package hearthcloth.cutstock.cutjoin;

import hearthcloth.cutstock.job.CutDemand;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.CutPlan;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.Shortage;
import hearthcloth.cutstock.join.Joinery;
import hearthcloth.cutstock.search.SearchParameters;
import java.util.ArrayList;
import java.util.List;

/** One placing of the blocks, with the other demands cut and joined from what is free. */
final class CutAttempt {

    private final CutJoinJob job;
    private final FreePlots ground;
    private final AskedBars asked;
    private final GuillotineLanes lanes;
    private final Joinery joinery;
    private double merit = Double.MAX_VALUE;

    CutAttempt(CutJoinJob job, FreePlots ground, AskedBars asked, SearchParameters parameters) {
        this.job = job;
        this.ground = ground;
        this.asked = asked;
        this.lanes = new GuillotineLanes(
                ground.plots(),
                asked.kinds(),
                asked.slots(job.joinLoss()),
                job.leastOffcut(),
                wantedArea(job),
                parameters.costs());
        this.joinery = new Joinery(asked.wanted(), lanes, asked.rules(), job.joinLoss(), parameters);
    }

    private static double wantedArea(CutJoinJob job) {
        double bars = job.bars().stream()
                .mapToDouble(bar -> (double) bar.width() * bar.length())
                .reduce(0, Double::sum);
        return bars
                + job.blocks().stream()
                        .mapToDouble(block -> (double) block.width() * block.height())
                        .reduce(0, Double::sum);
    }

    Joinery joinery() {
        return joinery;
    }

    /** Whether anything has to be pieced; without bars there is nothing to rework. */
    boolean hasBars() {
        return !asked.wanted().isEmpty();
    }

    /** The stock pieces it may use. */
    int pieces() {
        return ground.pieces().size();
    }

    /** Its present quality; the best so far is stored. */
    double look() {
        double now = joinery.merit();
        merit = Math.min(merit, now);
        return now;
    }

    /** Its quality at its best; less is better. */
    double merit() {
        return merit;
    }

    /** Whether every demand is met at present. */
    boolean whole() {
        return joinery.work().missing() == 0;
    }

    /** What is cut from what at present. */
    CutPlan plan() {
        return new LaneLayout(job, asked.demands(), lanes, joinery.work()).plan(ground);
    }

    /** The demands not met at present. */
    List<Shortage> leftOut() {
        List<Shortage> missing = new ArrayList<>();
        for (int i = 0; i < asked.demands().size(); i++) {
            if (!joinery.work().pieced(i)) {
                missing.add(shortage(asked.demands().get(i)));
            }
        }
        return missing;
    }

    static Shortage shortage(CutDemand demand) {
        long width = demand instanceof JobBar bar ? bar.width() : ((JobBlock) demand).width();
        long length = demand instanceof JobBar bar ? bar.length() : ((JobBlock) demand).height();
        return new Shortage(List.of(demand.id()), demand.fabrics(), width, length);
    }
}
