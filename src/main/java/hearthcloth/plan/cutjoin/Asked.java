package hearthcloth.plan.cutjoin;

import hearthcloth.plan.join.JoinPlaces;
import hearthcloth.plan.join.WantedBar;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Demands of a job in the words of {@link hearthcloth.plan.join}: the kinds of lane they ask for, and rules about where
 * joins lie. A block can be asked for like a bar that has the block's width and is never joined.
 *
 * @param wanted one for each demand, in their order
 */
record Asked(List<Demand> demands, List<LaneKind> kinds, List<WantedBar> wanted, JoinPlaces rules) {

    private static final int MOST_PARTS = 64;

    /** The bars of a job. */
    static Asked bars(Job job) {
        return of(job, List.copyOf(job.bars()));
    }

    /** The bars and the blocks of a job, those that are not square standing upright in their lane. */
    static Asked all(Job job) {
        return of(
                job,
                Stream.<Demand>concat(job.bars().stream(), job.blocks().stream())
                        .toList());
    }

    private static Asked of(Job job, List<Demand> demands) {
        List<LaneKind> kinds = new ArrayList<>();
        List<WantedBar> wanted = new ArrayList<>();
        for (Demand demand : demands) {
            List<Integer> mine = new ArrayList<>();
            for (LaneKind kind : kindsOf(demand)) {
                if (!kinds.contains(kind)) {
                    kinds.add(kind);
                }
                mine.add(kinds.indexOf(kind));
            }
            wanted.add(
                    demand instanceof Bar bar
                            ? new WantedBar(bar.length(), mine, bar.mostJoins(), bar.leastPart())
                            : new WantedBar(((Block) demand).height(), mine, 0, 1));
        }
        return new Asked(demands, kinds, wanted, rules(job, demands, wanted));
    }

    private static List<LaneKind> kindsOf(Demand demand) {
        if (demand instanceof Block block) {
            Turn turn = block.width() == block.height() ? Turn.ANY : block.turnable() ? Turn.NAP : Turn.ALONG;
            return List.of(new LaneKind(block.width(), turn, block.fabrics()));
        }
        Bar bar = (Bar) demand;
        return bar.oneFabric()
                ? bar.fabrics().stream()
                        .mapToObj(fabric -> new LaneKind(bar.width(), bar.turn(), Fabrics.of(fabric)))
                        .toList()
                : List.of(new LaneKind(bar.width(), bar.turn(), bar.fabrics()));
    }

    private static JoinPlaces rules(Job job, List<Demand> demands, List<WantedBar> wanted) {
        Map<Integer, Integer> index = new HashMap<>();
        for (int i = 0; i < demands.size(); i++) {
            index.put(demands.get(i).id(), i);
        }
        return new JoinPlaces(
                wanted,
                demands.stream().map(Asked::forbidden).toList(),
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

    private static List<JoinPlaces.Stretch> forbidden(Demand demand) {
        return demand instanceof Bar bar
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
