package hearthcloth.cutstock.bound;

import hearthcloth.cutstock.job.CutDemand;
import hearthcloth.cutstock.job.CutJoinJob;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Bounds on fabric that no plan can beat, for demands that share their fabrics with no others: the least area of the
 * pieces cut into, and the least of it that is lost. Sums over such families are bounds for the whole job.
 *
 * @param demands of the family
 * @param used their parts cover at least this area
 * @param yields of the pieces that can give them something
 */
record FabricBounds(List<CutDemand> demands, double used, List<PieceYield> yields) {

    /** A demand and the least area of its parts. */
    record Need(CutDemand demand, double area) {}

    /** Sorts needs into families; O(needs x fabrics + needs x pieces). */
    static List<FabricBounds> of(CutJoinJob job, List<Need> needs) {
        List<FabricBounds> families = new ArrayList<>();
        List<Need> left = new ArrayList<>(needs);
        while (!left.isEmpty()) {
            List<Need> family = new ArrayList<>();
            BitSet fabrics = new BitSet();
            left.get(0).demand().fabrics().stream().forEach(fabrics::set);
            int before;
            do {
                before = family.size();
                for (Need need : List.copyOf(left)) {
                    if (need.demand().fabrics().stream().anyMatch(fabrics::get)) {
                        need.demand().fabrics().stream().forEach(fabrics::set);
                        family.add(need);
                        left.remove(need);
                    }
                }
            } while (family.size() > before);
            if (family.isEmpty()) {
                left.remove(0);
            } else {
                families.add(family(job, family, fabrics));
            }
        }
        return families;
    }

    private static FabricBounds family(CutJoinJob job, List<Need> family, BitSet fabrics) {
        List<CutDemand> demands = family.stream().map(Need::demand).distinct().toList();
        List<PieceYield> yields = job.stock().stream()
                .filter(piece -> fabrics.get(piece.fabric()))
                .map(piece -> PieceYield.of(piece, demands, job.leastOffcut()))
                .filter(yield -> yield.capacity() > 0)
                .toList();
        return new FabricBounds(demands, family.stream().mapToDouble(Need::area).reduce(0, Double::sum), yields);
    }

    /** The least area of the pieces cut into: enough capacity at the best yield, increased to whole pieces. */
    double touched() {
        double least = cheapest(yield -> yield.area() / yield.capacity());
        return TouchedArea.least(yields.stream().mapToDouble(PieceYield::area).toArray(), Math.max(used, least));
    }

    /** The least area lost in slivers. */
    double lost() {
        return cheapest(PieceYield::lossShare);
    }

    private interface Price {
        double of(PieceYield yield);
    }

    /** The least cost of the used area if it is taken from the pieces with the lowest price first. */
    private double cheapest(Price price) {
        double missing = used;
        double cost = 0;
        for (PieceYield yield :
                yields.stream().sorted(Comparator.comparingDouble(price::of)).toList()) {
            double taken = Math.min(missing, yield.capacity());
            cost += taken * price.of(yield);
            missing -= taken;
        }
        return cost;
    }
}
