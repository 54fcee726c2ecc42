package hearthcloth.plan.colour;

import hearthcloth.cloth.Rect;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.parameter.ColourParameters;
import hearthcloth.wrap.fold.Visible;
import java.util.List;
import java.util.Optional;

/**
 * What the edge between two tiles costs: on the front, on the back where that has colours of its own, and once more as far
 * as it shows on the tied gift. All of it is worked out once for each two fabrics.
 */
final class EdgeBill {

    /** What a millimetre counts on the back and on the tied gift, beside one on the flat front. */
    static final double LESS = ColourParameters.standard().faults().less();

    private final FabricDifferences front;
    private final double[][][] hearths;
    private final double[][][] bars;
    private final Optional<Visible> tied;

    /**
     * What a millimetre of one edge counts.
     *
     * @param front as it is seen on the front, flat and tied
     * @param back as it is seen on the back
     */
    record Weight(double front, double back) {}

    /** Of the fabrics that {@code front} numbers, on a cloth that is tied so. */
    EdgeBill(FabricDifferences front, Contrast wanted, Optional<Visible> tied) {
        this.front = front;
        this.tied = tied;
        EdgeCost cost = EdgeCost.of(wanted);
        List<FabricDifferences> faces = front.isTwoFaced() ? List.of(front, front.back()) : List.of(front);
        this.hearths = new double[faces.size()][][];
        this.bars = new double[faces.size()][][];
        for (int face = 0; face < faces.size(); face++) {
            int count = front.count();
            hearths[face] = new double[count][count];
            bars[face] = new double[count][count];
            for (int one = 0; one < count; one++) {
                for (int other = 0; other < count; other++) {
                    double apart = faces.get(face).between(one, other);
                    double gap = faces.get(face).gap(one, other);
                    hearths[face][one][other] = cost.ofHearth(one == other, apart, gap);
                    bars[face][one][other] = cost.ofBars(one == other, apart);
                }
            }
        }
    }

    FabricDifferences front() {
        return front;
    }

    /** What a millimetre between these two counts. */
    Weight weight(Tile one, Tile other) {
        double back = hearths.length > 1 ? LESS : 0;
        double seen = tied.map(visible -> TiedColours.share(edge(one, other), visible))
                .orElse(0.0);
        return new Weight(1 + LESS * seen, back);
    }

    private static Rect edge(Tile one, Tile other) {
        Length left = length(Math.max(one.x(), other.x()));
        Length top = length(Math.max(one.y(), other.y()));
        Length right = length(Math.min(one.right(), other.right()));
        Length bottom = length(Math.min(one.bottom(), other.bottom()));
        return Rect.at(
                left,
                top,
                new Size(right.minus(left).max(Length.ZERO), bottom.minus(top).max(Length.ZERO)));
    }

    private static Length length(double mm) {
        return new Length(Math.round(mm * 1e6));
    }

    /** A millimetre between a hearth and a bar. */
    double ofHearth(int hearth, int bar, Weight weight) {
        return sum(hearths, hearth, bar, weight);
    }

    /** A millimetre between two bars. */
    double ofBars(int one, int other, Weight weight) {
        return sum(bars, one, other, weight);
    }

    private static double sum(double[][][] costs, int one, int other, Weight weight) {
        double front = weight.front * costs[0][one][other];
        return costs.length > 1 ? front + weight.back * costs[1][one][other] : front;
    }
}
