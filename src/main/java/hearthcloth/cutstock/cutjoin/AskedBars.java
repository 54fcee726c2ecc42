package hearthcloth.cutstock.cutjoin;

import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutDemand;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.LaneKind;
import hearthcloth.cutstock.join.JoinPlaces;
import hearthcloth.cutstock.join.WantedBar;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The demands of a job in the terms of {@link hearthcloth.plan.join}: the kinds of lane they need, and rules about
 * where joins lie. A block can be treated like a bar that has the block's width and is never joined.
 *
 * @param wanted one for each demand, in their order
 */
record AskedBars(List<CutDemand> demands, List<LaneKind> kinds, List<WantedBar> wanted, JoinPlaces rules) {

    /** The most parts of one bar that the search can hold. */
    private static final int MOST_PARTS = 64;

    /** The bars of a job. */
    static AskedBars bars(CutJoinJob job) {
        return of(job, List.copyOf(job.bars()));
    }

    /** The bars and the blocks of a job, those that are not square standing upright in their lane. */
    static AskedBars all(CutJoinJob job) {
        return of(
                job,
                Stream.<CutDemand>concat(job.bars().stream(), job.blocks().stream())
                        .toList());
    }

    private static AskedBars of(CutJoinJob job, List<CutDemand> demands) {
        List<LaneKind> kinds = new ArrayList<>();
        List<WantedBar> wanted = new ArrayList<>();
        for (CutDemand demand : demands) {
            List<Integer> mine = new ArrayList<>();
            for (LaneKind kind : kindsOf(demand)) {
                if (!kinds.contains(kind)) {
                    kinds.add(kind);
                }
                mine.add(kinds.indexOf(kind));
            }
            wanted.add(
                    demand instanceof JobBar bar
                            ? new WantedBar(bar.length(), mine, bar.mostJoins(), bar.leastPart())
                            : new WantedBar(((JobBlock) demand).height(), mine, 0, 1));
        }
        return new AskedBars(demands, kinds, wanted, rules(job, demands, wanted));
    }

    private static List<LaneKind> kindsOf(CutDemand demand) {
        if (demand instanceof JobBlock block) {
            BarTurn turn =
                    block.width() == block.height() ? BarTurn.ANY : block.turnable() ? BarTurn.NAP : BarTurn.ALONG;
            return List.of(new LaneKind(block.width(), turn, block.fabrics()));
        }
        JobBar bar = (JobBar) demand;
        return bar.oneFabric()
                ? bar.fabrics().stream()
                        .mapToObj(fabric -> new LaneKind(bar.width(), bar.turn(), FabricSets.of(fabric)))
                        .toList()
                : List.of(new LaneKind(bar.width(), bar.turn(), bar.fabrics()));
    }

    private static JoinPlaces rules(CutJoinJob job, List<CutDemand> demands, List<WantedBar> wanted) {
        Map<Integer, Integer> index = new LinkedHashMap<>();
        for (int i = 0; i < demands.size(); i++) {
            index.put(demands.get(i).id(), i);
        }
        return new JoinPlaces(
                wanted,
                demands.stream().map(AskedBars::forbidden).toList(),
                job.neighbours().stream()
                        .map(pair -> new JoinPlaces.Apart(
                                index.getOrDefault(pair.first(), -1),
                                index.getOrDefault(pair.second(), -1),
                                pair.shift(),
                                pair.clearance()))
                        .toList(),
                job.joinLoss(),
                job.joinOffset());
    }

    private static List<JoinPlaces.Stretch> forbidden(CutDemand demand) {
        return demand instanceof JobBar bar
                ? bar.forbidden().stream()
                        .map(span -> new JoinPlaces.Stretch(span.from(), span.to()))
                        .toList()
                : List.of();
    }

    /** How many lanes, and rectangles that hold lanes, a plan can need at most. */
    int slots(long loss) {
        return 2
                * (1
                        + wanted.stream()
                                .mapToInt(bar -> (int) Math.min(
                                        Math.min(bar.mostJoins(), MOST_PARTS - 1) + 1L,
                                        1 + bar.length() / Math.max(1, bar.leastPart() - loss)))
                                .sum());
    }
}
