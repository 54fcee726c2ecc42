package hearthcloth.plan.colour;

import hearthcloth.cloth.Cloth;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.parameter.ColourParameters;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * How much must be amiss in the colours of a cloth of this layout and hearth, whichever fabric of the heap each bar is
 * of: a bound that no choice of one fabric a bar can beat. It asks only that there is as much of a fabric as the bars
 * take finished, so it holds for every cutting, and whichever face lies outside where that is free: each face is then taken to
 * have all of its fabric.
 *
 * @param amissMm of the cloth itself, in millimetres of edge
 * @param boundMm what no choice comes below
 */
public record LeastAmiss(double amissMm, double boundMm) {

    /** So near to the bound a cloth counts as proven. */
    private static final double NEAR = ColourParameters.standard().faults().proven();

    /** The least there must be, beside what there is. */
    public static LeastAmiss of(Cloth cloth, Supply supply, ColourGoal goal) {
        Set<Fabric> all = new LinkedHashSet<>(supply.fabrics());
        List<Fabric> fabrics = List.copyOf(all);
        FabricDifferences differences = new FabricDifferences(fabrics);
        Map<Integer, Tile> whole = new LinkedHashMap<>();
        EdgeMap.of(cloth, differences).tiles().forEach(tile -> whole.merge(tile.bar(), tile, Tile::around));
        List<Tile> bars = new ArrayList<>(whole.values());
        Tile hearth = bars.remove(bars.indexOf(whole.get(0)));
        int[] numbers = IntStream.range(0, differences.count())
                .filter(i ->
                        i < fabrics.size() || fabrics.get(i - fabrics.size()).isTurnable())
                .toArray();
        double[] room = new double[numbers.length];
        for (int i = 0; i < numbers.length; i++) {
            int fabric = numbers[i] % fabrics.size();
            room[i] = supply.area(fabrics.get(fabric))
                    - (fabric == hearth.fabric() % fabrics.size() ? hearth.areaMm2() : 0);
        }
        EdgeBill bill = goal.bill(differences, cloth.finished());
        BarColouring problem =
                new BarColouring(hearth, bars, bill, numbers, new double[bars.size()][numbers.length], room);
        double amiss = goal.amissMm(cloth, fabrics);
        double bound =
                BarColours.of(problem, goal.parameters().search().bound(), 1).bound();
        return new LeastAmiss(amiss, Math.min(amiss, bound));
    }

    /** Whether no choice lies better. */
    public boolean isProven() {
        return amissMm - boundMm < NEAR;
    }
}
